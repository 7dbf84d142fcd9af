/** Reading single records. Lists are in list.ts, everything at once in pages.ts. */
import type { EntryColumns } from "../record/columns.ts";
import type { Entry } from "../record/entry.ts";
import type { Kind, RecordId } from "../record/ids.ts";
import type { RecordState } from "../record/record.ts";
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import { currentEntries, currentHeader, recordOf } from "./rows.ts";
import type { Database, EntriesRow, HeaderRow } from "./schema.ts";

/**
 * One record with its entries.
 *
 * @returns the record, or undefined when there is none; `record/from-the-future` when a newer app wrote
 * it, or what the connection reports
 */
export const readRecord = <K extends Kind>(
  connection: Connection,
  id: RecordId<K>,
): Promise<Result<RecordState<K> | undefined>> =>
  connection.use(async (db) => {
    const tx = db.transaction(["records", "entries"]);
    const [header, entries] = await Promise.all([
      tx.objectStore("records").get(id),
      tx.objectStore("entries").get(id),
    ]);
    return recordOf(header, entries) as Result<RecordState<K> | undefined>;
  });

/** Several headers by id, in the order asked for; one that does not exist is left out. */
export const readHeaders = <K extends Kind>(
  connection: Connection,
  ids: readonly RecordId<K>[],
): Promise<Result<readonly HeaderRow<K>[]>> =>
  connection.use(async (db) => {
    const { store } = db.transaction("records");
    const rows = await Promise.all(ids.map((id) => store.get(id)));
    return currentHeaders(rows.filter((row) => row !== undefined)) as Result<readonly HeaderRow<K>[]>;
  });

/** Lifts what is older; fails as a whole when a newer app wrote one of them. */
export const currentHeaders = (rows: readonly HeaderRow[]): Result<readonly HeaderRow[]> => {
  const headers: HeaderRow[] = [];
  for (const row of rows) {
    const header = currentHeader(row);
    if (!header.ok) return header;
    headers.push(header.value);
  }
  return ok(headers);
};

/** Entries by record id; a record without entries is left out. */
export const readEntries = (
  connection: Connection,
  ids: readonly RecordId[],
): Promise<Result<ReadonlyMap<RecordId, readonly Entry[]>>> =>
  connection.use(async (db) => {
    const found = new Map<RecordId, readonly Entry[]>();
    for (const row of await entriesRows(db, ids)) {
      const entries = currentEntries(row);
      if (!entries.ok) return entries;
      found.set(row.id, entries.value);
    }
    return ok(found);
  });

/**
 * Entries by record id as they lie in the database, not lifted: for handing them to a worker without
 * unpacking them first. Whoever unpacks them does it by `currentEntries`.
 */
export const readColumns = (
  connection: Connection,
  ids: readonly RecordId[],
): Promise<Result<ReadonlyMap<RecordId, EntryColumns>>> =>
  connection.use(async (db) => ok(new Map((await entriesRows(db, ids)).map((row) => [row.id, row]))));

/** From this many on, reading all rows between the first and the last id beats asking for each. */
const MANY = 200;

/** Rows asked for in one transaction: a touch on a line waits for one such part, not for all. */
const AT_ONCE = 200;

const entriesRows = async (db: Database, ids: readonly RecordId[]): Promise<readonly EntriesRow[]> => {
  const sorted = [...new Set(ids)].sort();
  const spanOf = (part: readonly RecordId[]): IDBKeyRange => IDBKeyRange.bound(part[0], part.at(-1));
  const together = sorted.length >= MANY && (await db.count("entries", spanOf(sorted))) < sorted.length * 4;
  const wanted = new Set(sorted);
  const rows: EntriesRow[] = [];
  for (let at = 0; at < sorted.length; at += AT_ONCE) {
    const part = sorted.slice(at, at + AT_ONCE);
    const { store } = db.transaction("entries");
    const found = together
      ? await store.getAll(spanOf(part))
      : await Promise.all(part.map((id) => store.get(id)));
    for (const row of found) if (row !== undefined && wanted.has(row.id)) rows.push(row);
  }
  return rows;
};
