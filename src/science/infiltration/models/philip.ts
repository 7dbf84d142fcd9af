/** Fit of Philip's two-term curve. */
import type { Result } from "../../../record/result.ts";
import type { SoakPoint } from "../soaking.ts";
import { type Fit, type Found, judged, simplestAsGood } from "./fit.ts";
import { projectTwo } from "./projection.ts";
import { curveReadings } from "./readings.ts";
import { rootTime, steady } from "./simpler-lines.ts";

/**
 * Philip's two-term curve `F = S·√t + A·t` with S, A ≥ 0: linear in both, so there is nothing to search. Held
 * at A = 0 it is `F = S·√t`; held at S = 0 one steady rate.
 *
 * @param points minutes and millimetres, as `curveReadings`
 * @returns reasons as `curveReadings`
 *
 * Source: Philip 1957, Soil Science 84: 257-264 (from memory).
 */
export const fitPhilip = (points: readonly SoakPoint[]): Result<Fit> => {
  const read = curveReadings(points, 2);
  if (!read.ok) return read;
  const readings = read.value;
  const { coefficients, sse } = projectTwo(readings.mm, readings.hours.map(Math.sqrt), readings.hours);
  const [s, a] = coefficients;
  const best: Found = {
    line: { kind: "two-term", s, a },
    unknowns: [
      { symbol: "S", value: s, slope: Math.sqrt },
      { symbol: "A", value: a, slope: (hour) => hour },
    ],
    sse,
    collapsesTo: null,
  };
  const root = rootTime(readings);
  const even = steady(readings);
  const simplest = simplestAsGood(readings, best, [
    {
      ...even,
      unknowns: [{ symbol: "S", value: 0, slope: Math.sqrt, held: true }, ...even.unknowns],
    },
    {
      ...root,
      unknowns: [...root.unknowns, { symbol: "A", value: 0, slope: (hour) => hour, held: true }],
    },
  ]);
  return judged("philip", "fit-philip", readings, simplest);
};
