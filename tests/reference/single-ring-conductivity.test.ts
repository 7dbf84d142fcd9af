/**
 * Conductivity from single rings. Equations from memory: Philip 1992 and Bagarello, Iovino & Elrick 2004
 * (simplified falling head; its values were proved by integrating the curve of Green and Ampt under a falling head
 * with an ODE solver), Reynolds & Elrick 1990 (steady single ring), the simplified Beerkan methods of 2014
 * (transient) and 2017 (steady). Values computed independently from these equations; centimetres there.
 */
import { describe, expect, it } from "vitest";
import { ALPHA_PER_MM } from "../../src/science/infiltration/kfs/alpha.ts";
import { steadyBeerkanKfs, transientBeerkanKfs } from "../../src/science/infiltration/kfs/beerkan.ts";
import { fallingHeadKfs } from "../../src/science/infiltration/kfs/falling-head.ts";
import { steadyRingKfs, twoHeadKfs } from "../../src/science/infiltration/kfs/steady-ring.ts";
import { reached } from "../unit/science/counts.ts";

describe("simplified falling head", () => {
  it.each([
    [2.54, 0.25, 0.12, 10, 4.92055],
    [5, 0.3, 0.12, 30, 4.02272],
    [1, 0.35, 0.36, 1, 17.22792],
  ])("%d cm, room %d, α* %d per cm, %d min", (depth, moistureGap, alpha, minutes, expected) => {
    const pour = { pouredMm: 10 * depth, minutes, moistureGap, alphaPerMm: alpha / 10, insertionMm: 300 };
    expect(reached(fallingHeadKfs(pour, null)).value / 10).toBeCloseTo(expected, 4);
  });
});

describe("steady single ring", () => {
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
    for (const [at, expected] of [1.34, 1.8, 3.19, 9.46].entries())
      expect(times[at]).toBeCloseTo(expected, 2);
  });
});

describe("Beerkan runs: the two equations are not the same", () => {
  const TABLE = [
    [7.5, 0.12, 1.98216, 2.515],
    [7.5, 0.04, 5.01247, 5.545],
    [7.5, 0.36, 0.97205, 1.505],
    [15, 0.12, 1.22458, 1.7575],
  ] as const;
  /** A run with a known slope of F/√t against √t, in mm/h. */
  const run = (slope: number) =>
    [2, 5, 10, 20, 40, 60].map((atMin) => {
      const hours = atMin / 60;
      return { atMin, mm: 20 * Math.sqrt(hours) + slope * hours };
    });

  it.each(TABLE)("r %d cm, α* %d per cm", (radius, alpha, transient, steady) => {
    const ring = { radiusMm: 10 * radius, insertionMm: 10 };
    expect(100 / reached(steadyBeerkanKfs(100, ring, alpha / 10, null)).value).toBeCloseTo(steady, 4);
    expect(100 / reached(transientBeerkanKfs(run(100), ring, alpha / 10, null)).value).toBeCloseTo(
      transient,
      4,
    );
    expect(steady / transient).toBeGreaterThan(1.1);
  });

  it("10 cm/h in a ring of 7.5 cm radius: 3.9761 cm/h, and 27 % more by the wrong one", () => {
    const ring = { radiusMm: 75, insertionMm: 10 };
    const steady = reached(steadyBeerkanKfs(100, ring, 0.012, null)).value;
    const transient = reached(transientBeerkanKfs(run(100), ring, 0.012, null)).value;
    expect(steady / 10).toBeCloseTo(3.9761, 4);
    expect(transient / steady).toBeCloseTo(1.27, 2);
  });
});
