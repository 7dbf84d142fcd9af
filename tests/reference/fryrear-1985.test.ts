/**
 * Source: Fryrear 1985, Transactions of the ASAE 28: 781-784.
 * Mark: published (abstract: soil lost by wind `1.81·exp(−0.072·C)` of bare ground, 8 to 80 % cover; 20 % cover takes
 * 57 % off); computed here by hand from the printed curve (the other covers).
 */
import { expect, it } from "vitest";
import { lossByWind } from "../../src/science/residue/erosion.ts";
import { reached } from "../unit/science/counts.ts";
import { share } from "../unit/science/straw/figures.ts";

it("20 % cover: 0.4288, 57 % less, as printed", () => {
  const loss = reached(lossByWind(share(0.2)));
  expect(loss.middle).toBeCloseTo(0.4288, 4);
  expect(Math.round(100 * (1 - loss.middle))).toBe(57);
});

it("5 % cover is held at bare ground, where the curve says 1.263, and the range of the curve is named", () => {
  const loss = reached(lossByWind(share(0.05)));
  expect(loss.middle).toBe(1);
  expect(loss.cautions).toContainEqual({
    code: "science/outside-published-range",
    facts: { from: 8, to: 80 },
  });
});

it.each([
  // By hand from the printed curve.
  [0.1, 0.881],
  [0.4, 0.1016],
  [0.6, 0.0241],
  [0.8, 0.0057],
])("%f cover: %f", (cover, ratio) => {
  expect(reached(lossByWind(share(cover))).middle).toBeCloseTo(ratio, 4);
});
