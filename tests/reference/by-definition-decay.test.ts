/**
 * Source: the definition of first-order loss, `exp(−k·days)`, with a half-life of ln 2/k.
 * Mark: computed here by hand (rates per decomposition day as models of residue decay have them, from memory).
 */
import { expect, it } from "vitest";
import { decompositionDays, lossAfter, massLeft } from "../../src/science/residue/decay.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";

it.each([
  ["maize", 0.0065, 107],
  ["wheat", 0.0085, 82],
  ["sorghum", 0.0074, 94],
  ["soybean", 0.013, 53],
])("%s", (_, rate, days) => {
  const loss = reached(lossAfter(own(rate, "/d", "decay-rate"), own(days, "d", "decay-rate")));
  expect(loss.middle).toBeCloseTo(0.5, 2);
});

it("8450 kg/ha of maize, 40 decomposition days at 0.0065: 6515 kg/ha", () => {
  const days = reached(decompositionDays(new Array<number>(40).fill(33), own(1, "1", "wetness")));
  const loss = reached(lossAfter(own(0.0065, "/d", "decay-rate"), days));
  expect(reached(massLeft(kgPerHa(8450), loss)).middle).toBeCloseTo(6515, 0);
});
