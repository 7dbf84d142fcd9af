/**
 * Source: Krebs, Ecological Methodology, chapter 7: how many samples.
 * Mark: from memory (formula `(200/r)²·(1/m + 1/k)`); computed here from the stated formulas (half widths and numbers
 * with Student's t).
 */
import { describe, expect, it } from "vitest";
import { holesInAll, variationOf } from "../../src/science/earthworms/holes-needed.ts";
import { studentQuantile } from "../../src/science/statistics/distributions.ts";
import { samplesNeeded } from "../../src/science/statistics/power.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [9, 2, 25, 39.11],
  [9, 4, 25, 23.11],
  [9, Number.POSITIVE_INFINITY, 25, 7.11],
  [4.35, 6.83, 25, 24.08],
  [5, 3, 50, 8.53],
])("mean %d, k %d, give or take %i %%", (mean, k, r, samples) => {
  expect((200 / r) ** 2 * reached(variationOf(mean, k)) ** 2).toBeCloseTo(samples, 2);
});

it("two groups: 2·(1.96 + 0.84)²·CV²/d² is 40 in each for 40 % and 25 % (computed from the stated formula)", () => {
  // Student's t asks for a little more than the normal curve: 40 by that formula, one or two more here.
  const wanted = { design: "two-groups", level: 0.95, power: 0.8 } as const;
  const each = reached(samplesNeeded(0.25, 0.4, wanted));
  expect(each - 40).toBeGreaterThanOrEqual(0);
  expect(each - 40).toBeLessThanOrEqual(2);
});

describe("with Student's t", () => {
  it.each([
    [0.5, 0.25, 18],
    [0.6, 0.25, 25],
    [0.8, 0.25, 42],
    [0.4, 0.2, 18],
    [0.6, 0.2, 38],
  ])("a spread of %d of the mean, give or take %d: %i holes", (variation, giveOrTake, holes) => {
    expect(reached(holesInAll(variation, giveOrTake))).toBe(holes);
  });

  // Half widths in percent of the mean, by holes and spread of 30, 50, 60, 80 and 100 %.
  it.each([
    [3, [75, 124, 149, 199, 248]],
    [5, [37, 62, 74, 99, 124]],
    [8, [25, 42, 50, 67, 84]],
    [10, [21, 36, 43, 57, 72]],
    [15, [17, 28, 33, 44, 55]],
    [20, [14, 23, 28, 37, 47]],
  ] as const)("%i holes", (holes, percents) => {
    for (const [at, variation] of [0.3, 0.5, 0.6, 0.8, 1].entries()) {
      const percent = percents[at] ?? 0;
      const t = reached(studentQuantile(0.975, holes - 1));
      expect(Math.round((100 * t * variation) / Math.sqrt(holes))).toBe(percent);
      // So many holes do for a hair more than that, and one hole fewer does not for a hair less.
      expect(reached(holesInAll(variation, (percent + 0.51) / 100)) ?? 0).toBeLessThanOrEqual(holes);
      expect(reached(holesInAll(variation, (percent - 0.51) / 100)) ?? 0).toBeGreaterThan(holes);
    }
  });
});
