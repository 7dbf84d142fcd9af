/**
 * Ohio State University Extension (SC-166, SC-190): five or six replicates and a coefficient of variation of 5 % have a
 * reasonable chance to find a true difference of 10 %. The chances themselves, from R `power.t.test`-like arithmetic on the
 * noncentral t with n−1 degrees of freedom: 0.490, 0.663 and 0.789 for 4, 5 and 6 blocks of two treatments (worked out
 * independently). Worms: the exact conditional test, enumerated here from its definition.
 */
import { describe, expect, it } from "vitest";
import { compareCounts } from "../../src/science/side-by-side/counts.ts";
import { powerOf, samplesNeeded } from "../../src/science/statistics/power.ts";
import { exactInterval } from "../../src/science/statistics/proportion.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

const inBlocks = (treatments: number) => ({ design: { treatments }, level: 0.95, power: 0.8 }) as const;

it.each([
  [4, 0.49],
  [5, 0.663],
  [6, 0.789],
])("%i blocks of two treatments, CV 5 %%, a true 10 %%: %f", (blocks, power) => {
  expect(reached(powerOf(10, 5, blocks, inBlocks(2)))).toBeCloseTo(power, 3);
});

describe("blocks of more treatments", () => {
  it("know their rest better, so that fewer blocks do", () => {
    expect(reached(powerOf(10, 5, 5, inBlocks(4)))).toBeGreaterThan(reached(powerOf(10, 5, 5, inBlocks(2))));
    expect(reached(samplesNeeded(10, 5, inBlocks(2)))).toBe(7);
    expect(reached(samplesNeeded(10, 5, inBlocks(4)))).toBeLessThan(7);
  });

  it("of fewer than two have a reason", () => {
    for (const treatments of [1, 0, Number.NaN])
      expect(reasonOf(powerOf(10, 5, 5, inBlocks(treatments)))).toBe("science/too-few-treatments");
  });
});

/** Chances of 0, 1, 2 … by chance, as far as any matter. */
const byChance = (mean: number): readonly number[] => {
  const chances = [Math.exp(-mean)];
  for (let count = 1; count < mean + 12 * Math.sqrt(mean); count++)
    chances.push(((chances.at(-1) ?? 0) * mean) / count);
  return chances;
};

it("holes for twice as many worms: the exact test then shows it in about 80 of 100 tries", () => {
  const alike = { counts: [3, 3, 3, 3], effortEach: 1 };
  const { middle } = reached(reached(compareCounts(alike, alike, 2)).plan.needed);
  // Three worms a hole on the average of both: four against two.
  const [most, fewest] = [byChance(4 * middle), byChance(2 * middle)];
  let shows = 0;
  for (const [x, chanceX] of most.entries())
    for (const [y, chanceY] of fewest.entries()) {
      if (x + y === 0) continue;
      const { lower, upper } = reached(exactInterval(x, x + y, 0.95));
      if (lower > 0.5 || upper < 0.5) shows += chanceX * chanceY;
    }
  expect(shows).toBeGreaterThan(0.75);
  expect(shows).toBeLessThan(0.87);
});
