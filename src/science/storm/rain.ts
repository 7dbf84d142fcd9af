/** A storm as depth against time, straight between its points: constant, triangular, a published shape, a gauge. */
import { failed, ok, type Result } from "../../record/result.ts";
import { DEEPEST_RAIN_MM, LONGEST_RAIN_MIN, TRIANGLE_SLICES } from "../constants/storms.ts";
import type { Caution } from "../estimate.ts";
import type { MethodId } from "../methods.ts";
import { STORM_SHAPES, type StormShape } from "./shapes.ts";

/** Rain fallen up to a moment. */
export interface RainPoint {
  readonly atMin: number;
  readonly mm: number;
}

/** A storm. Its points begin at 0 min and 0 mm; times rise, depths never fall. */
export interface Rain {
  readonly points: readonly RainPoint[];
  readonly totalMm: number;
  readonly minutes: number;
  readonly cautions: readonly Caution[];
  readonly methods: readonly MethodId[];
}

const isDepth = (mm: number): boolean => mm > 0 && mm <= DEEPEST_RAIN_MM;
const isTime = (minutes: number): boolean => minutes > 0 && minutes <= LONGEST_RAIN_MIN;

const rainOf = (
  points: readonly RainPoint[],
  methods: readonly MethodId[],
  cautions: readonly Caution[] = [],
): Rain => ({
  points,
  totalMm: points.at(-1)?.mm ?? 0,
  minutes: points.at(-1)?.atMin ?? 0,
  cautions,
  methods,
});

/**
 * Rain of one intensity from beginning to end.
 *
 * @param depthMm above 0, up to 2000
 * @param minutes above 0, up to ten days
 * @returns `science/not-a-rain` or `science/not-a-time` outside of that
 *
 * @example
 * constantRain(16, 120).value.points // => [{ atMin: 0, mm: 0 }, { atMin: 120, mm: 16 }]
 */
export const constantRain = (depthMm: number, minutes: number): Result<Rain> => {
  if (!isDepth(depthMm)) return failed("science/not-a-rain");
  if (!isTime(minutes)) return failed("science/not-a-time");
  const points = [
    { atMin: 0, mm: 0 },
    { atMin: minutes, mm: depthMm },
  ];
  return ok(rainOf(points, []));
};

/**
 * Rain that rises evenly to a peak and falls evenly to nothing; the peak is twice the mean intensity. It is cut
 * into 250 straight pieces on each side, each with its exact depth: what soaks in then differs from the smooth
 * triangle by less than 0.01 mm.
 *
 * @param peakShare when the peak comes, as a share of the duration, from 0 to 1
 * @returns reasons as `constantRain`; `science/not-a-peak`
 *
 * @example
 * triangularRain(40, 60, 0.5).value.points[250] // => { atMin: 30, mm: 20 }
 */
export const triangularRain = (depthMm: number, minutes: number, peakShare: number): Result<Rain> => {
  if (!isDepth(depthMm)) return failed("science/not-a-rain");
  if (!isTime(minutes)) return failed("science/not-a-time");
  if (!(peakShare >= 0 && peakShare <= 1)) return failed("science/not-a-peak");
  const points: RainPoint[] = [{ atMin: 0, mm: 0 }];
  for (let slice = 1; slice <= TRIANGLE_SLICES && peakShare > 0; slice++) {
    const part = slice / TRIANGLE_SLICES;
    points.push({ atMin: part * peakShare * minutes, mm: part * part * peakShare * depthMm });
  }
  for (let slice = 1; slice <= TRIANGLE_SLICES && peakShare < 1; slice++) {
    const left = 1 - slice / TRIANGLE_SLICES;
    const after = 1 - peakShare;
    points.push({ atMin: (1 - left * after) * minutes, mm: (1 - left * left * after) * depthMm });
  }
  return ok(rainOf(points, ["storm-triangular"]));
};

/**
 * A storm of 24 hours with a published shape, on the steps of its own table: a coarser step flattens the peak,
 * and 100 mm of type II lose 5 mm of runoff when they are read by the hour.
 *
 * @returns `science/not-a-rain`
 *
 * @example
 * const { points } = shapedRain(100, "II").value;
 * points.find(({ atMin }) => atMin === 720).mm // => ≈ 66.3
 */
export const shapedRain = (depthMm: number, shape: StormShape): Result<Rain> => {
  if (!isDepth(depthMm)) return failed("science/not-a-rain");
  const points = STORM_SHAPES[shape].map(([hour, share]) => ({
    atMin: Math.round(hour * 60),
    mm: share * depthMm,
  }));
  return ok(
    rainOf(points, ["storm-24-h-shape"], [{ code: "science/storm-shape-of-one-country", facts: {} }]),
  );
};

/** One look at a rain gauge. */
export interface GaugeReading {
  /** Minutes since the rain began. */
  readonly atMin: number;
  readonly mm: number;
}

/** What a reading is: all that fell since the beginning, or what fell since the gauge was last emptied. */
export type GaugeWay = "total" | "since-last";

/**
 * A storm from the person's own gauge. Between two looks the rain counts as even, so short bursts are lost; looks
 * that lie more than a quarter of an hour apart are said.
 *
 * @param readings in any order; one at 0 min needs 0 mm
 * @returns `science/nothing-read`, `science/not-a-time` (also for a time read twice), `science/not-a-rain` for
 * what is negative, not finite or 0 in all, `science/gauge-went-down` when a total falls
 *
 * @example
 * gaugeRain([{ atMin: 10, mm: 2 }, { atMin: 20, mm: 5 }], "since-last").value.totalMm // => 7
 */
export const gaugeRain = (readings: readonly GaugeReading[], way: GaugeWay): Result<Rain> => {
  if (readings.length === 0) return failed("science/nothing-read");
  const sorted = [...readings].sort((a, b) => a.atMin - b.atMin);
  if (sorted.some(({ mm }) => !(mm >= 0 && mm <= DEEPEST_RAIN_MM))) return failed("science/not-a-rain");
  const [first] = sorted;
  // An empty gauge at the beginning says nothing new.
  const later = first?.atMin === 0 && first.mm === 0 ? sorted.slice(1) : sorted;
  const points: RainPoint[] = [{ atMin: 0, mm: 0 }];
  let mm = 0;
  let widest = 0;
  for (const reading of later) {
    const last = points.at(-1)?.atMin ?? 0;
    if (!(isTime(reading.atMin) && reading.atMin > last)) return failed("science/not-a-time");
    const total = way === "total" ? reading.mm : mm + reading.mm;
    if (total < mm) return failed("science/gauge-went-down");
    mm = total;
    widest = Math.max(widest, reading.atMin - last);
    points.push({ atMin: reading.atMin, mm });
  }
  if (!isDepth(mm)) return failed("science/not-a-rain");
  const cautions: Caution[] =
    widest > 15 ? [{ code: "science/gauge-read-seldom", facts: { minutes: Math.round(widest) } }] : [];
  return ok(rainOf(points, [], cautions));
};
