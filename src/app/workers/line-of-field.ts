/** A stored line, added up without making an object of every mark. */
import { type EntryColumns, valuesOf } from "../../record/columns.ts";
import type { RecordId } from "../../record/ids.ts";
import { lineFinished } from "../../record/line/finished.ts";
import { type LineFrame, type LineTally, marksSaid, readLine } from "../../record/line/reading.ts";
import { summariseLine } from "../../record/line/summary.ts";
import { ok, type Result } from "../../record/result.ts";
import { currentEntries } from "../../store/rows.ts";

/** A line's sums, and whether it is done. */
export interface AddedUp {
  readonly tally: LineTally;
  readonly finished: boolean;
  /** The last mark looked at once the line has ended, else null. */
  readonly endedAt: number | null;
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
  // A rope number that was set back, or a last mark that was corrected or taken back, leaves the line open
  // though that mark was read: those lines, and lines of totals, are read mark by mark.
  if (
    packed === undefined ||
    frame.way === "totals" ||
    "takesBack" in packed.columns ||
    "replaces" in packed.columns ||
    valuesOf(packed, "type").includes("set-mark")
  ) {
    const entries = packed === undefined ? ok([]) : currentEntries({ id, ...packed });
    if (!entries.ok) return entries;
    const reading = readLine(entries.value, frame);
    const { tally, endedAt } = reading;
    return ok({ tally, finished: lineFinished(reading, frame), endedAt });
  }
  const { tally, endedAt, endInDoubt } = summariseLine(packed, frame);
  const full = frame.way === "mark-by-mark" && looked(tally) >= frame.ropeMarks;
  const finished = !endInDoubt && (endedAt !== null || full) && marksSaid(tally) > 0;
  return ok({ tally, finished, endedAt });
};
