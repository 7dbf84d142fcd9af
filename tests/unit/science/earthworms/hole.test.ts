import { describe, expect, it } from "vitest";
import { holeOf, wormsInHole, wormsPerM2OfHole } from "../../../../src/science/earthworms/hole.ts";
import { holeAreaM2 } from "../../../../src/science/earthworms/hole-count.ts";
import { did, dug, found, holeBody, readOf, sorted, worms } from "../../record/hole-made-up.ts";
import { reached, reasonOf } from "../counts.ts";
import { codes, hole } from "./holes.ts";

describe("one hole", () => {
  it("adds the layers up and divides by the area alone", () => {
    const one = hole(0, { found: { mulch: 2, soil: 6, "mustard-water": 1 } });
    expect(reached(wormsInHole(one))).toMatchObject({ value: 9, unit: "/{hole}", n: 1, sampledBy: "holes" });
    expect(reached(wormsPerM2OfHole(one)).value).toBeCloseTo(225, 9);
    expect(reached(wormsPerM2OfHole({ ...one, depthM: 0.4 })).value).toBeCloseTo(225, 9);
    expect(reasonOf(reached(wormsPerM2OfHole(one)).range)).toBe("science/too-few-holes");
  });

  it("gives none found as 0, and nothing for a hole that nobody looked into", () => {
    expect(reached(wormsInHole(hole(0))).value).toBe(0);
    const unseen = hole(0, { found: { mulch: null, soil: null, "mustard-water": null } });
    expect(reasonOf(wormsInHole(unseen))).toBe("science/nothing-read");
    expect(reasonOf(wormsInHole(hole(3, { settled: false })))).toBe("science/two-answers");
  });

  it("says why it cannot use a count or a size", () => {
    for (const bad of [-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(wormsInHole(hole(bad)))).toBe("science/not-a-count");
    const sizes: ([number, number] | null)[] = [null, [0, 0.2], [0.2, -1], [Number.NaN, 1], [1, Infinity]];
    for (const sidesM of sizes) {
      expect(reasonOf(wormsPerM2OfHole(hole(3, { sidesM })))).toBe("science/no-hole-size");
      expect(reached(wormsInHole(hole(3, { sidesM }))).value).toBe(3);
    }
    expect(reached(holeAreaM2([0.25, 0.5]))).toBe(0.125);
  });

  it("takes the record: template before own sides, layers nobody looked at as none, worms left", () => {
    const reading = readOf(did(dug(), [...worms(2, "mulch"), found(7), sorted(4, "topsoil")]));
    const own = holeOf(reading, holeBody, null);
    expect(own).toMatchObject({
      sidesM: [0.2, 0.2],
      depthM: 0.2,
      found: { mulch: 2, soil: 7, "mustard-water": null },
      placed: { topsoil: 4, deep: 0 },
      left: 5,
      settled: true,
      finished: true,
      personMinutes: null,
      place: null,
    });
    expect(holeOf(reading, holeBody, { sidesM: [0.25, 0.25] }).sidesM).toEqual([0.25, 0.25]);
  });
});

describe("what may have made a count low", () => {
  const said = (worms: number, but: Parameters<typeof hole>[1]) =>
    codes(reached(wormsInHole(hole(worms, but))).cautions);

  it("says cold and dry soil beside zero and few worms, and never removes the number", () => {
    expect(said(0, { soilTemperatureC: 4 })).toEqual(["science/soil-cold"]);
    expect(said(3, { soilTemperatureC: 4, wetness: "dry" })).toEqual([
      "science/soil-cold",
      "science/soil-dry",
    ]);
    expect(reached(wormsInHole(hole(3, { soilTemperatureC: 4 }))).value).toBe(3);
    expect(said(30, { soilTemperatureC: 4, wetness: "dry" })).toEqual([]);
    expect(said(0, { soilTemperatureC: 8, wetness: "moist" })).toEqual([]);
    expect(said(0, { soilTemperatureC: Number.NaN })).toEqual([]);
    expect(said(0, { sidesM: null, wetness: "dry" })).toEqual(["science/soil-dry"]);
  });

  it("says soil that was worked within four weeks, whatever the count", () => {
    expect(said(30, { workedDaysAgo: 0 })).toEqual(["science/worked-recently"]);
    expect(said(30, { workedDaysAgo: 28 })).toEqual(["science/worked-recently"]);
    expect(said(30, { workedDaysAgo: 29 })).toEqual([]);
    expect(said(30, { workedDaysAgo: -3 })).toEqual([]);
  });
});
