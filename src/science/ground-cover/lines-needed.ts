/** How many more lines a strip needs before its cover is known well enough. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  BAND_LEVEL,
  CONFIDENCE_LEVEL,
  LINES_UNTIL_SEEN,
  MOST_LINES,
  PLANNING_SPREAD,
  SAMPLES_FOR_A_RANGE,
} from "../constants.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOfCover } from "../methods/behind/ground-cover.ts";
import { chiSquareQuantile, studentQuantile } from "../statistics/distributions.ts";
import type { Counting, CoverKind, LineCounts } from "./line.ts";
import { stripShare } from "./strip-share.ts";

/** What is wanted, and with which rope. */
export interface LinesWanted {
  /** Half width to reach, as a share: 0.05 is give or take 5 points. */
  readonly giveOrTake: number;
  /** Marks on the rope that the next lines are counted with. */
  readonly marksPerLine: number;
}

/** More lines, as a band: the spread of a strip is known poorly from a few lines. */
export interface LinesNeeded extends Worked {
  readonly more: { readonly low: number; readonly middle: number; readonly high: number };
  /** Spread between lines that was planned with, as a share. */
  readonly spread: number;
  /** Share of that spread (as variance) which stands on planning and not on lines seen. */
  readonly planned: number;
}

interface Seen {
  readonly share: number;
  readonly lines: number;
  /** Variance between lines, null while there is only one. */
  readonly variance: number | null;
  readonly cautions: readonly Caution[];
}

const seenSoFar = (lines: readonly LineCounts[], kind: CoverKind, counting: Counting): Result<Seen> => {
  const strip = stripShare(lines, kind, counting);
  if (!strip.ok)
    // Before the first line the least favourable share stands in.
    return strip.problem.code === "science/no-marks-read"
      ? ok({ share: 0.5, lines: 0, variance: null, cautions: [{ code: "science/no-line-yet", facts: {} }] })
      : strip;
  const { share, marks, lines: n, seenError, cautions } = strip.value;
  // None or all hit would plan with no spread at all: half a mark is as near to 0 or 1 as the marks can tell.
  const edge = 0.5 / marks;
  return ok({
    share: Math.min(1 - edge, Math.max(edge, share)),
    lines: n,
    variance: seenError === null ? null : n * seenError ** 2,
    cautions,
  });
};

/** The least number of lines, three or more, with `t_{N−1}·s/√N ≤ d`; null when even the most do not do. */
const linesInAll = (spread: number, giveOrTake: number): Result<number | null> => {
  for (let n = SAMPLES_FOR_A_RANGE; n <= MOST_LINES; n++) {
    const t = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, n - 1);
    if (!t.ok) return t;
    if ((t.value * spread) / Math.sqrt(n) <= giveOrTake) return ok(n);
  }
  return ok(null);
};

/**
 * Lines still to be counted until the strip is known to give or take `giveOrTake`.
 *
 * Lines in all: the least N of three or more with `t_{N−1}·s/√N ≤ d`; N stands inside t, so the answer is
 * found by trying. Spread between lines: `s² = w·(1.25²·p(1−p)/marks) + (1−w)·s²_seen` with
 * `w = (6−n)/5`, which is the pooled variance when planning counts for the lines missing to six: all
 * planning with one line, all seen from six on. The band comes from how poorly so few lines know a spread:
 * the middle half of the chi-square distribution with max(5, n−1) degrees of freedom.
 * The planning factor 1.25 is from memory; the band and the blend are rules of this product.
 *
 * @param lines the lines so far, in any order; may be none
 * @returns never fewer than what makes three lines. `science/not-a-half-width` unless `giveOrTake` lies
 * above 0 and below 0.5, `science/no-marks-read` unless the rope has a mark, `science/too-many-lines` when
 * more than 300 would be needed even at the low end, `science/not-a-count` as `hitsOf`. An end of the band
 * beyond 300 is given as 300 less the lines so far.
 *
 * @example
 * linesNeeded([], "residue", { stoneCounts: false }, { giveOrTake: 0.05, marksPerLine: 100 });
 * // 9 in the middle: SD 6.25 points, t 2.306 with 9 lines gives 4.8 points
 */
export const linesNeeded = (
  lines: readonly LineCounts[],
  kind: CoverKind,
  counting: Counting,
  { giveOrTake, marksPerLine }: LinesWanted,
): Result<LinesNeeded> => {
  if (!(giveOrTake > 0 && giveOrTake < 0.5))
    return failed("science/not-a-half-width", { giveOrTake: String(giveOrTake) });
  if (!(Number.isSafeInteger(marksPerLine) && marksPerLine > 0)) return failed("science/no-marks-read");
  const so = seenSoFar(lines, kind, counting);
  if (!so.ok) return so;
  const { share, lines: n, variance, cautions } = so.value;
  const planned = variance === null ? 1 : Math.max(0, (LINES_UNTIL_SEEN - n) / (LINES_UNTIL_SEEN - 1));
  const plannedVariance = (PLANNING_SPREAD ** 2 * share * (1 - share)) / marksPerLine;
  const spread = Math.sqrt(planned * plannedVariance + (1 - planned) * (variance ?? 0));
  const freedom = Math.max(LINES_UNTIL_SEEN - 1, n - 1);
  const few = chiSquareQuantile((1 + BAND_LEVEL) / 2, freedom);
  const many = chiSquareQuantile((1 - BAND_LEVEL) / 2, freedom);
  if (!few.ok) return few;
  if (!many.ok) return many;
  const low = linesInAll(spread * Math.sqrt(freedom / few.value), giveOrTake);
  const middle = linesInAll(spread, giveOrTake);
  const high = linesInAll(spread * Math.sqrt(freedom / many.value), giveOrTake);
  if (!low.ok) return low;
  if (!middle.ok) return middle;
  if (!high.ok) return high;
  if (low.value === null) return failed("science/too-many-lines", { most: MOST_LINES });
  const more = (inAll: number | null): number => Math.max(0, (inAll ?? MOST_LINES) - n);
  return ok({
    more: { low: more(low.value), middle: more(middle.value), high: more(high.value) },
    spread,
    planned,
    n,
    sampledBy: "lines",
    cautions,
    methods: ["lines-needed"],
    sources: sourcesOfCover(["lines-needed"]),
  });
};
