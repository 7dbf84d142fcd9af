import { createHash } from "node:crypto";
import { appendFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { href } from "../../src/screens/parts/route.ts";
import { TRADE_WORDS } from "../../src/screens/parts/trade.ts";
import { WELCOME_WORDS } from "../../src/screens/welcome/words.ts";
import { type ChromiumDriver, startChromium } from "../browser/drivers/chromium.ts";
import { until, untilControlled } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { IDS } from "./entered.ts";
import { IDS_2 } from "./entered-2.ts";
import { IDS_3 } from "./entered-3.ts";
import { dumpDatabase } from "./raw-database.ts";
import type {} from "./scenario.ts";

/** The list of what must never change. */
export const SUMS = "SHA256SUMS";

/** The field of each scenario, whose results are worked out and kept. */
const FIELDS: Readonly<Record<number, (typeof IDS)["field"]>> = {
  1: IDS.field,
  2: IDS_2.field,
  3: IDS_3.field,
};

/**
 * Enters the scenario into the built app in a real browser and freezes what it left behind.
 *
 * @param number of the frozen pair of files
 * @throws when one of the files is there already, or stands in the list of sums
 */
export const freeze = async (number: number, folder: string): Promise<void> => {
  const names = { database: `db-${number}.json`, archive: `archive-${number}.mulchmark.zip` };
  const sums = join(folder, SUMS);
  const listed = existsSync(sums) ? readFileSync(sums, "utf8") : "";
  for (const name of Object.values(names))
    if (existsSync(join(folder, name)) || listed.includes(`  ${name}\n`))
      throw new Error(`${name} was frozen before and is never made again`);
  const { database, archive } = await leftBehind(number);
  for (const [name, bytes] of [
    [names.database, Buffer.from(database, "utf8")],
    [names.archive, Buffer.from(archive, "base64")],
  ] as const) {
    // Fails when the file is there, whatever was looked at before.
    writeFileSync(join(folder, name), bytes, { flag: "wx" });
    const digest = createHash("sha256").update(bytes).digest("hex");
    appendFileSync(sums, `${digest}  ${name}\n`);
    process.stdout.write(`${digest}  ${name}, ${bytes.length} bytes\n`);
  }
};

const bundledScenario = async (number: number): Promise<string> => {
  const outDir = temporaryFolder("frozen-scenario");
  await build({
    configFile: false,
    logLevel: "warn",
    build: {
      outDir,
      emptyOutDir: true,
      minify: false,
      lib: {
        entry: join(import.meta.dirname, number === 1 ? "scenario.ts" : `scenario-${number}.ts`),
        formats: ["es"],
        fileName: () => "scenario.js",
      },
    },
  });
  return readFileSync(resolve(outDir, "scenario.js"), "utf8");
};

/** Enters everything, and returns the text of the database and the archive as base64. */
const leftBehind = async (
  number: number,
): Promise<{ readonly database: string; readonly archive: string }> => {
  const host = await serveBuilt({
    directory: builtFolder,
    under: "/app/",
    beside: {
      "/scenario.html": "<!doctype html><link rel=icon href=data:,><title>scenario</title>",
      "/scenario.js": await bundledScenario(number),
    },
  });
  const chromium = await startChromium();
  const app = async (address: string): Promise<void> => {
    await chromium.open(`${host.origin}/scenario.html`);
    await chromium.open(host.url + address);
  };
  const beside = async <Answer>(step: () => Promise<Answer>): Promise<Answer> => {
    await chromium.open(`${host.origin}/scenario.html`);
    await chromium.page.addScriptTag({ url: "/scenario.js", type: "module" });
    return chromium.run(step);
  };
  try {
    await app("");
    await untilControlled(chromium);
    await chromium.page.getByText(WELCOME_WORDS.en(TRADE_WORDS["uk-ie"]).field).tap();
    await until("the first run is over", () => chromium.run(() => location.hash === "#/fields/new"));
    await beside(() => globalThis.scenario?.enter() ?? Promise.reject(new Error("no scenario")));
    if (number === 1) {
      await app(href({ at: "line", line: IDS.half }));
      await touchHalfALine(chromium);
    }
    // Its results are worked out and kept.
    await app(href({ at: "field", field: FIELDS[number] ?? IDS.field }));
    await until("the results are kept", () =>
      chromium.run(
        () =>
          new Promise<boolean>((resolve, reject) => {
            const request = indexedDB.open("mulchmark");
            request.onerror = () => reject(request.error);
            request.onsuccess = () => {
              const count = request.result.transaction("summaries").objectStore("summaries").count();
              count.onerror = () => reject(count.error);
              count.onsuccess = () => {
                request.result.close();
                resolve(count.result > 0);
              };
            };
          }),
      ),
    );
    const archive = await beside(
      () => globalThis.scenario?.archive() ?? Promise.reject(new Error("no scenario")),
    );
    const database = await chromium.run(dumpDatabase, "mulchmark");
    return { database, archive };
  } finally {
    await host.close();
    await chromium.close();
  }
};

/** Residue three times, bare, undo, green: each is waited for, past the pause for wet glass. */
const touchHalfALine = async ({ page, run }: ChromiumDriver): Promise<void> => {
  const touch = async (key: string, marks: number): Promise<void> => {
    await page.tap(key);
    await until(`${marks} marks are shown`, () =>
      run(
        (count) => document.querySelector(".figure b")?.textContent?.startsWith(`${count} of`) === true,
        marks,
      ),
    );
    await page.waitForTimeout(400);
  };
  await page.waitForSelector("[data-answer=residue]");
  await touch("[data-answer=residue]", 1);
  await touch("[data-answer=residue]", 2);
  await touch("[data-answer=residue]", 3);
  await touch("[data-answer=bare]", 4);
  await touch(".tools button:first-child", 3);
  await touch("[data-answer=green]", 4);
};
