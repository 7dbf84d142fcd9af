/** Fit of Horton's curve. */
import type { Result } from "../../../record/result.ts";
import type { SoakPoint } from "../soaking.ts";
import { boundedMinimum } from "./bounded-search.ts";
import { type Fit, type Found, judged, simplestAsGood } from "./fit.ts";
import { type Projected, projectTwo } from "./projection.ts";
import { type CurveReadings, curveReadings } from "./readings.ts";
import { atOnce, atOnceThenSteady, steady } from "./simpler-lines.ts";

/** Slower than this over the whole test is one steady rate; faster than this is over at the first reading. */
const SLOWEST = 0.01;
const FASTEST = 40;
const STEPS = 100;

/** `(1 − exp(−k·t))/k`: what a rate of 1 that dies away lets in. */
const dying = (k: number, hour: number): number => -Math.expm1(-k * hour) / k;

const found = ({ hours, mm, firstH, lastH }: CurveReadings): Found => {
  const tried = (logK: number): Projected => {
    const k = Math.exp(logK);
    return projectTwo(
      mm,
      hours,
      hours.map((hour) => dying(k, hour)),
    );
  };
  const from = Math.log(SLOWEST / lastH);
  const logK = boundedMinimum((x) => tried(x).sse, from, Math.log(FASTEST / firstH), STEPS);
  const { coefficients, sse } = tried(logK);
  const [fc, above] = coefficients;
  const k = Math.exp(logK);
  const f0 = fc + above;
  return {
    line: { kind: "horton", f0, fc, k },
    unknowns: [
      { symbol: "f0", value: f0, slope: (hour) => dying(k, hour) },
      { symbol: "fc", value: fc, slope: (hour) => hour - dying(k, hour), held: fc === 0 },
      {
        symbol: "k",
        value: k,
        slope: (hour) => (above * (hour * Math.exp(-k * hour) - dying(k, hour))) / k,
      },
    ],
    sse,
    collapsesTo: null,
  };
};

/**
 * Horton's curve `F = fc·t + (f0 − fc)·(1 − exp(−k·t))/k` with 0 ≤ fc < f0 and k > 0, by direct least squares
 * on depths. The usual straight line through logarithms of interval rates, plotted at the ends of the
 * intervals, overshoots the final depth of the best known published test by 13 mm.
 *
 * @param points minutes and millimetres, as `curveReadings`
 * @returns reasons as `curveReadings`. Collapses to one steady rate as k goes to 0, to a depth at once (then
 * a steady rate) when all the slowing lies before the first reading
 *
 * Source: Horton 1940 (from memory); de Laat & Savenije, lecture notes LN0262, equations 4.2 and 4.3.
 */
export const fitHorton = (points: readonly SoakPoint[]): Result<Fit> => {
  const read = curveReadings(points, 3);
  if (!read.ok) return read;
  const readings = read.value;
  const best = simplestAsGood(readings, found(readings), [
    steady(readings),
    atOnce(readings),
    atOnceThenSteady(readings),
  ]);
  return judged("horton", "fit-horton", readings, best);
};
