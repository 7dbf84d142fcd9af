/**
 * Source: Karlen (USDA-ARS), stover that holds soil carbon under conservation tillage, as a trade journal prints it.
 * Mark: published (2.3 and 3.5 short tons per acre).
 */
import { expect, it } from "vitest";
import { carbonFloor } from "../../src/science/straw/carbon-floor.ts";
import { reached } from "../unit/science/counts.ts";

const KG_PER_HA_PER_TON_PER_AC = 2241.702;

it.each([
  ["continuous-maize", 2.3],
  ["maize-soybean", 3.5],
] as const)("%s: %f tons per acre are the low end", (rotation, tons) => {
  const floor = reached(carbonFloor({ rotation, tillage: "no-till-or-chisel" }));
  expect(floor.low).toBeCloseTo(tons * KG_PER_HA_PER_TON_PER_AC, -1);
});
