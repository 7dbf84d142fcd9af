/** The edges that models come down to, each laid through the readings by itself. */
import type { Found } from "./fit.ts";
import { projectOne, projectTwo } from "./projection.ts";
import type { CurveReadings } from "./readings.ts";

/** `F = S·√t`: only the slowing part of a two-term curve; of Green and Ampt's as K goes to 0. */
export const rootTime = ({ hours, mm }: CurveReadings): Found => {
  const { coefficients, sse } = projectOne(mm, hours.map(Math.sqrt));
  const [s] = coefficients;
  return {
    line: { kind: "two-term", s, a: 0 },
    unknowns: [{ symbol: "S", value: s, slope: Math.sqrt }],
    sse,
    collapsesTo: "root-time",
  };
};

/** `F = A·t`: one rate from the beginning to the end. */
export const steady = ({ hours, mm }: CurveReadings): Found => {
  const { coefficients, sse } = projectOne(mm, hours);
  const [a] = coefficients;
  return {
    line: { kind: "two-term", s: 0, a },
    unknowns: [{ symbol: "A", value: a, slope: (hour) => hour }],
    sse,
    collapsesTo: "steady",
  };
};

/** `F = F1`: all of it before the first reading. */
export const atOnce = ({ hours, mm }: CurveReadings): Found => {
  const { coefficients, sse } = projectOne(
    mm,
    hours.map(() => 1),
  );
  const [atOnceMm] = coefficients;
  return {
    line: { kind: "step", atOnceMm, mmPerH: 0 },
    unknowns: [{ symbol: "F1", value: atOnceMm, slope: () => 1 }],
    sse,
    collapsesTo: "at-once",
  };
};

/** `F = F1 + A·t`: the slowing lies before the first reading. */
export const atOnceThenSteady = ({ hours, mm }: CurveReadings): Found => {
  const ones = hours.map(() => 1);
  const { coefficients, sse } = projectTwo(mm, ones, hours);
  const [atOnceMm, mmPerH] = coefficients;
  return {
    line: { kind: "step", atOnceMm, mmPerH },
    unknowns: [
      { symbol: "F1", value: atOnceMm, slope: () => 1 },
      { symbol: "A", value: mmPerH, slope: (hour) => hour },
    ],
    sse,
    collapsesTo: "at-once-then-steady",
  };
};
