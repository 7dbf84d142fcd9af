/** A count read by one guide: by the guide's own hole, depth, season and land use, or not at all. */
import { LAYERS } from "../../record/hole/entries.ts";
import type { LandUse } from "../../record/kinds/observation.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { GUIDES_APART } from "../constants.ts";
import type { Caution, Estimate } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { sameDepth, sameSides } from "./conditions.ts";
import { countedHoles, wormsPerHole, wormsPerM2 } from "./field.ts";
import type { Guide, GuideLevel } from "./guides.ts";
import type { HoleCount } from "./hole-count.ts";
import { type Hemisphere, inSeason } from "./protocol.ts";

/** Where and when the holes were dug. */
export interface Dug {
  /** Null when nobody said; a guide is then read whatever land it is for. */
  readonly landUse: LandUse | null;
  /** 1 to 12. */
  readonly month: number;
  /** Null without a position. */
  readonly hemisphere: Hemisphere | null;
}

/** What one guide says. Its name stands in `guide` and belongs beside it on every screen. */
export interface GuideReading {
  readonly guide: Guide;
  /** The mean by the guide's layers, in the guide's own unit. */
  readonly counted: Estimate;
  /** What the guide says of the mean. */
  readonly level: GuideLevel;
  /** What it says of the two ends of the range: unlike `level`, the count may belong to another level. */
  readonly levelsOfRange: { readonly lower: GuideLevel; readonly upper: GuideLevel } | null;
  readonly cautions: readonly Caution[];
}

const levelAt = ({ levels }: Guide, value: number): Result<GuideLevel> => {
  const level = levels.findLast(({ from, limit }) => (limit === "above" ? value > from : value >= from));
  return level === undefined ? failed("science/guide-without-level") : ok(level);
};

const refusal = (guide: Guide, holes: readonly HoleCount[], dug: Dug): Result<never> | undefined => {
  if (dug.landUse !== null && !guide.landUses.includes(dug.landUse))
    return failed("science/guide-other-land-use");
  if (guide.sidesM !== null && !holes.every(({ sidesM }) => sameSides(sidesM, guide.sidesM)))
    return failed("science/guide-other-hole-size");
  const { depthM } = guide;
  if (depthM !== null && !holes.every((hole) => sameDepth(hole.depthM, depthM)))
    return failed("science/guide-other-depth");
  if (guide.season === null) return undefined;
  if (dug.hemisphere === null) return failed("science/guide-season-not-known");
  return inSeason(guide.season, { month: dug.month, hemisphere: dug.hemisphere })
    ? undefined
    : failed("science/guide-other-season");
};

/** A hole with the layers of the guide alone: worms that mustard drove up belong to no guide of hand sorting. */
const byLayersOf = (guide: Guide, hole: HoleCount): HoleCount => {
  const found = { ...hole.found };
  for (const layer of LAYERS) if (!guide.layers.includes(layer)) found[layer] = null;
  return { ...hole, found };
};

/**
 * Reads the mean of holes by one guide.
 *
 * Only by the guide's own hole size (each side within 5 %), depth (within 10 %), season and land use; these
 * two limits are rules of this product. Guides disagree with each other by a factor of four
 * (`science/guides-disagree`, always there); the farm's own old-grass spot says more than any of them. A guide
 * that states no hole is read per m², and says so (`science/guide-states-no-hole`). What a guide supposes and no record
 * says, as the rain of a pasture, is said beside its level (`science/guide-supposes-wet-pasture`).
 *
 * @returns `science/guide-other-land-use`, `science/guide-other-hole-size`, `science/guide-other-depth`,
 * `science/guide-other-season`, `science/guide-season-not-known` when it cannot be read by this guide;
 * `science/guide-without-level` for a changed guide whose levels do not begin at 0; else reasons as
 * `wormsPerHole` and `wormsPerM2`. A guide from memory says so in its `mark`
 *
 * Source: the guide's.
 *
 * @example
 * readByGuide(guide, holes, { landUse: "cropland", month: 4, hemisphere: "north" });
 */
export const readByGuide = (guide: Guide, holes: readonly HoleCount[], dug: Dug): Result<GuideReading> => {
  const all = countedHoles(holes);
  if (!all.ok) return all;
  const refused = refusal(
    guide,
    all.value.counted.map(({ hole }) => hole),
    dug,
  );
  if (refused !== undefined) return refused;
  const own = holes.map((hole) => byLayersOf(guide, hole));
  const counted = guide.per === "hole" ? wormsPerHole(own) : wormsPerM2(own);
  if (!counted.ok) return counted;
  const { value, range } = counted.value;
  const level = levelAt(guide, value);
  if (!level.ok) return level;
  const lower = range.ok ? levelAt(guide, range.value.lower) : null;
  const upper = range.ok ? levelAt(guide, range.value.upper) : null;
  const cautions: Caution[] = [{ code: "science/guides-disagree", facts: { times: GUIDES_APART } }];
  if (guide.sidesM === null) cautions.push({ code: "science/guide-states-no-hole", facts: {} });
  if (guide.season === null) cautions.push({ code: "science/guide-states-no-season", facts: {} });
  if (guide.supposes === "wet-permanent-pasture")
    cautions.push({ code: "science/guide-supposes-wet-pasture", facts: {} });
  const left = all.value.counted.some(({ hole }) =>
    LAYERS.some((layer) => !guide.layers.includes(layer) && (hole.found[layer] ?? 0) > 0),
  );
  if (left) cautions.push({ code: "science/guide-by-hand-only", facts: {} });
  const methods = [...counted.value.methods, "guide-level"] as const;
  return ok({
    guide,
    counted: {
      ...counted.value,
      methods,
      sources: [...new Set([...sourcesOf(methods), guide.source])],
    },
    level: level.value,
    levelsOfRange:
      lower?.ok === true && upper?.ok === true ? { lower: lower.value, upper: upper.value } : null,
    cautions,
  });
};
