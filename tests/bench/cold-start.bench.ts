/** A new browser process without a network, until a counting key has answered. */
import { expect, it } from "vitest";
import { href } from "../../src/screens/parts/route.ts";
import { startChromium } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { removeFolder, temporaryFolder } from "../browser/drivers/programs.ts";
import { builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { percentile, state } from "./figures.ts";
import { beginSample, fieldOf, lineOf, marksRead, putRows } from "./seed.ts";
import { slowed } from "./slowed.ts";

const starts = 10;

declare global {
  /** Wall time at which the key was there, and of the first drawing in which the touched mark could be seen. */
  var keyAtMs: number | undefined;
  var answeredAtMs: number | undefined;
}

/** Touches the key as soon as it is there, and notes when the mark was drawn. Runs before the app. */
const touchWhenThere = (): void => {
  // The document of this moment may still be the empty one of the browser's start.
  const shown = (): boolean => document.querySelector(".figure b")?.textContent?.startsWith("5 of") === true;
  let touched = false;
  const look = (): void => {
    const key = document.querySelector<HTMLElement>("[data-answer=residue]");
    if (key !== null && !touched) {
      touched = true;
      globalThis.keyAtMs = Date.now();
      key.click();
    }
    if (shown())
      setTimeout(() => {
        globalThis.answeredAtMs = Date.now();
      });
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
};

it("answers soon after a cold start without a network", async () => {
  const profile = temporaryFolder("cold-start");
  const host = await serveBuilt({ directory: builtFolder, under: "/" });
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: true, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 100, spacingM: 0.15 });
  // A line for each start: four marks stand, the touch makes the fifth.
  const addresses = Array.from({ length: starts + 1 }, () =>
    href({
      at: "line",
      line: add("observation", lineOf({ visit, field, strip, rope }), { entries: marksRead("rrbr") }),
    }),
  );
  const first = await startChromium(profile);
  await first.open(host.url);
  await until(
    "the service worker controls the page",
    () => first.run(() => navigator.serviceWorker.controller?.state === "activated"),
    60_000,
  );
  await putRows(first, rows());
  await first.reload();
  await first.close();
  // From here on there is nobody to ask.
  await host.close();

  const toPage: number[] = [];
  const toScripts: number[] = [];
  const toKey: number[] = [];
  const fromProcess: number[] = [];
  for (const [index, address] of addresses.entries()) {
    const launchedMs = Date.now();
    const phone = await startChromium(profile);
    await slowed(phone.page);
    await phone.context.addInitScript(touchWhenThere);
    await phone.page.goto(host.url + address, { waitUntil: "commit" });
    await until("the key has answered", () => phone.run(() => globalThis.answeredAtMs !== undefined), 60_000);
    const { answeredMs, askedMs, keyMs, scriptsMs } = await phone.run(() => ({
      answeredMs: globalThis.answeredAtMs ?? Number.NaN,
      keyMs: globalThis.keyAtMs ?? Number.NaN,
      askedMs: performance.timeOrigin,
      scriptsMs: Math.max(
        ...performance
          .getEntriesByType("resource")
          .filter(({ name }) => /\/(?:index|part)-[^/]*\.js$/.test(name))
          .map((entry) => (entry instanceof PerformanceResourceTiming ? entry.responseEnd : 0)),
      ),
    }));
    // The first start after the seeding still settles the profile.
    if (index > 0) {
      toPage.push(answeredMs - askedMs);
      toScripts.push(scriptsMs);
      toKey.push(keyMs - askedMs);
      fromProcess.push(answeredMs - launchedMs);
    }
    phone.takeProblems();
    await phone.close();
  }
  removeFolder(profile);
  state({
    name: "cold start offline, asked to answered, median of 10, 4x",
    value: percentile(toPage, 0.5),
    unit: "ms",
    bound: 1500,
  });
  state({
    name: "cold start offline, all scripts there, median, 4x",
    value: percentile(toScripts, 0.5),
    unit: "ms",
  });
  state({ name: "cold start offline, key there, median, 4x", value: percentile(toKey, 0.5), unit: "ms" });
  state({ name: "cold start offline, slowest of 10, 4x", value: Math.max(...toPage), unit: "ms" });
  state({
    name: "the same with the start of the browser's process, median, driver's part included",
    value: percentile(fromProcess, 0.5),
    unit: "ms",
  });
  expect(percentile(toPage, 0.5)).toBeLessThanOrEqual(1500);
});
