/** The ratio estimator over clusters of unequal size. */
import { failed, ok, type Result } from "../../record/result.ts";

/** One cluster: what was added up in it, and over how many elements. */
export interface Cluster {
  readonly total: number;
  readonly size: number;
}

export interface ClusterRatio {
  /** Σ total / Σ size. */
  readonly ratio: number;
  /** Σ total and Σ size. */
  readonly total: number;
  readonly size: number;
  /** Number of clusters that hold at least one element. */
  readonly clusters: number;
  /** Standard error of the ratio, the cluster being the sampling unit; null for a single cluster. */
  readonly standardError: number | null;
}

/**
 * Mean per element and its standard error when whole clusters were drawn: `r = Σy/Σm` and
 * `SE² = n/(n−1) · Σ(y − r·m)² / (Σm)²`, without finite-population correction.
 *
 * @param clusters in any order; empty clusters (size 0) leave both sums
 * @returns `science/nothing-read` when no cluster holds an element; `science/no-number` when a total is not
 * finite, a size is negative or not finite, or they are too large to be squared. All clusters alike give a standard error of 0.
 *
 * Source: Lohr 1999, Sampling: Design and Analysis, chapter 5, example 5.2 (p. 137).
 *
 * @example
 * clusterRatio([{ total: 44, size: 100 }, { total: 36, size: 100 }]); // ratio 0.4, standard error 0.04
 */
export const clusterRatio = (clusters: readonly Cluster[]): Result<ClusterRatio> => {
  for (const { total, size } of clusters)
    if (!(Number.isFinite(total) && Number.isFinite(size) && size >= 0)) return failed("science/no-number");
  const filled = clusters.filter(({ size }) => size > 0);
  const size = filled.reduce((sum, cluster) => sum + cluster.size, 0);
  const total = filled.reduce((sum, cluster) => sum + cluster.total, 0);
  if (size === 0) return failed("science/nothing-read");
  const n = filled.length;
  // Deviations are taken as (y·Σm − m·Σy): whole numbers as long as counts are, so alike clusters give 0 exactly.
  const squares = filled.reduce(
    (sum, cluster) => sum + (cluster.total * size - cluster.size * total) ** 2,
    0,
  );
  const standardError = Math.sqrt((n / (n - 1)) * squares) / size ** 2;
  const ratio = total / size;
  if (!(Number.isFinite(ratio) && (n < 2 || Number.isFinite(standardError))))
    return failed("science/no-number");
  return ok({
    ratio,
    total,
    size,
    clusters: n,
    // Readings turned from inches carry rounding: a spread of that size is none.
    standardError: n < 2 ? null : standardError <= Math.abs(ratio) * 1e-12 ? 0 : standardError,
  });
};
