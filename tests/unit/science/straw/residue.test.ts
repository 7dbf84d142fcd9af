import { describe, expect, it } from "vitest";
import {
  coverCoefficientOf,
  coverFromMass,
  massForCover,
} from "../../../../src/science/residue/cover-mass.ts";
import { fragilityOf, RESIDUE_CROPS } from "../../../../src/science/residue/crops.ts";
import { cutFor, shareBelow, stemShape } from "../../../../src/science/residue/cutting-height.ts";
import {
  decayRateOf,
  decompositionDays,
  lossAfter,
  massLeft,
  rotByRain,
  rotByTemperature,
} from "../../../../src/science/residue/decay.ts";
import { erosionExponent, lossByRain, lossByWind } from "../../../../src/science/residue/erosion.ts";
import {
  coverAfterPasses,
  leftByPass,
  lossByPasses,
  MEASURED_LOSSES,
  measuredLoss,
  PASSES,
} from "../../../../src/science/residue/passes.ts";
import { exactly, fits, usable } from "../../../../src/science/residue/ranged.ts";
import { stemsStanding } from "../../../../src/science/residue/stems.ts";
import { strawGrown } from "../../../../src/science/residue/straw-grown.ts";
import { dryShareOf, strawWaysOf } from "../../../../src/science/residue/straw-ways.ts";
import { massForThickness, strawMulchDensity } from "../../../../src/science/residue/thickness.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, endsOf, kgPerHa, metres, own, perKg, share } from "./figures.ts";

const BAD = [
  ["negative", [-1, 0, 1]],
  ["not finite", [0, 0, Number.POSITIVE_INFINITY]],
  ["no number", [Number.NaN, 0, 0]],
  ["out of order", [2, 1, 3]],
] as const;

describe("ranges", () => {
  it.each(BAD)("refuses one that is %s", (_, [low, middle, high]) => {
    expect(fits({ low, middle, high }, 0, 100)).toBe(false);
    expect(reasonOf(coverFromMass([{ mass: kgPerHa([low, middle, high]), coefficient: perKg(3) }]))).toBe(
      "science/not-a-range",
    );
    expect(
      reasonOf(massForThickness(own([low, middle, high], "mm", "mulch-thickness"), strawMulchDensity())),
    ).toBe("science/not-a-range");
  });

  it("names the figure that does not fit, and refuses one in another unit", () => {
    const wrong = usable([[share(0.5), { unit: "kg/har", least: 0, most: 1 }]]);
    expect(wrong).toMatchObject({ ok: false, problem: { facts: { what: "cover" } } });
    expect(fits(exactly(5), 5, 5)).toBe(true);
  });

  it("counts the figures behind an answer, each once, with who gave them", () => {
    const mass = kgPerHa([2000, 3000, 4000]);
    const cover = reached(coverFromMass([{ mass, coefficient: reached(coverCoefficientOf("maize")) }]));
    expect(cover).toMatchObject({ n: 2, sampledBy: "assumptions", unit: "1", methods: ["cover-mass"] });
    expect(cover.assumptions.map(({ source }) => source)).toEqual(["yours", "cover-coefficients"]);
    expect(cover.sources).toEqual(["cover-coefficients", "gregory-1982"]);
    const twice = reached(
      coverFromMass([
        { mass, coefficient: perKg(3) },
        { mass, coefficient: perKg(3) },
      ]),
    );
    expect(twice.n).toBe(2);
  });
});

describe("cover and mass", () => {
  it("is bare without residue, and 0 kg/ha cover nothing", () => {
    expect(endsOf(reached(coverFromMass([])))).toEqual([0, 0, 0]);
    expect(reached(coverFromMass([{ mass: kgPerHa(0), coefficient: perKg(3) }])).high).toBeCloseTo(0, 12);
    expect(reached(massForCover(share(0), perKg(3))).middle).toBeCloseTo(0, 12);
  });

  it("takes the high coefficient for the low mass, and goes back and forth", () => {
    const maize = reached(coverCoefficientOf("maize"));
    const mass = reached(massForCover(share(0.6), maize));
    expect(mass.low).toBeCloseTo((-Math.log(0.4) * 10_000) / 3.4, 6);
    expect(mass.high).toBeCloseTo((-Math.log(0.4) * 10_000) / 2.1, 6);
    const back = reached(coverFromMass([{ mass: kgPerHa(mass.middle), coefficient: perKg(maize.middle) }]));
    expect(back.middle).toBeCloseTo(0.6, 12);
  });

  it("says where the curve is flat and refuses a share above 1", () => {
    expect(codesOf(reached(massForCover(share(0.97), perKg(3))))).toEqual([
      "science/flat-residue-only",
      "science/near-full-cover",
    ]);
    expect(reasonOf(massForCover(share(1.1), perKg(3)))).toBe("science/not-a-range");
    expect(reasonOf(massForCover(share(0.5), perKg(0)))).toBe("science/not-a-range");
  });

  it("has a coefficient in order or a reason for every crop", () => {
    for (const crop of RESIDUE_CROPS) {
      const known = coverCoefficientOf(crop);
      if (known.ok) expect(fits(known.value, 0.1, 100)).toBe(true);
      else expect(known.problem.code).toBe("science/no-figure-for-crop");
    }
    expect(reasonOf(coverCoefficientOf("potato"))).toBe("science/no-figure-for-crop");
  });

  it("makes mass of thickness", () => {
    const mass = reached(massForThickness(own(50, "mm", "mulch-thickness"), strawMulchDensity()));
    expect(endsOf(mass).map(Math.round)).toEqual([6000, 10_000, 17_500]);
    expect(reached(massForThickness(own(0, "mm", "mulch-thickness"), strawMulchDensity())).high).toBe(0);
  });
});

