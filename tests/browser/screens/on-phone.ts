/** The built app on a phone, with the records that a test lays into it. */
import { putRows, type Rows } from "../../bench/seed.ts";
import { type ChromiumDriver, startChromium } from "../drivers/chromium.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";

export interface OnPhone {
  readonly chromium: ChromiumDriver;
  /** Touches the key, link or row with these words. */
  readonly touch: (words: string | RegExp) => Promise<void>;
  /** Writes on the line with this label. */
  readonly write: (label: string, text: string) => Promise<void>;
  /** Waits until these words stand on the screen. */
  readonly reads: (words: string | RegExp) => Promise<void>;
  /** Goes to an address as if it were typed. */
  readonly goTo: (address: string) => Promise<void>;
  /** Ends it all; throws when anything went wrong on the page. */
  readonly close: () => Promise<void>;
}

/** Starts the app with these records, its first questions answered, and what else the person chose. */
export const onPhone = async (
  rows: Rows = { records: [], entries: [] },
  settings: Parameters<typeof putRows>[2] = {},
): Promise<OnPhone> => {
  const host: BuiltServer = await serveBuilt({ directory: builtFolder, under: "/" });
  const chromium = await startChromium();
  const { page } = chromium;
  await chromium.open(host.url);
  await putRows(chromium, rows, settings);
  await chromium.open(`${host.url}#/measure`);
  await chromium.reload();
  return {
    chromium,
    touch: (words) => page.locator("a, button, label").filter({ hasText: words }).first().tap(),
    write: (label, text) => page.getByRole("textbox", { name: label }).fill(text),
    reads: (words) => page.locator("#app").getByText(words).first().waitFor(),
    goTo: async (address) => {
      await chromium.run((hash) => {
        location.hash = hash;
      }, address);
    },
    close: async () => {
      await host.close();
      await chromium.close();
    },
  };
};
