/**
 * Bringing records together. Union of the revisions without those that another stands in for, union of
 * the entries by id; an erased record stays erased. Files may arrive in any order, twice, or late: the
 * outcome is the same (commutative, associative, idempotent), and no clock has a say in it.
 */
import { canonicalJson } from "../../record/canonical.ts";
import { type Entry, inOrder } from "../../record/entry.ts";
import type { RecordId } from "../../record/ids.ts";
import { erasedRecord, type RecordState, type Revision } from "../../record/record.ts";
import { compareText } from "../../record/stamp.ts";
import { standsIn } from "./stand-in.ts";

/** Every different revision once. Writing one as text is slow, and needed only where two share a `rev`. */
const distinct = (revisions: readonly Revision[]): Revision[] => {
  const kept: Revision[] = [];
  for (const one of new Set(revisions))
    if (!kept.some((other) => other.rev === one.rev && canonicalJson(other) === canonicalJson(one)))
      kept.push(one);
  return kept;
};

// Only made-up files have two revisions of one `rev`; their order must be one all the same.
const byRevThenText = (a: Revision, b: Revision): number =>
  compareText(a.rev, b.rev) || compareText(canonicalJson(a), canonicalJson(b));

const mergeRevisions = (a: readonly Revision[], b: readonly Revision[]): Revision[] => {
  const all = distinct([...a, ...b]);
  if (all.length < 2) return all;
  return all.filter((one) => !all.some((other) => other !== one && standsIn(other, one))).sort(byRevThenText);
};

const mergeEntries = (a: readonly Entry[], b: readonly Entry[]): Entry[] => {
  const byId = new Map<string, Entry>();
  for (const entry of [...a, ...b]) {
    const other = byId.get(entry.id);
    if (other === undefined || (other !== entry && canonicalJson(entry) > canonicalJson(other)))
      byId.set(entry.id, entry);
  }
  return inOrder([...byId.values()]);
};

/**
 * Brings two states of one record together.
 *
 * @param a one state
 * @param b the other one, of the same id (another id is a bug and throws)
 * @returns the merged state in its one order; merging a state with itself puts a made-up one into the
 * form that every other merge gives
 * @example
 * mergeRecord(mine, theirs) // the same as mergeRecord(theirs, mine)
 */
export const mergeRecord = (a: RecordState, b: RecordState): RecordState => {
  if (a.id !== b.id) throw new TypeError("two records of different ids cannot be merged");
  if (a.erased || b.erased) return erasedRecord(a.id);
  return {
    id: a.id,
    erased: false,
    revs: mergeRevisions(a.revs, b.revs),
    entries: mergeEntries(a.entries, b.entries),
  };
};

/** Records by id: all that one device holds. */
export type Records = ReadonlyMap<RecordId, RecordState>;

/**
 * Brings all records of two devices together. A record that only one of them holds is taken as it is.
 */
export const mergeAll = (a: Records, b: Records): Records => {
  const merged = new Map(a);
  for (const [id, record] of b) {
    const here = merged.get(id);
    if (here !== record) merged.set(id, here === undefined ? record : mergeRecord(here, record));
  }
  return merged;
};
