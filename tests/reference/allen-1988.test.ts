/**
 * Source: Allen 1988, Straw recovery as affected by wheat harvest method.
 * Mark: published (abstract: hand-threshed wheat is 40 parts grain, 50 straw, 10 chaff; at about 36 cm, stubbles of
 * 1700 to 3400 kg/ha for grain yields of 3400 to 6700).
 *
 * A length of straw of 0.85 m is assumed here.
 */
import { expect, it } from "vitest";
import { shareBelow, stemShape } from "../../src/science/residue/cutting-height.ts";
import { chaffShare } from "../../src/science/straw/leave-as.ts";
import { reached } from "../unit/science/counts.ts";
import { metres } from "../unit/science/straw/figures.ts";

it.each([
  // Straw is 50/40 of the grain.
  ["wheat of 3400 kg/ha", 0.36, 0.85, 1700 / ((3400 * 50) / 40)],
  ["wheat of 6700 kg/ha", 0.36, 0.85, 3400 / ((6700 * 50) / 40)],
])("%s, cut at %f m: the range holds %f", (_, cut, length, measured) => {
  const below = reached(shareBelow(metres(cut), { length: metres(length), shape: stemShape() }));
  expect(measured).toBeGreaterThanOrEqual(below.low - 0.005);
  expect(measured).toBeLessThanOrEqual(below.high + 0.005);
});

it("chaff is 10 of the 60 parts that are not grain", () => {
  expect(chaffShare().middle).toBeCloseTo(10 / 60, 12);
});
