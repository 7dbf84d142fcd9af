/**
 * Mass and weeds as published: Nichols et al. (2020), 75 % less weed biomass from 5 Mg/ha on, grasses only; Mirsky et
 * al. (2013), rolled rye above 8,000 kg/ha for annual weeds; Wells et al. (2016), rye above 9,000 kg/ha. Rolling from
 * Zadoks 61 on: Mirsky et al. (2009), Agronomy Journal 101: 1589; before early milk, 73, from memory.
 */
import { expect, it } from "vitest";
import { rollingTime, WEED_STATEMENTS, weedSuppression } from "../../src/science/cover-crop/weeds.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { codesOf } from "../unit/science/figures.ts";

it.each([
  ["nichols-2020", 5000],
  ["mirsky-2013", 8000],
  ["wells-2016", 9000],
])("%s from %d kg/ha on", (source, kg) => {
  expect(WEED_STATEMENTS.find((one) => one.source === source)?.fromKgPerHa).toBe(kg);
});

it("reads a mass with its range against each and says nothing for legumes", () => {
  const { statements, cautions } = reached(weedSuppression({ lower: 7000, upper: 8600 }, "grass"));
  expect(statements.map(({ mass }) => mass)).toEqual(["above", "cannot-tell", "below"]);
  expect(codesOf(cautions)).toContain("science/weeds-as-published");
  expect(codesOf(cautions)).toContain("science/weeds-annual-only");
  // Nichols et al. saw no fewer weeds, only lighter ones; another review (Dong & Zeng 2024) saw 45 % fewer.
  expect(codesOf(cautions)).toContain("science/weed-numbers-disputed");
  expect(reasonOf(weedSuppression({ lower: 7000, upper: 8600 }, "legume"))).toBe("science/no-weed-statement");
});

it.each([
  [60, "too-early"],
  [61, "in-time"],
  [67, "in-time"],
  [72, "in-time"],
  [73, "too-late"],
])("rolling at Zadoks %d: %s", (zadoks, says) => {
  expect(reached(rollingTime(zadoks)).when).toBe(says);
});
