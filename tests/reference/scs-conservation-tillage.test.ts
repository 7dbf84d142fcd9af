/**
 * Soil Conservation Service definition of conservation tillage (published) as printed in University of Nebraska-Lincoln
 * G-20 (1990): at least 30 % of the surface covered by residue after planting.
 */
import { expect, it } from "vitest";
import { TARGETS } from "../../src/science/ground-cover/targets.ts";

it("is offered as a target of residue after planting", () => {
  const target = TARGETS.find(({ id }) => id === "conservation-tillage");
  expect(target).toMatchObject({
    share: 0.3,
    kind: "residue",
    when: "after-planting",
    source: "nebraska-g20",
  });
});