describe("straw grown", () => {
  const grain = {
    yield: own([7000, 8000, 9000], "kg/har", "grain-yield"),
    dryShare: own(0.89, "1", "dry-matter"),
  };

  it("has figures in order or a reason for every crop, and every way gives a range", () => {
    for (const crop of RESIDUE_CROPS) {
      const ways = strawWaysOf(crop);
      for (const way of ways) {
        const grown = reached(strawGrown(grain, way));
        expect(grown.low).toBeLessThan(grown.middle);
        expect(grown.middle).toBeLessThan(grown.high);
        expect(grown.unit).toBe("kg/har");
      }
      expect(dryShareOf(crop).ok).toBe(ways.some(({ way }) => way === "line"));
    }
    expect(strawWaysOf("cotton")).toEqual([]);
    expect(reasonOf(dryShareOf("cotton"))).toBe("science/no-figure-for-crop");
  });

  it("gives nothing for no grain, by a line its intercept, and reasons for what cannot be", () => {
    const none = { ...grain, yield: own(0, "kg/har", "grain-yield") };
    for (const way of strawWaysOf("winter-wheat"))
      expect(reached(strawGrown(none, way)).middle).toBe(way.way === "line" ? 400 : 0);
    const harvestIndex = own(0, "1", "harvest-index");
    expect(reasonOf(strawGrown(grain, { way: "harvest-index", harvestIndex }))).toBe("science/not-a-range");
    const ratio = own(-1, "1", "straw-per-grain");
    expect(reasonOf(strawGrown(grain, { way: "straw-per-grain", ratio }))).toBe("science/not-a-range");
    const slope = own(Number.NaN, "1", "residue-line");
    const interceptKgPerHa = kgPerHa(0);
    expect(reasonOf(strawGrown(grain, { way: "line", slope, interceptKgPerHa }))).toBe("science/not-a-range");
    for (const way of strawWaysOf("winter-wheat"))
      expect(reasonOf(strawGrown({ ...grain, dryShare: own(0, "1", "dry-matter") }, way))).toBe(
        "science/not-a-range",
      );
  });

  it("names fragile crops, and none where lists disagree", () => {
    expect(reached(fragilityOf("maize"))).toBe("non-fragile");
    expect(reasonOf(fragilityOf("cotton"))).toBe("science/no-figure-for-crop");
  });
});

describe("cutting height", () => {
  const stems = { length: metres(0.8), shape: stemShape() };

  it("keeps nothing at the ground and all above the straw", () => {
    expect(endsOf(reached(shareBelow(metres(0), stems)))).toEqual([0, 0, 0]);
    expect(endsOf(reached(shareBelow(metres(0.9), stems)))).toEqual([1, 1, 1]);
    expect(endsOf(reached(cutFor(share(0), stems)))).toEqual([0, 0, 0]);
    expect(endsOf(reached(cutFor(share(1), stems)))).toEqual([0.8, 0.8, 0.8]);
  });

  it("goes back and forth, and refuses what cannot be", () => {
    const exact = { length: metres(0.8), shape: own(1.2, "1", "stem-shape") };
    const below = reached(shareBelow(metres(0.3), exact)).middle;
    expect(reached(cutFor(share(below), exact)).middle).toBeCloseTo(0.3, 12);
    expect(reasonOf(shareBelow(metres(-0.1), stems))).toBe("science/not-a-range");
    expect(reasonOf(shareBelow(metres(0.1), { ...stems, length: metres(0) }))).toBe("science/not-a-range");
    expect(reasonOf(cutFor(share(1.2), stems))).toBe("science/not-a-range");
  });
});

