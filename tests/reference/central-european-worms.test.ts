/**
 * Source: a soil fertility guide of organic research in Central Europe.
 * Mark: published (120 to 140 worms per m² are good cropland).
 */
import { expect, it } from "vitest";
import { guideOf, levelsOf } from "./guide-levels.ts";

it("120 per m² are good", () => {
  expect(guideOf("central-europe").mark).toBe("published");
  const levels = levelsOf("central-europe", { sideM: 0.5, depthM: 0.3 }, [29.5, 30, 35]);
  expect(levels).toEqual(["below-good", "good", "good"]);
});
