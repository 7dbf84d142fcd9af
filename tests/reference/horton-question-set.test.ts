/**
 * Source: a public question set on Horton's curve, f0 8, fc 0.5 cm/h, k 0.4 per h.
 * Mark: published (answers).
 */
import { expect, it } from "vitest";
import { capacityOf } from "../../src/science/infiltration/models/line.ts";

it("3.870 and 1.515 cm/h after 2 and 5 h, 7.387 cm in between", () => {
  const { depthAt, rateAt } = capacityOf({ kind: "horton", f0: 80, fc: 5, k: 0.4 });
  expect(rateAt(2) / 10).toBeCloseTo(3.87, 3);
  expect(rateAt(5) / 10).toBeCloseTo(1.515, 3);
  expect((depthAt(5) - depthAt(2)) / 10).toBeCloseTo(7.387, 3);
});
