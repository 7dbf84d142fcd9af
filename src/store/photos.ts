/** Bytes of photos, apart from the records that speak of them. */

import { kindOf } from "../record/ids.ts";
import type { Photo } from "../record/kinds/photo.ts";
import type { RecordState, Revision } from "../record/record.ts";
import { failed, ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import type { PhotoRow } from "./schema.ts";
import { inTransaction, type Writing } from "./transaction.ts";

/** Room that photos leave for readings, in bytes. */
const RESERVE_BYTES = 20_000_000;

/**
 * Keeps a photo's bytes under their digest. Bytes that are there already stay as they are.
 *
 * @returns `store/quota` while room is short: readings need what is left
 */
export const putPhoto = async (connection: Connection, photo: PhotoRow): Promise<Result<undefined>> => {
  const free = await freeBytes();
  if (connection.room.isFull || free < photo.bytes.byteLength + RESERVE_BYTES) return failed("store/quota");
  return connection.use((db) =>
    inTransaction(db, ["photos"], "strict", async (tx) => {
      if (!(await tx.has("photos", photo.sha256))) tx.put("photos", photo);
      return ok(undefined);
    }),
  );
};

/** A photo's bytes, or undefined when they are not here (they may lie in another file of an archive). */
export const photo = (connection: Connection, sha256: string): Promise<Result<PhotoRow | undefined>> =>
  connection.use(async (db) => ok(await db.get("photos", sha256)));

/** Which of these photos are not here. */
export const missingPhotos = (
  connection: Connection,
  sha256s: readonly string[],
): Promise<Result<readonly string[]>> =>
  connection.use(async (db) => {
    const { store } = db.transaction("photos");
    const keys = await Promise.all(sha256s.map((sha256) => store.getKey(sha256)));
    return ok(sha256s.filter((_, index) => keys[index] === undefined));
  });

/** Room left for this app in bytes; without bounds where the browser does not say. */
export const freeBytes = async (): Promise<number> => {
  const { quota, usage } = (await navigator.storage?.estimate?.()) ?? {};
  return quota === undefined || usage === undefined ? Number.POSITIVE_INFINITY : quota - usage;
};

const digests = (revs: readonly Revision[]): string[] => revs.map(({ body }) => (body as Photo).sha256);

/** Drops bytes that only erased photos spoke of, in the transaction that erases them. */
export const dropUnusedPhotos = async (
  tx: Writing<"records" | "photos">,
  erased: readonly RecordState[],
): Promise<void> => {
  const gone = erased.filter(({ id }) => kindOf(id) === "photo");
  if (gone.length === 0) return;
  // This transaction's own puts are seen by its reads: the erased rows speak of nothing any more.
  const rows = await tx.rows("records", "kind", IDBKeyRange.bound(["photo"], ["photo", []]));
  const used = new Set(rows.flatMap(({ revs }) => digests(revs)));
  for (const sha256 of new Set(gone.flatMap(({ revs }) => digests(revs))))
    if (!used.has(sha256)) tx.remove("photos", sha256);
};
