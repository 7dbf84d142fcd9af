/** Ids that begin alike, erased ones too. */
import type { RecordId } from "../record/ids.ts";
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";

/** A record by its id alone. */
export interface Named {
  readonly id: RecordId;
  readonly erased: boolean;
}

/**
 * Every record whose id begins with one of these texts.
 *
 * @param beginnings each a kind, a hyphen and the first digits
 */
export const namesBeginning = (
  connection: Connection,
  beginnings: readonly string[],
): Promise<Result<readonly Named[]>> =>
  connection.use(async (db) => {
    const { store } = db.transaction("records");
    const lists = await Promise.all(
      beginnings.map((beginning) => store.getAll(IDBKeyRange.bound(beginning, `${beginning}~`))),
    );
    return ok(lists.flat().map(({ id, erased }) => ({ id, erased })));
  });
