/** Would a storm soak in? Rain against what soil can take in, solved exactly inside each step. */
import type { Capacity } from "../infiltration/models/capacity.ts";
import type { Rain } from "./rain.ts";

/** Sums up to a moment of the storm. */
export interface StormMoment {
  readonly atMin: number;
  readonly rainMm: number;
  readonly soakedMm: number;
  readonly ranOffMm: number;
}

/** What became of a storm. */
export interface Absorbed {
  readonly rainMm: number;
  readonly soakedMm: number;
  readonly ranOffMm: number;
  /** When water first stood on the ground; null when it never did. */
  readonly pondsAtMin: number | null;
  /** Soaked in by then. */
  readonly pondsAtMm: number | null;
  /** How long water stood on the ground in all. */
  readonly pondedMin: number;
  /** Sums at the moments asked for. */
  readonly moments: readonly StormMoment[];
}

/** One straight piece of the storm. */
interface Burst {
  readonly hours: number;
  readonly mmPerH: number;
}

/** What sums of many steps differ by through rounding alone, as a share of the rain. */
const CRUMB = 1e-9;

/** Where the storm stands. */
interface Sky {
  soakedMm: number;
  pondsAtH: number | null;
  pondsAtMm: number | null;
  pondedH: number;
}

/**
 * One straight piece of rain on soil that has taken in so much. While it rains less than the soil can take, all
 * soaks in, up to the depth Fp at which the rate has come down to the rain, `f(Fp) = i`; from there on the soil
 * takes what its curve gives, counted from that depth and not from the clock.
 */
const soak = (sky: Sky, { hours, mmPerH }: Burst, sinceH: number, capacity: Capacity): void => {
  if (mmPerH <= 0) return;
  const pondsMm = capacity.depthAtRate(mmPerH);
  const freeH = Math.max(0, (pondsMm - sky.soakedMm) / mmPerH);
  // Room for all of it but a crumb of rounding is room for all of it.
  if (freeH >= hours * (1 - CRUMB)) {
    sky.soakedMm += mmPerH * hours;
    return;
  }
  sky.soakedMm = Math.max(sky.soakedMm, pondsMm);
  if (sky.pondsAtH === null) {
    sky.pondsAtH = sinceH + freeH;
    sky.pondsAtMm = sky.soakedMm;
  }
  const left = hours - freeH;
  sky.pondedH += left;
  const along = capacity.hoursAt(sky.soakedMm) + left;
  // A curve that has come to its end takes nothing more; rounding never gives back what has soaked in.
  const after = Number.isFinite(along) ? capacity.depthAt(along) : sky.soakedMm;
  sky.soakedMm = Math.min(sky.soakedMm + mmPerH * left, Math.max(sky.soakedMm, after));
};

/** Runoff without the crumbs of rounding, which are not water. */
const without = (ranOffMm: number, totalMm: number): number => (ranOffMm > CRUMB * totalMm ? ranOffMm : 0);

/** The storm's own points with the moments asked for put between them. */
const breaksOf = ({ points, minutes }: Rain, wanted: readonly number[]): readonly number[] =>
  [...new Set([...points.map(({ atMin }) => atMin), ...wanted.filter((at) => at > 0 && at < minutes)])].sort(
    (a, b) => a - b,
  );

/**
 * Runs a storm over soil by time compression: what soil can take in depends on what it has taken in, not on the
 * clock. Ponding begins where the capacity has come down to the rain, `f(Fp) = i`; under constant rain the time
 * is `tp = Fp/i`, not the time at which the clocked curve shows that rate. Rain that is more than the soil takes
 * runs off at once: no water is held in hollows.
 *
 * The result rests on the storm's own points alone. The moments asked for only read it off, so it is the same
 * whatever step they have.
 *
 * @param capacity what the soil can take in, from `capacityOf`
 * @param wantedMin minutes at which sums are wanted; those beyond the storm are left out
 *
 * Source: time compression as in Chow, Maidment & Mays 1988, section 5.4; Cheng, Cui & Zhu 2019: within 5 % for
 * rain that ponds throughout, and too little soaking in when rain varies.
 *
 * @example
 * import { capacityOf } from "../infiltration/models/line.ts";
 * import { constantRain } from "./rain.ts";
 * const soil = capacityOf({ kind: "horton", f0: 100, fc: 40, k: 2 });
 * absorb(constantRain(60, 60).value, soil, []).pondsAtMin // => ≈ 41.97
 */
export const absorb = (rain: Rain, capacity: Capacity, wantedMin: readonly number[]): Absorbed => {
  const sky: Sky = { soakedMm: 0, pondsAtH: null, pondsAtMm: null, pondedH: 0 };
  const wanted = new Set(wantedMin);
  const moments: StormMoment[] = [];
  let piece = 0;
  let atMin = 0;
  let rainMm = 0;
  for (const toMin of breaksOf(rain, wantedMin)) {
    while ((rain.points[piece + 1]?.atMin ?? Number.POSITIVE_INFINITY) < toMin) piece++;
    const from = rain.points[piece];
    const to = rain.points[piece + 1];
    if (from !== undefined && to !== undefined && toMin > atMin) {
      const mmPerH = (60 * (to.mm - from.mm)) / (to.atMin - from.atMin);
      soak(sky, { hours: (toMin - atMin) / 60, mmPerH }, atMin / 60, capacity);
      rainMm = toMin === to.atMin ? to.mm : from.mm + (mmPerH * (toMin - from.atMin)) / 60;
      atMin = toMin;
    }
    if (wanted.has(toMin)) {
      const ranOffMm = without(rainMm - sky.soakedMm, rain.totalMm);
      moments.push({ atMin, rainMm, soakedMm: rainMm - ranOffMm, ranOffMm });
    }
  }
  // Without runoff nothing ponded, and without ponding nothing ran off.
  const ranOffMm = sky.pondsAtH === null ? 0 : without(rain.totalMm - sky.soakedMm, rain.totalMm);
  const ponded = sky.pondsAtH !== null && ranOffMm > 0;
  return {
    rainMm: rain.totalMm,
    soakedMm: rain.totalMm - ranOffMm,
    ranOffMm,
    pondsAtMin: ponded && sky.pondsAtH !== null ? sky.pondsAtH * 60 : null,
    pondsAtMm: ponded ? sky.pondsAtMm : null,
    pondedMin: ponded ? sky.pondedH * 60 : 0,
    moments,
  };
};
