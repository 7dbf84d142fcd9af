/** The ring of a test: its sizes, how it stands, and how it is read. */
import type { Ring, Ruler } from "../../record/kinds/kit.ts";
import type { RingHeader, RingWay } from "../../record/kinds/observation.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import type { InRing, RulerReads } from "../../record/ring/entries.ts";
import { OUT_OF_ROUND, RULER_STEP_MM } from "../constants.ts";
import type { Caution } from "../estimate.ts";

/** From inside edge to inside edge in metres; the second one at right angles, null when not measured. */
export type Inside = readonly [number, number | null];

/** What the header and the kit say together; put together anew at every reading, so a corrected kit corrects. */
export interface RingSet {
  readonly way: RingWay;
  readonly rulerReads: RulerReads;
  readonly insideM: Inside;
  /** The outer ring of a double ring. */
  readonly outerInsideM: Inside | null;
  /** From outside edge to outside edge of the inner ring of a double ring. */
  readonly innerOutsideM: number | null;
  /** Smallest step of the ruler in millimetres. */
  readonly stepMm: number;
  /** From the rim down to the ground, and from the lower edge to the rim, at up to four places round. */
  readonly rimToSoilM: readonly number[];
  readonly heightsM: readonly number[];
}

/**
 * The ring of a test from its header and its kit. A ruler that nobody named reads whole millimetres (common
 * practice, no source).
 */
export const ringSetOf = (
  header: Pick<RingHeader, "way" | "rulerReads" | "rimToSoilM">,
  kit: { readonly ring: Ring; readonly outer: Ring | null; readonly ruler: Ruler | null },
): RingSet => ({
  way: header.way,
  rulerReads: header.rulerReads,
  insideM: kit.ring.insideM,
  outerInsideM: kit.outer?.insideM ?? null,
  innerOutsideM: kit.ring.outsideM,
  stepMm: kit.ruler === null ? RULER_STEP_MM : kit.ruler.stepM * 1000,
  rimToSoilM: header.rimToSoilM,
  heightsM: kit.ring.heightsM,
});

const isLength = (value: number): boolean => Number.isFinite(value) && value > 0;

/**
 * Inside area of a ring from two diameters at right angles, as an ellipse: `A = π·d₁·d₂/4`. With one
 * diameter as a circle.
 *
 * @param insideM metres
 * @returns square metres; `science/not-a-ring` for a diameter that is 0, negative or not finite
 *
 * @example
 * insideAreaM2([0.1524, null]).value // => ≈ 0.018241
 */
export const insideAreaM2 = ([first, second]: Inside): Result<number> => {
  const across = second ?? first;
  if (!(isLength(first) && isLength(across))) return failed("science/not-a-ring");
  const areaM2 = (Math.PI * first * across) / 4;
  return isLength(areaM2) ? ok(areaM2) : failed("science/not-a-ring");
};

/**
 * The diameter of the round ring that is as large.
 *
 * @returns metres; `science/not-a-ring` as `insideAreaM2`
 *
 * @example
 * roundDiameterM([0.16, 0.25]).value // => ≈ 0.2
 */
export const roundDiameterM = (inside: Inside): Result<number> => {
  const area = insideAreaM2(inside);
  return area.ok ? ok(Math.sqrt((4 * area.value) / Math.PI)) : area;
};

/**
 * By how much two measures of a ring at right angles differ, when that is more than a round ring would.
 *
 * @returns a share of the smaller one; null when it is round, or one was not measured or is no length
 *
 * @example
 * outOfRoundShare([0.3, 0.31]) // => ≈ 0.0333
 */
export const outOfRoundShare = ([first, second]: readonly [number | null, number | null]): number | null => {
  if (first === null || second === null || !(isLength(first) && isLength(second))) return null;
  const smaller = Math.min(first, second);
  const share = Math.abs(first - second) / smaller;
  // A hair more, so that 30 cm and 30.6 cm are not told apart from 2 % by the last bit.
  return share > OUT_OF_ROUND + 1e-9 && Number.isFinite(share) ? share : null;
};

