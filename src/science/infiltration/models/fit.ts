/** A model laid through the readings of a ring, and how well it sits. */
import { failed, ok, type Result } from "../../../record/result.ts";
import type { Caution, Worked } from "../../estimate.ts";
import { type MethodId, sourcesOf } from "../../methods.ts";
import { capacityOf, type Line } from "./line.ts";
import type { CurveReadings } from "./readings.ts";
import { standardErrors } from "./standard-errors.ts";

/** The five models, by the names in the literature. */
export const MODELS = ["kostiakov", "kostiakov-lewis", "philip", "horton", "green-ampt"] as const;
export type ModelId = (typeof MODELS)[number];

/**
 * What a model comes down to when the readings do not hold what it adds: Kostiakov's curve · root of time alone
 * (`F = S·√t`) · one steady rate (`F = A·t`) · a depth at once · a depth at once, then one steady rate.
 */
export type SimplerLine = "kostiakov" | "root-time" | "steady" | "at-once" | "at-once-then-steady";

/** The unknowns: `F1` is what soaked in at once. */
export type ParameterSymbol = "a" | "b" | "c" | "S" | "A" | "f0" | "fc" | "k" | "K" | "M" | "F1";

/** One unknown of a model. Rates in mm/h, depths in mm, S in mm/h^½, a in mm/h^b, k in 1/h. */
export interface Parameter {
  readonly symbol: ParameterSymbol;
  readonly value: number;
  /** `science/held-at-its-bound`, `science/parameters-inseparable`. */
  readonly standardError: Result<number>;
  /** At the bound that nature sets (none below 0): the readings would rather have it beyond. */
  readonly held: boolean;
}

/** What is left over at one reading. */
export interface Residual {
  readonly atMin: number;
  /** Read less curve. */
  readonly mm: number;
}

/** A model laid through the readings of one ring. */
export interface Fit extends Worked {
  readonly model: ModelId;
  /** The curve that came out; of another kind than the model where it collapsed. */
  readonly line: Line;
  readonly parameters: readonly Parameter[];
  /** Null when the readings hold all that the model says. */
  readonly collapsesTo: SimplerLine | null;
  /** Sum of the squares of the residuals, mm². */
  readonly sseMm2: number;
  /** Akaike's criterion corrected for few readings; to compare fits of the same readings only. */
  readonly aicc: Result<number>;
  /** Unknowns that were free. */
  readonly free: number;
  readonly residuals: readonly Residual[];
}

/** An unknown and how fast the curve moves with it. */
export interface Unknown {
  readonly symbol: ParameterSymbol;
  readonly value: number;
  /** Millimetres per unit of the unknown, after so many hours. */
  readonly slope: (hours: number) => number;
  readonly held?: boolean;
}

/** A curve that was found, before it is judged. */
export interface Found {
  readonly line: Line;
  readonly unknowns: readonly Unknown[];
  readonly sse: number;
  readonly collapsesTo: SimplerLine | null;
}

const COLLAPSED: Readonly<Record<SimplerLine, Caution["code"]>> = {
  kostiakov: "science/collapses-to-kostiakov",
  "root-time": "science/collapses-to-root-time",
  steady: "science/collapses-to-steady",
  "at-once": "science/collapses-to-at-once",
  "at-once-then-steady": "science/collapses-to-at-once-then-steady",
};

/** A simpler curve is as good when it leaves no more than this share over. Far below what any reading holds. */
const AS_GOOD = 1e-6;
/** What rounding leaves over, as a share of the sum of squares of the readings. */
const ROUNDING = 1e-20;

const sumOfSquares = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value * value, 0);

/**
 * The curve of a model, or the simplest one that leaves no more over.
 *
 * @param simpler from the simplest on; each is an edge of the model
 */
export const simplestAsGood = (readings: CurveReadings, best: Found, simpler: readonly Found[]): Found => {
  const enough = best.sse * (1 + AS_GOOD) + ROUNDING * sumOfSquares(readings.mm);
  return simpler.find(({ sse }) => sse <= enough) ?? best;
};

/**
 * Akaike's information criterion with the correction for few readings, the variance counting as an unknown:
 * `AICc = n·ln(SSE/n) + 2κ + 2κ(κ + 1)/(n − κ − 1)`, κ = free unknowns + 1.
 */
const aiccOf = (n: number, free: number, sse: number, total: number): Result<number> => {
  const unknowns = free + 1;
  if (n - unknowns - 1 <= 0)
    return failed("science/too-few-readings-for-a-curve", { needs: unknowns + 2, has: n });
  if (sse <= ROUNDING * total) return failed("science/nothing-left-over");
  return ok(n * Math.log(sse / n) + 2 * unknowns + (2 * unknowns * (unknowns + 1)) / (n - unknowns - 1));
};

/**
 * A curve that was found, with everything that stands beside it.
 *
 * @returns `science/no-number` when readings so odd that a computer cannot hold their squares lead nowhere
 */
export const judged = (
  model: ModelId,
  method: MethodId,
  readings: CurveReadings,
  found: Found,
): Result<Fit> => {
  const { line, unknowns, collapsesTo } = found;
  const { hours, mm } = readings;
  const { depthAt } = capacityOf(line);
  const residuals = hours.map((hour, at) => ({ atMin: hour * 60, mm: (mm[at] ?? 0) - depthAt(hour) }));
  const sseMm2 = sumOfSquares(residuals.map((residual) => residual.mm));
  if (!(Number.isFinite(sseMm2) && unknowns.every(({ value }) => Number.isFinite(value))))
    return failed("science/no-number");
  const free = unknowns.filter(({ held }) => held !== true);
  const variance = sseMm2 / (hours.length - free.length);
  const errors = standardErrors(
    free.map(({ slope }) => hours.map(slope)),
    variance,
  );
  const parameters = unknowns.map((unknown): Parameter => {
    const { symbol, value, held = false } = unknown;
    const standardError = held
      ? failed("science/held-at-its-bound", { symbol })
      : (errors[free.indexOf(unknown)] ?? failed("science/parameters-inseparable"));
    return { symbol, value, standardError, held };
  });
  const cautions: Caution[] = collapsesTo === null ? [] : [{ code: COLLAPSED[collapsesTo], facts: {} }];
  for (const { symbol, value, standardError, held } of parameters) {
    if (held && collapsesTo === null) cautions.push({ code: "science/held-at-its-bound", facts: { symbol } });
    else if (!(held || (standardError.ok && standardError.value < value)))
      cautions.push({ code: "science/parameter-hardly-known", facts: { symbol } });
  }
  const methods: MethodId[] = [method, "variable-projection", "curve-errors", "curve-aicc"];
  return ok({
    model,
    line,
    parameters,
    collapsesTo,
    sseMm2,
    aicc: aiccOf(hours.length, free.length, sseMm2, sumOfSquares(mm)),
    free: free.length,
    residuals,
    n: hours.length,
    sampledBy: "readings",
    cautions,
    methods,
    sources: sourcesOf(methods),
  });
};
