/**
 * Source: Mirsky et al. 2013, Weed Technology 27: 193-203.
 * Mark: published (abstract: rolled rye above 8,000 kg/ha for annual weeds).
 */
import { expect, it } from "vitest";
import { WEED_STATEMENTS, weedSuppression } from "../../src/science/cover-crop/weeds.ts";
import { reached } from "../unit/science/counts.ts";
import { codesOf } from "../unit/science/figures.ts";

it("is offered as printed", () => {
  expect(WEED_STATEMENTS.find((one) => one.source === "mirsky-2013")?.fromKgPerHa).toBe(8000);
});

it("cannot tell for a range across 8,000 kg/ha, and speaks of annual weeds only", () => {
  const { statements, cautions } = reached(weedSuppression({ lower: 7000, upper: 8600 }, "grass"));
  expect(statements.find(({ source }) => source === "mirsky-2013")?.mass).toBe("cannot-tell");
  expect(codesOf(cautions)).toContain("science/weeds-annual-only");
});
