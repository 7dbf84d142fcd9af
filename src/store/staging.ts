/** Files on their way in: their rows wait here, apart from the records, until they are accepted. */
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import type { ImportRow, StagedRow } from "./schema.ts";
import { inTransaction } from "./transaction.ts";

// An array sorts behind every number.
const rangeOf = (id: string, from: number): IDBKeyRange => IDBKeyRange.bound([id, from], [id, []]);

/** Stages rows; the same numbers once more are put in place of what stood there. */
export const stage = (connection: Connection, rows: readonly StagedRow[]): Promise<Result<undefined>> =>
  connection.use((db) =>
    inTransaction(db, ["staged"], "strict", (tx) => {
      for (const row of rows) tx.put("staged", row);
      return ok(undefined);
    }),
  );

/** Staged rows of an import in the order of their numbers, beginning with number `from`. */
export const readStaged = (
  connection: Connection,
  id: string,
  from: number,
  limit: number,
): Promise<Result<readonly StagedRow[]>> =>
  connection.use(async (db) => ok(await db.getAll("staged", rangeOf(id, from), limit)));

/** How many rows are staged for an import. */
export const countStaged = (connection: Connection, id: string): Promise<Result<number>> =>
  connection.use(async (db) => ok(await db.count("staged", rangeOf(id, 0))));

/** Takes staged rows away up to, not including, number `before`: they are among the records now. */
export const dropStaged = (connection: Connection, id: string, before: number): Promise<Result<undefined>> =>
  connection.use((db) =>
    inTransaction(db, ["staged"], "strict", (tx) => {
      tx.remove("staged", IDBKeyRange.bound([id, 0], [id, before], false, true));
      return ok(undefined);
    }),
  );

/** Says how far an import has come. `accepted` is on the disk before the first record changes. */
export const setImport = (connection: Connection, row: ImportRow): Promise<Result<undefined>> =>
  connection.use((db) =>
    inTransaction(db, ["imports"], "strict", (tx) => {
      tx.put("imports", row);
      return ok(undefined);
    }),
  );

/** Every import that is known; those that are `accepted` are to be rolled forward. */
export const listImports = (connection: Connection): Promise<Result<readonly ImportRow[]>> =>
  connection.use(async (db) => ok(await db.getAll("imports")));

/** Forgets an import and what was staged for it; records stay as they are. */
export const removeImport = (connection: Connection, id: string): Promise<Result<undefined>> =>
  connection.use((db) =>
    inTransaction(db, ["staged", "imports"], "strict", (tx) => {
      tx.remove("staged", rangeOf(id, 0));
      tx.remove("imports", id);
      return ok(undefined);
    }),
  );
