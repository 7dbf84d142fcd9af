/** Ground cover from points on photos: the photo is the line, its points are the marks. */
import { failed, ok, type Result } from "../../record/result.ts";
import { PHOTOS_LOWER_BY } from "../constants/straw.ts";
import type { Caution, Estimate } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import type { Counting, CoverKind, LineCounts } from "./line.ts";
import { coverOfStrip } from "./strip.ts";

/** What is said of lines, said of photos. */
const OF_PHOTOS: Readonly<Partial<Record<Caution["code"], Caution["code"]>>> = {
  "science/lines-agree-to-the-mark": "science/photos-agree-to-the-point",
  "science/lines-agree-better-than-chance": "science/photos-agree-better-than-chance",
  "science/lines-without-marks": "science/photos-without-points",
  "science/too-few-lines": "science/too-few-photos",
  "science/marks-not-independent": "science/points-not-independent",
  "science/marks-not-read": "science/points-not-read",
  "science/no-marks-read": "science/no-points-read",
  "science/few-hits": "science/few-points-hit",
  "science/few-misses": "science/few-points-missed",
};

const ofPhotos = (problem: Caution): Caution => ({
  code: OF_PHOTOS[problem.code] ?? problem.code,
  facts: problem.facts,
});

/**
 * Share of the ground under one kind of cover, from points counted on photos taken straight down over a strip. The
 * estimator of `coverOfStrip`: the photo is the unit, never the point, so a hundred points on one photo are still one
 * photo. Where photos agree to the point, or none or all points hit, the planning spread of lines stands in for theirs.
 *
 * @param photos per photo the points by what lies there; points that nobody could read are `notRead`
 * @returns as `coverOfStrip` with n counting photos; `science/no-points-read` when no photo has a point, no range for fewer than three (`science/too-few-photos`).
 * Always with the caution that photos read lower than lines, by about 10 points in one study: compare photos with
 * photos (`science/photos-read-lower`)
 *
 * Source: Lohr 1999, chapter 5; Corak, Kaspar & Meek 1993 for points on photos; Journal of Soil and Water
 * Conservation 76 (2021): 403 for the difference.
 *
 * @example
 * const points = (hits) => ({ residueFlat: hits, residueStanding: 0, green: 0, bare: 100 - hits, stone: 0, own: 0, notRead: 0 });
 * coverOfPhotos([44, 36, 52, 41, 47].map(points), "residue", { stoneCounts: false }).value.value // => ≈ 0.44
 */
export const coverOfPhotos = (
  photos: readonly LineCounts[],
  kind: CoverKind,
  counting: Counting,
): Result<Estimate> => {
  const cover = coverOfStrip(photos, kind, counting);
  if (!cover.ok) return failed(ofPhotos(cover.problem).code, cover.problem.facts);
  const { range, cautions, methods } = cover.value;
  const all = ["photo-points" as const, ...methods];
  return ok({
    ...cover.value,
    sampledBy: "photos",
    range: range.ok ? range : failed(ofPhotos(range.problem).code, range.problem.facts),
    cautions: [
      ...cautions.map(ofPhotos),
      { code: "science/photos-read-lower", facts: { points: Math.round(PHOTOS_LOWER_BY * 100) } },
    ],
    methods: all,
    sources: sourcesOf(all),
  });
};
