/**
 * Source: Vincenty 1975, Survey Review 23(176): 88-93, inverse formula.
 * Mark: computed here with it (vincenty.ts, which geodetic-test-line.test.ts checks on a printed line).
 *
 * It judges the short-distance formula.
 */
import { describe, expect, it } from "vitest";
import { distanceM, metresPerDegree } from "../../src/science/position/distance.ts";
import { reached } from "../unit/science/counts.ts";
import { vincentyM } from "./vincenty.ts";

const RADIANS = Math.PI / 180;

describe("short distances", () => {
  // Limits: what the docstring states, in metres; the comparison itself is good to a few micrometres.
  it.each([
    [1_000, 10, 0.000_02],
    [1_000, 60, 0.000_02],
    [1_000, 85, 0.000_2],
    [9_000, 10, 0.001],
    [9_000, 60, 0.004],
    [9_000, 85, 0.15],
  ])("%i m at %i° are right to %d m in every direction", (metres, latitudeDeg, limit) => {
    const { north, east } = metresPerDegree(latitudeDeg);
    const from = { latitudeDeg, longitudeDeg: 8 };
    for (let azimuth = 5; azimuth < 360; azimuth += 15) {
      const to = {
        latitudeDeg: latitudeDeg + (metres * Math.cos(azimuth * RADIANS)) / north,
        longitudeDeg: 8 + (metres * Math.sin(azimuth * RADIANS)) / east,
      };
      expect(Math.abs(reached(distanceM(from, to)) - vincentyM(from, to))).toBeLessThan(limit);
    }
  });
});
