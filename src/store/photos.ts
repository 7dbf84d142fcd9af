/** Bytes of photos, apart from the records that speak of them. */

import { kindOf } from "../record/ids.ts";
import type { Photo } from "../record/kinds/photo.ts";
import type { RecordState, Revision } from "../record/record.ts";
import { failed, ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import { getMeta, type MetaKey } from "./meta.ts";
import { currentHeaders } from "./read.ts";
import type { PhotoRow } from "./schema.ts";
import { inTransaction, type Writing } from "./transaction.ts";

/** Room that photos leave for readings, in bytes. */
const RESERVE_BYTES = 20_000_000;
/** Bytes that no record names stay this long: their record may be on its way from another window. */
const UNNAMED_STAY_MS = 86_400_000;

/** Bytes that no record named, by their digest, and when that was first seen by this device's clock. */
type Unnamed = Readonly<Record<string, number>>;

const UNNAMED: MetaKey<Unnamed> = {
  name: "photos-unnamed",
  durability: "strict",
  read: (stored) =>
    typeof stored === "object" && stored !== null && !Array.isArray(stored) ? (stored as Unnamed) : undefined,
};

/**
 * Keeps a photo's bytes under their digest. Bytes that are there already stay as they are.
 *
 * @returns `store/quota` while room is short: readings need what is left
 */
export const putPhoto = async (connection: Connection, photo: PhotoRow): Promise<Result<undefined>> => {
  const free = await freeBytes();
  if (connection.room.isFull || free < photo.bytes.byteLength + RESERVE_BYTES) return failed("store/quota");
  return connection.use((db) =>
    inTransaction(db, ["photos", "meta"], "strict", async (tx) => {
      const [there, stored] = await Promise.all([
        tx.has("photos", photo.sha256),
        tx.get("meta", UNNAMED.name),
      ]);
      if (!there) tx.put("photos", photo);
      // Bytes that lay here unnamed for long are wanted again: their record comes next.
      const { [photo.sha256]: since, ...others } = UNNAMED.read(stored ?? null) ?? {};
      if (since !== undefined) tx.put("meta", others, UNNAMED.name);
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

/** Bytes that no record names: those that stay, with the moment at which that was first seen, and the others. */
const sorted = (digests: readonly string[], seen: Unnamed, nowMs: number) => {
  const unnamed: Record<string, number> = {};
  const over: string[] = [];
  for (const sha256 of digests) {
    const sinceMs = Math.min(seen[sha256] ?? nowMs, nowMs);
    if (nowMs - sinceMs > UNNAMED_STAY_MS) over.push(sha256);
    else unnamed[sha256] = sinceMs;
  }
  return { unnamed, over };
};

/**
 * Drops bytes that no record has named for a day: what is left when a phone died between a photo and its
 * record. Nothing is dropped while a file is being brought in, whose records may name them, nor when one
 * record was made by a newer app and cannot be read.
 *
 * @param nowMs the clock of this device; one that was set back only makes bytes stay longer
 * @returns how many photos were dropped
 */
export const sweepPhotos = async (connection: Connection, nowMs: number): Promise<Result<number>> => {
  const kept = await connection.use(async (db) => ok(await db.getAllKeys("photos")));
  if (!kept.ok) return kept;
  const before = await getMeta(connection, UNNAMED);
  if (!before.ok) return before;
  // The usual case writes nothing.
  if (kept.value.length === 0 && before.value === undefined) return ok(0);
  return connection.use((db) =>
    inTransaction(db, ["photos", "records", "imports", "meta"], "strict", async (tx) => {
      const [importing, rows, stored] = await Promise.all([
        tx.has("imports", IDBKeyRange.lowerBound("")),
        tx.rows("records", "kind", IDBKeyRange.bound(["photo"], ["photo", []])),
        tx.get("meta", UNNAMED.name),
      ]);
      if (importing) return ok(0);
      const headers = currentHeaders(rows);
      if (!headers.ok) return headers;
      const named = new Set(headers.value.flatMap(({ revs }) => digests(revs)));
      const { unnamed, over } = sorted(
        kept.value.filter((sha256) => !named.has(sha256)),
        UNNAMED.read(stored ?? null) ?? {},
        nowMs,
      );
      for (const sha256 of over) tx.remove("photos", sha256);
      if (Object.keys(unnamed).length > 0) tx.put("meta", unnamed, UNNAMED.name);
      else if (stored !== undefined) tx.remove("meta", UNNAMED.name);
      return ok(over.length);
    }),
  );
};
