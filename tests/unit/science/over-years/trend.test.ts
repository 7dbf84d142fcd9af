import { describe, expect, it } from "vitest";
import { trendOfField, trendOfSpot } from "../../../../src/science/over-years/trend.ts";
import { seriesOf, unlikeOverYears, type YearValue } from "../../../../src/science/over-years/visits.ts";
import type { Conditions } from "../../../../src/science/side-by-side/like-with-like.ts";
import { reached, reasonOf } from "../counts.ts";

const spot = (values: readonly number[], name = "1", season = "spring"): readonly YearValue[] =>
  values.map((value, at) => ({ spot: name, season, harvestYear: 2020 + at, value, fromPaper: false }));
const ASKED = { unit: "1", seed: 1 } as const;
const codes = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);

describe("one spot", () => {
  it("rises clearly with five years that all rise, and never with four", () => {
    const five = reached(trendOfSpot(spot([1, 2, 4, 7, 11]), ASKED));
    expect(five.word).toBe("clearly-different");
    expect(five.test.chance).toBeCloseTo(2 / 120, 12);
    expect(reached(five.range)).toMatchObject({ lower: 1, upper: 4, method: "counted-range" });
    expect(codes(five)).toEqual(["science/few-years-wide-range"]);
    const four = reached(trendOfSpot(spot([1, 2, 4, 7]), ASKED));
    expect(four.word).toBe("probably-different");
    // 2/4! is 8.3 %, 2/5! is 1.7 %.
    expect(four.yearsAtLeast).toBe(5);
    expect(reasonOf(four.range)).toBe("science/too-few-times-for-a-range");
    expect(four.cautions).toEqual([
      { code: "science/too-few-years-for-five-percent", facts: { years: 4, percent: 8.3, needs: 5 } },
    ]);
  });

  it("is the same read backwards, with the sign turned", () => {
    const [up, down] = [
      [3, 5, 4, 8, 9, 12],
      [12, 9, 8, 4, 5, 3],
    ].map((values) => reached(trendOfSpot(spot(values), ASKED)));
    expect(up?.slope).toBeCloseTo(-(down?.slope ?? 0), 12);
    expect(up?.test.chance).toBe(down?.test.chance);
  });

  it("with more than ten years goes by Gilbert's range", () => {
    const long = reached(trendOfSpot(spot([1, 3, 2, 5, 4, 6, 8, 7, 9, 11, 10, 12]), ASKED));
    expect(reached(long.range).method).toBe("gilbert-range");
    expect(long.methods).toContain("mann-kendall-normal");
    expect(long.word).toBe("clearly-different");
  });

  it("that stays the same has a slope of 0 and no range", () => {
    const flat = reached(trendOfSpot(spot([4, 4, 4, 4, 4]), ASKED));
    expect(flat).toMatchObject({ slope: 0, word: "cannot-tell-yet" });
    expect(reasonOf(flat.range)).toBe("science/no-spread-seen");
  });

  it("takes the middle of several values in a year, in any order of years, and says what came from paper", () => {
    const values: readonly YearValue[] = [
      ...spot([1, 2, 3, 4, 5]).toReversed(),
      { spot: "1", season: "spring", harvestYear: 2020, value: 3, fromPaper: true },
      { spot: "1", season: "spring", harvestYear: 2020, value: Number.NaN, fromPaper: false },
    ];
    const trend = reached(trendOfSpot(values, ASKED));
    expect(trend.n).toBe(5);
    expect(codes(trend).slice(1)).toEqual([
      "science/values-left-out",
      "science/years-with-several",
      "science/values-from-paper",
    ]);
    expect(seriesOf(values).series[0]?.points[0]).toEqual({ time: 2020, value: 2 });
  });

  it("gives reasons", () => {
    expect(reasonOf(trendOfSpot([], ASKED))).toBe("science/nothing-read");
    expect(reasonOf(trendOfSpot(spot([1]), ASKED))).toBe("science/too-few-samples");
    expect(reasonOf(trendOfSpot([...spot([1, 2]), ...spot([1, 2], "2")], ASKED))).toBe(
      "science/several-spots",
    );
    expect(reasonOf(trendOfSpot([...spot([1, 2]), ...spot([1, 2], "1", "autumn")], ASKED))).toBe(
      "science/several-spots",
    );
  });
});

describe("a field", () => {
  it("with ten spots in four years is still four years", () => {
    const values = Array.from({ length: 10 }, (_, at) =>
      spot([1 + at, 2 + at, 4 + at, 7 + at], `${at}`),
    ).flat();
    const trend = reached(trendOfField(values, ASKED));
    // As if spots were independent the chance would be far below 5 %.
    expect(trend.together.chance).toBeLessThan(1e-6);
    expect(trend.byYears.chance).toBeCloseTo(2 / 24, 12);
    expect(trend.word).toBe("probably-different");
    expect(codes(trend)).toEqual(["science/too-few-years-for-five-percent", "science/spots-share-the-years"]);
    expect(trend.spots).toHaveLength(10);
    // Ten equal spots say no more than one: ten times ten times the variance.
    expect(trend.byYears.variance).toBeCloseTo((100 * 26) / 3, 9);
  });

  it("never compares spring with autumn", () => {
    const values = [...spot([1, 2, 3, 4, 5], "1", "spring"), ...spot([11, 12, 13, 14, 15], "1", "autumn")];
    const trend = reached(trendOfField(values, ASKED));
    expect(trend.slope).toBe(1);
    expect(trend.together).toMatchObject({ groups: 2, s: 20 });
    expect(trend.word).toBe("clearly-different");
  });

  it("leaves spots of one year alone and gives reasons", () => {
    expect(reached(trendOfField([...spot([1, 2, 3]), ...spot([9], "2")], ASKED)).spots).toHaveLength(1);
    expect(reasonOf(trendOfField([], ASKED))).toBe("science/nothing-read");
    expect(reasonOf(trendOfField(spot([9]), ASKED))).toBe("science/too-few-samples");
  });
});

describe("visits", () => {
  const visit: Conditions = {
    places: ["in-row"],
    mulchInRing: null,
    pours: null,
    wetness: ["moist"],
    ways: ["hand-sorted"],
    sizesM: [0.2],
    depthsM: [0.2],
    personMinutes: null,
    seasons: ["spring"],
    harvestYears: [2024],
  };

  it("are looked at against the last, without the harvest year", () => {
    const last = { ...visit, harvestYears: [2026] };
    expect(unlikeOverYears([visit, last]).visits).toEqual([]);
    const unlike = unlikeOverYears([{ ...visit, depthsM: [0.3], seasons: ["autumn"] }, visit, last]).visits;
    expect(unlike.map((one) => [one.visit, one.unlike.map(({ about }) => about)])).toEqual([
      [0, ["depthsM", "seasons"]],
    ]);
    expect(unlikeOverYears([visit]).visits).toEqual([]);
  });
});
