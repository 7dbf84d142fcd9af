/**
 * Source: Nichols et al. 2020, Agricultural & Environmental Letters 5: e20022.
 * Mark: published (75 % less weed biomass from 5 Mg/ha on, grasses only, no fewer weeds).
 */
import { expect, it } from "vitest";
import { WEED_STATEMENTS, weedSuppression } from "../../src/science/cover-crop/weeds.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { codesOf } from "../unit/science/figures.ts";

it("is offered as printed", () => {
  expect(WEED_STATEMENTS.find((one) => one.source === "nichols-2020")?.fromKgPerHa).toBe(5000);
});

it("reads a mass against it, says that fewer weeds are disputed and nothing of legumes", () => {
  const read = (lower: number, upper: number) => {
    const { statements } = reached(weedSuppression({ lower, upper }, "grass"));
    return statements.find(({ source }) => source === "nichols-2020")?.mass;
  };
  expect([read(5100, 5200), read(4900, 5100), read(4000, 4900)]).toEqual(["above", "cannot-tell", "below"]);
  // Nichols et al. saw no fewer weeds, only lighter ones; another review (Dong & Zeng) saw 45 % fewer.
  const { cautions } = reached(weedSuppression({ lower: 7000, upper: 8600 }, "grass"));
  expect(codesOf(cautions)).toContain("science/weeds-as-published");
  expect(codesOf(cautions)).toContain("science/weed-numbers-disputed");
  expect(reasonOf(weedSuppression({ lower: 7000, upper: 8600 }, "legume"))).toBe("science/no-weed-statement");
});
