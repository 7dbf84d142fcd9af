/** One position out of the fixes that came in while somebody stood still. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { AccuracyMeans } from "../../record/shapes.ts";
import {
  FIXES_FOR_A_DRIFT,
  FIXES_FOR_A_SPREAD,
  RADIUS_95_PER_68,
  RADIUS_95_PER_MEDIAN,
} from "../constants.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOfCover } from "../methods/behind/ground-cover.ts";
import { weightedMedian } from "../statistics/weighted-median.ts";
import { isPlace, type LatitudeLongitude, roughDistanceM, turnedDeg } from "./distance.ts";

/** A fix as the device gave it. */
export interface Fix extends LatitudeLongitude {
  /** Radius in metres; null when not given. */
  readonly accuracyM: number | null;
  /** What that radius stands for on the device that gave it; null when there is none. */
  readonly accuracyMeans: AccuracyMeans | null;
  readonly atMs: number;
}

export interface StandingPosition extends LatitudeLongitude, Worked {
  /** Typical stated accuracy of the fixes, null when none stated one. */
  readonly accuracyM: number | null;
  /** What that number stands for: what the device promises, not what was seen. Null when none stated one. */
  readonly accuracyMeans: AccuracyMeans | null;
  /** 95 % radius of the scatter seen, null for fewer than three fixes. */
  readonly spreadM: number | null;
  /** Moment of the last fix used, by its own clock. */
  readonly lastAtMs: number;
}

interface Centre extends LatitudeLongitude {
  readonly accuracyM: number | null;
  readonly spreadM: number;
}

const stated = ({ accuracyM }: Fix): number | null =>
  accuracyM !== null && accuracyM > 0 && Number.isFinite(accuracyM) ? accuracyM : null;

/** The one meaning of the radii that were stated; where fixes promise different things, theirs is not known. */
const meaningOf = (fixes: readonly Fix[]): AccuracyMeans => {
  const said = new Set(fixes.filter((fix) => stated(fix) !== null).map(({ accuracyMeans }) => accuracyMeans));
  const [one] = said;
  return said.size === 1 ? (one ?? "not-known") : "not-known";
};

/** Weights by stated accuracy; below a metre nobody believes it, and a fix without one counts as the worst. */
const weighed = (fixes: readonly Fix[]): readonly { readonly fix: Fix; readonly weight: number }[] => {
  const worst = Math.max(1, ...fixes.map((fix) => stated(fix) ?? 1));
  return fixes.map((fix) => ({ fix, weight: 1 / Math.max(1, stated(fix) ?? worst) ** 2 }));
};

const centreOf = (fixes: readonly Fix[]): Result<Centre> => {
  const items = weighed(fixes);
  const origin = fixes[0]?.longitudeDeg ?? 0;
  const latitude = weightedMedian(items.map(({ fix, weight }) => ({ value: fix.latitudeDeg, weight })));
  const east = weightedMedian(
    items.map(({ fix, weight }) => ({ value: turnedDeg(fix.longitudeDeg - origin), weight })),
  );
  if (!latitude.ok) return latitude;
  if (!east.ok) return east;
  const longitudeDeg = east.value === 0 ? origin : turnedDeg(origin + east.value);
  // Adding 0 turns −0, which JSON cannot keep, into 0.
  const centre = { latitudeDeg: latitude.value + 0, longitudeDeg: longitudeDeg + 0 };
  const radius = weightedMedian(
    items.map(({ fix, weight }) => ({ value: roughDistanceM(centre, fix), weight })),
  );
  if (!radius.ok) return radius;
  const accuracy = weightedMedian(
    items.flatMap(({ fix, weight }) => {
      const value = stated(fix);
      return value === null ? [] : [{ value, weight }];
    }),
  );
  return ok({
    ...centre,
    accuracyM: accuracy.ok ? accuracy.value : null,
    spreadM: RADIUS_95_PER_MEDIAN * radius.value,
  });
};

/** How far the later half of the fixes lies from the earlier half, and the worse accuracy of the two. */
const driftOf = (fixes: readonly Fix[]): Result<{ metres: number; accuracyM: number | null }> => {
  const half = Math.floor(fixes.length / 2);
  const early = centreOf(fixes.slice(0, half));
  const late = centreOf(fixes.slice(-half));
  if (!early.ok) return early;
  if (!late.ok) return late;
  const accuracies = [early.value.accuracyM, late.value.accuracyM].filter((value) => value !== null);
  return ok({
    metres: roughDistanceM(early.value, late.value),
    accuracyM: accuracies.length === 0 ? null : Math.max(...accuracies),
  });
};

