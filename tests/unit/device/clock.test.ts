import { expect, it } from "vitest";
import { randomHex } from "../../../src/device/chance.ts";
import { clocksApart, readClock, timeBetween } from "../../../src/device/clock.ts";

const at = (wallMs: number, monoMs: number, pageId = "page") => ({ wallMs, monoMs, pageId });

it("agree while both clocks run", () => {
  expect(clocksApart(at(0, 0), at(60_000, 60_400))).toEqual({ verdict: "agree", apartMs: -400 });
});

it("may be two seconds apart and no more, either way", () => {
  expect(clocksApart(at(0, 0), at(2000, 0)).verdict).toBe("agree");
  expect(clocksApart(at(0, 0), at(2001, 0)).verdict).toBe("apart");
  expect(clocksApart(at(5000, 0), at(2999, 0)).verdict).toBe("apart");
});

it("tell a wall clock that was set back an hour in the middle", () => {
  expect(clocksApart(at(7_200_000, 1000), at(3_610_000, 11_000))).toEqual({
    verdict: "apart",
    apartMs: -3_600_000,
  });
});

it("cannot tell across two pages", () => {
  expect(clocksApart(at(0, 0, "one"), at(0, 0, "two"))).toEqual({ verdict: "cannot-tell" });
});

it("time between two looks is told by the monotonic clock on one page, else by the wall clock", () => {
  expect(timeBetween(at(7_200_000, 1000), at(3_610_000, 11_000))).toBe(10_000);
  expect(timeBetween(at(0, 1000, "one"), at(600_000, 2000, "two"))).toBe(600_000);
});

it("a reading is whole milliseconds of one page with an id of 64 bits", () => {
  const first = readClock();
  const second = readClock();
  expect(Number.isInteger(first.wallMs) && Number.isInteger(first.monoMs)).toBe(true);
  expect(second.monoMs).toBeGreaterThanOrEqual(first.monoMs);
  expect(second.pageId).toBe(first.pageId);
  expect(first.pageId).toMatch(/^[0-9a-f]{16}$/);
});

it("chance gives two digits a byte, and not the same twice", () => {
  const drawn = Array.from({ length: 200 }, () => randomHex(16));
  for (const one of drawn) expect(one).toMatch(/^[0-9a-f]{32}$/);
  expect(new Set(drawn).size).toBe(200);
});
