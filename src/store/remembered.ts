import type { RecordId } from "../record/ids.ts";
import type { RecordState } from "../record/record.ts";

/** The record written last by a command, and the state of its field that this write left behind. */
export interface Remembered {
  readonly record: RecordState;
  readonly field: RecordId<"field">;
  readonly last: string;
}
