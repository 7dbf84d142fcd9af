/**
 * Source: Wells et al. 2016, Renewable Agriculture and Food Systems.
 * Mark: published (abstract: rye above 9,000 kg/ha).
 */
import { expect, it } from "vitest";
import { WEED_STATEMENTS, weedSuppression } from "../../src/science/cover-crop/weeds.ts";
import { reached } from "../unit/science/counts.ts";

it("is offered as printed", () => {
  expect(WEED_STATEMENTS.find((one) => one.source === "wells-2016")?.fromKgPerHa).toBe(9000);
});

it("8,600 kg/ha at most is below it", () => {
  const { statements } = reached(weedSuppression({ lower: 7000, upper: 8600 }, "grass"));
  expect(statements.find(({ source }) => source === "wells-2016")?.mass).toBe("below");
});
