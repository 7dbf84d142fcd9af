/** How much straw stays in the stubble at a cutting height. */
import { ok, type Result } from "../../record/result.ts";
import { assumed, type Limits, type Ranged, ranged, usable } from "./ranged.ts";

const LENGTH: Limits = { unit: "m", least: 0.05, most: 4 };
const HEIGHT: Limits = { unit: "m", least: 0, most: 4 };
const SHAPE: Limits = { unit: "1", least: 0.3, most: 5 };
const SHARE: Limits = { unit: "1", least: 0, most: 1 };

/**
 * How the mass of stems lies over their length: 1 even, above 1 heavier below. The middle and the high end give
 * the 22 % and 31 % of straw in a stubble of 15 cm that were measured for winter wheat and spring barley, with
 * stems of 0.80 m and 0.65 m; the low end about the 40 % in a stubble of 36 cm of wheat with stems of 0.85 m.
 * The lengths of those stems are assumed here.
 *
 * @example
 * stemShape().middle // => 1.2
 */
export const stemShape = (): Ranged =>
  assumed("stem-shape", { low: 0.9, middle: 1.2, high: 1.5 }, "1", "stubble-share");

/** Length of the straw and how its mass lies. */
export interface Stems {
  /** From the ground to the ear, in m, as measured before harvest. */
  readonly length: Ranged;
  readonly shape: Ranged;
}

/**
 * Share of the straw that stands below a cutting height: `s = 1 − (1 − z/H)^q`.
 *
 * @param cutM in m, 0 or more
 * @returns a share, 0 at the ground, 1 when the cut is above the straw; `science/not-a-range` for a height
 * outside 0 to 4 m, a length outside 0.05 to 4 m, a shape outside 0.3 to 5
 *
 * Source: measured shares in "Vertical distribution of dry mass in cereals straw" and Allen 1988; the curve
 * between them is a rule of this product.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const length = assumed("straw-length", exactly(0.8), "m", "yours");
 * shareBelow(assumed("straw-length", exactly(0.15), "m", "yours"), { length, shape: stemShape() }).value.middle // => ≈ 0.22
 */
export const shareBelow = (cutM: Ranged, { length, shape }: Stems): Result<Ranged> => {
  const good = usable([
    [cutM, HEIGHT],
    [length, LENGTH],
    [shape, SHAPE],
  ]);
  if (!good.ok) return good;
  const below = (height: number, straw: number, bent: number): number =>
    1 - (1 - Math.min(1, height / straw)) ** bent;
  return ok(
    ranged(
      [
        below(cutM.low, length.high, shape.low),
        below(cutM.middle, length.middle, shape.middle),
        below(cutM.high, length.low, shape.high),
      ],
      "1",
      { from: [cutM, length, shape], method: "cutting-height" },
    ),
  );
};

/**
 * The cutting height that leaves a share of the straw standing: `z = H·(1 − (1 − s)^(1/q))`.
 *
 * @returns m, from 0 to the length of the straw; reasons as `shareBelow`
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const stems = { length: assumed("straw-length", exactly(0.8), "m", "yours"), shape: assumed("stem-shape", exactly(1), "1", "yours") };
 * cutFor(assumed("mass", exactly(0.5), "1", "yours"), stems).value.middle // => ≈ 0.4
 */
export const cutFor = (share: Ranged, { length, shape }: Stems): Result<Ranged> => {
  const good = usable([
    [share, SHARE],
    [length, LENGTH],
    [shape, SHAPE],
  ]);
  if (!good.ok) return good;
  const cut = (part: number, straw: number, bent: number): number => straw * (1 - (1 - part) ** (1 / bent));
  return ok(
    ranged(
      [
        cut(share.low, length.low, shape.high),
        cut(share.middle, length.middle, shape.middle),
        cut(share.high, length.high, shape.low),
      ],
      "m",
      {
        from: [share, length, shape],
        method: "cutting-height",
      },
    ),
  );
};
