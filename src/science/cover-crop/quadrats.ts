/** Mass and counts per area from quadrats, with their spread. */
import { failed, ok, type Result } from "../../record/result.ts";
import { QUADRATS_ADVISED } from "../constants/water.ts";
import { CONFIDENCE_LEVEL, FEW_HITS, SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Caution, Estimate, Interval, Unit } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { clusterRatio } from "../statistics/cluster-ratio.ts";
import { studentQuantile } from "../statistics/distributions.ts";
import { bounded } from "../water/bounded.ts";
import { type FrameAndRows, frameCautions } from "./frame.ts";

/** One quadrat. */
export interface Quadrat {
  readonly areaM2: number;
  /** Dry grams (`dryMass`), or plants counted. */
  readonly amount: number;
}

const KG_PER_HA_OF_G_PER_M2 = 10;
const MOST_AREA_M2 = 100;

interface Spread {
  readonly perM2: number;
  readonly n: number;
  readonly standardError: number | null;
}

const spreadOf = (quadrats: readonly Quadrat[], most: number): Result<Spread> => {
  const good = bounded(
    quadrats.flatMap(({ areaM2, amount }) => [
      ["quadrat", areaM2, 1e-4, MOST_AREA_M2] as const,
      ["amount", amount, 0, most] as const,
    ]),
  );
  if (!good.ok) return good;
  const ratio = clusterRatio(quadrats.map(({ areaM2, amount }) => ({ total: amount, size: areaM2 })));
  if (!ratio.ok) return ratio;
  return ok({
    perM2: ratio.value.ratio,
    n: ratio.value.clusters,
    standardError: ratio.value.standardError,
  });
};

const logRange = (value: number, standardError: number, n: number, method: MethodId): Result<Interval> => {
  const t = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, n - 1);
  if (!t.ok) return t;
  const half = (t.value * standardError) / value;
  return ok({
    lower: value * Math.exp(-half),
    upper: value * Math.exp(half),
    level: CONFIDENCE_LEVEL,
    sides: "both",
    method,
  });
};

const tooFew = (n: number): Result<Interval> | null =>
  n < SAMPLES_FOR_A_RANGE ? failed("science/too-few-samples", { needs: SAMPLES_FOR_A_RANGE, has: n }) : null;

const cautionsOf = (quadrats: readonly Quadrat[], frame: FrameAndRows): Result<readonly Caution[]> => {
  const ofFrame = frameCautions(frame);
  if (!ofFrame.ok) return ofFrame;
  const few: Caution = {
    code: "science/few-quadrats",
    facts: { advised: QUADRATS_ADVISED, has: quadrats.length },
  };
  return ok([...(quadrats.length < QUADRATS_ADVISED ? [few] : []), ...ofFrame.value]);
};

const estimate = (
  { perM2, n }: Spread,
  unit: Unit,
  range: Result<Interval>,
  said: { readonly methods: readonly MethodId[]; readonly cautions: readonly Caution[] },
): Estimate => ({
  value: unit === "kg/har" ? perM2 * KG_PER_HA_OF_G_PER_M2 : perM2,
  unit,
  n,
  sampledBy: "quadrats",
  range,
  cautions: said.cautions,
  methods: said.methods,
  sources: sourcesOf(said.methods),
});

/**
 * Dry mass per hectare from quadrats: all mass over all area, with the range `m·exp(± t·SE/m)` that never falls below
 * nothing.
 *
 * How often a 95 % range holds the truth, by simulation of 4000 strips with 3, 4 and 8 quadrats (log-normal;
 * tests/property): 94.6, 94.7 and 94.2 of 100 when quadrats differ by 30 %, 94.2, 94.5 and 93.1 when by 60 %.
 *
 * @param quadrats in any order, amounts in dry grams
 * @param frame its width across the rows and their spacing
 * @returns kg/ha; no range, with the reason, for fewer than three quadrats (`science/too-few-samples`) or when all are
 * alike (`science/all-alike`). `science/nothing-read` for none, `science/out-of-bounds` for what cannot be. Fewer than
 * four carry a caution (`science/few-quadrats`)
 *
 * Source: Andrews et al., Oregon State University (four areas or more, all mass over all area); Lohr 1999, chapter 5.
 *
 * @example
 * const half = (amount) => ({ areaM2: 0.5, amount });
 * coverCropMass([half(212), half(187), half(241)], { widthM: 0.5, rowSpacingM: null }).value.value // => ≈ 4267
 */
