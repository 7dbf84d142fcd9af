import { describe, expect, it } from "vitest";
import {
  carbonToNitrogenFromNitrogen,
  carbonToNitrogenOf,
  NITROGEN_MATERIALS,
  usualCarbon,
} from "../../../../src/science/nitrogen/materials.ts";
import { type MixedPart, mixtureCarbonToNitrogen } from "../../../../src/science/nitrogen/mixture.ts";
import {
  availableNitrogenPerTonne,
  COVER_CROP_ENDS,
  firstSeasonNitrogen,
  tieUpOrRelease,
} from "../../../../src/science/nitrogen/tie-up.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, figure, numbersIn, UNUSABLE } from "../figures.ts";

type Figures = number | readonly [number, number, number];
const part = (kg: Figures, ratio: Figures, carbon: Figures = 0.42): MixedPart => ({
  mass: figure("mass", kg, "kg/har"),
  carbon: figure("carbon-share", carbon),
  ratio: figure("carbon-to-nitrogen", ratio),
});

describe("a mixture", () => {
  it("of one part has that part's ratio, whatever its mass", () => {
    expect(reached(mixtureCarbonToNitrogen([part(1, 37)])).middle).toBeCloseTo(37, 9);
    expect(reached(mixtureCarbonToNitrogen([part([0, 10, 100], [30, 37, 44])])).low).toBeCloseTo(30, 9);
  });

  it("takes little or much of a part, whichever moves the answer further", () => {
    const parts = [part([1000, 2000, 3000], 80), part([1000, 2000, 3000], 10)];
    const { low, high } = reached(mixtureCarbonToNitrogen(parts));
    // By hand: 1000 of straw with 3000 of the other, and 3000 with 1000.
    expect(low).toBeCloseTo(4000 / (1000 / 80 + 3000 / 10), 9);
    expect(high).toBeCloseTo(4000 / (3000 / 80 + 1000 / 10), 9);
  });

  it("says what cannot be", () => {
    expect(reasonOf(mixtureCarbonToNitrogen([]))).toBe("science/nothing-read");
    expect(reasonOf(mixtureCarbonToNitrogen([part(0, 80)]))).toBe("science/no-mass");
    for (const bad of [...UNUSABLE, -1]) {
      expect(reasonOf(mixtureCarbonToNitrogen([part(bad, 80)]))).toBe("science/not-a-range");
      expect(reasonOf(mixtureCarbonToNitrogen([part(1000, bad)]))).toBe("science/not-a-range");
      expect(reasonOf(tieUpOrRelease([part(1000, 80, bad)]))).toBe("science/not-a-range");
      expect(reasonOf(carbonToNitrogenFromNitrogen(bad))).toBe("science/out-of-bounds");
    }
    expect(reasonOf(carbonToNitrogenFromNitrogen(0))).toBe("science/out-of-bounds");
  });
});

describe("tie-up or release", () => {
  it("is tie-up for straw and release for vetch, with most of it not this year", () => {
    const straw = reached(tieUpOrRelease([part(4000, 80)])).nitrogen;
    expect(straw.low).toBeLessThan(0);
    expect(straw.high).toBe(0);
    expect(codesOf(straw.cautions)).toEqual(
      expect.arrayContaining(["science/most-not-this-year", "science/local-advice-first"]),
    );
    const vetch = reached(tieUpOrRelease([part(3000, 11)])).nitrogen;
    expect(vetch.low).toBeGreaterThan(0);
    expect(codesOf(vetch.cautions)).not.toContain("science/could-go-either-way");
  });

  it("says when it could go either way", () => {
    const near = reached(tieUpOrRelease([part(4000, [18, 24, 32])])).nitrogen;
    expect(near.low).toBeLessThan(0);
    expect(near.high).toBeGreaterThan(0);
    expect(codesOf(near.cautions)).toContain("science/could-go-either-way");
  });

  it("holds both rules for every material of the table", () => {
    for (const material of NITROGEN_MATERIALS) {
      const { nitrogen, byDiet, byLine } = reached(
        tieUpOrRelease([
          {
            mass: figure("mass", 3000, "kg/har"),
            carbon: usualCarbon(),
            ratio: carbonToNitrogenOf(material),
          },
        ]),
      );
      expect(nitrogen.low).toBe(Math.min(byDiet.low, byLine.low));
      expect(nitrogen.high).toBe(Math.max(byDiet.high, byLine.high));
      expect(numbersIn(nitrogen).every(Number.isFinite)).toBe(true);
    }
  });

  it("has no tie-up in the line and ends where the line ends", () => {
    const at = (share: number) => reached(availableNitrogenPerTonne(figure("nitrogen-share", share)));
    expect(at(0)).toMatchObject({ low: 0, high: 0 });
    expect(at(0.06).high).toBe(20);
    for (const bad of [...UNUSABLE, -0.01, 0.5])
      expect(reasonOf(availableNitrogenPerTonne(figure("nitrogen-share", bad)))).toBe("science/not-a-range");
  });

  it("gives a first season for each way of ending", () => {
    for (const end of COVER_CROP_ENDS) {
      const nitrogen = firstSeasonNitrogen(figure("mass", 0, "kg/har"), figure("nitrogen-share", 0.03), end);
      expect(reached(nitrogen).high).toBe(0);
    }
    const bad = firstSeasonNitrogen(
      figure("mass", -1, "kg/har"),
      figure("nitrogen-share", 0.03),
      "tilled-in",
    );
    expect(reasonOf(bad)).toBe("science/not-a-range");
  });
});
