import { type BrowserContext, chromium, type Page } from "playwright-core";
import { chromiumArguments, findChromium } from "../../run/find-browser.mjs";
import { watchWorkers } from "./chromium-workers.ts";
import { type Driver, type Plain, WAIT_MS } from "./driver.ts";
import { removeFolder, temporaryFolder } from "./programs.ts";

/** Something that must not happen on any screen: a refused load, an uncaught error, an error in the console. */
export interface PageProblem {
  readonly kind: "violation" | "uncaught" | "console";
  readonly text: string;
}

/** One tab. */
export interface ChromiumTab extends Driver {
  readonly page: Page;
}

/** Chromium as a phone with touch, with a profile on disk: a fresh context would keep IndexedDB in memory. */
export interface ChromiumDriver extends ChromiumTab {
  readonly context: BrowserContext;
  /** Opens one more tab of the same profile. */
  tab(): Promise<ChromiumTab>;
  /** What went wrong on any page or worker so far; asking takes it off the list. */
  takeProblems(): PageProblem[];
  /**
   * Ends the browser.
   *
   * @throws when there is a problem that no `takeProblems` has taken: so a test cannot pass over a
   * violation by forgetting to look
   */
  close(): Promise<void>;
}

const report = "__reportPolicyViolation";

/**
 * Starts Chromium.
 *
 * @param profile a folder to keep the profile in, to open it again after the browser was ended;
 * without it the profile goes with the browser
 * @param env what the browser finds in its surroundings besides this process's own
 */
export async function startChromium(
  profile?: string,
  env: Readonly<Record<string, string>> = {},
): Promise<ChromiumDriver> {
  const folder = profile ?? temporaryFolder("chromium-profile");
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: await findChromium(),
    args: [...chromiumArguments],
    env: { ...process.env, ...env },
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    locale: "en-GB",
  });
  context.setDefaultTimeout(WAIT_MS);
  const problems: PageProblem[] = [];
  await watchPages(context, problems);
  const watched = async (page: Page) => {
    await watchWorkers(page, (text) => problems.push({ kind: "violation", text }));
    return tabOf(page);
  };
  return {
    ...(await watched(context.pages()[0] ?? (await context.newPage()))),
    context,
    tab: async () => watched(await context.newPage()),
    takeProblems: () => problems.splice(0),
    close: async () => {
      await context.close();
      if (profile === undefined) {
        removeFolder(folder);
      }
      if (problems.length > 0) {
        throw new Error(`Problems on the page:\n${problems.map((p) => `${p.kind}: ${p.text}`).join("\n")}`);
      }
    },
  };
}

function tabOf(page: Page): ChromiumTab {
  return {
    page,
    open: async (url) => {
      await page.goto(url);
    },
    run: <Args extends readonly Plain[], Answer>(
      step: (...args: Args) => Answer | Promise<Answer>,
      ...args: Args
    ): Promise<Answer> => page.evaluate(`(${step})(...${JSON.stringify(args)})`),
    reload: async () => {
      await page.reload();
    },
    close: () => page.close(),
  };
}

async function watchPages(context: BrowserContext, problems: PageProblem[]): Promise<void> {
  await context.exposeBinding(report, (_source, text: string) => {
    problems.push({ kind: "violation", text });
  });
  await context.addInitScript((name: string) => {
    document.addEventListener("securitypolicyviolation", (event) => {
      const send: unknown = Reflect.get(window, name);
      if (typeof send === "function") {
        send(`${event.effectiveDirective} ${event.blockedURI} on ${event.documentURI}`);
      }
    });
  }, report);
  context.on("console", (message) => {
    if (message.type() === "error") {
      problems.push({ kind: "console", text: `${message.text()} (${message.location().url})` });
    }
  });
  context.on("weberror", (problem) => {
    problems.push({ kind: "uncaught", text: String(problem.error()) });
  });
}
