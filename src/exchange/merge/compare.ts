/** What bringing one record in would change here, for the preview before anything is changed. */
import { canonicalJson } from "../../record/canonical.ts";
import { readLine } from "../../record/line/reading.ts";
import { MAX_ENTRIES, MAX_SIDE_BY_SIDE, type RecordState } from "../../record/record.ts";
import { mergeRecord } from "./merge.ts";

/** One record of a file against the one that is stored. */
export interface Comparison {
  readonly merged: RecordState;
  /** `same`: bringing it in changes nothing, as with an old backup. */
  readonly is: "new" | "changed" | "same";
  /** More than one version will be offered side by side afterwards, and that is not so now. */
  readonly sideBySide: boolean;
  /** Marks of a line that will have two answers afterwards and have not now. */
  readonly twoAnswers: readonly number[];
  /** The merged record would be larger than a record may be; it must not be brought in. */
  readonly tooLarge: boolean;
}

const marksWithTwoAnswers = ({ entries }: RecordState): number[] => {
  if (entries.length < 2) return [];
  // The way of counting and the length of the rope decide sums only, not which answers contradict.
  const { marks, thicknessInDoubt } = readLine(entries, { way: "mark-by-mark", ropeMarks: 0 });
  const inDoubt = [...marks].filter(([, { answers }]) => answers.length > 1).map(([mark]) => mark);
  return [...new Set([...inDoubt, ...thicknessInDoubt.keys()])];
};

/**
 * Compares a record of a file with the one that is stored.
 *
 * @param stored what this device holds, undefined when it has no record of that id
 * @param incoming the record of the file, of the same id
 * @example
 * compareWithStored(undefined, incoming).is // gives "new"
 */
export const compareWithStored = (stored: RecordState | undefined, incoming: RecordState): Comparison => {
  const merged = mergeRecord(stored ?? incoming, incoming);
  const before = new Set(stored === undefined ? [] : marksWithTwoAnswers(stored));
  const same = stored !== undefined && canonicalJson(stored) === canonicalJson(merged);
  return {
    merged,
    is: stored === undefined ? "new" : same ? "same" : "changed",
    sideBySide: merged.revs.length > 1 && (stored?.revs.length ?? 0) < 2,
    twoAnswers: marksWithTwoAnswers(merged)
      .filter((mark) => !before.has(mark))
      .sort((a, b) => a - b),
    tooLarge: merged.revs.length > MAX_SIDE_BY_SIDE || merged.entries.length > MAX_ENTRIES,
  };
};
