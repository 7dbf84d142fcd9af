/**
 * Room kept back for a full device: when even a small record is refused, 8 MB are given up and the record
 * fits. They lie in Cache storage, because deleting from the database itself frees nothing at once.
 */
import type { Connection } from "./connection.ts";
import { freeBytes } from "./photos.ts";

/** Address of the ballast within its cache, the same from every page and worker. */
const BALLAST = "/ballast";
const BALLAST_BYTES = 8_000_000;
/** What must be free beside the ballast for it to be laid. */
const ROOM_BYTES = 5 * BALLAST_BYTES;

/** Cache that the ballast lies in; a service worker that cleans up must leave it alone. */
export const ballastCache = (name: string): string => `${name}-ballast`;

/**
 * Lays the ballast if there is room and none is there. Call it at a quiet moment, after the first record
 * is saved.
 *
 * @returns is it there now?
 */
export const layBallast = async (connection: Connection): Promise<boolean> => {
  if (!("caches" in globalThis)) return false;
  try {
    const cache = await caches.open(ballastCache(connection.name));
    const there = (await cache.keys()).length > 0;
    if (!there && (await freeBytes()) < ROOM_BYTES) return false;
    if (!there) await cache.put(BALLAST, new Response(filling()));
    connection.room.isFull = false;
    return true;
  } catch {
    return false; // no room after all
  }
};

/**
 * Gives the ballast up.
 *
 * @returns was there one?
 */
export const dropBallast = async (connection: Connection): Promise<boolean> => {
  if (!("caches" in globalThis)) return false;
  try {
    // Deleting the whole cache frees nothing while a window still holds it.
    const cache = await caches.open(ballastCache(connection.name));
    return await cache.delete(BALLAST);
  } catch {
    return false;
  }
};

/** Bytes that do not shrink: some browsers compress what lies in a cache. */
const filling = (): Blob => {
  const block = new Uint32Array(250_000);
  let state = 0x9e37_79b9;
  for (let at = 0; at < block.length; at++) {
    // Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (14), 2003: shifts 13, 17, 5.
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    block[at] = state;
  }
  return new Blob(Array.from({ length: BALLAST_BYTES / block.byteLength }, () => block));
};
