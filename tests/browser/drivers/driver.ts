/** A value that goes into a page and comes out of it unchanged. */
export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [name: string]: Plain };

/** One page in a real browser, in the same words for every engine. */
export interface Driver {
  /** Goes to an address and waits until the page has loaded. */
  open(url: string): Promise<void>;
  /**
   * Runs a function in the page and returns what it returns. The function is sent as text: it sees
   * its arguments and the page, nothing around it. Its answer must be a plain value (an answer such
   * as a service worker registration ends the page in some engines).
   */
  run<Args extends readonly Plain[], Answer>(
    step: (...args: Args) => Answer | Promise<Answer>,
    ...args: Args
  ): Promise<Answer>;
  reload(): Promise<void>;
  /** Ends the browser and everything that was started for it. */
  close(): Promise<void>;
}

/** How long anything is waited for, milliseconds: a machine that many share can stand still for half a minute. */
export const WAIT_MS = 60_000;

/**
 * Asks again and again until the answer is yes. The asking is done from outside: a page whose policy
 * refuses text as code cannot be told to watch for itself.
 *
 * @param what said when the time is over; a function is asked then
 * @param limitMs how long to ask, milliseconds
 */
export async function until(
  what: string | (() => string),
  ask: () => Promise<boolean>,
  limitMs = WAIT_MS,
): Promise<void> {
  const endMs = Date.now() + limitMs;
  while (!(await ask())) {
    if (Date.now() > endMs) {
      throw new Error(`Waited ${limitMs} ms in vain: ${typeof what === "string" ? what : what()}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Waits until the app has opened its database and drawn a screen. */
export function untilStarted(page: Driver): Promise<void> {
  return until("the app has started", () => page.run(() => document.querySelector("#app > *") !== null));
}

/** Waits until the page is in the hands of its service worker, which keeps the whole app for later first. */
export function untilControlled(page: Driver): Promise<void> {
  return until("the service worker controls the page", () =>
    page.run(() => navigator.serviceWorker.controller?.state === "activated"),
  );
}
