/** The built app over a frozen database: what the person sees, and what is left when the app is too old. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, expect, it } from "vitest";
import { href } from "../../src/screens/parts/route.ts";
import { type ChromiumDriver, startChromium } from "../browser/drivers/chromium.ts";
import { until, untilControlled } from "../browser/drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { IDS } from "./entered.ts";
import { dumpDatabase, loadDatabase } from "./raw-database.ts";

const limitMs = 120_000;
let chromium: ChromiumDriver | undefined;
let host: BuiltServer | undefined;

afterEach(async () => {
  // The browser first: what a page still loads would find no host.
  await chromium?.close();
  chromium = undefined;
  await host?.close();
  host = undefined;
});

/** Lays the database out before the app has ever been opened. */
const laidOut = async (change: (frozen: { version: number }) => void = () => undefined) => {
  const frozen = JSON.parse(readFileSync(join(import.meta.dirname, "db-1.json"), "utf8"));
  change(frozen);
  host = await serveBuilt({
    directory: builtFolder,
    under: "/app/",
    beside: { "/empty.html": "<!doctype html><link rel=icon href=data:,><title>empty</title>" },
  });
  chromium = await startChromium();
  const empty = `${host.origin}/empty.html`;
  await chromium.open(empty);
  await chromium.run(loadDatabase, "mulchmark", JSON.stringify(frozen));
  return { page: chromium, app: host.url, empty };
};

const shows = (page: ChromiumDriver, text: string): Promise<void> =>
  until(
    `the page says "${text}"`,
    () => page.run((wanted) => (document.body.textContent ?? "").replace(/\s+/g, " ").includes(wanted), text),
    60_000,
  );

const goTo = (page: ChromiumDriver, address: string): Promise<void> =>
  page.run((to) => {
    location.hash = to;
  }, address);

it(
  "goes on with the half-finished line, and shows the finished one as it was counted",
  async () => {
    const { page, app } = await laidOut();
    await page.open(app + href({ at: "line", line: IDS.half }));
    // Three of residue and one green were entered; the next mark is the fifth.
    await shows(page, "at mark 5?");
    await shows(page, "4 of 20 marks");
    await page.page.tap("[data-answer=residue]");
    await shows(page, "5 of 20 marks");
    await goTo(page, href({ at: "line", line: IDS.finished }));
    // 17 marks were looked at, two of them left out.
    await shows(page, "The line ended at mark 17.");
    await shows(page, "15 of 20 marks, 2 not read");
    await goTo(page, href({ at: "field", field: IDS.field }));
    await shows(page, "Long Bottom");
    await shows(page, "straw left");
    await untilControlled(page);
  },
  limitMs,
);

it(
  "refuses a database of a later structure in a sentence that names both versions, and leaves it alone",
  async () => {
    let needs = 0;
    const { page, app, empty } = await laidOut((frozen) => {
      // Far enough ahead to stay the future.
      frozen.version += 1000;
      needs = frozen.version;
    });
    const before = await page.run(dumpDatabase, "mulchmark");
    await page.open(app);
    await shows(page, `they need version ${needs}. Nothing was changed.`);
    await page.open(empty);
    expect(await page.run(dumpDatabase, "mulchmark")).toBe(before);
  },
  limitMs,
);
