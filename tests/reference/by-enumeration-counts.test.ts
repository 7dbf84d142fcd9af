/**
 * Source: counting out all pairs of counts under the exact conditional test of two rates.
 * Mark: computed here (chances by the Poisson recursion).
 */
import { expect, it } from "vitest";
import { compareCounts } from "../../src/science/side-by-side/counts.ts";
import { exactInterval } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

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
