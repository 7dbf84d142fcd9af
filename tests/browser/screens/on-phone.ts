/** The built app on a phone, with the records that a test lays into it. */
import type { Locator, Page } from "playwright-core";
import { putRows, type Rows } from "../../bench/seed.ts";
import { type ChromiumDriver, type ChromiumTab, startChromium } from "../drivers/chromium.ts";
import { type Driver, until } from "../drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";

/** What a person does on one tab. */
export interface Hands {
  /** Touches the key, link or row with these words. */
  readonly touch: (words: string | RegExp) => Promise<void>;
  /** Writes on the line with this label. */
  readonly write: (label: string, text: string) => Promise<void>;
  /** Waits until these words stand on the screen. */
  readonly reads: (words: string | RegExp) => Promise<void>;
  /** Goes to an address as if it were typed; once it is done, nothing of the screen before is there any more. */
  readonly goTo: (address: string) => Promise<void>;
}

export interface OnPhone extends Hands {
  readonly chromium: ChromiumDriver;
  /** Ends it all; throws when anything went wrong on the page. */
  readonly close: () => Promise<void>;
}

/** Hands on a tab that shows the app. */
export const handsOn = ({ page, run }: ChromiumTab): Hands => ({
  touch: (words) => page.locator("a, button, label").filter({ hasText: words }).first().tap(),
  write: (label, text) => page.getByRole("textbox", { name: label }).fill(text),
  reads: (words) => page.locator("#app").getByText(words).first().waitFor(),
  goTo: (address) =>
    run(async (hash) => {
      if (location.hash === hash) return;
      const gone = new Promise((resolve) => addEventListener("hashchange", resolve, { once: true }));
      location.hash = hash;
      await gone;
      // What the app draws upon it is drawn before the next task.
      await new Promise((resolve) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve;
        port2.postMessage(null);
      });
    }, address),
});

/** What is drawn, and where; or what the screen still waits for. */
const drawn = (): { readonly ready: boolean; readonly text: string } => {
  const app = document.querySelector("#app");
  const waits = app?.querySelector("[aria-busy=true]");
  if (waits !== null || app?.querySelector("h1, h2") === null)
    return { ready: false, text: `waits for ${waits?.outerHTML ?? "a heading"} in ${app?.textContent}` };
  const boxes = [...document.querySelectorAll("a, button, input, h1, h2, h3")].map((one) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    return [x, y, width, height].map(Math.round).join(" ");
  });
  return { ready: true, text: `${boxes.join("\n")}\n${app?.textContent}` };
};

/** So long, and over so many looks, nothing may change: a slow machine takes longer from look to look. */
const STILL = { ms: 250, looks: 5 };

/**
 * Waits until the screen is drawn and does not change any more. For what must not come: whatever has words of
 * its own to wait for is waited for by them.
 */
export const standsStill = async (driver: Driver, screen: string): Promise<void> => {
  const startMs = Date.now();
  let before = "";
  let sinceMs = startMs;
  let looks = 0;
  const seen: string[] = [];
  await until(
    () => `the screen ${screen} stands still. Seen last, with milliseconds:\n${seen.slice(-3).join("\n\n")}`,
    async () => {
      const { ready, text } = await driver.run(drawn);
      looks += 1;
      if (text !== before) {
        sinceMs = Date.now();
        looks = 0;
        seen.push(`${sinceMs - startMs}: ${text}`);
      }
      before = text;
      return ready && looks >= STILL.looks && Date.now() - sinceMs > STILL.ms;
    },
  );
};

/** At which step of its history the page stands: a panel that its own key closed goes back a moment later. */
export const stepOf = (driver: Driver): Promise<number> =>
  driver.run(
    () => (Reflect.get(globalThis, "navigation") as { currentEntry: { index: number } }).currentEntry.index,
  );

/** Where something on a map lies once it has come to rest: a map is drawn anew while it finds its size. */
export const placeAtRest = async (
  of: Locator,
): Promise<{ x: number; y: number; width: number; height: number }> => {
  let before = "";
  let place: Awaited<ReturnType<Locator["boundingBox"]>> = null;
  await until("it has come to rest", async () => {
    place = await of.boundingBox();
    const same = place !== null && JSON.stringify(place) === before;
    before = JSON.stringify(place);
    if (!same) await of.page().waitForTimeout(100);
    return same;
  });
  if (place === null) throw new Error("It has no place");
  return place;
};

/** Types a number on the pad that stands open, and takes it. */
export const answerOnPad = async (page: Page, digits: string): Promise<void> => {
  for (const digit of digits)
    await page
      .locator(".pad-keys button")
      .filter({ hasText: new RegExp(`^${digit}$`) })
      .first()
      .tap();
  await page.getByRole("button", { name: "Done", exact: true }).first().tap();
};

const MINUTE_MS = 60_000;

/** Time goes by, and nobody touches the screen: it grows dark while rings run, and the first touch only lights it. */
export const passMinutes = async (page: Page, minutes: number): Promise<void> => {
  await page.clock.fastForward(minutes * MINUTE_MS);
  const dark = page.locator(".dimmed");
  if (minutes > 1) await dark.waitFor({ timeout: 2000 }).catch(() => undefined);
  await until("the screen is lit", async () => {
    // A reading that is due lights it too, also while the finger is on its way.
    const lit = (await dark.count()) === 0;
    if (!lit) await dark.tap({ timeout: 2000 }).catch(() => undefined);
    if (!lit) await dark.waitFor({ state: "detached", timeout: 2000 }).catch(() => undefined);
    return lit;
  });
};

/** Starts the app with these records, its first questions answered, and what else the person chose. */
export const onPhone = async (
  rows: Rows = { records: [], entries: [] },
  settings: Parameters<typeof putRows>[2] = {},
): Promise<OnPhone> => {
  const host: BuiltServer = await serveBuilt({ directory: builtFolder, under: "/" });
  const chromium = await startChromium();
  await chromium.open(host.url);
  await putRows(chromium, rows, settings);
  await chromium.open(`${host.url}#/measure`);
  await chromium.reload();
  return {
    chromium,
    ...handsOn(chromium),
    close: async () => {
      // The browser first: its service worker may still be asking the host for the rest of the app.
      try {
        await chromium.close();
      } finally {
        await host.close();
      }
    },
  };
};
