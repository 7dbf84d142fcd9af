/**
 * Source: AHDB, How to count earthworms.
 * Mark: from memory (fewer than 4, 4 to 8, more than 8 in a 20 cm cube of arable land).
 */
import { expect, it } from "vitest";
import { guideOf, levelsOf } from "./guide-levels.ts";

it("few below 4, many above 8", () => {
  expect(guideOf("levy-board").mark).toBe("not-checked");
  const levels = levelsOf("levy-board", { sideM: 0.2, depthM: 0.2 }, [3.5, 4, 8, 8.5]);
  expect(levels).toEqual(["few", "middling", "middling", "many"]);
});