export const coverCropMass = (quadrats: readonly Quadrat[], frame: FrameAndRows): Result<Estimate> => {
  const spread = spreadOf(quadrats, 1e6);
  if (!spread.ok) return spread;
  const cautions = cautionsOf(quadrats, frame);
  if (!cautions.ok) return cautions;
  const { perM2, n, standardError } = spread.value;
  const range =
    tooFew(n) ??
    (standardError === null || standardError === 0 || perM2 === 0
      ? failed("science/all-alike", { n })
      : logRange(perM2 * KG_PER_HA_OF_G_PER_M2, standardError * KG_PER_HA_OF_G_PER_M2, n, "quadrat-mass"));
  const methods: MethodId[] = ["quadrat-mass", "frame-against-rows"];
  return ok(estimate(spread.value, "kg/har", range, { methods, cautions: cautions.value }));
};

/**
 * Plants per square metre from counts in quadrats, with their spread: all plants over all area. None in any quadrat
 * gives the exact upper bound as if plants grew by chance; quadrats all alike take the spread of plants by chance.
 *
 * How often a 95 % range holds the truth, by simulation of 4000 strips with 3, 4 and 8 quadrats (tests/property): with
 * 6 plants in the mean 96.8, 96.2 and 94.7 of 100 by chance and 96.0, 95.4 and 94.0 in clumps of k = 2; with one plant
 * 92.9, 95.6 and 96.8 by chance, and in clumps 89.5, 93.7 and 97.1. Fewer than ten plants in all carry a caution
 * (`science/few-plants`).
 *
 * @param quadrats in any order, amounts whole plants
 * @param frame its width across the rows and their spacing
 * @returns per m²; reasons as `coverCropMass`, `science/not-a-count` for parts of plants
 *
 * Source: range as for mass; bound, Garwood 1936 (from memory).
 *
 * @example
 * const quarter = (amount) => ({ areaM2: 0.25, amount });
 * plantsPerM2([quarter(3), quarter(7), quarter(5), quarter(1)], { widthM: 0.5, rowSpacingM: null }).value.value // => 16
 */
export const plantsPerM2 = (quadrats: readonly Quadrat[], frame: FrameAndRows): Result<Estimate> => {
  if (!quadrats.every(({ amount }) => Number.isInteger(amount) && amount >= 0))
    return failed("science/not-a-count");
  const spread = spreadOf(quadrats, 1e6);
  if (!spread.ok) return spread;
  const cautions = cautionsOf(quadrats, frame);
  if (!cautions.ok) return cautions;
  const { perM2, n, standardError } = spread.value;
  const area = quadrats.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const said = [...cautions.value];
  const found = quadrats.reduce((sum, { amount }) => sum + amount, 0);
  if (found > 0 && found < FEW_HITS) said.push({ code: "science/few-plants", facts: { plants: found } });
  const few = tooFew(n);
  if (few !== null)
    return ok(
      estimate(spread.value, "/m2", few, {
        methods: ["quadrat-counts", "frame-against-rows"],
        cautions: said,
      }),
    );
  if (perM2 === 0) {
    said.push({ code: "science/no-plants-found", facts: { quadrats: n } });
    const upper: Interval = {
      lower: 0,
      upper: -Math.log(1 - CONFIDENCE_LEVEL) / area,
      level: CONFIDENCE_LEVEL,
      sides: "upper-only",
      method: "quadrat-none-found",
    };
    const methods: MethodId[] = ["quadrat-counts", "quadrat-none-found", "frame-against-rows"];
    return ok(estimate(spread.value, "/m2", ok(upper), { methods, cautions: said }));
  }
  const alike = standardError === null || standardError === 0;
  if (alike) said.push({ code: "science/quadrats-alike", facts: { quadrats: n } });
  const range = logRange(perM2, alike ? Math.sqrt(perM2 / area) : standardError, n, "quadrat-counts");
  return ok(
    estimate(spread.value, "/m2", range, {
      methods: ["quadrat-counts", "frame-against-rows"],
      cautions: said,
    }),
  );
};
