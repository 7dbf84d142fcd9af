import type { RecordId } from "../../record/ids.ts";
import type { RecordState } from "../../record/record.ts";
import { ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { readEntries, readHeaders } from "../../store/read.ts";

/** Several records as they are stored now; one that does not exist is left out. */
export const storedRecords = async (
  connection: Connection,
  ids: readonly RecordId[],
): Promise<Result<ReadonlyMap<RecordId, RecordState>>> => {
  const headers = await readHeaders(connection, ids);
  if (!headers.ok) return headers;
  const entries = await readEntries(connection, ids);
  if (!entries.ok) return entries;
  return ok(
    new Map(
      headers.value.map(({ id, erased, revs }) => [
        id,
        { id, erased, revs, entries: entries.value.get(id) ?? [] },
      ]),
    ),
  );
};
