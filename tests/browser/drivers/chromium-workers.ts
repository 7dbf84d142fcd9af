import type { Page } from "playwright-core";

/**
 * Listens to the workers of a page for refusals by the policy. A worker tells its page nothing of
 * them, and one that refuses text as code while a library tries it out at the start is over before a
 * listener could be put into it: so the browser's own list is asked, which is kept from the start.
 *
 * @param tell called with the broken rule, what was refused and the worker's file
 */
export async function watchWorkers(page: Page, tell: (text: string) => void): Promise<void> {
  const session = await page.context().newCDPSession(page);
  session.on("Target.attachedToTarget", ({ sessionId }) => {
    session
      .send("Target.sendMessageToTarget", {
        sessionId,
        message: JSON.stringify({ id: 1, method: "Audits.enable" }),
      })
      // The worker may have ended before it could be asked.
      .catch(() => undefined);
  });
  session.on("Target.receivedMessageFromTarget", ({ message }) => {
    const { method, params }: WorkerMessage = JSON.parse(message);
    const found = params?.issue?.details.contentSecurityPolicyIssueDetails;
    if (method === "Audits.issueAdded" && found) {
      tell(`${found.violatedDirective} ${found.blockedURL ?? "eval"} in ${found.sourceCodeLocation?.url}`);
    }
  });
  await session.send("Target.setAutoAttach", {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
}

interface WorkerMessage {
  readonly method?: string;
  readonly params?: { readonly issue?: { readonly details: IssueDetails } };
}

interface IssueDetails {
  readonly contentSecurityPolicyIssueDetails?: {
    readonly violatedDirective: string;
    readonly blockedURL?: string;
    readonly sourceCodeLocation?: { readonly url: string };
  };
}
