/** Twelve rings with 300 readings on the board of the day: what one reading more costs the page. */
import type { Locator } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { type OnPhone, onPhone } from "../browser/screens/on-phone.ts";
import { percentile, state } from "./figures.ts";
import { boardSample } from "./rings-board.ts";
import { slowed } from "./slowed.ts";
import { longestTaskMs, traceIdle } from "./wake-ups.ts";

/** The page is left alone so long before and behind a touch. */
const beforeMs = 400;
const behindMs = 1000;
const frameMs = 16.7;
const sample = boardSample(Date.now(), 12, 25);

let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await phone.goTo(sample.board);
  await phone.chromium.page.locator(".board-row").nth(11).waitFor();
});
afterAll(() => phone.close());

const row = (letter: string) => phone.chromium.page.locator(`[data-ring="${letter}"]`);

/** Touches the middle of a key blind: a driver that looks for its key meanwhile adds tasks of its own. */
const touch = async (key: Locator): Promise<number> => {
  const { page } = phone.chromium;
  // In the middle: at the edge of the screen the keys that stay under the thumb lie over it.
  await key.evaluate((element) => element.scrollIntoView({ block: "center" }));
  const box = await key.boundingBox();
  if (box === null) throw new Error("The key has no place");
  return longestTaskMs(phone.chromium, async () => {
    await page.waitForTimeout(beforeMs);
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    await page.waitForTimeout(behindMs);
  });
};

/** Looks at a ring, then writes its number down, on the board. */
const readRing = async (letter: string) => {
  const { page } = phone.chromium;
  let look = 0;
  // The rows change places by the clock, and a touch right after that is not taken.
  await until("the ring is read", async () => {
    look = await touch(row(letter).locator("button"));
    return (await row(letter).getByText("1 number missing").count()) > 0;
  });
  const open = await touch(page.getByRole("button", { name: "Write down 1 number" }));
  for (const digit of "91") await page.locator(".pad-keys button").filter({ hasText: digit }).tap();
  const number = await touch(page.getByRole("button", { name: "Done", exact: true }));
  await row(letter).getByText("missing").waitFor({ state: "detached" });
  expect(await page.locator(".pad-keys").count()).toBe(0);
  return { look, open, number };
};

it.each([1, 4])("shows one reading more in short tasks, slowed %d times", async (slower) => {
  await slowed(phone.chromium.page, slower);
  const took = { look: [] as number[], open: [] as number[], number: [] as number[] };
  for (const letter of sample.letters) {
    const now = await readRing(letter);
    for (const name of ["look", "open", "number"] as const) took[name].push(now[name]);
  }
  const bound = slower === 1 ? frameMs : 50;
  const at = `12 rings, 300 readings, ${slower}x`;
  const names = {
    look: "read now on the board",
    open: "the number is asked for",
    number: "the number is committed and the board shows it",
  };
  for (const name of ["look", "open", "number"] as const) {
    state({
      name: `${at}: ${names[name]}, longest task, median`,
      value: percentile(took[name], 0.5),
      unit: "ms",
    });
    state({ name: `${at}: ${names[name]}, longest task`, value: Math.max(...took[name]), unit: "ms", bound });
  }
  expect(Math.max(...took.look)).toBeLessThanOrEqual(bound);
  expect(Math.max(...took.open)).toBeLessThanOrEqual(bound);
  expect(Math.max(...took.number)).toBeLessThanOrEqual(bound);
});

it("wakes the phone less than once a second while five rings run on the board, and briefly", async () => {
  const five = boardSample(Date.now(), 5, 8);
  const other = await onPhone(five.rows);
  const { chromium } = other;
  try {
    await other.goTo(five.board);
    await chromium.page.locator(".board-row").nth(4).waitFor();
    await slowed(chromium.page);
    // Until the browser has cleared up behind the start of the page; a touch keeps the screen bright.
    await chromium.page.waitForTimeout(20_000);
    await chromium.page.touchscreen.tap(195, 12);
    await chromium.page.waitForTimeout(3000);
    const idle = await traceIdle(chromium, 30_000);
    expect(await chromium.page.locator(".dimmed").count()).toBe(0);
    state({
      name: "board with five rings: wake-ups a second, 4x",
      value: idle.wakeUpsPerS,
      unit: "/s",
    });
    state({
      name: "board with five rings: wake-ups a second with the browser's own, 4x",
      value: idle.withHousekeepingPerS,
      unit: "/s",
      bound: 1.2,
    });
    state({
      name: "board with five rings: timers a second, 4x",
      value: idle.timersPerS,
      unit: "/s",
      bound: 1.2,
    });
    state({
      name: "board with five rings: longest task, 4x",
      value: idle.longestTaskMs,
      unit: "ms",
      bound: 50,
    });
    expect(idle.withHousekeepingPerS).toBeLessThanOrEqual(1.2);
    expect(idle.timersPerS).toBeLessThanOrEqual(1.2);
    expect(idle.longestTaskMs).toBeLessThanOrEqual(50);
  } finally {
    await other.close();
  }
});
