/**
 * How often a 95 % range holds the truth, by simulation with a fixed seed: lines of 100 marks whose hits are
 * beta-binomial, so that lines of one strip differ as lines do.
 */
import { describe, expect, it } from "vitest";
import { coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { line, PLAIN, reached } from "../../unit/science/counts.ts";
import { hitsOnALine, seeded } from "./seeded.ts";

const STRIPS = 2000;

const coverage = (p: number, lines: number, varianceRatio: number): number => {
  const random = seeded(1_000 * lines + Math.round(100 * p));
  let inside = 0;
  for (let strip = 0; strip < STRIPS; strip++) {
    const counted = Array.from({ length: lines }, () => line(hitsOnALine(p, 100, varianceRatio, random)));
    const range = reached(reached(coverOfStrip(counted, "residue", PLAIN)).range);
    if (range.lower <= p && p <= range.upper) inside++;
  }
  return inside / STRIPS;
};

describe.each([
  ["the planning spread", 1.25 ** 2],
  ["four times the variance of independent marks", 4],
])("lines with %s", (_, varianceRatio) => {
  it.each([0.3, 0.6, 0.9].flatMap((p) => [3, 5, 8].map((lines) => [p, lines] as const)))(
    "cover %d, %i lines: 95 of 100 give or take two",
    (p, lines) => {
      const share = coverage(p, lines, varianceRatio);
      // The standard error of 2000 strips is half a point.
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.975);
    },
  );
});

describe.each([
  ["the planning spread", 1.25 ** 2, 0.85, 0.92],
  ["four times the variance of independent marks", 4, 0.6, 0.82],
])("strips whose lines agree better than chance though they have %s", (_, varianceRatio, least, most) => {
  it.each([3, 5, 8])("%i lines", (lines) => {
    const random = seeded(77 * lines);
    let [inside, agreed] = [0, 0];
    for (let strip = 0; strip < 4 * STRIPS; strip++) {
      const counted = Array.from({ length: lines }, () => line(hitsOnALine(0.6, 100, varianceRatio, random)));
      const { cautions, range } = reached(coverOfStrip(counted, "residue", PLAIN));
      if (!cautions.some(({ code }) => code === "science/lines-agree-better-than-chance")) continue;
      agreed++;
      const { lower, upper } = reached(range);
      if (lower <= 0.6 && upper >= 0.6) inside++;
    }
    expect(inside / agreed).toBeGreaterThan(least);
    expect(inside / agreed).toBeLessThan(most);
  });
});

it("holds the truth in more than 91 of 100 even with few hits in uneven strips", () => {
  for (const [p, lines] of [
    [0.02, 3],
    [0.01, 5],
    [0.98, 3],
    [0.99, 5],
  ] as const)
    expect(coverage(p, lines, 3)).toBeGreaterThan(0.91);
});

it("bounds a strip without a hit from above in at least 95 of 100", () => {
  // With none hit in n lines the truth lies above the bound in no more than 5 of 100 strips, at any cover.
  for (const p of [0.005, 0.01, 0.02]) {
    const random = seeded(7 + Math.round(1000 * p));
    let missed = 0;
    for (let strip = 0; strip < STRIPS; strip++) {
      const counted = Array.from({ length: 3 }, () => line(hitsOnALine(p, 100, 1.25 ** 2, random)));
      if (counted.some(({ residueFlat }) => residueFlat > 0)) continue;
      if (reached(reached(coverOfStrip(counted, "residue", PLAIN)).range).upper < p) missed++;
    }
    expect(missed / STRIPS).toBeLessThan(0.05);
  }
});
