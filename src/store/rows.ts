/** A record as rows: its header, and its entries as columns. */
import { type EntryColumns, packEntries, packOneMore, unpackEntries } from "../record/columns.ts";
import { ENTRY_VERSION, type Entry } from "../record/entry.ts";
import { kindOf } from "../record/ids.ts";
import { KIND } from "../record/kinds/all.ts";
import { listKeys } from "../record/list-keys.ts";
import { parseRecord } from "../record/parse.ts";
import type { RecordState } from "../record/record.ts";
import { ok, type Result } from "../record/result.ts";
import type { EntriesRow, HeaderRow } from "./schema.ts";

/** The row that lists read. */
export const headerRow = (record: RecordState): HeaderRow => ({
  id: record.id,
  erased: record.erased,
  revs: record.revs,
  keys: listKeys(record),
});

// What was packed last for these entries; forgotten with them.
const packedBefore = new WeakMap<readonly Entry[], EntryColumns>();

const packAfter = (entries: readonly Entry[], before: readonly Entry[]): EntryColumns => {
  const packed = packedBefore.get(before);
  const last = entries.at(-1);
  const isOneMore =
    entries.length === before.length + 1 && before.every((entry, index) => entry === entries[index]);
  return packed !== undefined && last !== undefined && isOneMore
    ? packOneMore(packed, last)
    : packEntries(entries);
};

/**
 * The row of a record's entries.
 *
 * @param before the entries as they were stored; what was packed for them is used again
 */
export const entriesRow = ({ id, entries }: RecordState, before: readonly Entry[] = []): EntriesRow => {
  const columns = packAfter(entries, before);
  packedBefore.set(entries, columns);
  return { id, ...columns };
};

// Rows of the current version were checked when they were written: checking each again when it is read
// would cost more than reading it.
const isCurrent = ({ id, revs }: HeaderRow): boolean => {
  const { version } = KIND[kindOf(id)];
  return revs.every(({ v }) => v === version);
};

const areCurrent = ({ count, columns }: EntryColumns): boolean => {
  const version = columns["v"];
  return count === 0 || (version !== undefined && "all" in version && version.all === ENTRY_VERSION);
};

/**
 * A header as this app knows it: an older one is lifted, a newer one refused.
 *
 * @returns the header; `record/from-the-future`, or `record/not-valid` for an old row that was broken
 */
export const currentHeader = (row: HeaderRow): Result<HeaderRow> => {
  if (isCurrent(row)) return ok(row);
  const { id, erased, revs, keys } = row;
  const parsed = parseRecord({ id, erased, revs, entries: [] });
  return parsed.ok ? ok({ id, erased, revs: parsed.value.revs, keys }) : parsed;
};

/** Entries as this app knows them; what it returns when it cannot is the same as for headers. */
export const currentEntries = (row: EntriesRow): Result<readonly Entry[]> => {
  const entries = unpackEntries(row);
  if (areCurrent(row)) return ok(entries);
  const parsed = parseRecord({ id: row.id, erased: false, revs: [], entries });
  return parsed.ok ? ok(parsed.value.entries) : parsed;
};

/**
 * Puts a record together from its rows.
 *
 * @returns the record, or undefined when there is no row; what it returns when it cannot is the same as
 * for headers
 */
export const recordOf = (
  header: HeaderRow | undefined,
  entries: EntriesRow | undefined,
): Result<RecordState | undefined> => {
  if (header === undefined) return ok(undefined);
  const lifted = currentHeader(header);
  if (!lifted.ok) return lifted;
  const read = entries === undefined ? ok<readonly Entry[]>([]) : currentEntries(entries);
  if (!read.ok) return read;
  const { id, erased, revs } = lifted.value;
  return ok({ id, erased, revs, entries: read.value });
};
