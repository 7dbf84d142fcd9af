/**
 * Source: Game & Wildlife Conservation Trust, advice for farmer clusters: earthworms.
 * Mark: published.
 */
import { expect, it } from "vitest";
import { guideOf, levelsOf } from "./guide-levels.ts";

it("a mean of 10 is good and 15 or more excellent", () => {
  expect(guideOf("farm-conservation").mark).toBe("published");
  const levels = levelsOf("farm-conservation", { sideM: 0.2, depthM: 0.3 }, [9.5, 10, 14.5, 15]);
  expect(levels).toEqual(["below-good", "good", "good", "excellent"]);
});
