import { afterEach, expect, it } from "vitest";
import type { ChromiumTab } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { quantile, sayFigures } from "./kit/figures.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToLine, seedLine, shownMarks } from "./kit/seeded-line.ts";
import { expectUnbroken, storedEntries } from "./kit/stored-line.ts";
import { type Pace, startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const perTab = 500;
/** Faster than anybody counts. */
const everyMs = 100;
/** As many touches may wait to be written; more would be refused, and said, on a machine that is busy. */
const atOnce = 20;
/** After this long the app itself says that another window is busy. */
const busyAfterMs = 3000;

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

async function twoTabsAtOneLine() {
  host = await serveWatched(watchedBuild());
  const started = await startPhone(temporaryFolder("two-tabs-profile"));
  phone = started;
  await started.open(host.url);
  const { line } = await seedLine(started, 2000);
  await started.reload();
  await goToLine(started, line);
  const second = await started.tab();
  await second.open(`${host.url}#/line/${line}`);
  await goToLine(second, line);
  await new Promise((resolve) => setTimeout(resolve, 3000));
  return { phone: started, second, line };
}

/** Touches blind, with a look between two bursts whether all of them are written. */
async function touch(tab: ChromiumTab, cover: Pace["cover"], touches: number): Promise<void> {
  const before = (await latenciesOf(tab)).length;
  for (let sent = 0; sent < touches; sent += atOnce) {
    const burst = Math.min(atOnce, touches - sent);
    await (await startThumb(tab, { cover, everyMs, touches: burst })).done;
    await until(
      "the burst is written",
      async () => (await latenciesOf(tab)).length === before + sent + burst,
      30_000,
    );
  }
}

/** Every touch of both tabs is one mark, both tabs show all of them, and neither was told to wait. */
async function expectAllMarks(at: { phone: Phone; second: ChromiumTab; line: string }): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 3000));
  for (const tab of [at.phone, at.second]) {
    expect(await tab.run(() => globalThis.watched?.bars ?? null)).toEqual([]);
    await until("the tab shows every mark", async () => (await shownMarks(tab)) === 2 * perTab);
  }
  const entries = await storedEntries(at.phone, at.line);
  expectUnbroken(entries);
  expect(entries.filter(({ cover }) => cover === "residue").length).toBe(perTab);
  expect(entries.filter(({ cover }) => cover === "bare").length).toBe(perTab);
  expect(new Set(entries.map(({ page }) => page)).size).toBe(2);
}

/** How long each written touch of a tab took to be committed, milliseconds. */
function latenciesOf(tab: ChromiumTab): Promise<number[]> {
  return tab.run(() => {
    const { touches = [], writes = [] } = globalThis.watched ?? {};
    return (
      writes
        // A write that was begun in vain, since the other tab came between, is begun again.
        .flatMap(({ stores, doneAtMs }) =>
          stores.includes("entries") && doneAtMs !== null ? [doneAtMs] : [],
        )
        .map((doneAtMs, index) => doneAtMs - (touches[index] ?? Number.NaN))
    );
  });
}

function sayLatencies(what: string, latenciesMs: readonly number[]): void {
  sayFigures(what, {
    touches: latenciesMs.length,
    "median ms": quantile(latenciesMs, 0.5).toFixed(1),
    "p95 ms": quantile(latenciesMs, 0.95).toFixed(1),
    "longest ms": quantile(latenciesMs, 1).toFixed(1),
  });
}

it("keeps every touch of two tabs that count one line at once", async () => {
  const at = await twoTabsAtOneLine();
  await Promise.all([touch(at.phone, "residue", perTab), touch(at.second, "bare", perTab)]);
  await expectAllMarks(at);
  for (const tab of [at.phone, at.second]) {
    sayLatencies("one of two tabs", await latenciesOf(tab));
  }
});

it("goes on while the other tab is suspended, which holds nothing between its touches", async () => {
  const at = await twoTabsAtOneLine();
  const suspended = await at.phone.rendererOf(at.second);
  expect(suspended).not.toBe(await at.phone.rendererOf(at.phone));
  const half = perTab / 2;
  await Promise.all([touch(at.phone, "residue", half), touch(at.second, "bare", half)]);
  // The browser has ended what the other tab had begun; between two touches nothing is begun.
  await new Promise((resolve) => setTimeout(resolve, 3000));
  const before = (await latenciesOf(at.phone)).length;

  process.kill(suspended, "SIGSTOP");
  let meanwhile = before;
  const woken = new Promise((resolve) => setTimeout(resolve, 5000)).then(async () => {
    meanwhile = (await latenciesOf(at.phone)).length;
    process.kill(suspended, "SIGCONT");
  });
  await Promise.all([touch(at.phone, "residue", half), woken]);
  await touch(at.second, "bare", half);

  await expectAllMarks(at);
  const meanwhileMs = (await latenciesOf(at.phone)).slice(before, meanwhile);
  expect(meanwhileMs.length).toBeGreaterThan(atOnce / 2);
  expect(quantile(meanwhileMs, 1)).toBeLessThan(busyAfterMs);
  sayLatencies("beside a suspended tab", meanwhileMs);
});
