/** One spade hole as this room needs it. */
import type { Layer, WormGroup } from "../../record/hole/entries.ts";
import type { Wetness } from "../../record/hole/reading.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import type { LatitudeLongitude } from "../position/distance.ts";

/** A hole with its counts and with what may have changed them. */
export interface HoleCount {
  /** The two sides; null when neither a template nor own sides are known. */
  readonly sidesM: readonly [number, number] | null;
  /** Stored and shown, never divided by. */
  readonly depthM: number;
  /** Worms per layer; null where nobody looked. */
  readonly found: Readonly<Record<Layer, number | null>>;
  readonly placed: Readonly<Record<WormGroup, number>>;
  /** Worms that were not placed. */
  readonly left: number;
  /** False while two phones contradict each other. */
  readonly settled: boolean;
  readonly finished: boolean;
  readonly soilTemperatureC: number | null;
  readonly wetness: Wetness | null;
  /** People × minutes of sorting; null when no time was taken. */
  readonly personMinutes: number | null;
  /** Days since the soil was last worked; null when not known. */
  readonly workedDaysAgo: number | null;
  readonly place: LatitudeLongitude | null;
}

/**
 * Area of a hole in square metres: the product of its two sides.
 *
 * @returns `science/no-hole-size` when the sides are not known, 0, negative or not finite
 *
 * @example
 * holeAreaM2([0.25, 0.5]) // => { ok: true, value: 0.125 }
 */
export const holeAreaM2 = (sidesM: HoleCount["sidesM"]): Result<number> => {
  if (sidesM === null || !sidesM.every((side) => side > 0)) return failed("science/no-hole-size");
  const area = sidesM[0] * sidesM[1];
  return area > 0 && Number.isFinite(area) ? ok(area) : failed("science/no-hole-size");
};

/**
 * Worms of one hole: mulch, soil and mustard water added up, as far as somebody looked there.
 *
 * @returns `science/two-answers` while a number is in doubt, `science/nothing-read` when nobody looked
 * anywhere, `science/not-a-count` when a count is negative, not whole or not finite
 */
export const wormsFound = ({ found, settled }: Pick<HoleCount, "found" | "settled">): Result<number> => {
  if (!settled) return failed("science/two-answers");
  const counts = Object.values(found).filter((count) => count !== null);
  if (counts.length === 0) return failed("science/nothing-read");
  const bad = counts.find((count) => !(Number.isSafeInteger(count) && count >= 0));
  if (bad !== undefined) return failed("science/not-a-count", { count: String(bad) });
  return ok(counts.reduce((sum, count) => sum + count, 0));
};

/**
 * The side of the square hole that is as large: one number for the size of a hole, to tell unlike ones apart.
 *
 * @returns `science/no-hole-size` as `holeAreaM2`
 *
 * @example
 * squareSideM([0.25, 0.16]).value // => ≈ 0.2
 */
export const squareSideM = (sidesM: HoleCount["sidesM"]): Result<number> => {
  const area = holeAreaM2(sidesM);
  return area.ok ? ok(Math.sqrt(area.value)) : area;
};