describe("decay", () => {
  const wet = own([0.2, 0.5, 1], "1", "wetness");

  it("counts a day as what it lacks most, in any order, and none for no days", () => {
    expect(endsOf(reached(decompositionDays([], wet)))).toEqual([0, 0, 0]);
    const days = reached(decompositionDays([33, -10, 20], wet));
    expect(endsOf(days).map((day) => Number(day.toFixed(4)))).toEqual([0.4, 1, 1.6926]);
    expect(endsOf(reached(decompositionDays([20, 33, -10], wet)))).toEqual(endsOf(days));
    expect(reasonOf(decompositionDays([Number.NaN], wet))).toBe("science/no-number");
    expect(reasonOf(decompositionDays([10], own(2, "1", "wetness")))).toBe("science/not-a-range");
  });

  describe("with rain day by day", () => {
    const fortnight = (mm: number) => new Array<number>(14).fill(mm);

    it("counts each day as what it lacks most: 33 mm of 66 in half a month are half wet", () => {
      // At 33 °C the days lack rain (0.5), at 10 °C warmth (0.3104), below −6.1 °C all of it.
      const days = decompositionDays([33, 10, -10], { beforeMm: fortnight(2.2), eachMm: [2.2, 2.2, 2.2] });
      expect(endsOf(reached(days)).map((day) => Number(day.toFixed(4)))).toEqual([0.8104, 0.8104, 0.8104]);
    });

    it("forgets rain after 15 days, which one wetness for all days cannot", () => {
      // 66 mm the day before: 14 warm days at full speed, then dry; the same rain on the last day counts once.
      const warm = new Array<number>(20).fill(33);
      const dry = new Array<number>(20).fill(0);
      const wetFirst = { beforeMm: [...fortnight(0).slice(1), 66], eachMm: dry };
      expect(endsOf(reached(decompositionDays(warm, wetFirst)))).toEqual([14, 14, 14]);
      const wetLast = { beforeMm: fortnight(0), eachMm: [...dry.slice(1), 66] };
      expect(endsOf(reached(decompositionDays(warm, wetLast)))).toEqual([1, 1, 1]);
    });

    it("pairs each day with its own rain: rain in frost is lost", () => {
      const days = (temperatures: readonly number[]) =>
        endsOf(
          reached(
            decompositionDays(temperatures, {
              beforeMm: [66, ...fortnight(0).slice(1)],
              eachMm: [0, 0],
            }),
          ),
        );
      // The 66 mm of 14 days ago count on the first day and no longer on the second.
      expect(days([33, -10])).toEqual([1, 1, 1]);
      expect(days([-10, 33])).toEqual([0, 0, 0]);
    });

    it("is wide where nobody measured: dry at the low end, wet enough at the high one", () => {
      // 33 mm on the only day known: half wet or wholly, in the middle three quarters.
      const gaps = decompositionDays([33], { beforeMm: [], eachMm: [33] });
      expect(endsOf(reached(gaps))).toEqual([0.5, 0.75, 1]);
      expect(endsOf(reached(decompositionDays([33], { beforeMm: fortnight(0), eachMm: [] })))).toEqual([
        0, 0.5, 1,
      ]);
      expect(endsOf(reached(decompositionDays([], { beforeMm: [], eachMm: [] })))).toEqual([0, 0, 0]);
    });

    it("refuses rain that cannot be", () => {
      for (const mm of [-1, Number.NaN, Number.POSITIVE_INFINITY])
        expect(reasonOf(decompositionDays([10], { beforeMm: [5], eachMm: [mm] }))).toBe("science/no-number");
    });
  });

  it("does not rot in deep frost though the curve is even, and not with a nought above its best", () => {
    expect(reached(rotByTemperature(-45.2))).toBe(0);
    expect(reasonOf(rotByTemperature(10, { shiftC: -40, bestC: 30 }))).toBe("science/no-number");
    expect(reasonOf(rotByTemperature(Number.POSITIVE_INFINITY))).toBe("science/no-number");
  });

  it("takes rain up to what is enough", () => {
    expect(reached(rotByRain(0))).toBe(0);
    expect(reached(rotByRain(200))).toBe(1);
    expect(reasonOf(rotByRain(-1))).toBe("science/no-number");
  });

  it("loses nothing in no time, never more than all", () => {
    const rate = reached(decayRateOf("winter-wheat"));
    expect(reached(lossAfter(rate, own(0, "d", "decay-rate"))).high).toBeCloseTo(0, 12);
    const long = reached(lossAfter(rate, own(100_000, "d", "decay-rate")));
    expect(long.high).toBeLessThanOrEqual(1);
    expect(reached(massLeft(kgPerHa(5000), long)).low).toBeGreaterThanOrEqual(0);
    expect(reasonOf(lossAfter(rate, own(-1, "d", "decay-rate")))).toBe("science/not-a-range");
    expect(reasonOf(massLeft(kgPerHa(5000), share(1.5)))).toBe("science/not-a-range");
    expect(reasonOf(decayRateOf("rice"))).toBe("science/no-figure-for-crop");
    expect(codesOf(long)).toContain("science/heavy-load-rots-slower");
  });

  it("refuses stems before harvest", () => {
    expect(reasonOf(stemsStanding("oats", own(-1, "d", "decay-rate")))).toBe("science/not-a-range");
    expect(reached(stemsStanding("oats", own(0, "d", "decay-rate")))).toMatchObject({
      low: 1,
      middle: 1,
      high: 1,
    });
  });

  it("says how far stems may be off: a quarter to either side of the one rate that is known", () => {
    const stands = reached(stemsStanding("winter-wheat", own(27.5, "d", "decay-rate")));
    // By hand: ten days beyond the 17.5th at 0.169, 0.12675 and 0.21125 a day.
    expect(stands.middle).toBeCloseTo(Math.exp(-1.69), 12);
    expect(stands.low).toBeCloseTo(Math.exp(-2.1125), 12);
    expect(stands.high).toBeCloseTo(Math.exp(-1.2675), 12);
    expect(stands.methods).toEqual(["stems-standing"]);
    expect(stands.sources).toContain("steiner-1994");
  });
});

