import { afterEach, beforeAll, expect, it } from "vitest";
import type { ChromiumTab } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { type BuiltServer, serveBuilt } from "../browser/drivers/serve-built.ts";
import type { AlarmPage } from "./kit/alarm-page/page.tsx";
import { buildAlarmPage } from "./kit/alarm-page.ts";
import { heardAt, setWall, watchAlarms } from "./kit/alarm-watch.ts";
import { sayFigures } from "./kit/figures.ts";
import { type Phone, startPhone } from "./kit/phone.ts";

declare global {
  var alarmPage: AlarmPage | undefined;
}

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
/** While the page runs, and after it was stopped. */
const mostLateMs = 1000;
/** Another tab takes over from one that is stopped. */
const takenOverWithinMs = 2000;

let folder: string;
let host: BuiltServer | undefined;
let phone: Phone | undefined;

beforeAll(() => {
  folder = buildAlarmPage();
});

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function ready(tab: ChromiumTab): Promise<void> {
  await until("the page knows its rings", () =>
    tab.run(() => (globalThis.alarmPage?.running() ?? null) !== null),
  );
  // Browsers keep a page silent until it is touched.
  await tab.page.locator("button").tap();
}

async function startWatched(profile = temporaryFolder("alarm-profile")): Promise<Phone> {
  host ??= await serveBuilt({ directory: folder, under: "/" });
  const started = await startPhone(profile);
  phone = started;
  await watchAlarms(started.context);
  await started.open(host.url);
  await ready(started);
  return started;
}

async function openTab(on: Phone): Promise<ChromiumTab> {
  const tab = await on.tab();
  await tab.open(host?.url ?? "");
  await ready(tab);
  return tab;
}

/** Starts a ring that is to be read after these seconds; returns when that is, in milliseconds since 1970. */
async function dueIn(tab: ChromiumTab, ...seconds: readonly number[]): Promise<number[]> {
  const begunMs = await tab.run(async (inS) => {
    const ms = performance.timeOrigin + performance.now();
    await globalThis.alarmPage?.start("A", inS);
    return ms;
  }, seconds);
  return seconds.map((one) => begunMs + one * 1000);
}

function lateness(heard: readonly number[], due: readonly number[]): number[] {
  expect(heard).toHaveLength(due.length);
  return heard.map((ms, index) => ms - (due[index] ?? Number.NaN));
}

it("sounds within a second while the page runs", async () => {
  const tab = await startWatched();
  const due = await dueIn(tab, 4, 8, 12);
  await wait(15_000);
  const late = lateness(await heardAt(tab), due);
  expect(Math.max(...late)).toBeLessThanOrEqual(mostLateMs);
  // The start is written down a moment after it is touched.
  expect(Math.min(...late)).toBeGreaterThanOrEqual(-50);
  expect(await tab.run(() => globalThis.badges)).toEqual([0, 1]);
  sayFigures("alarm of a running page", { "late ms": late.map((ms) => ms.toFixed(0)).join(" ") });
});

it("sounds within a second after a renderer was stopped for 6 s across the time, and says how late", async () => {
  const tab = await startWatched();
  const renderer = await tab.rendererOf(tab);
  const [dueMs = Number.NaN] = await dueIn(tab, 4);
  await wait(2000);
  process.kill(renderer, "SIGSTOP");
  await wait(6000);
  const backMs = Date.now();
  process.kill(renderer, "SIGCONT");
  await wait(3000);
  const heard = await heardAt(tab);
  expect(heard).toHaveLength(1);
  const afterMs = (heard[0] ?? Number.NaN) - backMs;
  expect(afterMs).toBeLessThanOrEqual(mostLateMs);
  expect(heard[0]).toBeGreaterThan(dueMs + 3000);
  sayFigures("alarm of a page that was stopped", { "after it went on ms": afterMs.toFixed(0) });
});

it.each([-HOUR_MS, HOUR_MS])("keeps its time when the wall clock is set by %d ms", async (byMs) => {
  const tab = await startWatched();
  const due = await dueIn(tab, 5, 10);
  await wait(2000);
  await setWall(tab, byMs);
  await wait(11_000);
  const late = lateness(await heardAt(tab), due);
  expect(Math.max(...late)).toBeLessThanOrEqual(mostLateMs);
  expect(Math.min(...late)).toBeGreaterThanOrEqual(-50);
});

it("sounds once among three tabs", async () => {
  const first = await startWatched();
  const second = await openTab(first);
  const third = await openTab(first);
  const due = await dueIn(second, 5, 10);
  await wait(14_000);
  const heard = (await Promise.all([first, second, third].map(heardAt))).flat().sort((a, b) => a - b);
  expect(Math.max(...lateness(heard, due))).toBeLessThanOrEqual(mostLateMs);
});

it("sounds in another tab when one is stopped, and not again when that one goes on", async () => {
  const first = await startWatched();
  const second = await openTab(first);
  const due = await dueIn(first, 5, 12);
  await wait(1000);
  const renderer = await first.rendererOf(first);
  expect(renderer).not.toBe(await first.rendererOf(second));
  process.kill(renderer, "SIGSTOP");
  await wait(8000);
  const meanwhile = await heardAt(second);
  process.kill(renderer, "SIGCONT");
  const late = lateness(meanwhile, due.slice(0, 1));
  expect(late[0]).toBeLessThanOrEqual(takenOverWithinMs);
  await wait(6000);
  const all = (await Promise.all([first, second].map(heardAt))).flat().sort((a, b) => a - b);
  expect(Math.max(...lateness(all, due))).toBeLessThanOrEqual(takenOverWithinMs);
  sayFigures("alarm beside a stopped tab", { "late ms": (late[0] ?? Number.NaN).toFixed(0) });
});

it("sounds after the phone died, also what was due meanwhile, and nothing twice", async () => {
  const profile = temporaryFolder("alarm-profile");
  const before = await startWatched(profile);
  const due = await dueIn(before, 3, 8, 20);
  await wait(5000);
  expect(await heardAt(before)).toHaveLength(1);
  await before.kill();
  await wait(5000);
  const after = await startWatched(profile);
  await wait(Math.max(0, (due[2] ?? 0) - Date.now() + 2500));
  const heard = await heardAt(after);
  // The one that was missed, late; and the one to come, in time.
  expect(heard).toHaveLength(2);
  expect((heard[1] ?? Number.NaN) - (due[2] ?? 0)).toBeLessThanOrEqual(mostLateMs);
  await after.reload();
  await ready(after);
  await wait(2000);
  expect(await heardAt(after)).toEqual([]);
});