/** The sizes that areas are worked out from. */
export type Sizes = Pick<RingSet, "insideM" | "outerInsideM" | "innerOutsideM">;

/** An area and what to say beside it. */
export interface RingArea {
  readonly areaM2: number;
  readonly cautions: readonly Caution[];
}

/**
 * The area that water of one ring soaks into: inside the inner ring, or between the two rings (inside of the
 * outer less outside of the inner). An inner ring whose outside was not measured counts by its inside, which
 * makes the space between a little too large; that is said.
 *
 * @returns `science/not-a-ring` as `insideAreaM2`, or when the rings do not fit into each other;
 * `science/no-outer-ring` when there is none
 */
export const ringArea = (set: Sizes, ring: InRing): Result<RingArea> => {
  const inner = insideAreaM2(set.insideM);
  if (!inner.ok) return inner;
  const cautions: Caution[] = [];
  const roundness = (inside: Inside): void => {
    if (outOfRoundShare(inside) !== null)
      cautions.push({ code: "science/ring-out-of-round", facts: { percent: OUT_OF_ROUND * 100 } });
  };
  if (ring === "inner") {
    roundness(set.insideM);
    return ok({ areaM2: inner.value, cautions });
  }
  if (set.outerInsideM === null) return failed("science/no-outer-ring");
  const outer = insideAreaM2(set.outerInsideM);
  if (!outer.ok) return outer;
  roundness(set.outerInsideM);
  const wall = set.innerOutsideM === null ? inner : insideAreaM2([set.innerOutsideM, null]);
  if (!wall.ok) return wall;
  if (set.innerOutsideM === null) cautions.push({ code: "science/ring-wall-not-measured", facts: {} });
  const areaM2 = outer.value - Math.max(inner.value, wall.value);
  return isLength(areaM2) ? ok({ areaM2, cautions }) : failed("science/not-a-ring");
};

/** A reading of a ring in metres that is more than this is a slip of the pen. */
const FARTHEST_READING_M = 1000;

const meanOf = (values: readonly number[]): number | null => {
  if (values.length === 0 || !values.every((value) => Math.abs(value) <= FARTHEST_READING_M)) return null;
  return values.reduce((sum, value) => sum + value, 0) / values.length;
};

/** How a ring stands in the ground. */
export interface Standing {
  /** How deep it was driven in. */
  readonly insertionMm: Result<number>;
  /** Highest less lowest of the readings from rim to ground: a ring out of level, or uneven ground in it. */
  readonly outOfLevelMm: Result<number>;
}

/**
 * How deep a ring stands (mean height less mean reading from rim to ground) and how level.
 *
 * @returns per value `science/not-measured` when the readings for it are missing or not finite;
 * `science/ring-not-in-the-ground` when the rim lies higher over the ground than the ring is high
 *
 * @example
 * standingOf({ rimToSoilM: [0.07, 0.07], heightsM: [0.15] }).insertionMm.value // => ≈ 80
 */
export const standingOf = (set: Pick<RingSet, "rimToSoilM" | "heightsM">): Standing => {
  const rim = meanOf(set.rimToSoilM);
  const height = meanOf(set.heightsM);
  const insertion = rim === null || height === null ? null : (height - rim) * 1000;
  const many = set.rimToSoilM.length > 1 && rim !== null;
  return {
    insertionMm:
      insertion === null
        ? failed("science/not-measured")
        : insertion > 0
          ? ok(insertion)
          : failed("science/ring-not-in-the-ground"),
    outOfLevelMm: many
      ? ok((Math.max(...set.rimToSoilM) - Math.min(...set.rimToSoilM)) * 1000)
      : failed("science/not-measured"),
  };
};

/** Mean distance from the rim down to the ground in millimetres; null when it was not measured. */
export const rimToSoilMm = (set: Pick<RingSet, "rimToSoilM">): number | null => {
  const rim = meanOf(set.rimToSoilM);
  return rim === null ? null : rim * 1000;
};
