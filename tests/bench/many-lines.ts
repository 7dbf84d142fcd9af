import type { EntriesRow, HeaderRow } from "../../src/store/schema.ts";
import type { Driver } from "../browser/drivers/driver.ts";

/** A line, hole or ring to be multiplied, and where its copies lie. */
export interface ManyLines {
  readonly header: HeaderRow;
  readonly columns: EntriesRow;
  readonly visits: readonly string[];
  readonly strips: readonly string[];
  readonly count: number;
}

/** Puts copies of one test, each with ids of its own and the covers of a line shifted, one minute apart. */
export const putManyLines = (page: Driver, many: ManyLines): Promise<void> =>
  page.run(async (text) => {
    const { header, columns, visits, strips, count } = JSON.parse(text);
    const hex = (bytes: number): string =>
      [...crypto.getRandomValues(new Uint8Array(bytes))]
        .map((byte) => byte.toString(16).padStart(2, "0"))
        .join("");
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    for (let begun = 0; begun < count; begun += 500) {
      const tx = db.transaction(["records", "entries"], "readwrite");
      for (let at = begun; at < Math.min(count, begun + 500); at++) {
        const id = `observation-${hex(16)}`;
        const [revision] = header.revs;
        const place = {
          visit: visits[Math.floor((at * visits.length) / count)],
          strip: strips[at % strips.length],
        };
        const atMs = revision.body.startedAtMs + at * 60_000;
        const body = { ...revision.body, ...place, startedAtMs: atMs };
        tx.objectStore("records").put({
          ...header,
          id,
          revs: [{ ...revision, rev: hex(8), body }],
          keys: { ...header.keys, ...place, atMs },
        });
        const ids = columns.columns.id.each.map(() => hex(8));
        const covers = columns.columns.cover?.each;
        const shift = at % (covers?.length ?? 1);
        tx.objectStore("entries").put({
          ...columns,
          id,
          columns: {
            ...columns.columns,
            id: { each: ids },
            ...(covers === undefined
              ? {}
              : { cover: { each: [...covers.slice(shift), ...covers.slice(0, shift)] } }),
          },
        });
      }
      await new Promise<void>((resolve, reject) => {
        tx.oncomplete = () => resolve();
        tx.onabort = () => reject(tx.error);
      });
    }
    db.close();
  }, JSON.stringify(many));
