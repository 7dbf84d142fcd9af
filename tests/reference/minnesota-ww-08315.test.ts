/**
 * Source: University of Minnesota Extension, WW-08315, tillage and residue.
 * Mark: published (mouldboard and one or two secondary passes often leave under 10 %).
 */
import { expect, it } from "vitest";
import { coverAfterPasses, leftByPass } from "../../src/science/residue/passes.ts";
import { reached } from "../unit/science/counts.ts";
import { share } from "../unit/science/straw/figures.ts";

it("mouldboard and two passes stay under 10 % even at the high end (Minnesota)", () => {
  const passes = (["mouldboard-plough", "tandem-disc-finishing", "planter-double-disc"] as const).map(
    (pass) => leftByPass(pass, "non-fragile"),
  );
  expect(reached(coverAfterPasses(share(0.95), passes)).high).toBeLessThan(0.1);
});
