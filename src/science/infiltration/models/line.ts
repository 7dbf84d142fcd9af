/** Any curve that a model can come out as: plain data, so that it can be kept and handed to a worker. */
import type { Capacity } from "./capacity.ts";
import { type GreenAmptLine, greenAmptCapacity } from "./green-ampt-curve.ts";
import { type HortonLine, hortonCapacity } from "./horton-curve.ts";
import { type PowerLine, powerCapacity } from "./power-curve.ts";
import { type StepLine, stepCapacity } from "./step-curve.ts";
import { type TwoTermLine, twoTermCapacity } from "./two-term-curve.ts";

export type Line = PowerLine | TwoTermLine | HortonLine | GreenAmptLine | StepLine;

/**
 * What soil takes in along a curve.
 *
 * @example
 * capacityOf({ kind: "two-term", s: 10, a: 2 }).depthAt(4) // => 28
 */
export const capacityOf = (line: Line): Capacity => {
  switch (line.kind) {
    case "power":
      return powerCapacity(line);
    case "two-term":
      return twoTermCapacity(line);
    case "horton":
      return hortonCapacity(line);
    case "green-ampt":
      return greenAmptCapacity(line);
    case "step":
      return stepCapacity(line);
  }
};
