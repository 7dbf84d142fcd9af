/** The built app on a phone, with the records that a test lays into it. */
import { putRows, type Rows } from "../../bench/seed.ts";
import { type ChromiumDriver, type ChromiumTab, startChromium } from "../drivers/chromium.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";

/** What a person does on one tab. */
export interface Hands {
  /** Touches the key, link or row with these words. */
  readonly touch: (words: string | RegExp) => Promise<void>;
  /** Writes on the line with this label. */
  readonly write: (label: string, text: string) => Promise<void>;
  /** Waits until these words stand on the screen. */
  readonly reads: (words: string | RegExp) => Promise<void>;
  /** Goes to an address as if it were typed. */
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
    run((hash) => {
      location.hash = hash;
    }, address),
});

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
      await host.close();
      await chromium.close();
    },
  };
};
