/** What cover is aimed at, and how sure the lines are that a strip reaches it. */
import { failed, ok, type Result } from "../../record/result.ts";
import { CONSERVATION_COVER, PROTECTION_COVER, SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOfCover } from "../methods/behind/ground-cover.ts";
import type { SourceId } from "../sources.ts";
import { studentProbability } from "../statistics/distributions.ts";
import type { Counting, CoverKind, LineCounts } from "./line.ts";
import { type StripShare, stripShare } from "./strip-share.ts";

/** What a target is good for. */
export type Purpose = "rules" | "rain" | "wind" | "drying" | "weeds";

export interface Target {
  readonly id: string;
  /** Share of the ground. */
  readonly share: number;
  readonly kind: CoverKind;
  readonly purposes: readonly Purpose[];
  /** When in the season the target speaks of the ground. */
  readonly when: "after-planting" | "any-time";
  readonly source: SourceId;
}

/**
 * Targets offered. 30 % of residue after planting is the definition of conservation tillage against water
 * erosion (published); 75 % is common practice for protection. Local rules come first, and the person's own
 * share is as good a target as these.
 */
export const TARGETS = [
  {
    id: "conservation-tillage",
    share: CONSERVATION_COVER,
    kind: "residue",
    purposes: ["rules"],
    when: "after-planting",
    source: "nebraska-g20",
  },
  {
    id: "protection",
    share: PROTECTION_COVER,
    kind: "ground-cover",
    purposes: ["rain", "wind", "drying", "weeds"],
    when: "any-time",
    source: "cover-75",
  },
] as const satisfies readonly Target[];

/**
 * What a share aimed at is a share of: of residue alone for the definition of conservation tillage, else of ground
 * cover. A green cover crop fulfils no rule on residue.
 *
 * Source: as the target itself; another share is one of ground cover.
 *
 * @param share of the ground, between 0 and 1
 *
 * @example
 * kindAimedAt(0.3) // => "residue"
 */
export const kindAimedAt = (share: number): "residue" | "ground-cover" =>
  TARGETS.find((target) => target.share === share)?.kind ?? "ground-cover";

/** How sure the lines are that a target is reached. */
export interface Chance extends Worked {
  /** Between 0 and 1. */
  readonly chance: number;
  readonly target: number;
}

const logit = (share: number): number => Math.log(share / (1 - share));

const chanceOf = (strip: StripShare, target: number): Result<number> => {
  const { share, hits, marks } = strip;
  // From the one-sided bounds: the level at which the bound just meets the target.
  if (hits === marks) return ok(1 - target ** strip.effectiveMarks);
  if (hits === 0) return ok((1 - target) ** strip.effectiveMarks);
  const onLogit = strip.error.value / (share * (1 - share));
  return studentProbability((logit(share) - logit(target)) / onLogit, strip.lines - 1);
};

/**
 * Chance that the true cover of a strip is at least the target: `F_t((L − L_target)/SE_L)` with n−1 degrees
 * of freedom on the logit scale, the same scale and spread as the range of `coverOfStrip`, so that a target
 * at the lower end of a 95 % range has a chance of 97.5 %. It speaks of sampling alone, not of misreading.
 *
 * @param target share above 0 and below 1
 * @returns `science/too-few-lines` for fewer than three, `science/not-a-target`, else reasons as `coverOfStrip`
 *
 * Source: as `coverOfStrip`; with none or all hit from the exact one-sided bound.
 *
 * @example
 * chanceOfAtLeast(lines, "residue", { stoneCounts: false }, 0.3);
 */
export const chanceOfAtLeast = (
  lines: readonly LineCounts[],
  kind: CoverKind,
  counting: Counting,
  target: number,
): Result<Chance> => {
  if (!(target > 0 && target < 1)) return failed("science/not-a-target", { target: String(target) });
  const seen = stripShare(lines, kind, counting);
  if (!seen.ok) return seen;
  const strip = seen.value;
  if (strip.lines < SAMPLES_FOR_A_RANGE)
    return failed("science/too-few-lines", { needs: SAMPLES_FOR_A_RANGE, has: strip.lines });
  const chance = chanceOf(strip, target);
  if (!chance.ok) return chance;
  const cautions: Caution[] = [...strip.cautions];
  if (strip.hits === 0 || strip.hits === strip.marks)
    cautions.push({
      code: "science/marks-not-independent",
      facts: { marks: strip.marks, effectiveMarks: Math.floor(strip.effectiveMarks) },
    });
  return ok({
    chance: chance.value,
    target,
    n: strip.lines,
    sampledBy: "lines",
    cautions,
    methods: ["strip-ratio", "chance-logit-t"],
    sources: sourcesOfCover(["strip-ratio", "chance-logit-t"]),
  });
};
