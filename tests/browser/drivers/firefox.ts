import { launch, type Page } from "puppeteer-core";
import { findFirefox } from "../../run/find-browser.mjs";
import type { Driver, Plain } from "./driver.ts";
import { removeFolder, temporaryFolder } from "./programs.ts";

/** Firefox with a profile on disk. */
export interface FirefoxDriver extends Driver {
  readonly page: Page;
}

/** Starts Firefox without a window. */
export async function startFirefox(): Promise<FirefoxDriver> {
  const folder = temporaryFolder("firefox-profile");
  const browser = await launch({
    browser: "firefox",
    executablePath: await findFirefox(),
    headless: true,
    userDataDir: folder,
  });
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  return {
    page,
    open: async (url) => {
      await page.goto(url);
    },
    run: async <Args extends readonly Plain[], Answer>(
      step: (...args: Args) => Answer | Promise<Answer>,
      ...args: Args
    ) => (await page.evaluate(`(${step})(...${JSON.stringify(args)})`)) as Answer,
    reload: async () => {
      await page.reload();
    },
    close: async () => {
      await browser.close();
      removeFolder(folder);
    },
  };
}
