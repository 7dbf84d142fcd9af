/**
 * Source: University of Nebraska-Lincoln, G-20 (1990), conservation tillage.
 * Mark: published (with the definition of conservation tillage by the Soil Conservation Service printed in it).
 */
import { expect, it } from "vitest";
import { TARGETS } from "../../src/science/ground-cover/targets.ts";
import { erosionExponent, lossByRain } from "../../src/science/residue/erosion.ts";
import { reached } from "../unit/science/counts.ts";
import { share } from "../unit/science/straw/figures.ts";

it("is offered as a target of residue after planting", () => {
  const target = TARGETS.find(({ id }) => id === "conservation-tillage");
  expect(target).toMatchObject({
    share: 0.3,
    kind: "residue",
    when: "after-planting",
    source: "nebraska-g20",
  });
});

it("20 % cover halves what rain takes", () => {
  const at20 = reached(lossByRain(share(0.2), erosionExponent(), 6.096));
  expect(at20.low).toBeLessThanOrEqual(0.5);
  expect(at20.high).toBeGreaterThanOrEqual(0.5);
  expect(at20.middle).toBeCloseTo(0.5, 1);
});
