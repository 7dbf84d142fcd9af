/**
 * Source: Dickey et al. 1984, Transactions of the ASAE 27: 1093.
 * Mark: published (abstract: 20 % cover and more took 50 % and more off, against the mouldboard).
 */
import { expect, it } from "vitest";
import { erosionExponent, lossByRain } from "../../src/science/residue/erosion.ts";
import { reached } from "../unit/science/counts.ts";
import { share } from "../unit/science/straw/figures.ts";

it.each([0.2, 0.3, 0.5])("a cover of %f takes half or more off in the middle of the range", (cover) => {
  const loss = reached(lossByRain(share(cover), erosionExponent(), 6.096));
  expect(loss.middle).toBeLessThanOrEqual(0.5);
});
