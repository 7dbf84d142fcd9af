/**
 * Stover that holds soil carbon. Wilhelm et al. 2007, Agronomy Journal 99: 1665-1667: 5.25 to 12.50 Mg/ha. Karlen
 * (USDA-ARS): 2.3 and 3.5 short tons per acre under conservation tillage. Johnson et al. 2014: 3.6 dry tons per acre on
 * average, very variable. The split by tillage is from memory.
 */
import { expect, it } from "vitest";
import { carbonFloor } from "../../src/science/straw/carbon-floor.ts";
import { couldLeave } from "../../src/science/straw/could-leave.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";

const TON_PER_AC = 2241.702;

it.each([
  ["continuous-maize", 2.3, 5250],
  ["maize-soybean", 3.5, 7900],
] as const)("%s: %f tons per acre and %i kg/ha lie in the range", (rotation, tons, kg) => {
  const floor = reached(carbonFloor({ rotation, tillage: "no-till-or-chisel" }));
  expect(floor.low).toBeCloseTo(tons * TON_PER_AC, -1);
  expect(floor.middle).toBe(kg);
  expect(floor.high).toBeCloseTo(3.6 * TON_PER_AC, -1);
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
