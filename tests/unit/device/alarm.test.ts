import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type DueReading, ONE_RINGING_MS, type Rung, startAlarm } from "../../../src/device/alarm.ts";
import { type AlarmWorld, newWorld } from "./alarm-world.ts";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

let stop = new AbortController();
beforeEach(() => {
  stop = new AbortController();
});
afterEach(() => stop.abort());

const started = (world: AlarmWorld) => {
  const rung: Rung[] = [];
  return { rung, alarm: startAlarm(world.parts, (one) => rung.push(one), stop.signal) };
};
const one = (inMs: number, id = "a 5"): DueReading => ({ id, test: id.slice(0, 1), inMs });

describe("three hours of five rings, started 70 s apart and read every five minutes", () => {
  const letters = ["a", "b", "c", "d", "e"];
  const plan = Array.from({ length: 36 }, (_, index) => 5 * (index + 1));
  const readings = letters.flatMap((test, place) =>
    plan.map((minutes) => ({
      id: `${test} ${minutes}`,
      test,
      inMs: place * 70_000 + minutes * MINUTE_MS,
    })),
  );

  it("sounds every due time once and none twice, however often they are given again", async () => {
    const world = newWorld();
    const { alarm, rung } = started(world);
    const begin = world.now().monoMs;
    const giveAgain = () => {
      const goneMs = world.now().monoMs - begin;
      // A reading is taken 20 s behind its time; then it is no longer given.
      const open = readings.filter(({ inMs }) => inMs - goneMs > -20_000);
      alarm.give(
        open.map((reading) => ({ ...reading, inMs: reading.inMs - goneMs })),
        world.now(),
      );
    };
    for (let gone = 0; gone <= 3 * HOUR_MS + 6 * MINUTE_MS; gone += 7_000) {
      giveAgain();
      await world.pass(7_000);
    }
    expect(rung).toHaveLength(readings.length);
    expect(new Set(rung.map(({ id }) => id))).toEqual(new Set(readings.map(({ id }) => id)));
    expect(world.rang).toEqual(readings.map(({ inMs }) => inMs).sort((a, b) => a - b));
    expect(Math.max(...rung.map(({ lateMs }) => lateMs))).toBeLessThanOrEqual(1000);
    // One wake-up for each reading, and no more.
    expect(world.wakeUps()).toBe(readings.length);
  });

  it("sounds them through naps of the phone and a wall clock that jumps, once each", async () => {
    const world = newWorld();
    const { alarm, rung } = started(world);
    alarm.give(readings, world.now());
    for (let turn = 0; turn < 60; turn++) {
      await world.pass(2 * MINUTE_MS);
      if (turn % 5 === 1) world.setWall(turn % 2 === 0 ? HOUR_MS : -HOUR_MS);
      await world.sleep(70_000);
    }
    expect(rung).toHaveLength(readings.length);
    expect(new Set(rung.map(({ id }) => id)).size).toBe(readings.length);
    expect(Math.max(...rung.map(({ lateMs }) => lateMs))).toBeLessThanOrEqual(71_000);
  });
});

it("follows the clock that nobody can set while the page is in sight", async () => {
  for (const byMs of [-HOUR_MS, HOUR_MS]) {
    const world = newWorld();
    const { alarm } = started(world);
    alarm.give([one(5 * MINUTE_MS)], world.now());
    await world.pass(MINUTE_MS);
    world.setWall(byMs);
    await world.pass(10 * MINUTE_MS);
    expect(world.rang).toEqual([5 * MINUTE_MS]);
  }
});

it("keeps its time when the wall clock was set before a pause", async () => {
  const world = newWorld();
  const { alarm } = started(world);
  alarm.give([one(5 * MINUTE_MS)], world.now());
  await world.pass(MINUTE_MS);
  world.setWall(HOUR_MS);
  await world.sleep(MINUTE_MS);
  await world.pass(10 * MINUTE_MS);
  expect(world.rang).toEqual([5 * MINUTE_MS]);
});

it("sounds at once after a sleep that its monotonic clock knows nothing of, and says how late", async () => {
  const world = newWorld();
  const { alarm, rung } = started(world);
  alarm.give([one(5 * MINUTE_MS)], world.now());
  await world.sleep(7 * MINUTE_MS);
  expect(world.rang).toEqual([7 * MINUTE_MS]);
  expect(rung).toEqual([{ id: "a 5", test: "a", lateMs: 2 * MINUTE_MS, here: true }]);
});

it("sounds at once when a stopped renderer goes on", async () => {
  const world = newWorld();
  const { alarm, rung } = started(world);
  alarm.give([one(2000)], world.now());
  await world.stop(6000);
  expect(world.rang).toEqual([6000]);
  expect(rung[0]?.lateMs).toBe(4000);
});

it("rings once for readings that are due together, and tells of each", async () => {
  const world = newWorld();
  const { alarm, rung } = started(world);
  alarm.give([one(1000, "a 5"), one(1000 + ONE_RINGING_MS - 1, "b 5"), one(9000, "c 5")], world.now());
  await world.pass(20_000);
  expect(world.rang).toEqual([1000, 9000]);
  expect(rung.map(({ id }) => id)).toEqual(["a 5", "b 5", "c 5"]);
});

it("counts the tests that wait, not their readings", async () => {
  const world = newWorld();
  const { alarm } = started(world);
  alarm.give([one(1000, "a 5"), one(60_000, "a 10"), one(61_000, "b 5")], world.now());
  await world.pass(120_000);
  expect(world.badges.at(-1)).toBe(2);
  alarm.give([], world.now());
  expect(world.badges.at(-1)).toBe(0);
});

it("is silent about what another page sounds, and about what was read meanwhile", async () => {
  const answers: ((mine: boolean) => void)[] = [];
  const world = newWorld(() => new Promise((resolve) => answers.push(resolve)));
  const { alarm, rung } = started(world);
  alarm.give([one(1000, "a 5"), one(2000, "b 5")], world.now());
  await world.pass(1000);
  answers[0]?.(false);
  await world.pass(1000);
  alarm.give([], world.now());
  answers[1]?.(true);
  await world.pass(1000);
  expect(world.rang).toEqual([]);
  expect(rung).toEqual([{ id: "a 5", test: "a", lateMs: 0, here: false }]);
});

it("waits for a reading that lies further away than browsers can wait", async () => {
  const world = newWorld();
  const { alarm } = started(world);
  alarm.give([one(30 * 24 * HOUR_MS)], world.now());
  await world.pass(30 * 24 * HOUR_MS + 1);
  expect(world.rang).toEqual([30 * 24 * HOUR_MS]);
});

it("ends", async () => {
  const world = newWorld();
  const { alarm } = started(world);
  alarm.give([one(1000)], world.now());
  stop.abort();
  await world.pass(10_000);
  alarm.give([one(-1000, "b 5")], world.now());
  await world.pass(10_000);
  expect(world.rang).toEqual([]);
  expect(world.badges.at(-1)).toBe(0);
});
