/** What the page and the worker for results say to each other. */
import type { RecordId } from "../../record/ids.ts";
import type { LineAsked, LineSums } from "../../record/line/sums.ts";
import type { Result } from "../../record/result.ts";
import type { FieldResults } from "../../science/field-results.ts";
import type { CoverWanted } from "../../science/ground-cover/field-cover.ts";
import type { GroundStated, RingForSpecialist } from "../../science/infiltration/ring-for-specialist.ts";
import type { KeptUnder } from "../../store/field-states.ts";

/** What results are kept under: worms and soak-in do not depend on what counts as ground cover. */
export interface KeepUnder {
  readonly cover: KeptUnder;
  readonly others: KeptUnder;
}

/** What the page may ask for, and what it gets. */
export interface ResultsTable {
  field: {
    readonly wants: {
      readonly field: RecordId<"field">;
      /** The field and all that are the same. */
      readonly fields: readonly RecordId<"field">[];
      readonly wanted: CoverWanted;
      readonly keepUnder: KeepUnder;
    };
    readonly gives: FieldResults;
  };
  lines: { readonly wants: readonly LineAsked[]; readonly gives: readonly LineSums[] };
  ring: {
    readonly wants: { readonly ring: RecordId<"observation">; readonly ground: GroundStated };
    readonly gives: RingForSpecialist;
  };
}

export type ResultsJob = keyof ResultsTable;

/** A question of the page. */
export type ResultsQuestion = {
  readonly [J in ResultsJob]: {
    readonly n: number;
    readonly job: J;
    readonly wants: ResultsTable[J]["wants"];
  };
}[ResultsJob];

/** The answer to the question of the same number. */
export interface ResultsAnswer {
  readonly n: number;
  readonly answer: Result<ResultsTable[ResultsJob]["gives"]>;
}
