import { headerPolicy } from "./policy.ts";

/** How the service worker treats one request. */
export type Treatment =
  /** Another origin: answered with an error, so that nothing leaves the phone by accident. */
  | { readonly kind: "refused" }
  /** A page inside the scope that is not a file of the app: sent to the app's own address. */
  | { readonly kind: "sent-home" }
  /** A file of the app, from the precache, else from the host. */
  | { readonly kind: "file"; readonly url: string; readonly withPolicy: boolean }
  /** Nothing of ours: left to the browser. */
  | { readonly kind: "left-alone" };

/** What is looked at in a request. `scope` is the address of the folder that the app lives in. */
export interface Asked {
  readonly url: string;
  readonly method: string;
  readonly mode: string;
  readonly destination: string;
  readonly scope: string;
}

const bound: ReadonlySet<string> = new Set([
  "document",
  "embed",
  "frame",
  "iframe",
  "object",
  "sharedworker",
  "worker",
]);

/**
 * Decides how a request is answered.
 *
 * A page is never answered with `index.html` at a deeper address than its own, because the relative
 * addresses in it would then miss every file.
 *
 * @param asked the request, and the folder of the app (ends in `/`)
 * @param isPrecached whether an address (without query and fragment) is a file of the app
 * @example
 * treat(request, (url) => files.has(url)); // { kind: "file", url: "https://…/index.html", withPolicy: true }
 */
export function treat(asked: Asked, isPrecached: (url: string) => boolean): Treatment {
  const scope = new URL(asked.scope);
  const url = new URL(asked.url);
  if (url.origin !== scope.origin) {
    return { kind: "refused" };
  }
  url.hash = "";
  if (asked.method !== "GET" || !url.href.startsWith(scope.href)) {
    return { kind: "left-alone" };
  }
  const withPolicy = asked.mode === "navigate" || bound.has(asked.destination);
  if (asked.mode === "navigate") {
    url.search = "";
    if (url.href === scope.href) {
      return { kind: "file", url: new URL("index.html", scope).href, withPolicy };
    }
    if (!isPrecached(url.href)) {
      return { kind: "sent-home" };
    }
  }
  return withPolicy || isPrecached(url.href)
    ? { kind: "file", url: url.href, withPolicy }
    : { kind: "left-alone" };
}

/**
 * The same answer with the policy as header. A policy of the host stays beside ours: with two,
 * browsers obey both. Answers that script may not read are returned as they are.
 */
export function withPolicyHeader(answer: Response): Response {
  if (answer.type === "error" || answer.type === "opaque" || answer.type === "opaqueredirect") {
    return answer;
  }
  const headers = new Headers(answer.headers);
  headers.append("content-security-policy", headerPolicy);
  return new Response(answer.body, {
    status: answer.status,
    statusText: answer.statusText,
    headers,
  });
}
