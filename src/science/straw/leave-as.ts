/** What could leave, as something that can be done: a cutting height, one swath in n, one year in n. */
import { ok, type Result } from "../../record/result.ts";
import { MOST_IN } from "../constants/straw.ts";
import type { Caution, Worked } from "../estimate.ts";
import { type Stems, shareBelow } from "../residue/cutting-height.ts";
import {
  type Assumption,
  assumed,
  behind,
  type Limits,
  type Ranged,
  ranged,
  usable,
} from "../residue/ranged.ts";

const SHARE: Limits = { unit: "1", least: 0, most: 1 };
const PART: Limits = { unit: "1", least: 0, most: 0.95 };
const TAKEN: Limits = { unit: "1", least: 0.05, most: 1 };

/**
 * Share of all that grew, grain aside, that is chaff: 10 of the 60 parts that were not grain in hand-threshed wheat.
 *
 * Source: Allen 1988, wheat; the ends are a rule of this product.
 *
 * @example
 * chaffShare().middle // => ≈ 0.167
 */
export const chaffShare = (): Ranged =>
  assumed("chaff", { low: 0.1, middle: 1 / 6, high: 0.25 }, "1", "allen-1988");

/**
 * Share of the straw in the swath that a baler picks up. From memory.
 *
 * @example
 * balerTakes() // => { low: 0.5, middle: 0.75, high: 0.95 }
 */
export const balerTakes = (): Ranged =>
  assumed("baler-takes", { low: 0.5, middle: 0.75, high: 0.95 }, "1", "baler-takes");

/** How the straw is usually taken. */
export interface Taking {
  /** Usual cutting height in m. */
  readonly cut: Ranged;
  readonly stems: Stems;
  /** Share of all that grew that is chaff and stays. */
  readonly chaff: Ranged;
  /** Share of the swath that the baler picks up. */
  readonly baler: Ranged;
}

/** What may be done at one end of the range. Null means: leave all. */
export interface Doing {
  /** Share of all that grew that could leave. */
  readonly share: number;
  /** Bale every swath, cut at this height in m or higher. */
  readonly cutM: number | null;
  /** Or cut as usual and bale one swath in so many; 1 is every swath. */
  readonly oneSwathIn: number | null;
  /** Or bale all of it in one year of so many. */
  readonly oneYearIn: number | null;
}

/** The low end first. */
export interface LeaveAs extends Worked {
  readonly low: Doing;
  readonly middle: Doing;
  readonly high: Doing;
  /** Share of all that grew that a usual baling carries off. */
  readonly usualTake: Ranged;
  readonly assumptions: readonly Assumption[];
}

const oneIn = (usual: number, allowed: number): number | null => {
  if (allowed <= 0) return null;
  // Rounding must not turn "every second swath" into every third.
  const n = Math.max(1, Math.ceil(usual / allowed - 1e-9));
  return n > MOST_IN ? null : n;
};

/**
 * Three ways of taking no more than could leave; any one of them does.
 *
 * A baling carries `(1 − c)(1 − s)·p` of all that grew: no chaff, nothing below the cut, not what the baler misses.
 * The cut that carries off just the share x stands at `1 − s = x/((1 − c)·p)`, never below the usual one. One
 * swath, or one year, in `n = ⌈take/x⌉`. The low end reckons with a baler that takes much and stems that are
 * light below, so that it errs towards leaving straw.
 *
 * @param share share of all that grew that could leave, as `couldLeave` gave it
 * @param taking how it is usually taken
 * @returns null for a way when nothing could leave, or when it would be less than one in 20. Reasons as
 * `shareBelow`; `science/not-a-range` for a share outside 0 to 1, chaff above 0.95 or a baler that takes less than 5 %
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const figure = (value, unit) => assumed("mass", exactly(value), unit, "yours");
 * const stems = { length: figure(0.8, "m"), shape: figure(1, "1") };
 * const taking = { cut: figure(0.1, "m"), stems, chaff: figure(0, "1"), baler: figure(1, "1") };
 * leaveAs(figure(0.5, "1"), taking).value.middle // => { cutM: 0.4, oneSwathIn: 2, oneYearIn: 2 }
 */
export const leaveAs = (share: Ranged, { cut, stems, chaff, baler }: Taking): Result<LeaveAs> => {
  const good = usable([
    [share, SHARE],
    [chaff, PART],
    [baler, TAKEN],
  ]);
  if (!good.ok) return good;
  const stubble = shareBelow(cut, stems);
  if (!stubble.ok) return stubble;
  const take = (part: number, below: number, picked: number): number => (1 - part) * (1 - below) * picked;
  const usualTake = ranged(
    [
      take(chaff.high, stubble.value.high, baler.low),
      take(chaff.middle, stubble.value.middle, baler.middle),
      take(chaff.low, stubble.value.low, baler.high),
    ],
    "1",
    { from: [stubble.value, chaff, baler], method: "leave-as" },
  );
  const { length, shape } = stems;
  const doing = (
    allowed: number,
    usual: number,
    swathed: number,
    straw: number,
    bent: number,
    usualCut: number,
  ): Doing => {
    const above = Math.min(1, allowed / swathed);
    const oneOf = oneIn(usual, allowed);
    return {
      share: allowed,
      cutM: allowed > 0 ? Math.max(usualCut, straw * (1 - above ** (1 / bent))) : null,
      oneSwathIn: oneOf,
      oneYearIn: oneOf,
    };
  };
  const cautions: Caution[] = [{ code: "science/short-in-the-year-of-baling", facts: {} }];
  if (share.low === 0) cautions.push({ code: "science/leave-all-at-the-low-end", facts: {} });
  return ok({
    low: doing(share.low, usualTake.high, (1 - chaff.low) * baler.high, length.high, shape.low, cut.high),
    middle: doing(
      share.middle,
      usualTake.middle,
      (1 - chaff.middle) * baler.middle,
      length.middle,
      shape.middle,
      cut.middle,
    ),
    high: doing(share.high, usualTake.low, (1 - chaff.high) * baler.low, length.low, shape.high, cut.low),
    usualTake,
    ...behind({ from: [share, usualTake], method: "leave-as", cautions }),
  });
};
