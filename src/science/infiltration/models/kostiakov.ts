/** Fits of Kostiakov's curve and of Kostiakov and Lewis's. */
import type { Result } from "../../../record/result.ts";
import type { SoakPoint } from "../soaking.ts";
import { boundedMinimum } from "./bounded-search.ts";
import { type Fit, type Found, judged, simplestAsGood, type Unknown } from "./fit.ts";
import type { PowerLine } from "./power-curve.ts";
import { type Projected, projectOne, projectTwo } from "./projection.ts";
import { type CurveReadings, curveReadings } from "./readings.ts";
import { atOnce, atOnceThenSteady, steady } from "./simpler-lines.ts";

/** The exponent lies between 0 and 1; closer to either end the curve is one of its simpler lines. */
const LEAST = 0.001;
const MOST = 0.999;
const STEPS = 50;

const unknownsOf = ({ a, b, c }: PowerLine): readonly [Unknown, Unknown, Unknown] => [
  { symbol: "a", value: a, slope: (hour) => hour ** b },
  { symbol: "b", value: b, slope: (hour) => a * hour ** b * Math.log(hour) },
  { symbol: "c", value: c, slope: (hour) => hour },
];

const found = (readings: CurveReadings, project: (powers: readonly number[]) => Projected): Found => {
  const tried = (b: number): Projected => project(readings.hours.map((hour) => hour ** b));
  const b = boundedMinimum((exponent) => tried(exponent).sse, LEAST, MOST, STEPS);
  const { coefficients, sse } = tried(b);
  const [a, c] = coefficients;
  const line: PowerLine = { kind: "power", a, b, c };
  return { line, unknowns: unknownsOf(line), sse, collapsesTo: null };
};

const withoutSteady = (readings: CurveReadings): Found => {
  const best = found(readings, (powers) => projectOne(readings.mm, powers));
  return { ...best, unknowns: best.unknowns.slice(0, 2) };
};

/**
 * Kostiakov's curve `F = a·t^b`, 0 < b < 1, through the depths themselves, never through their logarithms,
 * which would let the first small readings decide.
 *
 * @param points minutes and millimetres, as `curveReadings`
 * @returns reasons as `curveReadings`. Collapses to a steady rate or to a depth at once at the ends of b
 *
 * Source: Kostiakov 1932 (from memory).
 */
export const fitKostiakov = (points: readonly SoakPoint[]): Result<Fit> => {
  const read = curveReadings(points, 2);
  if (!read.ok) return read;
  const readings = read.value;
  const best = simplestAsGood(readings, withoutSteady(readings), [steady(readings), atOnce(readings)]);
  return judged("kostiakov", "fit-kostiakov", readings, best);
};

/**
 * Kostiakov and Lewis's curve `F = a·t^b + c·t` with 0 < b < 1 and c ≥ 0. Left free, c falls below 0 on most
 * published tests, which says that water comes back up in the end; here it is held at 0 then, and the curve is
 * Kostiakov's.
 *
 * @param points minutes and millimetres, as `curveReadings`
 * @returns reasons as `curveReadings`
 *
 * Source: Lewis 1937, Mezencev 1948 (from memory).
 */
export const fitKostiakovLewis = (points: readonly SoakPoint[]): Result<Fit> => {
  const read = curveReadings(points, 3);
  if (!read.ok) return read;
  const readings = read.value;
  const plain = withoutSteady(readings);
  const held: Found = {
    ...plain,
    unknowns: [...plain.unknowns, { symbol: "c", value: 0, slope: (hour) => hour, held: true }],
    collapsesTo: "kostiakov",
  };
  const best = simplestAsGood(
    readings,
    found(readings, (powers) => projectTwo(readings.mm, powers, readings.hours)),
    [steady(readings), atOnce(readings), held, atOnceThenSteady(readings)],
  );
  return judged("kostiakov-lewis", "fit-kostiakov-lewis", readings, best);
};
