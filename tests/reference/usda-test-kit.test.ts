/**
 * Source: USDA Soil Quality Test Kit Guide.
 * Mark: published (chapter 3, read in copies: a ring of 6 inches and 444 mL for an inch of water); from memory (about
 * 10 worms per square foot are good); computed here by exact arithmetic (`A = πd²/4`, depth = volume over area).
 *
 * It shows that 444 mL is not an inch in a true ring of 6.000 inches.
 */
import { describe, expect, it } from "vitest";
import { readRing } from "../../src/record/ring/reading.ts";
import { inUnit, toSi } from "../../src/record/units.ts";
import { ringRate } from "../../src/science/infiltration/ring-rate.ts";
import { insideAreaM2 } from "../../src/science/infiltration/ring-set.ts";
import { soakingOf } from "../../src/science/infiltration/soaking.ts";
import { litresNeeded } from "../../src/science/infiltration/water.ts";
import { gone, level, notebook, pour, start } from "../unit/record/ring-entries.ts";
import { reached } from "../unit/science/counts.ts";
import { POURS } from "../unit/science/infiltration/rings.ts";
import { guideOf, levelsOf } from "./guide-levels.ts";

/** Inside diameter, cm², mL for an inch, mL for a millimetre, mm from 444 mL (exact arithmetic). */
describe.each([
  [10, "cm", 78.54, 199.5, 7.854, 56.53],
  [4, "in", 81.07, 205.9, 8.107, 54.77],
  [14.9187, "cm", 174.8, 444.0, 17.48, 25.4],
  [15, "cm", 176.71, 448.9, 17.671, 25.13],
  [6, "in", 182.41, 463.3, 18.241, 24.34],
  [16, "cm", 201.06, 510.7, 20.106, 22.08],
  [20, "cm", 314.16, 798.0, 31.416, 14.13],
  [8, "in", 324.29, 823.7, 32.429, 13.69],
  [12, "in", 729.66, 1853.3, 72.966, 6.09],
  [30, "cm", 706.86, 1795.4, 70.686, 6.28],
] as const)("a ring of %d %s", (across, unit, cm2, perInchMl, perMmMl, mmFrom444) => {
  const set = { insideM: [toSi(across, unit), null], outerInsideM: null, innerOutsideM: null } as const;
  const areaM2 = reached(insideAreaM2(set.insideM));

  it("has its area and takes its water", () => {
    expect(areaM2 * 1e4).toBeCloseTo(cm2, 2);
    expect(reached(litresNeeded(set, 25.4)).value * 1000).toBeCloseTo(perInchMl, 1);
    expect(reached(litresNeeded(set, 1)).value * 1000).toBeCloseTo(perMmMl, 3);
    expect((toSi(444, "mL") / areaM2) * 1000).toBeCloseTo(mmFrom444, 2);
  });
});

/** An inch that takes so many minutes: 60 ÷ minutes, in inches an hour, and ×25.4 (exact arithmetic). */
it.each([
  [12, 5, 127],
  [25, 2.4, 60.96],
  [42, 1.42857, 36.29],
  [120, 0.5, 12.7],
])("an inch in %d minutes is %d in/h", (minutes, inPerH, mmPerH) => {
  const { entries, write } = notebook();
  const inchMl = 25.4 * 17.671_458_676_442_587; // 15 cm: π·15²/4 cm² is 17.67… mL for a millimetre
  write(0, start);
  write(0, pour(inchMl));
  write(1, gone);
  write(1.5, pour(inchMl));
  write(1.5 + minutes, gone);
  const rate = reached(ringRate(reached(soakingOf(readRing(entries), POURS))));
  expect(rate.mmPerH).toBeCloseTo(mmPerH, 2);
  expect(inUnit(rate.mmPerH / 1000, "in")).toBeCloseTo(inPerH, 4);
});

/** 444 mL in a ring of 15.24 cm (exact arithmetic): 24.34 mm in 12 min, and with 9 mm left after an hour. */
describe("444 mL in a true ring of six inches", () => {
  const set = { ...POURS, insideM: [0.1524, null] } as const;
  const second = (how: "gone" | "left") => {
    const { entries, write } = notebook();
    write(0, start);
    write(0, pour(444));
    write(3, gone);
    write(3.5, pour(444));
    if (how === "gone") write(15.5, gone);
    else write(63.5, level(9));
    return reached(ringRate(reached(soakingOf(readRing(entries), set))));
  };

  it("in 12 minutes is 121.7 mm/h, not 127", () => {
    expect(second("gone").mmPerH).toBeCloseTo(121.7, 1);
  });

  it("with 9 mm left after 60 minutes is 15.34 mm/h, as not drained", () => {
    expect(second("left")).toMatchObject({ censored: true });
    expect(second("left").mmPerH).toBeCloseTo(15.34, 2);
  });
});

it("10 worms in a square foot, 12 inches deep, are good", () => {
  expect(guideOf("square-foot").mark).toBe("not-checked");
  const levels = levelsOf("square-foot", { sideM: 0.3048, depthM: 0.3048 }, [9.5, 10]);
  expect(levels).toEqual(["below-good", "good"]);
});
