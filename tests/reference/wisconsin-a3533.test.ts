/**
 * Source: University of Wisconsin Extension, A3533, estimating residue with the line transect.
 * Mark: published.
 */
import { expect, it } from "vitest";
import { erosionExponent, lossByRain } from "../../src/science/residue/erosion.ts";
import { reached } from "../unit/science/counts.ts";
import { own, share } from "../unit/science/straw/figures.ts";

it("30 % cover halves what rain takes, an exponent of 0.0231", () => {
  const at30 = reached(lossByRain(share(0.3), own(0.0231, "1", "erosion-exponent"), 6.096));
  expect(at30.middle).toBeCloseTo(0.5, 2);
  // The range offered begins with an exponent of 0.025 and ends just short of the half printed here, as its docstring says.
  const { high } = reached(lossByRain(share(0.3), erosionExponent(), 6.096));
  expect(high).toBeCloseTo(0.472, 3);
});
