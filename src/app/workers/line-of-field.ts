/** A stored line, added up without making an object of every mark. */
import { type EntryColumns, valuesOf } from "../../record/columns.ts";
import type { RecordId } from "../../record/ids.ts";
import { lineFinished } from "../../record/line/finished.ts";
import { type LineFrame, type LineTally, readLine } from "../../record/line/reading.ts";
import { summariseLine } from "../../record/line/summary.ts";
import { ok, type Result } from "../../record/result.ts";
import { currentEntries } from "../../store/rows.ts";

/** A line's sums, and whether it is done. */
export interface AddedUp {
  readonly tally: LineTally;
  readonly finished: boolean;
}

const looked = (tally: LineTally): number => Object.values(tally).reduce((sum, count) => sum + count, 0);

/**
 * Adds a line up from its columns. Says the same as `readLine` and `lineFinished`.
 *
 * @param packed undefined when nothing was read on the line yet
 */
export const addUp = (
  id: RecordId<"observation">,
  packed: EntryColumns | undefined,
  frame: LineFrame,
): Result<AddedUp> => {
  // A rope number that was set back leaves the line open though its last mark was read, so those lines, and
  // lines of totals, are read mark by mark.
  if (packed === undefined || frame.way === "totals" || valuesOf(packed, "type").includes("set-mark")) {
    const entries = packed === undefined ? ok([]) : currentEntries({ id, ...packed });
    if (!entries.ok) return entries;
    const reading = readLine(entries.value, frame);
    return ok({ tally: reading.tally, finished: lineFinished(reading, frame) });
  }
  const { tally, endedAt } = summariseLine(packed, frame);
  const full = frame.way === "mark-by-mark" && looked(tally) >= frame.ropeMarks;
  return ok({ tally, finished: endedAt !== null || full });
};
