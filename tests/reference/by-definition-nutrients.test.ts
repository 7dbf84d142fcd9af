/**
 * Source: the standard atomic weights of phosphorus, potassium and oxygen.
 * Mark: computed here (P is 0.436 of P₂O₅ and K 0.830 of K₂O, as printed on every bag).
 */
import { expect, it } from "vitest";
import { asElement } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";

it("P is 0.436 of P₂O₅ and K 0.830 of K₂O", () => {
  expect(reached(asElement("P2O5", 1))).toBeCloseTo(0.436, 3);
  expect(reached(asElement("K2O", 1))).toBeCloseTo(0.83, 3);
  expect(reached(asElement("N", 1))).toBe(1);
});
