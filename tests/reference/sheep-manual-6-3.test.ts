/**
 * Source: Making more from sheep, manual of the Australian wool and meat levy bodies, tool 6.3.
 * Mark: published.
 */
import { expect, it } from "vitest";
import { guideOf, levelsOf } from "./guide-levels.ts";

it("above 10 in 20 × 20 cm, 10 cm deep, is high", () => {
  expect(guideOf("pasture-10-cm").mark).toBe("published");
  const levels = levelsOf("pasture-10-cm", { sideM: 0.2, depthM: 0.1 }, [10, 10.5]);
  expect(levels).toEqual(["not-high", "high"]);
});
