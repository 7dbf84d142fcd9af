/** Lines with two answers for one mark, found without making an object of every mark of every line. */

import type { EntryColumns } from "../../record/columns.ts";
import { unpackEntries, valuesOf } from "../../record/columns.ts";
import type { RecordId } from "../../record/ids.ts";
import { readLine } from "../../record/line/reading.ts";
import { summariseLine } from "../../record/line/summary.ts";
import { readColumns } from "../../store/read.ts";
import { type Listed, type Reader, ReadFailed } from "../parts/reader.ts";

/** A line with answers that contradict each other. */
export interface DoubtfulLine {
  readonly line: Listed<"observation">;
  readonly marks: number;
  readonly thickness: number;
  readonly totals: boolean;
  readonly ends: boolean;
}

/** Entries of these lines as they lie in the database. Rejects with `ReadFailed`. */
export const columnsOf = async (
  records: Reader,
  lines: readonly Listed<"observation">[],
): Promise<ReadonlyMap<RecordId, EntryColumns>> => {
  const columns = await readColumns(
    records.connection,
    lines.map(({ id }) => id),
  );
  if (!columns.ok) throw new ReadFailed(columns.problem);
  return columns.value;
};

// Which answers contradict does not depend on how long the rope is: the longest that there may be.
const ANY_ROPE = 10_000;

/** The lines among these whose answers contradict each other. */
export const doubtfulLines = (
  lines: readonly Listed<"observation">[],
  columns: ReadonlyMap<RecordId, EntryColumns>,
): readonly DoubtfulLine[] =>
  lines.flatMap((line) => {
    const packed = columns.get(line.id);
    if (packed === undefined || line.body.type !== "line") return [];
    const frame = { way: line.body.way, ropeMarks: ANY_ROPE };
    // The sums leave a thickness in doubt out silently, so lines with any are read in full.
    const plain = valuesOf(packed, "value").every((value) => value === undefined);
    const summary = plain ? summariseLine(packed, frame) : undefined;
    if (summary?.tally.unsettled === 0 && !summary.endInDoubt) return [];
    const reading = readLine(unpackEntries(packed), frame);
    const marks = [...reading.marks.values()].filter(({ answers }) => answers.length > 1).length;
    const thickness = reading.thicknessInDoubt.size;
    const totals = reading.totalsInDoubt.length > 0;
    const ends = reading.endsInDoubt.length > 0;
    return marks + thickness > 0 || totals || ends ? [{ line, marks, thickness, totals, ends }] : [];
  });
