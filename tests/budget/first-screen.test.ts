import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../src/screens/parts/route.ts";
import { beginSample, fieldOf, lineOf, putRows } from "../bench/seed.ts";
import { type ChromiumDriver, startChromium } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { builtFiles, builtText, gzipBytes, namedByPage, withImports } from "./built.ts";

/** JavaScript for the first test screen, in bytes as it travels. Own budget, no source. */
const mostScriptBytes = 90_000;
/** Style for the same screen. Own budget, no source. */
const mostStyleBytes = 15_000;
/** Everything that is kept on the device, bytes as they travel. Own budget, no source. */
const mostKeptBytes = 700_000;

const total = (paths: Iterable<string>): number => [...paths].reduce((sum, path) => sum + gzipBytes(path), 0);
const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

let chromium: ChromiumDriver;
let host: BuiltServer;
/** Parts of the app that the page asks for until the counting screen answers. */
let asked: string[];

beforeAll(async () => {
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  // The worker that keeps the whole app for later is held back: it asks for everything.
  host.withhold(/^\/sw\.js$/);
  chromium = await startChromium();
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: true, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 100, spacingM: 0.15 });
  const line = add("observation", lineOf({ visit, field, strip, rope }));
  await chromium.open(host.url);
  await putRows(chromium, rows());
  await chromium.open("about:blank");
  const before = new Map(host.asked);
  await chromium.context.clearCookies();
  const session = await chromium.context.newCDPSession(chromium.page);
  await session.send("Network.clearBrowserCache");
  await chromium.open(host.url + href({ at: "line", line }));
  await chromium.page.waitForSelector("[data-answer=residue]");
  await chromium.page.tap("[data-answer=residue]");
  await until("the key has answered", () =>
    chromium.run(() => document.querySelector(".figure b")?.textContent?.startsWith("1 of") === true),
  );
  await chromium.page.locator(".strip-so-far").getByText("First line of this strip.").waitFor();
  asked = [...host.asked]
    .filter(
      ([path, times]) => /\.(?:js|css)$/.test(path) && path !== "/sw.js" && times > (before.get(path) ?? 0),
    )
    .map(([path]) => path.slice(1));
}, 120_000);

afterAll(async () => {
  await host.close();
  // The worker that was held back is the one thing that may be missed.
  const others = chromium
    .takeProblems()
    .filter(
      ({ text }) => !text.includes("A bad HTTP response code (404) was received when fetching the script"),
    );
  await chromium.close();
  expect(others).toEqual([]);
});

it("needs little JavaScript for the first test screen", () => {
  const scripts = asked.filter((path) => path.endsWith(".js"));
  const bytes = total(scripts);
  console.log(`First test screen: ${kB(bytes)} of JavaScript in ${scripts.length} files, gzip -9`);
  expect(scripts.length).toBeGreaterThan(0);
  expect(bytes).toBeLessThanOrEqual(mostScriptBytes);
});

it("asks for its own scripts, and late only for the strip beside the running count", () => {
  const closure = withImports(namedByPage().filter((path) => path.endsWith(".js")));
  const late = asked.filter((path) => path.endsWith(".js") && !closure.has(path));
  // The keys answer without it; its bytes are counted above all the same.
  const strip = withImports(late.filter((path) => /part-strip-cover-/.test(path)));
  expect(late.filter((path) => !strip.has(path))).toEqual([]);
  expect([...closure].filter((path) => !asked.includes(path))).toEqual([]);
});

it("needs little style for it", () => {
  const styles = asked.filter((path) => path.endsWith(".css"));
  console.log(`First test screen: ${kB(total(styles))} of CSS`);
  expect(styles.length).toBeGreaterThan(0);
  expect(total(styles)).toBeLessThanOrEqual(mostStyleBytes);
});

it("keeps the whole app on the device, and no more than that", () => {
  const kept = [...builtText("sw.js").matchAll(/"url":"([^"]+)"|\burl:\s*["'`]([^"'`]+)["'`]/g)]
    .map(([, quoted, bare]) => quoted ?? bare ?? "")
    .sort();
  console.log(`Whole app: ${kB(total(kept))}, gzip -9, in ${kept.length} files`);
  expect(kept).toEqual(builtFiles().filter((path) => path !== "sw.js"));
  expect(total(kept)).toBeLessThanOrEqual(mostKeptBytes);
});
