/**
 * Source: the definition of power in blocks, by the noncentral t distribution on what is left for the rest.
 * Mark: computed here, outside this house (0.490, 0.663 and 0.789 for 4, 5 and 6 blocks of two treatments).
 *
 * Extension bulletins say of the same numbers that five or six replicates have a reasonable chance (common practice).
 */
import { describe, expect, it } from "vitest";
import { powerOf, samplesNeeded } from "../../src/science/statistics/power.ts";
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
