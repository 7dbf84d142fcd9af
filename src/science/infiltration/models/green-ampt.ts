/** Fit of the curve of Green and Ampt. */
import type { Result } from "../../../record/result.ts";
import type { SoakPoint } from "../soaking.ts";
import { boundedMinimum } from "./bounded-search.ts";
import { type Fit, type Found, judged, simplestAsGood } from "./fit.ts";
import { greenAmptDepth } from "./green-ampt-curve.ts";
import { type Projected, projectOne } from "./projection.ts";
import { type CurveReadings, curveReadings } from "./readings.ts";
import { rootTime, steady } from "./simpler-lines.ts";

/** K·t/M at the last reading below this is root of time alone; at the first reading above this, a steady rate. */
const LEAST = 1e-6;
const MOST = 1e6;
const STEPS = 80;

const found = ({ hours, mm, firstH, lastH }: CurveReadings): Found => {
  const tried = (logRatio: number): Projected => {
    const ratio = Math.exp(logRatio);
    return projectOne(
      mm,
      hours.map((hour) => greenAmptDepth(ratio * hour)),
    );
  };
  const from = Math.log(LEAST / lastH);
  const logRatio = boundedMinimum((x) => tried(x).sse, from, Math.log(MOST / firstH), STEPS);
  const { coefficients, sse } = tried(logRatio);
  const [m] = coefficients;
  const ratio = Math.exp(logRatio);
  const k = ratio * m;
  const scaled = (hour: number): number => greenAmptDepth(ratio * hour);
  // From y − ln(1 + y) = τ: dy/dτ = (1 + y)/y.
  const slopeOfScaled = (y: number): number => (1 + y) / y;
  return {
    line: { kind: "green-ampt", k, m },
    unknowns: [
      { symbol: "K", value: k, slope: (hour) => hour * slopeOfScaled(scaled(hour)) },
      {
        symbol: "M",
        value: m,
        slope: (hour) => scaled(hour) - ratio * hour * slopeOfScaled(scaled(hour)),
      },
    ],
    sse,
    collapsesTo: null,
  };
};

/**
 * The curve of Green and Ampt, `F − M·ln(1 + F/M) = K·t` with K, M > 0. With the ratio K/M held, the curve is
 * M times a fixed shape, so only that ratio is searched for and the curve is solved at each try.
 *
 * M is suction times the room left in the soil, with the depth of water in the ring. When K goes to 0 and M
 * grows without end, K·M stays: the curve is `F = S·√t` with `S = √(2·K·M)`, and only S is given.
 *
 * @param points minutes and millimetres, as `curveReadings`
 * @returns reasons as `curveReadings`
 *
 * Source: Green & Ampt 1911 (from memory); Chow, Maidment & Mays 1988, section 4.3.
 */
export const fitGreenAmpt = (points: readonly SoakPoint[]): Result<Fit> => {
  const read = curveReadings(points, 2);
  if (!read.ok) return read;
  const readings = read.value;
  const best = simplestAsGood(readings, found(readings), [steady(readings), rootTime(readings)]);
  return judged("green-ampt", "fit-green-ampt", readings, best);
};