describe("passes", () => {
  it("has every pass in order and leaves all without one", () => {
    for (const pass of PASSES)
      for (const fragility of ["fragile", "non-fragile"] as const) {
        expect(fits(leftByPass(pass, fragility), 0, 1)).toBe(true);
        expect(leftByPass(pass, "fragile").middle).toBeLessThanOrEqual(
          leftByPass(pass, "non-fragile").middle,
        );
      }
    expect(reached(coverAfterPasses(share(0.8), [])).middle).toBe(0.8);
    expect(reasonOf(coverAfterPasses(share(0.8), [share(1.2)]))).toBe("science/not-a-range");
  });

  it("takes nothing of the mass without a pass, all with one that leaves no cover, and cover's share of a thin one", () => {
    const lying = { mass: kgPerHa(5000), coefficient: perKg(5) };
    expect(endsOf(reached(lossByPasses(lying, [])))).toEqual([0, 0, 0]);
    expect(endsOf(reached(lossByPasses(lying, [share(0)])))).toEqual([1, 1, 1]);
    expect(reached(lossByPasses({ ...lying, mass: kgPerHa(0) }, [share(0.7)])).middle).toBeCloseTo(0.3, 12);
    expect(reached(lossByPasses({ ...lying, mass: kgPerHa(1) }, [share(0.7)])).middle).toBeCloseTo(0.3, 3);
    expect(
      reached(lossByPasses({ mass: kgPerHa(200_000), coefficient: perKg(100) }, [share(0.7)])).middle,
    ).toBeLessThan(1);
    expect(reasonOf(lossByPasses(lying, [share(1.2)]))).toBe("science/not-a-range");
    expect(reasonOf(lossByPasses({ ...lying, mass: kgPerHa(-1) }, []))).toBe("science/not-a-range");
  });

  it("says of a measured loss that it was measured elsewhere", () => {
    for (const which of MEASURED_LOSSES)
      expect(codesOf(measuredLoss(which))).toEqual(["science/measured-elsewhere"]);
  });
});

describe("erosion", () => {
  it("is 1 on bare ground and puts local rules first", () => {
    const bare = reached(lossByRain(share(0), erosionExponent(), 6.096));
    expect(endsOf(bare)).toEqual([1, 1, 1]);
    expect(codesOf(bare)).toEqual(["science/local-rules-first"]);
    expect(endsOf(reached(lossByWind(share(0))))).toEqual([1, 1, 1]);
  });

  it("takes smoother ground than smooth for smooth, and refuses what cannot be", () => {
    const at = (mm: number) => lossByRain(share(0.5), erosionExponent(), mm);
    expect(reached(at(1)).middle).toBe(reached(at(6.096)).middle);
    expect(reasonOf(at(0))).toBe("science/no-number");
    expect(reasonOf(at(Number.NaN))).toBe("science/no-number");
    expect(reasonOf(lossByRain(share(1.1), erosionExponent(), 6))).toBe("science/not-a-range");
    expect(reasonOf(lossByWind(share(-0.1)))).toBe("science/not-a-range");
  });

  it("names the range of the wind curve only outside it", () => {
    expect(codesOf(reached(lossByWind(share([0.1, 0.3, 0.5]))))).toEqual(["science/local-rules-first"]);
    expect(codesOf(reached(lossByWind(share([0.1, 0.5, 0.9]))))).toContain("science/outside-published-range");
    const above = reached(lossByWind(share(1)));
    expect(above.high).toBeGreaterThan(0);
  });
});