/**
 * Puts fixes taken while standing still into one position: the weighted median of latitude and of longitude,
 * weights `1/accuracy²`, so that a few wild fixes do not pull it away. The accuracy is **not** divided by √n:
 * the errors of fixes a second apart are nearly the same error, and averaging does not remove it. The scatter
 * seen (95 % radius, 2.08 times the median distance) says how steady the fixes were, not how true.
 *
 * A position is always given when there is one fix; doubt is a caution:
 * `science/too-few-fixes` (under three: no scatter), `science/moving` (the later half lies farther from the
 * earlier half than the stated accuracy, or the scatter, a 95 % radius, is wider than the stated accuracy as a
 * 95 % radius: 1.62 times one of 68 %, and also one of unknown meaning, because a steady phone must not be called
 * moving for a promise that it may never have made), `science/accuracy-not-stated`, `science/fixes-left-out` (not a place on earth).
 * A fix repeated with the same time and place is a cached one and counts once.
 *
 * @param fixes in any order
 * @returns `science/no-position` when no fix can be used
 *
 * Source: what the accuracy of a fix stands for comes with the fix (`accuracyMeans`); geometry of a round normal scatter for the factors.
 *
 * @example
 * standingStill([{ latitudeDeg: 52, longitudeDeg: 5, accuracyM: 4, accuracyMeans: "68-percent", atMs: 0 }]); // spreadM null
 */
export const standingStill = (fixes: readonly Fix[]): Result<StandingPosition> => {
  const usable = fixes.filter((fix) => isPlace(fix) && Number.isFinite(fix.atMs));
  const seen = new Map(
    usable.map((fix) => [
      `${fix.atMs} ${fix.latitudeDeg} ${fix.longitudeDeg} ${fix.accuracyM} ${fix.accuracyMeans}`,
      fix,
    ]),
  );
  // Sorted, so that the order in which fixes arrive never changes the answer.
  const sorted = [...seen.values()].sort(
    (a, b) =>
      a.atMs - b.atMs ||
      a.latitudeDeg - b.latitudeDeg ||
      a.longitudeDeg - b.longitudeDeg ||
      (a.accuracyM ?? 0) - (b.accuracyM ?? 0),
  );
  const last = sorted.at(-1);
  if (last === undefined) return failed("science/no-position", { fixes: fixes.length });
  const centre = centreOf(sorted);
  if (!centre.ok) return centre;
  const { latitudeDeg, longitudeDeg, accuracyM, spreadM } = centre.value;
  const accuracyMeans = accuracyM === null ? null : meaningOf(sorted);
  const n = sorted.length;
  const cautions: Caution[] = [];
  const leftOut = fixes.length - usable.length;
  if (leftOut > 0) cautions.push({ code: "science/fixes-left-out", facts: { fixes: leftOut } });
  if (n < FIXES_FOR_A_SPREAD)
    cautions.push({ code: "science/too-few-fixes", facts: { needs: FIXES_FOR_A_SPREAD, has: n } });
  if (accuracyM === null) cautions.push({ code: "science/accuracy-not-stated", facts: {} });
  else if (n >= FIXES_FOR_A_DRIFT) {
    const drift = driftOf(sorted);
    if (!drift.ok) return drift;
    const drifted = drift.value.metres > (drift.value.accuracyM ?? accuracyM);
    const most = accuracyMeans === "95-percent" ? accuracyM : RADIUS_95_PER_68 * accuracyM;
    if (drifted || spreadM > most)
      cautions.push({ code: "science/moving", facts: { spreadM, driftM: drift.value.metres, accuracyM } });
  }
  return ok({
    latitudeDeg,
    longitudeDeg,
    accuracyM,
    accuracyMeans,
    spreadM: n < FIXES_FOR_A_SPREAD ? null : spreadM,
    lastAtMs: last.atMs,
    n,
    sampledBy: "fixes",
    cautions,
    methods: ["standing-still", "short-distance"],
    sources: sourcesOfCover(["standing-still", "short-distance"]),
  });
};
