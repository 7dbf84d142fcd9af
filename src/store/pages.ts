/** Every record with its entries, in the order of archives: by kind, then by id. */
import { KINDS, type Kind, type RecordId } from "../record/ids.ts";
import type { RecordState } from "../record/record.ts";
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import { recordOf } from "./rows.ts";

/** Records of one page, erased and deleted ones too. */
export type Page = readonly RecordState[];

/**
 * The records of one kind after an id. Each record is whole; a record that is written between two pages is
 * read as it is when its page is.
 *
 * @param after the last id of the page before, or undefined for the first page
 * @returns at most `size` records; none at the end; `record/from-the-future` when a newer app wrote one
 */
const readPage = (
  connection: Connection,
  kind: Kind,
  after: RecordId | undefined,
  size: number,
): Promise<Result<Page>> =>
  connection.use(async (db) => {
    const tx = db.transaction(["records", "entries"]);
    const headers = await tx
      .objectStore("records")
      .getAll(IDBKeyRange.bound(after ?? `${kind}-`, `${kind}-~`, after !== undefined), size);
    const [first, last] = [headers[0], headers.at(-1)];
    if (first === undefined || last === undefined) return ok([]);
    const entries = await tx.objectStore("entries").getAll(IDBKeyRange.bound(first.id, last.id));
    const byId = new Map(entries.map((row) => [row.id, row]));
    const records: RecordState[] = [];
    for (const header of headers) {
      const record = recordOf(header, byId.get(header.id));
      if (!record.ok) return record;
      if (record.value !== undefined) records.push(record.value);
    }
    return ok(records);
  });

/**
 * Every record, page by page, sorted by kind in the order of `KINDS`, then by id. Ends after a page that
 * failed.
 *
 * @example
 * for await (const page of pages(store, 500)) { if (!page.ok) return page; write(page.value); }
 */
export async function* pages(connection: Connection, size: number): AsyncGenerator<Result<Page>, void> {
  for (const kind of KINDS) {
    let after: RecordId | undefined;
    for (;;) {
      const page = await readPage(connection, kind, after, size);
      if (!page.ok || page.value.length > 0) yield page;
      if (!page.ok) return;
      if (page.value.length < size) break;
      after = page.value.at(-1)?.id;
    }
  }
}
