/** What lies in the database: its stores, the rows in them and the keys that rows are found by. */
import type { DBSchema, IDBPDatabase, IDBPIndex, IDBPTransaction, IndexNames, StoreNames } from "idb";
import type { Json } from "../record/canonical.ts";
import type { EntryColumns } from "../record/columns.ts";
import type { Kind, RecordId } from "../record/ids.ts";
import type { ListKeys } from "../record/list-keys.ts";
import type { Revision } from "../record/record.ts";

/** Name of the one database of this app. */
export const DATABASE_NAME = "mulchmark";

/** A record without its entries: all that lists need. */
export interface HeaderRow<K extends Kind = Kind> {
  readonly id: RecordId<K>;
  readonly erased: boolean;
  readonly revs: readonly Revision<K>[];
  readonly keys: ListKeys;
}

/** The entries of one record as columns. A record without entries has no row. */
export interface EntriesRow extends EntryColumns {
  readonly id: RecordId;
}

/** A photo's bytes under their SHA-256 in hexadecimal; never rewritten. */
export interface PhotoRow {
  readonly sha256: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/**
 * What was written last of a field. The pair never comes back once something else was written, so equal
 * states mean equal records. Whatever writes a record changes its field's state in the same transaction,
 * in every version of this app: results that were kept, and the next touch on a line, rest on it.
 */
export interface FieldState {
  readonly field: string;
  /** Id of what the last command made; it is made once, so a touch need not read this row to change it. */
  readonly last: string;
  /** Writes since then that were no commands. */
  readonly updates: number;
}

/** A result that was worked out before. Dropping all of them changes nothing on any screen. */
export interface SummaryRow {
  readonly field: string;
  readonly science: string;
  readonly token: string;
  readonly value: unknown;
}

/** One row of a file that is being brought in, not yet part of the records. */
export interface StagedRow {
  readonly import: string;
  readonly n: number;
  readonly value: unknown;
}

/** How far bringing in a file has come. Nothing before `accepted` changes any record. */
export interface ImportRow {
  readonly id: string;
  readonly state: "staged" | "accepted" | "done";
  /** What the preview and the roll-forward need to know again after the page was closed. */
  readonly about: Json;
}

/** The stores of the database, for the typings of the database library. */
export interface Stores extends DBSchema {
  records: {
    key: string;
    value: HeaderRow;
    indexes: {
      kind: [kind: string, living: number, atMs: number];
      field: [field: string, kind: string, living: number, atMs: number];
      visit: [visit: string, living: number, atMs: number];
      strip: [strip: string, living: number, atMs: number];
    };
  };
  entries: { key: string; value: EntriesRow };
  photos: { key: string; value: PhotoRow };
  meta: { key: string; value: Json };
  fieldStates: { key: string; value: FieldState };
  summaries: { key: [field: string, science: string]; value: SummaryRow };
  staged: { key: [file: string, n: number]; value: StagedRow };
  imports: { key: string; value: ImportRow };
}

export type Database = IDBPDatabase<Stores>;

/** An index of the headers, read within a transaction of theirs. */
export type HeaderIndex = IDBPIndex<Stores, ["records"], "records", IndexNames<Stores, "records">>;
export type StoreName = StoreNames<Stores>;
export type Upgrade = IDBPTransaction<Stores, StoreName[], "versionchange">;
