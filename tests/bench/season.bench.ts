/** A season of 10,000 observations summarised per strip: lines, holes and rings. */
import { expect, it } from "vitest";
import { wormsPerHole, wormsPerM2 } from "../../src/science/earthworms/field.ts";
import type { HoleCount } from "../../src/science/earthworms/hole-count.ts";
import type { LineCounts } from "../../src/science/ground-cover/line.ts";
import { coverOfStrip } from "../../src/science/ground-cover/strip.ts";
import { meanOfRings, type RingPoint } from "../../src/science/infiltration/replicates.ts";
import { percentile, state } from "./figures.ts";

const strips = 40;
/** 10,000 in all. */
const perStrip = { lines: 100, holes: 100, rings: 50 };

const line = (at: number): LineCounts => {
  const bare = (at * 7) % 40;
  return { residueFlat: 100 - bare, residueStanding: 0, green: 0, bare, stone: 0, own: 0, notRead: 0 };
};
const hole = (at: number): HoleCount => ({
  sidesM: [0.2, 0.2],
  depthM: 0.2,
  found: { mulch: at % 3, soil: (at * 5) % 17, "mustard-water": null },
  placed: { young: 0, surface: 0, topsoil: 0, deep: 0 },
  left: 0,
  settled: true,
  finished: true,
  soilTemperatureC: null,
  wetness: null,
  personMinutes: 10,
  workedDaysAgo: null,
  place: { latitudeDeg: 52 + at * 0.001, longitudeDeg: -1 },
});
const ring = (at: number): RingPoint => ({
  id: String(at),
  value: 5 + ((at * 11) % 90),
  least: 1,
  censored: false,
  burrow: at % 9 === 0,
  crack: false,
});
const many = <T>(count: number, make: (at: number) => T): T[] =>
  Array.from({ length: count }, (_, at) => make(at));

it("summarises a season per strip within 200 ms", () => {
  const season = many(strips, (strip) => ({
    lines: many(perStrip.lines, (at) => line(at + strip)),
    holes: many(perStrip.holes, (at) => hole(at + strip)),
    rings: many(perStrip.rings, (at) => ring(at + strip)),
  }));
  const times: number[] = [];
  for (let round = 0; round < 15; round++) {
    const begunMs = performance.now();
    for (const { lines, holes, rings } of season) {
      const all = [
        coverOfStrip(lines, "ground-cover", { stoneCounts: false }),
        wormsPerHole(holes),
        wormsPerM2(holes),
        meanOfRings(rings, "mm"),
      ];
      expect(all.every(({ ok }) => ok)).toBe(true);
    }
    times.push(performance.now() - begunMs);
  }
  const medianMs = percentile(times, 0.5);
  state({ name: "a season of 10,000 observations per strip", value: medianMs, unit: "ms", bound: 200 });
  expect(medianMs).toBeLessThanOrEqual(200);
});
