/**
 * Source: Stroud 2019, PLoS ONE 14(2): e0203909, with the survey results printed with it.
 * Mark: published (holes of 20 × 20 × 20 cm in spring, mean 9 worms per hole, high above 16, 400 per m²).
 */
import { expect, it } from "vitest";
import { wormsPerM2 } from "../../src/science/earthworms/field.ts";
import { GUIDES } from "../../src/science/earthworms/guides.ts";
import { readByGuide } from "../../src/science/earthworms/read-guide.ts";
import { reached } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

const survey = GUIDES.filter(({ id }) => id === "survey-2019");
const march = { landUse: "cropland", month: 3, hemisphere: "north" } as const;

it("9 per hole are 225 per m², 16 per hole 400 per m²", () => {
  expect(reached(wormsPerM2(holes(9))).value).toBeCloseTo(225, 9);
  expect(reached(wormsPerM2(holes(16))).value).toBeCloseTo(400, 9);
});

it.each([
  [8, "below-survey-mean"],
  [9, "survey-mean"],
  [16, "survey-mean"],
  [17, "high"],
])("%i per hole: %s", (worms, says) => {
  for (const guide of survey)
    expect(reached(readByGuide(guide, holes(worms, worms), march)).level.says).toBe(says);
  expect(survey).toHaveLength(1);
});
