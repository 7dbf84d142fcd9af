/** Nitrogen that a mixture ties up or sets free while it rots, by two published rules. */
import { ok, type Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import type { Caution } from "../estimate.ts";
import { type Limits, type Ranged, ranged, type Span, usable } from "../residue/ranged.ts";
import { corners } from "../water/corners.ts";
import { type MixedPart, mixable } from "./mixture.ts";

const KG_PER_T = 1000;

/**
 * Nitrogen by the microbes' own diet, if all of it rotted: `N − C/24`, positive for release.
 *
 * @param carbonKgPerHa and nitrogenKgPerHa of the residue, 0 to 200 000
 * @returns kg/ha
 *
 * Source: NRCS 2011: 24 parts of carbon to one of nitrogen are neither too much nor too little.
 */
const byDiet = (carbonKgPerHa: number, nitrogenKgPerHa: number): number =>
  nitrogenKgPerHa - carbonKgPerHa / k.BALANCED_C_TO_N;

const rising = (share: number, from: number, to: number): number =>
  Math.min(1, Math.max(0, (share - from) / (to - from)));

/** Kilograms per tonne of dry matter in the first weeks, by both editions of the line. */
const perTonne = (nitrogenShare: number): Span => {
  const older = k.LINE_MOST_KG_PER_T * rising(nitrogenShare, k.LINE_FROM_N, k.LINE_TO_N);
  // The newer edition prints two points; from nothing at 1.5 % up to the first of them a line is drawn here.
  const newer =
    k.NEWER_LEAST_KG_PER_T * rising(nitrogenShare, k.LINE_FROM_N, k.NEWER_FROM_N) +
    (k.NEWER_MOST_KG_PER_T - k.NEWER_LEAST_KG_PER_T) * rising(nitrogenShare, k.NEWER_FROM_N, k.NEWER_TO_N);
  return { low: Math.min(older, newer), middle: older, high: Math.max(older, newer) };
};

/**
 * Plant-available nitrogen of a cover crop in the weeks after it is killed, per tonne of dry matter: nothing below 1.5 %
 * of nitrogen, 17.5 kg/t from 3.5 % on, a straight line between; the ends are those of the two editions.
 *
 * @param nitrogenShare of dry matter, 0 to 0.2
 * @returns kg per tonne, never negative: the line knows no tie-up. `science/not-a-range` for what cannot be
 *
 * Source: PNW 636 (35 lb per ton at 3.5 %) and its current edition (25 to 40 lb per ton at 3 to 4 %).
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * availableNitrogenPerTonne(assumed("nitrogen-share", exactly(0.025), "1", "yours")).value.middle // => ≈ 8.75
 */
export const availableNitrogenPerTonne = (nitrogenShare: Ranged): Result<Ranged> => {
  const good = usable([[nitrogenShare, { unit: "1", least: 0, most: 0.2 }]]);
  if (!good.ok) return good;
  const ends = [
    perTonne(nitrogenShare.low).low,
    perTonne(nitrogenShare.middle).middle,
    perTonne(nitrogenShare.high).high,
  ] as const;
  return ok(
    ranged([...ends], "kg/t", {
      from: [nitrogenShare],
      method: "nitrogen-line",
      cautions: [{ code: "science/nitrogen-rule-from-elsewhere", facts: {} }],
    }),
  );
};

/** What both rules say, and the range that holds both. Positive is release, negative is tie-up. */
export interface TieUpOrRelease {
  readonly nitrogen: Ranged;
  /** kg/ha by each rule alone. */
  readonly byDiet: Span;
  readonly byLine: Span;
}

/**
 * Nitrogen that a mixture ties up (negative) or sets free (positive) over the time it rots: the range holds what the
 * 24:1 rule says if all of it rotted and what the line of available nitrogen says. Straw on the surface rots over years:
 * most of it is not this year, and a caution says so.
 *
 * @param parts in any order, as for `mixtureCarbonToNitrogen`
 * @returns kg/ha; reasons as `mixable`. A range on both sides of nothing is said (`science/could-go-either-way`)
 *
 * Source: NRCS 2011; PNW 636.
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const straw = { mass: assumed("mass", exactly(4000), "kg/har", "yours"), carbon: assumed("carbon-share", exactly(0.42), "1", "yours"), ratio: assumed("carbon-to-nitrogen", exactly(80), "1", "yours") };
 * tieUpOrRelease([straw]).value.nitrogen // => { low: -49, high: 0, unit: "kg/har" }
 */
export const tieUpOrRelease = (parts: readonly MixedPart[]): Result<TieUpOrRelease> => {
  const from = mixable(parts);
  if (!from.ok) return from;
  // Each part is worked out at its own corners: the sum of corners is the corner of the sum, and stays quick.
  const add = (spans: readonly Span[]): Span =>
    spans.reduce(
      (sum, one) => ({ low: sum.low + one.low, middle: sum.middle + one.middle, high: sum.high + one.high }),
      { low: 0, middle: 0, high: 0 },
    );
  const diet = add(
    parts.map(({ mass, carbon, ratio }) =>
      corners([mass, carbon, ratio], ([kg = 0, share = 0, cn = 1]) => byDiet(kg * share, (kg * share) / cn)),
    ),
  );
  const mixed = (end: keyof Span): number => {
    const opposite = end === "low" ? "high" : end === "high" ? "low" : "middle";
    const mass = parts.reduce((sum, part) => sum + part.mass[end], 0);
    const nitrogen = parts.reduce(
      (sum, part) => sum + (part.mass[end] * part.carbon[end]) / part.ratio[opposite],
      0,
    );
    return mass > 0 ? (perTonne(nitrogen / mass)[end] * mass) / KG_PER_T : 0;
  };
  const line: Span = { low: mixed("low"), middle: mixed("middle"), high: mixed("high") };
  const low = Math.min(diet.low, line.low);
  const high = Math.max(diet.high, line.high);
  const cautions: Caution[] = [
    { code: "science/most-not-this-year", facts: {} },
    { code: "science/nitrogen-rule-from-elsewhere", facts: {} },
    { code: "science/local-advice-first", facts: {} },
  ];
  if (low < 0 && high > 0) cautions.push({ code: "science/could-go-either-way", facts: {} });
  return ok({
    nitrogen: ranged([low, (diet.middle + line.middle) / 2, high], "kg/har", {
      from: from.value,
      method: "nitrogen-tie-up",
      cautions,
    }),
    byDiet: diet,
    byLine: line,
  });
};

/** How a cover crop is ended, by what the handbook of cover crops reckons of its nitrogen in the first season. */
const FIRST_SEASON = { "tilled-in": 0.5, "surface-warm-region": 0.5, "surface-cold-region": 0.25 } as const;

/** A way of ending a cover crop. */
export type CoverCropEnd = keyof typeof FIRST_SEASON;
export const COVER_CROP_ENDS = Object.keys(FIRST_SEASON) as readonly CoverCropEnd[];

const MASS: Limits = { unit: "kg/har", least: 0, most: 200_000 };
const NITROGEN: Limits = { unit: "1", least: 0, most: 0.2 };

/**
 * Nitrogen of a cover crop in its first season: half of it tilled in or left on the surface where it is warm, a quarter
 * on the surface where it is cold. A cross-check beside the other rules, which differ from it by up to a factor of two.
 *
 * @param mass dry kg/ha
 * @param nitrogen share of dry matter
 * @returns kg/ha; `science/not-a-range` for a mass outside 0 to 200 t/ha or nitrogen outside 0 to 20 %
 *
 * Source: Managing cover crops profitably.
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const mass = assumed("mass", exactly(4000), "kg/har", "yours");
 * firstSeasonNitrogen(mass, assumed("nitrogen-share", exactly(0.025), "1", "yours"), "surface-cold-region").value.middle // => 25
 */
export const firstSeasonNitrogen = (mass: Ranged, nitrogen: Ranged, end: CoverCropEnd): Result<Ranged> => {
  const good = usable([
    [mass, MASS],
    [nitrogen, NITROGEN],
  ]);
  if (!good.ok) return good;
  const kg = (at: keyof Span): number => mass[at] * nitrogen[at] * FIRST_SEASON[end];
  return ok(
    ranged([kg("low"), kg("middle"), kg("high")], "kg/har", {
      from: [mass, nitrogen],
      method: "first-season-nitrogen",
      cautions: [{ code: "science/nitrogen-rule-from-elsewhere", facts: {} }],
    }),
  );
};
