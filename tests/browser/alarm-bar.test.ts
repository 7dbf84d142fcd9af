/** The bar with the next reading, the dimmed screen and the sound, on a page that has no other screen. */
import { afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import type { AlarmPage } from "../faults/kit/alarm-page/page.tsx";
import { buildAlarmPage } from "../faults/kit/alarm-page.ts";
import { heardAt, watchAlarms } from "../faults/kit/alarm-watch.ts";
import { type ChromiumDriver, startChromium } from "./drivers/chromium.ts";
import { until } from "./drivers/driver.ts";
import { type BuiltServer, serveBuilt } from "./drivers/serve-built.ts";

declare global {
  var alarmPage: AlarmPage | undefined;
}

let folder: string;
let host: BuiltServer;
let chromium: ChromiumDriver;

beforeAll(() => {
  folder = buildAlarmPage();
});
beforeEach(async () => {
  host = await serveBuilt({ directory: folder, under: "/" });
  chromium = await startChromium();
  await watchAlarms(chromium.context);
});
afterEach(async () => {
  await host.close();
  await chromium.close();
});

const ready = () =>
  until("the page knows its rings", () =>
    chromium.run(() => (globalThis.alarmPage?.running() ?? null) !== null),
  );
const open = async (hash = ""): Promise<void> => {
  await chromium.open(host.url + hash);
  await ready();
};
const start = (letter: string, ...inS: readonly number[]): Promise<string> =>
  chromium.run(async (name, plan) => (await globalThis.alarmPage?.start(name, plan)) ?? "", letter, inS);
/** What the clock of the page says so many seconds from now. */
const clockIn = (seconds: number): Promise<string> =>
  chromium.run(
    (inS) =>
      new Date(Date.now() + inS * 1000).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" }),
    seconds,
  );
const bar = () => chromium.page.locator("a.next-reading");
const barSays = (text: string) =>
  until(`the bar says ${text}`, async () => (await bar().textContent())?.includes(text) === true);
const top = () =>
  chromium.run(() => document.querySelector("main")?.getBoundingClientRect().top ?? Number.NaN);

it("shows the next reading of any ring by its letter, its clock time and the minutes", async () => {
  await open();
  expect(await bar().count()).toBe(0);
  const before = await clockIn(290);
  const ring = await start("B", 290, 900);
  const after = await clockIn(290);
  await start("C", 600);
  await barSays("in 5 min");
  const says = async () => /^Ring B(\d\d:\d\d)in 5 min$/.exec((await bar().textContent()) ?? "")?.[1];
  // A minute may end while it is started.
  await expect.poll(says).toBeOneOf([before, after]);
  expect(await bar().getAttribute("href")).toMatch(/^#\/visit\/visit-[0-9a-f]{32}\/rings$/);
  await chromium.run((id) => globalThis.alarmPage?.stop(id), ring);
  await barSays("Ring C");
});

it("goes on to what is read next once a reading is taken", async () => {
  await open();
  const ring = await start("B", 55, 900);
  await barSays("in less than a minute");
  await chromium.run((id) => globalThis.alarmPage?.read(id), ring);
  await barSays("in 15 min");
});

it("is said aloud once when it is due, and not at every minute or second", async () => {
  await chromium.page.clock.install();
  await open();
  // Long enough that it is not due while a busy machine draws the bar and looks at it.
  await start("B", 50, 600);
  await barSays("in less than a minute");
  const changes = await chromium.run(async () => {
    const place = document.querySelector("a.next-reading");
    if (place === null) return -1;
    let seen = 0;
    const watch = new MutationObserver((list) => {
      seen += list.length;
    });
    watch.observe(place, { subtree: true, childList: true, characterData: true, attributes: true });
    await new Promise((resolve) => setTimeout(resolve, 2500));
    watch.disconnect();
    return seen;
  });
  expect(changes).toBe(0);
  expect(
    await bar().evaluate((place) => place.closest("[aria-live], [role=status], [role=alert]")),
  ).toBeNull();
  await chromium.page.clock.runFor(50_000);
  await barSays("now");
  await until("it was said", async () =>
    /^\d\d:\d\d: ring B is to be read now\.$/.test(
      await chromium.run(() => globalThis.alarmPage?.said() ?? ""),
    ),
  );
});

it("never moves the screen below while it changes, and keeps its place free at the next start", async () => {
  await open();
  // Long enough for a busy machine, and by the browser's own clock: every frame of the next start is looked at.
  await start("B", 20, 600);
  await barSays("in less");
  expect(await top()).toBe(48);
  await barSays("now");
  expect(await top()).toBe(48);
  const tops = new Set<number>();
  await chromium.context.addInitScript(() => {
    const look = () => {
      const main = document.querySelector("main");
      if (main !== null) globalThis.tops.push(main.getBoundingClientRect().top);
      requestAnimationFrame(look);
    };
    globalThis.tops = [];
    look();
  });
  await chromium.reload();
  await barSays("now");
  for (const one of await chromium.run(() => globalThis.tops)) tops.add(one);
  expect([...tops]).toEqual([48]);
});

it("leaves the board to itself", async () => {
  await open("#board");
  await start("B", 2, 600);
  await until("it was said", async () => (await chromium.run(() => globalThis.alarmPage?.said())) !== "");
  expect(await bar().count()).toBe(0);
  expect(await top()).toBe(0);
});

it("says that it is silent until somebody touches the page, and sounds after that", async () => {
  await open();
  await start("B", 30, 600);
  await barSays("in less");
  // The driver's own questions count as touches; these do not.
  const session = await chromium.context.newCDPSession(chromium.page);
  const says = async (): Promise<string> => {
    const { result } = await session.send("Runtime.evaluate", {
      expression: "document.querySelector('a.next-reading')?.textContent ?? ''",
      userGesture: false,
    });
    return String(result.value);
  };
  await session.send("Page.reload");
  await until("it says so", async () => (await says()).includes("silent until touched"));
  await chromium.page.touchscreen.tap(200, 400);
  await until("it is no longer silent", async () => !(await says()).includes("silent"));
  await until("it is heard", async () => (await heardAt(chromium)).length === 1);
  await until("the badge shows one", () => chromium.run(() => globalThis.badges?.at(-1) === 1));
});

it("dims after a minute, and the touch that lights the screen hits no key", async () => {
  await chromium.page.clock.install();
  await open();
  await start("B", 400);
  await barSays("in 7 min");
  const key = await chromium.page.locator("button").boundingBox();
  if (key === null) throw new Error("the key has no place");
  const tapKey = () => chromium.page.touchscreen.tap(key.x + key.width / 2, key.y + key.height / 2);
  const dimmed = chromium.page.locator(".dimmed");
  const pressed = () => chromium.run(() => globalThis.alarmPage?.pressed());
  const nowMs = () => chromium.run(() => Date.now());
  const beforeMs = await nowMs();
  await tapKey();
  await expect.poll(pressed).toBe(1);
  // The clock of the page goes on by itself too: a slow machine takes some seconds to come here.
  await chromium.page.clock.runFor(Math.max(0, 54_000 - ((await nowMs()) - beforeMs)));
  expect(await dimmed.count()).toBe(0);
  await chromium.page.clock.runFor(8000);
  await dimmed.waitFor();
  await expect.poll(() => dimmed.textContent()).toMatch(/^Ring B\d\d:\d\din 6 min/);
  const figures = await dimmed.locator(".dimmed-clock").evaluate((one) => one.getBoundingClientRect());
  expect(figures.width).toBeLessThanOrEqual(390);
  expect(figures.height).toBeGreaterThanOrEqual(100);
  await tapKey();
  await until("the screen is lit", async () => (await dimmed.count()) === 0);
  expect(await pressed()).toBe(1);
  await tapKey();
  await expect.poll(pressed).toBe(2);
  // A finger that slides off lights it too.
  await chromium.page.clock.runFor(61_000);
  await dimmed.waitFor();
  await dimmed.dispatchEvent("pointerdown");
  await dimmed.dispatchEvent("pointercancel");
  await chromium.page.clock.runFor(500);
  await until("the screen is lit", async () => (await dimmed.count()) === 0);
  // And a reading that is due.
  await chromium.page.clock.runFor(61_000);
  await dimmed.waitFor();
  await chromium.page.clock.runFor(240_000);
  await until("the bar says now", async () => /now|late/.test((await bar().textContent()) ?? ""));
});

declare global {
  var tops: number[];
}
