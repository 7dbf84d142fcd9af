/**
 * Source: Wilhelm et al. 2007, Agronomy Journal 99: 1665-1667.
 * Mark: published (5.25 and 7.90 Mg/ha of stover hold soil carbon, of a span of 5.25 to 12.50); from memory (which
 * figure is for which system); computed here by hand (what could leave).
 */
import { expect, it } from "vitest";
import { carbonFloor } from "../../src/science/straw/carbon-floor.ts";
import { couldLeave } from "../../src/science/straw/could-leave.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";

it.each([
  ["continuous-maize", 5250],
  ["maize-soybean", 7900],
] as const)("%s: %i kg/ha is the middle", (rotation, kg) => {
  expect(reached(carbonFloor({ rotation, tillage: "no-till-or-chisel" })).middle).toBe(kg);
});

it("8.45 Mg/ha grown less 5.25: 3.20 could leave, 37.9 % (computed by hand)", () => {
  const could = reached(
    couldLeave({
      grown: kgPerHa(8450),
      loss: own(0, "1", "loss"),
      needed: kgPerHa(0),
      carbonFloor: kgPerHa(5250),
    }),
  );
  expect(could.couldLeave.middle).toBe(3200);
  expect(100 * could.share.middle).toBeCloseTo(37.9, 1);
});

it("says nothing of any other crop or system", () => {
  expect(reasonOf(carbonFloor({ rotation: "other", tillage: "no-till-or-chisel" }))).toBe(
    "science/no-carbon-floor",
  );
  expect(reasonOf(carbonFloor({ rotation: "continuous-maize", tillage: "other" }))).toBe(
    "science/no-carbon-floor",
  );
});
