import { describe, expect, it } from "vitest";
import { type Conditions, unlikenesses } from "../../../../src/science/side-by-side/like-with-like.ts";

const HOLES: Conditions = {
  places: ["in-row", "between-rows"],
  mulchInRing: null,
  pours: null,
  wetness: ["moist"],
  ways: ["hand-sorted"],
  sizesM: [0.2],
  depthsM: [0.2, 0.22],
  personMinutes: [10, 12],
  seasons: ["spring"],
  harvestYears: [2026],
};

describe("like with like", () => {
  it("says nothing when all is alike, in whichever order it was written down", () => {
    expect(unlikenesses(HOLES, { ...HOLES, places: ["between-rows", "in-row"] }).unlike).toEqual([]);
    const unasked: Conditions = {
      places: null,
      mulchInRing: null,
      pours: null,
      wetness: null,
      ways: null,
      sizesM: [],
      depthsM: null,
      personMinutes: null,
      seasons: null,
      harvestYears: null,
    };
    expect(unlikenesses(unasked, unasked).unlike).toEqual([]);
  });

  it.each([
    ["places", { places: ["wheel-track"] }, "science/unlike-places"],
    ["mulchInRing", { mulchInRing: ["removed"] }, "science/unlike-mulch-in-ring"],
    ["pours", { pours: ["first"] }, "science/unlike-pours"],
    ["wetness", { wetness: ["dry"] }, "science/unlike-wetness"],
    ["ways", { ways: ["mustard-water"] }, "science/unlike-ways"],
    ["sizesM", { sizesM: [0.25] }, "science/unlike-sizes"],
    ["depthsM", { depthsM: [0.1] }, "science/unlike-depths"],
    ["personMinutes", { personMinutes: [30] }, "science/unlike-efforts"],
    ["seasons", { seasons: ["autumn"] }, "science/unlike-seasons"],
    ["harvestYears", { harvestYears: [2025] }, "science/unlike-harvest-years"],
  ] as const)("says that %s differ", (about, change, code) => {
    const full: Conditions = { ...HOLES, mulchInRing: ["kept"], pours: ["later"] };
    const expected = [{ about, notKnown: false, caution: { code, facts: {} } }];
    expect(unlikenesses(full, { ...full, ...change }).unlike).toEqual(expected);
    expect(unlikenesses({ ...full, ...change }, full).unlike).toEqual(expected);
  });

  it("names the pour first and the harvest year last", () => {
    const full: Conditions = { ...HOLES, pours: ["later"] };
    const other: Conditions = { ...HOLES, pours: ["first"], harvestYears: [2025], wetness: ["dry"] };
    expect(unlikenesses(full, other).unlike.map(({ about }) => about)).toEqual([
      "pours",
      "wetness",
      "harvestYears",
    ]);
  });

  it("lets a tenth of size and half of the effort pass, and no more", () => {
    const depths = (depth: number) =>
      unlikenesses({ ...HOLES, depthsM: [0.2] }, { ...HOLES, depthsM: [depth] }).unlike.length;
    expect([0.18, 0.2, 0.222, 0.179, 0.224].map(depths)).toEqual([0, 0, 0, 1, 1]);
    const efforts = (most: number) =>
      unlikenesses({ ...HOLES, personMinutes: [10] }, { ...HOLES, personMinutes: [most] }).unlike.length;
    expect([10, 15, 15.1, 0].map(efforts)).toEqual([0, 0, 1, 1]);
  });

  const places = (inRow: number, betweenRows: number): readonly string[] => [
    ...Array.from({ length: inRow }, () => "in-row"),
    ...Array.from({ length: betweenRows }, () => "between-rows"),
  ];
  const unlike = (a: Conditions["places"], b: Conditions["places"]) =>
    unlikenesses({ ...HOLES, places: a }, { ...HOLES, places: b }).unlike.map(({ about }) => about);

  it("says that shares differ where both sides have some of each, from a fifth on", () => {
    // By hand, in the row: 2 of 7 against 5 of 7 lies 3/7 = 0.43 apart; 3 of 5 against 2 of 5 a fifth.
    expect(unlike(places(2, 5), places(5, 2))).toEqual(["places"]);
    expect(unlike(places(3, 2), places(2, 3))).toEqual(["places"]);
    // 2 of 4 against 3 of 5: 0.1. 6 of 11 against 5 of 11: 0.09. 4 of 8 against 2 of 4: nothing.
    expect(unlike(places(2, 2), places(3, 2))).toEqual([]);
    expect(unlike(places(6, 5), places(5, 6))).toEqual([]);
    expect(unlike(places(4, 4), places(2, 2))).toEqual([]);
    // 5 of 9 against 4 of 11: 0.556 less 0.364 is 0.192. 5 of 9 against 4 of 12: 0.222.
    expect(unlike(places(5, 4), places(4, 7))).toEqual([]);
    expect(unlike(places(5, 4), places(4, 8))).toEqual(["places"]);
  });

  it("says that a kind stands on one side only, however small its share", () => {
    expect(unlike([...places(10, 10), "tramline"], places(10, 10))).toEqual(["places"]);
  });

  it("tells three places apart by all of them: 4, 3, 3 of ten against 3, 3, 4 lie a tenth apart", () => {
    const three = (a: number, b: number, c: number) => [
      ...places(a, b),
      ...Array.from({ length: c }, () => "tramline"),
    ];
    expect(unlike(three(4, 3, 3), three(3, 3, 4))).toEqual([]);
    // 5, 3, 2 against 2, 4, 4: half of 0.3 + 0.1 + 0.2 is 0.3.
    expect(unlike(three(5, 3, 2), three(2, 4, 4))).toEqual(["places"]);
  });

  it("says what was asked on one side only, and passes over numbers that are none", () => {
    expect(unlikenesses(HOLES, { ...HOLES, wetness: null }).unlike).toEqual([
      {
        about: "wetness",
        notKnown: true,
        caution: { code: "science/likeness-not-known", facts: { about: "wetness" } },
      },
    ]);
    expect(unlikenesses(HOLES, { ...HOLES, sizesM: [0.2, Number.NaN] }).unlike).toEqual([]);
  });

  it("leaves out what is meant to differ", () => {
    expect(unlikenesses(HOLES, { ...HOLES, harvestYears: [2020] }, ["harvestYears"]).unlike).toEqual([]);
  });
});
