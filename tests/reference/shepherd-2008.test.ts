/**
 * Source: Shepherd et al. 2008, Visual soil assessment, FAO.
 * Mark: from memory (15 and 30 in a 20 cm cube).
 */
import { expect, it } from "vitest";
import { guideOf, levelsOf } from "./guide-levels.ts";

it("few below 15, many above 30", () => {
  expect(guideOf("soil-cube-2008").mark).toBe("not-checked");
  const levels = levelsOf("soil-cube-2008", { sideM: 0.2, depthM: 0.2 }, [14.5, 15, 30, 30.5]);
  expect(levels).toEqual(["few", "middling", "middling", "many"]);
});

it("disagrees with a levy board: the same hole of 20 × 20 × 20 cm is many from 8 on there and from 30 on here", () => {
  const many = (id: "soil-cube-2008" | "levy-board"): number =>
    guideOf(id).levels.find(({ says }) => says === "many")?.from ?? 0;
  expect(many("soil-cube-2008") / many("levy-board")).toBeCloseTo(3.75, 12);
});
