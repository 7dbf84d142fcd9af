/** What a person does on the way to a state, by keyboard as far as a keyboard gets: fingers have tests of their own. */
import type { Locator } from "playwright-core";
import { until } from "../drivers/driver.ts";
import { placeAtRest } from "../screens/on-phone.ts";
import type { OnFarm } from "./screens.ts";

/** A key, a link or a fold to touch by its words, or something else to do. */
export type Step = string | RegExp | (((on: OnFarm) => Promise<unknown>) & { readonly presses?: true });

/** Whether a key is pressed on this way. */
export const presses = (way: readonly Step[]): boolean =>
  way.some((step) => typeof step !== "function" || step.presses === true);

/** A key that does not come within this time never will. */
const COMES_MS = 20_000;

const keys = "a:visible, button:visible, label:visible, summary:visible";

/** Stands on a key and presses it. */
const press = async ({ chromium: { page } }: OnFarm, found: Locator): Promise<void> => {
  await found.waitFor({ timeout: COMES_MS });
  let key = "";
  // What is being written down keeps a key switched off for a moment.
  await until(
    "a keyboard stands on the key",
    async () => {
      key = await found.evaluate((one) => {
        const target = one instanceof HTMLLabelElement ? (one.control ?? one) : one;
        if (target instanceof HTMLElement) target.focus();
        if (document.activeElement !== target) return "";
        return target.matches("input") ? "Space" : "Enter";
      });
      return key !== "";
    },
    COMES_MS,
  );
  await page.keyboard.press(key);
};

/** Leaves what is open by its own key; false when it has none. */
export const leave = async (on: OnFarm): Promise<boolean> => {
  const close = on.chromium.page.getByRole("button", { name: "Close", exact: true });
  if ((await close.count()) === 0) return false;
  await press(on, close.first());
  return true;
};

/** Whether a keyboard stands somewhere, and not at the top of the page again; another screen begins there. */
export const standsOn = ({ chromium, addresses }: OnFarm, screen: string): Promise<boolean> =>
  chromium.run(
    (address) =>
      location.hash !== address ||
      (document.activeElement !== null && document.activeElement !== document.body),
    addresses[screen] ?? "",
  );

/**
 * What opened, has the focus, and is covered by the foot or the bar; null when nothing is. A key keeps its focus
 * where something opens above it, and what lies over the whole page has no foot.
 */
export const covered = ({ chromium }: OnFarm): Promise<string | null> =>
  chromium.run(() => {
    const on = document.activeElement;
    if (on === null || on === document.body || on.matches("a, button, summary, input")) return null;
    if (on.closest(".foot, .next-reading, .full-view") !== null) return null;
    const edges = (of: string): DOMRect[] =>
      [...document.querySelectorAll(of)]
        .map((one) => one.getBoundingClientRect())
        .filter((one) => one.height > 0);
    const from = Math.max(0, ...edges(".next-reading").map(({ bottom }) => bottom));
    const to = Math.min(innerHeight, ...edges(".foot, .foot .actions").map(({ top }) => top));
    const { top, bottom, height } = on.getBoundingClientRect();
    const begins = top >= from - 1 && top < to;
    // What is long, or grows while its parts are read, begins on the page.
    const stands = height > (to - from) / 2 ? begins : begins && bottom <= to + 1;
    return stands
      ? null
      : `${on.outerHTML.slice(0, 120)} from ${top} to ${bottom}, seen from ${from} to ${to}`;
  });

/** Does one step. Words of a string are the beginning of what a key says. */
export const take = async (on: OnFarm, step: Step): Promise<void> => {
  if (typeof step === "function") await step(on);
  else {
    const words =
      typeof step === "string" ? new RegExp(`^\\s*${step.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`) : step;
    await press(on, on.chromium.page.locator(keys).filter({ hasText: words }).first());
  }
};

/** Presses what the selector finds first. */
export const key = (selector: string): Step =>
  Object.assign((on: OnFarm) => press(on, on.chromium.page.locator(selector).first()), {
    presses: true,
  } as const);

/** Touches what the selector finds first: what no keyboard reaches, and need not. */
export const tap =
  (selector: string): Step =>
  ({ chromium }) =>
    chromium.page.locator(selector).first().tap({ timeout: COMES_MS });

/** Touches places within what the selector finds, in pixels from its corner. */
export const at =
  (selector: string, ...places: readonly (readonly [x: number, y: number])[]): Step =>
  async ({ chromium }) => {
    // A map is drawn anew while it finds its size.
    await placeAtRest(chromium.page.locator(selector).first());
    for (const [x, y] of places) {
      await chromium.page.locator(selector).first().tap({ position: { x, y }, timeout: COMES_MS });
      await chromium.page.waitForTimeout(300);
    }
  };

/** Types on the number pad. */
export const digits =
  (typed: string): Step =>
  async ({ chromium }) => {
    for (const digit of typed)
      await chromium.page
        .locator(".pad-keys button")
        .filter({ hasText: new RegExp(`^${digit}$`) })
        .first()
        .tap({ timeout: COMES_MS });
  };

/** Writes on the line with this label. */
export const write =
  (label: string | RegExp, text: string): Step =>
  ({ chromium }) =>
    chromium.page.getByRole("textbox", { name: label }).first().fill(text, { timeout: COMES_MS });

/** Waits until the selector finds something. */
export const seen =
  (selector: string): Step =>
  ({ chromium }) =>
    chromium.page.locator(selector).first().waitFor({ timeout: COMES_MS });

/** Brings something that lies further down to the eyes: charts are drawn when they come near. */
export const down =
  (selector: string): Step =>
  ({ chromium }) =>
    chromium.page.locator(selector).first().scrollIntoViewIfNeeded({ timeout: COMES_MS });

/** Waits until these words stand there. */
export const reads =
  (words: string | RegExp): Step =>
  ({ chromium }) =>
    chromium.page.locator("#app").getByText(words).first().waitFor({ timeout: COMES_MS });

/** Chooses a file where one is asked for. */
export const choose =
  (name: string, make: (on: OnFarm) => Promise<Buffer>): Step =>
  async (on) => {
    const { page } = on.chromium;
    // The dialog of the browser gives the focus back to the key that opened it.
    const opener = page.locator(".photo-keys .key").last();
    if ((await opener.count()) > 0) await opener.focus();
    await page
      .locator("input[type=file]:not([capture])")
      .first()
      .setInputFiles({
        name,
        mimeType: name.endsWith(".jpg") ? "image/jpeg" : "application/zip",
        buffer: await make(on),
      });
  };

/** Stands in the middle of the sample's field. */
export const standing: Step = async ({ chromium, host }) => {
  await chromium.context.grantPermissions(["geolocation"], { origin: host.origin });
  await chromium.context.setGeolocation({ latitude: 52.0007, longitude: 0.5012, accuracy: 4 });
};

/** Nobody knows any more where the phone is. */
export const nowhere: Step = ({ chromium }) => chromium.context.clearPermissions();

/** A copy of everything, as it is saved. */
export const savedCopy = async ({ chromium: { page } }: OnFarm): Promise<Buffer> => {
  await page.getByRole("button", { name: "Make a copy" }).tap();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save", exact: true }).tap(),
  ]);
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts);
};
