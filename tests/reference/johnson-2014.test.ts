/**
 * Source: Johnson et al. 2014, BioEnergy Research, doi 10.1007/s12155-013-9402-8.
 * Mark: published (abstract: 3.6 dry tons of stover per acre on average, very variable).
 */
import { expect, it } from "vitest";
import { carbonFloor } from "../../src/science/straw/carbon-floor.ts";
import { reached } from "../unit/science/counts.ts";

it.each(["continuous-maize", "maize-soybean"] as const)(
  "%s: 3.6 tons per acre are the high end",
  (rotation) => {
    const floor = reached(carbonFloor({ rotation, tillage: "no-till-or-chisel" }));
    expect(floor.high).toBeCloseTo(3.6 * 2241.702, -1);
  },
);
