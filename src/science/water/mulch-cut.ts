/** By how much a mulch cuts the evaporation of bare soil. */
import { ok, type Result } from "../../record/result.ts";
import {
  CUT_PER_COVER,
  LEAST_FULL_CUT,
  LITTLE_CUT_UNTIL,
  MIDDLE_FULL_CUT,
  MOST_FULL_CUT,
  NEARLY_FULL_COVER,
} from "../constants/water.ts";
import type { Caution } from "../estimate.ts";
import type { ResidueCrop } from "../residue/crops.ts";
import { assumed, type Limits, type Ranged, ranged, type Span, usable } from "../residue/ranged.ts";

/** A mulch as it lies. Cover alone says little: thickness or mass is asked for, and said with the answer. */
export interface Mulch {
  /** Share of the ground under it, 0 to 1. */
  readonly cover: Ranged;
  /** Its cut where nothing shows through, `fullCoverCut`. */
  readonly fullCut: Ranged;
  /** mm; null when it was not measured. */
  readonly thickness: Ranged | null;
  /** Dry kg/ha; null when it was not weighed. */
  readonly mass: Ranged | null;
  readonly crop: ResidueCrop | null;
}

/**
 * Share of evaporation that a mulch without gaps cuts: 30 % at the least (a rule of this product), 50 to 65 % as
 * measured without a canopy.
 *
 * Source: Klocke et al. 2009 and FAO-56, chapter 11 (50 %); the person can change it.
 *
 * @example
 * fullCoverCut() // => { low: 0.3, middle: 0.5, high: 0.65 }
 */
export const fullCoverCut = (): Ranged =>
  assumed(
    "full-cover-cut",
    { low: LEAST_FULL_CUT, middle: MIDDLE_FULL_CUT, high: MOST_FULL_CUT },
    "1",
    "klocke-2009",
  );

const SHARE: Limits = { unit: "1", least: 0, most: 1 };
const COARSE: readonly ResidueCrop[] = ["maize", "sorghum", "cotton", "sunflower"];

const said = ({ thickness, mass, crop }: Mulch): readonly Caution[] => {
  const cautions: Caution[] = [{ code: "science/mulch-rule-disputed", facts: {} }];
  if (thickness === null && mass === null)
    cautions.push({ code: "science/mulch-thickness-not-known", facts: {} });
  else cautions.push({ code: "science/mulch-thickness-not-in-rule", facts: {} });
  if (crop !== null && COARSE.includes(crop))
    cautions.push({ code: "science/coarse-residue-keeps-less", facts: {} });
  return cautions;
};

/**
 * Share by which a mulch cuts evaporation. High end: 5 % for each 10 % of cover; only a cover without gaps was seen to
 * cut more than that, so the last tenth leads straight up to the high end of a full cover, and one mark more or less
 * on a line makes no leap. Low end: nothing up to three quarters of cover, from there straight up to the low end of a
 * full cover. Middle: half of the high rule, from three quarters straight up to the middle of a full cover. Neither
 * rule knows thickness or mass, though they matter most (Unger & Parker 1976): they go with the answer and change
 * nothing.
 *
 * More cover never gives a smaller cut.
 *
 * @returns a share of the evaporation of bare soil; `science/not-a-range` for a share outside 0 to 1, a thickness
 * outside 0 to 500 mm or a mass outside 0 to 200 t/ha
 *
 * Source: FAO-56, chapter 11 (high); Klocke et al. 2009 (low).
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const cover = assumed("cover", exactly(0.6), "1", "yours");
 * evaporationCut({ cover, fullCut: fullCoverCut(), thickness: null, mass: null, crop: null }).value // => { low: 0, middle: 0.15, high: 0.3 }
 */
export const evaporationCut = (mulch: Mulch): Result<Ranged> => {
  const { cover, fullCut, thickness, mass } = mulch;
  const good = usable([
    [cover, SHARE],
    [fullCut, SHARE],
    ...(thickness === null ? [] : [[thickness, { unit: "mm", least: 0, most: 500 }] as const]),
    ...(mass === null ? [] : [[mass, { unit: "kg/har", least: 0, most: 200_000 }] as const]),
  ]);
  if (!good.ok) return good;
  // Straight up to a cover, and from there straight to the cut of a full cover.
  const curve = (perCover: number, until: number, end: keyof Span): number => {
    const slope = Math.min(perCover, fullCut[end]);
    const beyond = Math.max(0, cover[end] - until) / (1 - until);
    return slope * cover[end] + (fullCut[end] - slope) * beyond;
  };
  const from = [cover, fullCut, ...(thickness === null ? [] : [thickness]), ...(mass === null ? [] : [mass])];
  const ends = [
    curve(0, LITTLE_CUT_UNTIL, "low"),
    curve(CUT_PER_COVER / 2, LITTLE_CUT_UNTIL, "middle"),
    curve(CUT_PER_COVER, NEARLY_FULL_COVER, "high"),
  ] as const;
  return ok(ranged(ends, "1", { from, method: "mulch-cut", cautions: said(mulch) }));
};
