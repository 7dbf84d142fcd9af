/** What the page and the worker for results say to each other. */
import type { RecordId } from "../../record/ids.ts";
import type { Result } from "../../record/result.ts";
import type { CoverWanted, FieldCover } from "../../science/ground-cover/field-cover.ts";

/** A question of the page. */
export interface FieldQuestion {
  readonly n: number;
  readonly fields: readonly RecordId<"field">[];
  readonly wanted: CoverWanted;
}

/** The answer to the question of the same number. */
export interface FieldAnswer {
  readonly n: number;
  readonly answer: Result<FieldCover>;
}
