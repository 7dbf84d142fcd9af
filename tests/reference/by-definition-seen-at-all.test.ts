/**
 * Source: the definition of independent trials, `1 − (1 − p)^n`, and the bound for none seen that follows from it.
 * Mark: computed here (arithmetic); common practice, no source (three over n for many trials).
 */
import { describe, expect, it } from "vitest";
import { chanceToSee, holesToSee, shareIfNoneSeen } from "../../src/science/earthworms/seen-at-all.ts";
import { shareOfHoles } from "../../src/science/earthworms/spread.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

it.each([
  [0.1, 29],
  [0.2, 14],
  [0.3, 9],
  [0.5, 5],
  [1, 1],
])("a group in a share of %f of the holes shows in one of %i in 95 of 100 tries", (share, holes) => {
  expect(reached(holesToSee(share)).holes).toBe(holes);
  expect(reached(chanceToSee(share, holes)).value).toBeGreaterThanOrEqual(0.95);
  if (holes > 1) expect(reached(chanceToSee(share, holes - 1)).value).toBeLessThan(0.95);
});

it.each([
  [5, 0.672],
  [10, 0.893],
])("one in five: %i holes show it %f of the time", (holes, chance) => {
  expect(reached(chanceToSee(0.2, holes)).value).toBeCloseTo(chance, 3);
});

describe("none seen", () => {
  it.each([
    [5, 0.451],
    [10, 0.259],
    [15, 0.181],
    [20, 0.139],
  ])("in %i holes: up to %f of the holes may hold it", (holes, upper) => {
    const { value, range } = reached(shareIfNoneSeen(holes));
    expect(value).toBe(0);
    expect(reached(range)).toMatchObject({ lower: 0, sides: "upper-only", method: "holes-to-see" });
    expect(reached(range).upper).toBeCloseTo(upper, 3);
    // The two-sided range leaves half as much over and reaches further.
    expect(reached(reached(shareOfHoles(0, holes)).range).upper).toBeGreaterThan(reached(range).upper);
  });

  it("three over n for many", () => {
    expect(reached(reached(shareIfNoneSeen(300)).range).upper).toBeCloseTo(3 / 300, 3);
  });
});

it("has reasons", () => {
  for (const share of [0, -0.1, 1.1, Number.NaN])
    expect(reasonOf(holesToSee(share))).toBe("science/not-a-probability");
  expect(reasonOf(holesToSee(0.001))).toBe("science/too-many-holes");
  expect(reasonOf(chanceToSee(0.2, 0))).toBe("science/not-a-count");
  expect(reasonOf(chanceToSee(2, 5))).toBe("science/not-a-probability");
  expect(reasonOf(shareIfNoneSeen(2.5))).toBe("science/not-a-count");
  expect(reasonOf(reached(shareIfNoneSeen(2)).range)).toBe("science/too-few-holes");
});
