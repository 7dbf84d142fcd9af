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
    expect(unlikenesses(HOLES, { ...HOLES, places: ["between-rows", "in-row", "in-row"] })).toEqual([]);
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
    expect(unlikenesses(unasked, unasked)).toEqual([]);
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
    expect(unlikenesses(full, { ...full, ...change })).toEqual(expected);
    expect(unlikenesses({ ...full, ...change }, full)).toEqual(expected);
  });

  it("names the pour first and the harvest year last", () => {
    const full: Conditions = { ...HOLES, pours: ["later"] };
    const other: Conditions = { ...HOLES, pours: ["first"], harvestYears: [2025], wetness: ["dry"] };
    expect(unlikenesses(full, other).map(({ about }) => about)).toEqual(["pours", "wetness", "harvestYears"]);
  });

  it("lets a tenth of size and half of the effort pass, and no more", () => {
    const depths = (depth: number) =>
      unlikenesses({ ...HOLES, depthsM: [0.2] }, { ...HOLES, depthsM: [depth] }).length;
    expect([0.18, 0.2, 0.222, 0.179, 0.224].map(depths)).toEqual([0, 0, 0, 1, 1]);
    const efforts = (most: number) =>
      unlikenesses({ ...HOLES, personMinutes: [10] }, { ...HOLES, personMinutes: [most] }).length;
    expect([10, 15, 15.1, 0].map(efforts)).toEqual([0, 0, 1, 1]);
  });

  it("says what was asked on one side only, and passes over numbers that are none", () => {
    expect(unlikenesses(HOLES, { ...HOLES, wetness: null })).toEqual([
      {
        about: "wetness",
        notKnown: true,
        caution: { code: "science/likeness-not-known", facts: { about: "wetness" } },
      },
    ]);
    expect(unlikenesses(HOLES, { ...HOLES, sizesM: [0.2, Number.NaN] })).toEqual([]);
  });

  it("leaves out what is meant to differ", () => {
    expect(unlikenesses(HOLES, { ...HOLES, harvestYears: [2020] }, ["harvestYears"])).toEqual([]);
  });
});
