/**
 * Source: Steiner et al. 1994, Agronomy Journal 86: 76-81, standing stems.
 * Mark: published (abstract: rates and 17.5 decomposition days before the first stem falls); computed here by hand
 * (shares standing).
 */
import { expect, it } from "vitest";
import { stemsStanding } from "../../src/science/residue/stems.ts";
import { reached } from "../unit/science/counts.ts";
import { own } from "../unit/science/straw/figures.ts";

it.each([
  ["winter-wheat", 15, 1],
  ["winter-wheat", 20, 0.6554],
  ["oats", 20, 0.4916],
  // Half of the stems are down, by hand from the printed rates.
  ["oats", 19.94, 0.5],
  ["barley", 21.44, 0.5],
  ["winter-wheat", 21.6, 0.5],
  ["spring-wheat", 23.48, 0.5],
] as const)("%s after %f decomposition days: %f", (crop, days, standing) => {
  expect(reached(stemsStanding(crop, own(days, "d", "decay-rate"))).middle).toBeCloseTo(standing, 3);
});
