/**
 * How often ranges of cover hold the truth on ground that no formula here presumes: lines that differ much more than the
 * planning spread, and covered ground that comes in runs, as under windrows. Fixed seeds; the figures stand in the
 * docstrings of `coverOfStrip` and `coverOfLine`.
 */
import { describe, expect, it } from "vitest";
import { coverOfLine, coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { line, PLAIN, reached } from "../../unit/science/counts.ts";
import { hitsInRuns, hitsOnALine, seeded } from "./seeded.ts";

const STRIPS = 1200;

type Drawn = (p: number, random: () => number) => ReturnType<typeof line>;
const withVariance =
  (ratio: number): Drawn =>
  (p, random) =>
    line(hitsOnALine(p, 100, ratio, random));
/** Lines of 50 to 100 marks, since ropes end at the edge of a strip. */
const inRuns =
  (alike: number): Drawn =>
  (p, random) => {
    const marks = 50 + Math.floor(51 * random());
    return line(hitsInRuns(p, marks, alike, random), marks);
  };

describe.each([
  ["twice the variance of independent marks", withVariance(2)],
  ["eight times the variance", withVariance(8)],
  ["runs, two thirds of the marks like the one before", inRuns(2 / 3)],
  ["long runs, seven eighths like the one before", inRuns(7 / 8)],
])("strips with %s", (_, drawn) => {
  it.each([3, 5, 10])("%i lines at 10, 30, 60 and 90 %% cover: 93 to 97 times of 100", (lines) => {
    for (const p of [0.1, 0.3, 0.6, 0.9]) {
      const random = seeded(100 * lines + Math.round(10 * p));
      let inside = 0;
      for (let strip = 0; strip < STRIPS; strip++) {
        const counted = Array.from({ length: lines }, () => drawn(p, random));
        const range = reached(reached(coverOfStrip(counted, "residue", PLAIN)).range);
        if (range.lower <= p && p <= range.upper) inside++;
      }
      // The standard error of 1200 strips is 0.6 points.
      expect(inside / STRIPS).toBeGreaterThan(0.92);
      expect(inside / STRIPS).toBeLessThan(0.98);
    }
  });
});

describe("the range of one line", () => {
  it.each([
    [0, 0.935, 0.945],
    [1 / 2, 0.7, 0.745],
    [2 / 3, 0.565, 0.635],
    [4 / 5, 0.425, 0.495],
    [7 / 8, 0.315, 0.39],
  ])(
    "a mark is like the one before with %d: the cover is held %d to %d of the time, which is said",
    (alike, least, most) => {
      for (const p of [0.1, 0.3, 0.6, 0.9]) {
        const random = seeded(Math.round(1000 * alike + 10 * p));
        let inside = 0;
        const lines = 3000;
        for (let one = 0; one < lines; one++) {
          const cover = reached(coverOfLine(line(hitsInRuns(p, 100, alike, random)), "residue", PLAIN));
          const { lower, upper } = reached(cover.range);
          if (lower <= p && p <= upper) inside++;
          if (one === 0) expect(cover.cautions.map(({ code }) => code)).toContain("science/one-line-only");
        }
        expect(inside / lines).toBeGreaterThan(least - 0.015);
        expect(inside / lines).toBeLessThan(most + 0.015);
      }
    },
  );
});
