/**
 * Source: Reynolds & Elrick 1990, Soil Science Society of America Journal 54: 1233-1241, steady single ring.
 * Mark: from memory (equation); computed here from it (values; centimetres there).
 */
import { expect, it } from "vitest";
import { ALPHA_PER_MM } from "../../src/science/infiltration/kfs/alpha.ts";
import { steadyRingKfs, twoHeadKfs } from "../../src/science/infiltration/kfs/steady-ring.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [10, 5, 10, 5, 0.36, 5.8008],
  [10, 5, 10, 5, 0.12, 4.4623],
  [10, 5, 10, 5, 0.04, 2.637],
  [10, 5, 10, 5, 0.01, 0.9283],
  [6, 2.54, 7.5, 7.5, 0.12, 3.1202],
  [0.5, 10, 15, 10, 0.12, 0.2518],
])("q %d cm/h, H %d, a %d, d %d cm, α* %d per cm", (q, head, radius, depth, alpha, expected) => {
  const ring = { radiusMm: 10 * radius, insertionMm: 10 * depth };
  const kfs = steadyRingKfs({ mmPerH: 10 * q, headMm: 10 * head }, ring, alpha / 10, null);
  expect(reached(kfs).value / 10).toBeCloseTo(expected, 4);
});

it("two heads give back the conductivity and α* that one-head rates were made from", () => {
  const ring = { radiusMm: 100, insertionMm: 50 };
  const g = 107.442;
  const rateAt = (headMm: number): number => 44.623 * (headMm / g + 1 / (0.012 * g) + 1);
  const rates = [50, 150].map((headMm) => ({ mmPerH: rateAt(headMm), headMm }));
  const [low, high] = rates;
  if (low === undefined || high === undefined) throw new Error("two rates");
  const { kfs, alphaPerMm } = reached(twoHeadKfs([high, low], ring, null));
  expect(kfs.value).toBeCloseTo(44.623, 2);
  expect(reached(alphaPerMm)).toBeCloseTo(0.012, 5);
});

it("a timed inch reads 1.34, 1.80, 3.19 and 9.46 times the conductivity, by kind of soil", () => {
  const ring = { radiusMm: 76.2, insertionMm: 76.2 };
  const times = Object.values(ALPHA_PER_MM)
    .map((alpha) => 100 / reached(steadyRingKfs({ mmPerH: 100, headMm: 12.7 }, ring, alpha, null)).value)
    .sort((a, b) => a - b);
  for (const [at, expected] of [1.34, 1.8, 3.19, 9.46].entries()) expect(times[at]).toBeCloseTo(expected, 2);
});
