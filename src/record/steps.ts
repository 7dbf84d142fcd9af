/** Undo and redo: which entry the next one is about. The same at every test. */
import { type Entry, type Fate, fatesOf, inOrder, type UndoEntry } from "./entry.ts";

/** What Undo and Redo would do now. */
export interface Steps {
  /** The entry that Undo takes back. */
  readonly undoable: Entry | null;
  /** The undo that Redo takes back. */
  readonly redoable: UndoEntry | null;
}

/** The undo that Redo takes back. A reading made since, even one taken back, ends what could be redone. */
const redoableIn = (ordered: readonly Entry[], fates: readonly Fate[]): UndoEntry | null => {
  const types = new Map(ordered.map(({ id, type }) => [id, type]));
  for (let at = ordered.length - 1; at >= 0; at--) {
    const entry = ordered[at];
    if (entry === undefined || entry.type !== "undo") return null;
    const target = types.get(entry.takesBack);
    if (fates[at] === "counts" && target !== undefined && target !== "undo") return entry;
  }
  return null;
};

/**
 * What Undo and Redo would do, from entries in their order.
 *
 * @param ordered as `inOrder` gives them
 * @param fates as `fatesOf` gives them for the same list
 */
export const stepsIn = (ordered: readonly Entry[], fates: readonly Fate[]): Steps => ({
  undoable: ordered.findLast((entry, at) => fates[at] === "counts" && entry.type !== "undo") ?? null,
  redoable: redoableIn(ordered, fates),
});

/**
 * What Undo and Redo would do now.
 *
 * @param entries of one measurement, in any order
 */
export const stepsOf = (entries: readonly Entry[]): Steps => {
  const ordered = inOrder(entries);
  return stepsIn(ordered, fatesOf(ordered));
};
