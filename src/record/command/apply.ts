import { emptyRecord, erasedRecord, type RecordState } from "../record.ts";
import { failed, ok, type Result } from "../result.ts";
import { appendEntry, stepBack } from "./append.ts";
import type { Applied } from "./applied.ts";
import type { Command } from "./command.ts";
import { revise } from "./revise.ts";

export type { Applied } from "./applied.ts";

/**
 * Applies a command to the record as it is stored.
 *
 * A command that was applied before changes nothing, so it can be replayed after the page died. An
 * erased record stays erased.
 *
 * @param stored the record as stored, or undefined when there is none
 * @returns the record to store; or `record/no-such-record`, `record/exists`, `record/erased`,
 * `record/not-valid`, `record/line-full`, `record/line-ended`, `record/full`, `record/nothing-to-undo`,
 * `record/nothing-to-redo`
 */
export const applyCommand = (stored: RecordState | undefined, command: Command): Result<Applied> => {
  const record = stored ?? emptyRecord(command.id);
  if (command.op === "erase") {
    return ok({ record: erasedRecord(command.id), added: [], touched: null, already: record.erased });
  }
  if (record.erased) return failed("record/erased");
  switch (command.op) {
    case "append":
      return appendEntry(record, command);
    case "undo":
    case "redo":
      return stepBack(record, command);
    default:
      return revise(record, command);
  }
};
