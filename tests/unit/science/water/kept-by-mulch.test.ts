import { describe, expect, it } from "vitest";
import {
  bareSoilEvaporation,
  type DryingPeriod,
  keptByMulch,
  type Rain,
  wetGround,
} from "../../../../src/science/water/kept-by-mulch.ts";
import { evaporationCut, fullCoverCut, type Mulch } from "../../../../src/science/water/mulch-cut.ts";
import { soilWaterOf } from "../../../../src/science/water/soils.ts";
import {
  totallyEvaporableWater,
  twoStageDrying,
  wetSoilCoefficient,
} from "../../../../src/science/water/two-stage-drying.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, figure, UNUSABLE } from "../figures.ts";

const { quickWater, surfaceWater } = soilWaterOf("silt-loam");
const GROUND = { quickWater, surfaceWater, wetSoil: wetGround() };
const period = (rains: readonly Rain[], but: Partial<DryingPeriod> = {}): DryingPeriod => ({
  firstDay: 100,
  lastDay: 119,
  rains,
  reference: [figure("reference-evapotranspiration", 4, "mm/d")],
  ...but,
});
const lost = (rains: readonly Rain[], but: Partial<DryingPeriod> = {}) =>
  bareSoilEvaporation(period(rains, but), GROUND);
const MULCH: Mulch = {
  cover: figure("cover", 0.9),
  fullCut: fullCoverCut(),
  thickness: null,
  mass: null,
  crop: null,
};

describe("drying", () => {
  it("gives nothing without dates of rain", () => {
    expect(reasonOf(lost([]))).toBe("science/no-rain-dates");
    expect(reasonOf(lost([{ day: 105, mm: 0 }]))).toBe("science/no-rain-dates");
    expect(reasonOf(lost([{ day: 99, mm: 20 }]))).toBe("science/no-rain-dates");
  });

  it("never loses more than it got, nor more than the surface holds after one rain", () => {
    expect(reached(lost([{ day: 100, mm: 3 }])).high).toBeLessThanOrEqual(3 + 1e-9);
    const soaked = reached(lost([{ day: 100, mm: 80 }]));
    expect(soaked.high).toBeLessThanOrEqual(25 + 1e-9);
    expect(soaked.low).toBeLessThan(soaked.high);
  });

  it("loses more when the same rain comes in two falls, whatever their order", () => {
    const once = reached(lost([{ day: 100, mm: 40 }])).middle;
    const falls = [
      { day: 100, mm: 20 },
      { day: 110, mm: 20 },
    ];
    const twice = reached(lost(falls)).middle;
    expect(twice).toBeGreaterThan(once);
    expect(reached(lost([...falls].reverse())).middle).toBe(twice);
  });

  it("adds rains of one day up and says which were not measured or lay outside", () => {
    const two = [
      { day: 102, mm: 4 },
      { day: 102, mm: 6 },
    ];
    expect(reached(lost(two)).middle).toBe(reached(lost([{ day: 102, mm: 10 }])).middle);
    const said = reached(lost([...two, { day: 104, mm: null }, { day: 200, mm: 9 }])).cautions;
    expect(codesOf(said)).toEqual([
      "science/counted-from-first-rain",
      "science/rain-not-measured",
      "science/rain-outside-period",
    ]);
  });

  it("takes one figure a day or one for all, and no other number of them", () => {
    const four = figure("reference-evapotranspiration", 4, "mm/d");
    const rain = [{ day: 100, mm: 30 }];
    const each = reached(lost(rain, { reference: Array.from({ length: 20 }, () => four) }));
    expect(each.middle).toBe(reached(lost(rain)).middle);
    expect(reasonOf(lost(rain, { reference: [four, four] }))).toBe("science/not-one-a-day");
    expect(reasonOf(lost(rain, { reference: [] }))).toBe("science/not-one-a-day");
  });

  it("says what cannot be", () => {
    const rain = [{ day: 100, mm: 30 }];
    for (const bad of [...UNUSABLE, 0.5])
      expect(reasonOf(lost(rain, { firstDay: bad }))).toBe("science/not-a-period");
    expect(reasonOf(lost(rain, { lastDay: 99 }))).toBe("science/not-a-period");
    for (const mm of [...UNUSABLE, -1])
      expect(reasonOf(lost([{ day: 100, mm }]))).toBe("science/out-of-bounds");
    const reference = [figure("reference-evapotranspiration", -1, "mm/d")];
    expect(reasonOf(lost(rain, { reference }))).toBe("science/not-a-range");
    expect(reasonOf(totallyEvaporableWater(0.1, 0.2))).toBe("science/out-of-bounds");
    expect(reasonOf(twoStageDrying([], { rewMm: 6, tewMm: Number.NaN }, 1.2, 0))).toBe(
      "science/out-of-bounds",
    );
    expect(reached(twoStageDrying([], { rewMm: 6, tewMm: 12 }, 1.2, 0))).toEqual([]);
  });

  it("starts from a dry surface that gives nothing, and from a soil that holds nothing", () => {
    const day = { etMm: 5, rainMm: 0 };
    const dry = reached(twoStageDrying([day, day], { rewMm: 6, tewMm: 12 }, 1.2, 12));
    expect(dry.map(({ evaporatedMm }) => evaporatedMm)).toEqual([0, 0]);
    expect(dry.map(({ stage }) => stage)).toEqual(["dry", "dry"]);
    const none = reached(twoStageDrying([{ etMm: 5, rainMm: 9 }], { rewMm: 0, tewMm: 0 }, 1.2, 0));
    expect(none[0]?.evaporatedMm).toBe(0);
  });

  it("does not let wind and humidity change bare ground", () => {
    expect(reached(wetSoilCoefficient(6, 0.2, 0))).toBe(1.2);
    expect(reached(wetSoilCoefficient(6, 0.2, 0.3))).toBeGreaterThan(1.2);
    expect(reasonOf(wetSoilCoefficient(-1, 0.2, 0))).toBe("science/out-of-bounds");
  });
});

