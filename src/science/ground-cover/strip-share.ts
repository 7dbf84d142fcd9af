/** What the lines of a strip say before a range is put to it: shared by range, chance and planning. */
import { failed, ok, type Result } from "../../record/result.ts";
import { PLANNING_SPREAD, SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Caution } from "../estimate.ts";
import { clusterRatio } from "../statistics/cluster-ratio.ts";
import { type Counting, type CoverKind, hitsOf, type LineCounts } from "./line.ts";

export interface StripShare {
  /** Σ hits / Σ marks. */
  readonly share: number;
  readonly hits: number;
  readonly marks: number;
  /** Lines with at least one mark read. */
  readonly lines: number;
  /** Standard error from the spread between lines; null for a single line. */
  readonly seenError: number | null;
  /** Standard error that the planning spread gives for this share and these marks. */
  readonly plannedError: number;
  /**
   * The standard error to use, and where it is from. Lines that agree to the mark would give a range of no
   * width at all, which nobody should believe: then the planning spread stands in.
   */
  readonly error: { readonly value: number; readonly from: "seen" | "planned" };
  /** Marks, as independent marks that would tell as much: `marks / 1.25²`. */
  readonly effectiveMarks: number;
  readonly cautions: readonly Caution[];
}

/**
 * Share of one kind over the lines of a strip.
 *
 * @returns `science/no-marks-read` when no line has a mark, `science/not-a-count` as `hitsOf`
 *
 * @example
 * stripShare(lines, "residue", { stoneCounts: false });
 */
export const stripShare = (
  lines: readonly LineCounts[],
  kind: CoverKind,
  counting: Counting,
): Result<StripShare> => {
  const clusters: { total: number; size: number }[] = [];
  let notRead = 0;
  for (const line of lines) {
    const hit = hitsOf(line, kind, counting);
    if (!hit.ok) return hit;
    clusters.push({ total: hit.value.hits, size: hit.value.marks });
    notRead += hit.value.notRead;
  }
  const seen = clusterRatio(clusters);
  if (!seen.ok) return seen.problem.code === "science/nothing-read" ? failed("science/no-marks-read") : seen;
  const { ratio: share, total: hits, size: marks, clusters: n, standardError } = seen.value;
  const independentError = Math.sqrt((share * (1 - share)) / marks);
  const plannedError = PLANNING_SPREAD * independentError;
  const cautions: Caution[] = [];
  if (notRead > 0) cautions.push({ code: "science/marks-not-read", facts: { notRead, marks } });
  const empty = lines.length - n;
  if (empty > 0) cautions.push({ code: "science/lines-without-marks", facts: { lines: empty } });
  const agree = standardError === null || standardError === 0;
  if (n >= SAMPLES_FOR_A_RANGE && hits > 0 && hits < marks) {
    if (agree) cautions.push({ code: "science/lines-agree-to-the-mark", facts: { lines: n } });
    else if (standardError < independentError)
      cautions.push({ code: "science/lines-agree-better-than-chance", facts: { lines: n } });
  }
  return ok({
    share,
    hits,
    marks,
    lines: n,
    seenError: standardError,
    plannedError,
    error: agree ? { value: plannedError, from: "planned" } : { value: standardError, from: "seen" },
    effectiveMarks: marks / PLANNING_SPREAD ** 2,
    cautions,
  });
};
