import fc from "fast-check";
import { expect, it } from "vitest";
import { rainSince } from "../../../src/record/rain-since.ts";

it("knows nothing when no rain was written down", () => {
  expect(rainSince([], "2026-11-25")).toBeNull();
  expect(rainSince([{ day: "2026-11-20", depthMm: 0 }], "2026-11-25")).toBeNull();
});

it("counts from the last rain up to the day, and adds up the readings of that day", () => {
  const rains = [
    { day: "2026-11-20", depthMm: 4 },
    { day: "2026-11-22", depthMm: 2.5 },
    { day: "2026-11-22", depthMm: 1.5 },
    { day: "2026-11-24", depthMm: 0 },
    { day: "2026-11-27", depthMm: 30 },
  ];
  expect(rainSince(rains, "2026-11-25")).toEqual({ days: 3, day: "2026-11-22", depthMm: 4 });
  expect(rainSince(rains, "2026-11-27")?.days).toBe(0);
});

it("counts over leap days as the calendar does", () => {
  const since = (from: string, to: string) => rainSince([{ day: from, depthMm: 1 }], to)?.days;
  // Leap years by the Gregorian rule: 2024 and 2000 are, 2100 is not.
  expect(since("2024-02-28", "2024-03-01")).toBe(2);
  expect(since("2000-02-28", "2000-03-01")).toBe(2);
  expect(since("2100-02-28", "2100-03-01")).toBe(1);
});

it("counts like the calendar of the engine, over four hundred years", () => {
  const dayOf = (at: number) => new Date(at * 86_400_000).toISOString().slice(0, 10);
  fc.assert(
    fc.property(fc.integer({ min: -80_000, max: 80_000 }), fc.nat({ max: 3000 }), (from, days) => {
      expect(rainSince([{ day: dayOf(from), depthMm: 1 }], dayOf(from + days))?.days).toBe(days);
    }),
  );
});
