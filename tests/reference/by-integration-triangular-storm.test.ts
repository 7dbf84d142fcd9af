/**
 * Source: the definition of a triangular storm over a capacity by depth.
 * Mark: computed here with NumPy and SciPy 1.17: 200,000 steps of a midpoint rule (20,000 for Horton's curve).
 */
import { expect, it } from "vitest";
import { capacityOf, type Line } from "../../src/science/infiltration/models/line.ts";
import { triangularRain } from "../../src/science/storm/rain.ts";
import { absorb } from "../../src/science/storm/time-compression.ts";
import { reached } from "../unit/science/counts.ts";

const siltLoam: Line = { kind: "green-ampt", k: 6.5, m: 56.712 };

it.each([
  ["silt loam, 60 mm in 90 min, peak at 40 %", siltLoam, 60, 90, 0.4, 34.00263, 21.791],
  ["silt loam, 120 mm in 60 min, peak in the middle", siltLoam, 120, 60, 0.5, 29.17382, 9.121],
  [
    "a published test by Horton's curve, 200 mm in 90 min, peak at 40 %",
    { kind: "horton", f0: 232.05366, fc: 34.13217, k: 3.944009 },
    200,
    90,
    0.4,
    92.02073,
    20.277,
  ],
  [
    "a two-term curve, 100 mm in 60 min, peak at the beginning",
    { kind: "two-term", s: 60.68277, a: 10 },
    100,
    60,
    0.001,
    65.07154,
    3.2844,
  ],
] as const)("%s", (_name, line, depth, minutes, peak, soaked, ponds) => {
  const storm = absorb(reached(triangularRain(depth, minutes, peak)), capacityOf(line), []);
  expect(Math.abs(storm.soakedMm - soaked)).toBeLessThan(0.01);
  expect(Math.abs((storm.pondsAtMin ?? 0) - ponds)).toBeLessThan(0.2);
});
