/** Curves and conductivities of a ring as a table for a file. */
import { yesNo } from "../../../exchange/format/views/cells.ts";
import { type Cell, csvHead, csvRow } from "../../../exchange/format/views/csv.ts";
import type { Result } from "../../../record/result.ts";
import type { Caution } from "../../../science/estimate.ts";
import type { Conductivity } from "../../../science/infiltration/kfs/conductivity.ts";
import { type Fit, MODELS } from "../../../science/infiltration/models/fit.ts";
import { residualSpreadMm } from "../../../science/infiltration/models/spread.ts";
import { KFS_WAYS, type RingForSpecialist } from "../../../science/infiltration/ring-for-specialist.ts";
import { UNIT_OF, WRITTEN } from "./specialist-model.ts";

/** Sentences for a reason or a caution. */
type Say = (of: Caution) => string;

/** What it is, its value and unit, its standard error, and what is said beside it. */
type Row = readonly [what: string, value: Cell, unit: string, error: Cell, said: string];

const sentence = (said: string): Row => ["said", null, "", null, said];

const number = (what: string, result: Result<number>, unit: string, say: Say): Row =>
  result.ok ? [what, result.value, unit, null, ""] : [what, null, unit, null, say(result.problem)];

const fitRows = (fit: Fit, say: Say): readonly Row[] => [
  ...fit.parameters.map(
    ({ symbol, value, standardError }): Row =>
      standardError.ok
        ? [WRITTEN[symbol], value, UNIT_OF[symbol], standardError.value, ""]
        : [WRITTEN[symbol], value, UNIT_OF[symbol], null, say(standardError.problem)],
  ),
  number("AICc", fit.aicc, "", say),
  ["sum of squares", fit.sseMm2, "mm2", null, ""],
  number("left over on average", residualSpreadMm(fit), "mm", say),
  ["readings", fit.n, "", null, ""],
  ["unknowns that are free", fit.free, "", null, ""],
  ...fit.cautions.map((caution) => sentence(say(caution))),
  ...fit.residuals.map(({ atMin, mm }): Row => [`left over at ${atMin} min`, mm, "mm", null, ""]),
];

const kfsRows = ({ value, at20, cautions }: Conductivity, say: Say): readonly Row[] => [
  ["as measured", value, "mm/h", null, ""],
  ...(at20.ok ? [number("at 20 °C", at20, "mm/h", say)] : []),
  ...cautions.map((caution) => sentence(say(caution))),
];

const under = <T>(
  part: string,
  of: string,
  result: Result<T>,
  rows: (value: T, say: Say) => readonly Row[],
  say: Say,
): readonly (readonly Cell[])[] =>
  (result.ok ? rows(result.value, say) : [sentence(say(result.problem))]).map((row) => [part, of, ...row]);

/**
 * One row for each unknown, each criterion, each residual and each conductivity. Numbers are not rounded; where
 * one is missing its reason stands. A model that was not laid has one row with its reason.
 *
 * @param example whether the ring belongs to the example farm: every row says so
 */
export const specialistCsv = ({ fits, kfs }: RingForSpecialist, example: boolean, say: Say): string => {
  const rows = [
    ...(fits.ok
      ? MODELS.flatMap((model) => under("curve", model, fits.value.fits[model], fitRows, say))
      : under("curve", "", fits, () => [], say)),
    ...KFS_WAYS.flatMap((way) => under("conductivity", way, kfs[way], kfsRows, say)),
  ];
  return [
    csvHead(["part", "of", "what", "value", "unit", "standard error", "said beside it", "example"]),
    ...rows.map((row) => csvRow([...row, yesNo(example)])),
  ].join("");
};
