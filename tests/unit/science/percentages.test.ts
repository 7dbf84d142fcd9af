import { describe, expect, it } from "vitest";
import { percentagesThatSum } from "../../../src/science/ground-cover/percentages.ts";
import { reached, reasonOf } from "./counts.ts";

describe("whole percentages that sum to 100", () => {
  it("gives the points left over to the largest remainders", () => {
    // By hand: 12.5, 12.5, 75 of 100: floors 12, 12, 75 leave one point; the remainders are alike, the first named gets it.
    expect(reached(percentagesThatSum({ flat: 1, standing: 1, bare: 6 })).percent).toEqual({
      flat: 13,
      standing: 12,
      bare: 75,
    });
    // By hand: 14.29, 28.57, 57.14: floors 14, 28, 57 leave one point for 28.57.
    expect(reached(percentagesThatSum({ flat: 1, standing: 2, bare: 4 })).percent).toEqual({
      flat: 14,
      standing: 29,
      bare: 57,
    });
  });

  it("keeps whole percentages as they are", () => {
    expect(reached(percentagesThatSum({ a: 29, b: 57, c: 14 })).percent).toEqual({ a: 29, b: 57, c: 14 });
    expect(reached(percentagesThatSum({ only: 3 })).percent).toEqual({ only: 100 });
    expect(reached(percentagesThatSum({ some: 5, none: 0 })).percent).toEqual({ some: 100, none: 0 });
  });

  it("says why there is nothing to show", () => {
    expect(reasonOf(percentagesThatSum({}))).toBe("science/nothing-read");
    expect(reasonOf(percentagesThatSum({ a: 0, b: 0 }))).toBe("science/nothing-read");
    expect(reasonOf(percentagesThatSum({ a: -1, b: 2 }))).toBe("science/not-a-count");
    expect(reasonOf(percentagesThatSum({ a: Number.NaN }))).toBe("science/not-a-count");
    expect(reasonOf(percentagesThatSum({ a: Number.POSITIVE_INFINITY }))).toBe("science/not-a-count");
  });
});
