/** A season from yield to bales: every step by hand from the formulas, and every figure still there at the end. */
import { describe, expect, it } from "vitest";
import { coverCoefficientOf, massForCover } from "../../../../src/science/residue/cover-mass.ts";
import { stemShape } from "../../../../src/science/residue/cutting-height.ts";
import { decayRateOf } from "../../../../src/science/residue/decay.ts";
import { leftByPass } from "../../../../src/science/residue/passes.ts";
import { strawGrown } from "../../../../src/science/residue/straw-grown.ts";
import { strawMulchDensity } from "../../../../src/science/residue/thickness.ts";
import { SOURCES } from "../../../../src/science/sources.ts";
import { couldLeave } from "../../../../src/science/straw/could-leave.ts";
import { balerTakes, leaveAs } from "../../../../src/science/straw/leave-as.ts";
import { reached } from "../counts.ts";
import { codesOf, metres, own, perKg, share } from "./figures.ts";

describe("from 8 t of wheat to what could leave", () => {
  const grain = { yield: own(8000, "kg/har", "grain-yield"), dryShare: own(0.89, "1", "dry-matter") };
  const grown = reached(
    strawGrown(grain, { way: "harvest-index", harvestIndex: own([0.4, 0.45, 0.5], "1", "harvest-index") }),
  );
  const needed = reached(massForCover(share(0.75), perKg([5, 5.4, 6])));
  const loss = own([0.35, 0.4, 0.45], "1", "loss");
  const could = reached(couldLeave({ grown, loss, needed, carbonFloor: null }));

  it("grows 8702 kg/ha, must keep 4279 for 75 % cover after two fifths are lost, and 4423 could leave", () => {
    expect(grown.middle).toBeCloseTo((7120 * 0.55) / 0.45, 6);
    expect(needed.middle).toBeCloseTo((Math.log(4) * 10_000) / 5.4, 6);
    expect(could.mustStay.middle).toBeCloseTo(4278.7, 1);
    expect(could.couldLeave.middle).toBeCloseTo(4423.5, 1);
  });

  it("reckons the low end with all figures against it, and the high end with all for it", () => {
    // 7120·0.5/0.5 − ln 4·10⁴/5/0.55, and 7120·0.6/0.4 − ln 4·10⁴/6/0.65.
    expect(could.couldLeave.low).toBeCloseTo(7120 - (Math.log(4) * 2000) / 0.55, 6);
    expect(could.couldLeave.high).toBeCloseTo(10_680 - (Math.log(4) * 10_000) / 6 / 0.65, 6);
  });

  it("carries every figure along, so that a person can change each one", () => {
    expect(could.couldLeave.assumptions.map(({ name }) => name)).toEqual([
      "grain-yield",
      "dry-matter",
      "harvest-index",
      "loss",
      "cover",
      "cover-coefficient",
    ]);
    expect(could.couldLeave.methods).toEqual(["straw-harvest-index", "cover-mass", "could-leave"]);
    expect(codesOf(could.couldLeave)).toEqual(["science/flat-residue-only", "science/local-rules-first"]);
  });

  it("is every swath at the usual cut: a baling carries less than could leave", () => {
    // (1 − 1/6)·(1 − 0.15/0.8)^1.2·0.75 = 0.487 of all that grew, against 4423/8702 = 0.508.
    const as = reached(
      leaveAs(could.share, {
        cut: metres(0.15),
        stems: { length: metres(0.8), shape: own(1.2, "1", "stem-shape") },
        chaff: own(1 / 6, "1", "chaff"),
        baler: own(0.75, "1", "baler-takes"),
      }),
    );
    expect(as.usualTake.middle).toBeCloseTo(0.487, 3);
    expect(as.middle).toMatchObject({ oneSwathIn: 1, cutM: 0.15 });
    // At the low end 2079/7120 = 0.292: one swath in two.
    expect(as.low.oneSwathIn).toBe(2);
  });
});

it("marks the sources of figures from memory as not checked", () => {
  for (const figure of [
    reached(coverCoefficientOf("maize")),
    reached(decayRateOf("maize")),
    leftByPass("rotary-hoe", "fragile"),
    strawMulchDensity(),
    balerTakes(),
  ])
    for (const source of figure.sources) expect(SOURCES[source].mark).toBe("not-checked");
  for (const source of stemShape().sources) expect(SOURCES[source].mark).toBe("published");
});
