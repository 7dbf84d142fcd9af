import { describe, expect, it } from "vitest";
import type { METHODS } from "../../../src/science/methods/all.ts";
import { sourcesOf } from "../../../src/science/methods.ts";
import { COMPARING_AND_PLACES } from "./sweep/comparing-and-places.ts";
import { DECISIONS } from "./sweep/decisions.ts";
import { GROUND_AND_HOLES } from "./sweep/ground-and-holes.ts";
import { RINGS_AND_STORMS } from "./sweep/rings-and-storms.ts";

const SWEPT = [...GROUND_AND_HOLES, ...RINGS_AND_STORMS, ...DECISIONS, ...COMPARING_AND_PLACES];

/** The answer to an example, without the wrapping of a result. */
const answerOf = (name: string): Record<string, unknown> => {
  const one = SWEPT.find((swept) => swept.name === name);
  if (one === undefined) throw new Error(`${name} has no example`);
  const answer = one.call(...one.args) as Record<string, unknown>;
  return (answer["ok"] === true ? answer["value"] : answer) as Record<string, unknown>;
};

describe("what a screen would show as a number or a finding says what stands behind it", () => {
  it.each([
    "cover-crop/frame.ts frameError",
    "cover-crop/weeds.ts rollingTime",
    "earthworms/by-chance.ts densityByChance",
    "earthworms/seen-at-all.ts chanceToSee",
    "earthworms/seen-at-all.ts holesToSee",
    "earthworms/seen-at-all.ts shareIfNoneSeen",
    "ground-cover/across-pass.ts coverAcrossPass",
    "ground-cover/in-step.ts checkLayout",
    "ground-cover/percentages.ts percentagesThatSum",
    "infiltration/side-flow.ts sideFlow",
    "infiltration/water.ts finishFirst",
    "infiltration/water.ts litresNeeded",
    "infiltration/water.ts litresToGo",
    "infiltration/water.ts litresUsed",
    "over-years/visits.ts unlikeOverYears",
    "position/bearing.ts magneticFromTrue",
    "position/bearing.ts trueFromMagnetic",
    "position/fields-near.ts fieldsNear",
    "residue/passes.ts coverAfterHarvest",
    "residue/stems.ts stemsStanding",
    "side-by-side/like-with-like.ts unlikenesses",
    "side-by-side/strip-means.ts meansOfStrips",
    "storm/curve-number.ts compositeCurveNumber",
    "storm/curve-number.ts curveNumberRunoff",
    "storm/curve-number.ts curveNumberWhen",
    "storm/green-ampt-soils.ts greenAmptOfSoil",
  ])("%s", (name) => {
    const { n, sampledBy, cautions, methods, sources } = answerOf(name);
    expect(n).toBeGreaterThan(0);
    expect(typeof sampledBy).toBe("string");
    expect(Array.isArray(cautions)).toBe(true);
    expect(methods).not.toEqual([]);
    expect(sources).toEqual(expect.arrayContaining([...sourcesOf(methods as (keyof typeof METHODS)[])]));
  });

  it.each([
    ["position/bearing.ts trueFromMagnetic", "deg", "science/exact-by-definition"],
    ["storm/curve-number.ts curveNumberRunoff", "mm", "science/rests-on-a-table"],
    ["infiltration/water.ts litresToGo", "L", "science/rests-on-present-rate"],
    ["infiltration/side-flow.ts sideFlow", "1", "science/one-ring-only"],
  ])("%s has a unit, and a reason in place of a range", (name, unit, code) => {
    expect(answerOf(name)).toMatchObject({ unit, range: { ok: false, problem: { code } } });
  });

  it("a range from samples drawn anew says by which method and at which level", () => {
    expect(answerOf("statistics/bootstrap.ts percentileRange")).toMatchObject({
      method: "bootstrap-percentile",
      sides: "both",
      level: 0.95,
    });
    expect(answerOf("statistics/bootstrap.ts bcaRange")).toMatchObject({ method: "bootstrap-bca" });
  });
});