describe("mulch", () => {
  it("asks for thickness or mass and says which it has", () => {
    const said = (but: Partial<Mulch>) => codesOf(reached(evaporationCut({ ...MULCH, ...but })).cautions);
    expect(said({})).toContain("science/mulch-thickness-not-known");
    const thickness = figure("mulch-thickness", 40, "mm");
    expect(said({ thickness })).toContain("science/mulch-thickness-not-in-rule");
    expect(said({ thickness })).not.toContain("science/mulch-thickness-not-known");
    expect(said({ mass: figure("mass", 4000, "kg/har") })).toContain("science/mulch-thickness-not-in-rule");
    expect(said({ crop: "cotton" })).toContain("science/coarse-residue-keeps-less");
    expect(said({ crop: "barley" })).not.toContain("science/coarse-residue-keeps-less");
  });

  it("cuts nothing without cover, and nothing at all when the person says so", () => {
    expect(reached(evaporationCut({ ...MULCH, cover: figure("cover", 0) }))).toMatchObject({
      low: 0,
      high: 0,
    });
    const fullCut = figure("full-cover-cut", 0);
    expect(reached(evaporationCut({ ...MULCH, fullCut }))).toMatchObject({ low: 0, high: 0 });
    for (const bad of [...UNUSABLE, -0.1, 1.1])
      expect(reasonOf(evaporationCut({ ...MULCH, cover: figure("cover", bad) }))).toBe("science/not-a-range");
  });

  it("keeps a range with local advice and the cool seedbed beside it, and never more than was lost", () => {
    const bare = reached(lost([{ day: 100, mm: 30 }]));
    const kept = reached(keptByMulch(bare, reached(evaporationCut(MULCH))));
    expect(kept.unit).toBe("mm");
    expect(kept.low).toBeLessThan(kept.high);
    expect(kept.high).toBeLessThan(bare.high);
    expect(codesOf(kept.cautions)).toEqual(
      expect.arrayContaining(["science/local-advice-first", "science/cool-later-seedbed"]),
    );
    const names = kept.assumptions.map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining([
        "quick-water",
        "surface-water",
        "cover",
        "full-cover-cut",
        "wet-soil-coefficient",
      ]),
    );
    expect(reasonOf(keptByMulch(bare, figure("full-cover-cut", 2)))).toBe("science/not-a-range");
  });
});
