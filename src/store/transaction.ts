/** One transaction from start to end, with the true reason when it ends badly. */
import { type StoreKey, type StoreValue, unwrap } from "idb";
import type { Database, StoreName, Stores } from "./schema.ts";

/**
 * What a writing transaction offers to its job. It speaks to the browser without the library in between:
 * on a slow phone the library's wrapping was a fifth of the time from touch to disk.
 */
export interface Writing<Names extends StoreName> {
  readonly get: <N extends Names>(
    store: N,
    key: StoreKey<Stores, N>,
  ) => Promise<StoreValue<Stores, N> | undefined>;
  /** Whether there is a row under this key, or any under a range of keys. */
  readonly has: <N extends Names>(store: N, key: StoreKey<Stores, N> | IDBKeyRange) => Promise<boolean>;
  /** Is not waited for: when it fails, the transaction does. */
  readonly put: <N extends Names>(store: N, value: StoreValue<Stores, N>, key?: string) => void;
  readonly remove: <N extends Names>(store: N, key: StoreKey<Stores, N> | IDBKeyRange) => void;
  /** Rows of an index. */
  readonly rows: <N extends Names>(
    store: N,
    index: string,
    range: IDBKeyRange,
  ) => Promise<StoreValue<Stores, N>[]>;
}

/**
 * Runs a read-write transaction and returns once it is committed.
 *
 * The job awaits nothing but what the transaction offers, else the browser ends it early. It is committed
 * as soon as the job returns, so that a page frozen in between does not hold up other windows.
 *
 * @param durability `strict` reaches the disk before this returns; `relaxed` may lose the last seconds
 * when the battery dies
 * @throws the reason for the abort (a full device reports it only there), or what the job threw
 */
export const inTransaction = async <Names extends StoreName, T>(
  db: Database,
  stores: readonly Names[],
  durability: "strict" | "relaxed",
  job: (writing: Writing<Names>) => T | Promise<T>,
): Promise<T> => {
  const tx = (unwrap(db) as unknown as IDBDatabase).transaction([...stores], "readwrite", { durability });
  const ended = new Promise<boolean>((resolve) => {
    tx.oncomplete = () => resolve(true);
    tx.onabort = () => resolve(false);
  });
  let problem: unknown;
  try {
    const value = await job(writingIn<Names>(tx));
    tx.commit();
    if (await ended) return value;
  } catch (error) {
    problem = error;
    abortQuietly(tx);
    await ended;
  }
  throw tx.error ?? problem ?? new DOMException("the browser ended the transaction", "AbortError");
};

const writingIn = <Names extends StoreName>(tx: IDBTransaction): Writing<Names> => ({
  get: (store, key) => answerOf(tx.objectStore(store).get(key)),
  has: async (store, key) => (await answerOf(tx.objectStore(store).count(key))) > 0,
  put: (store, value, key) => void tx.objectStore(store).put(value, key),
  remove: (store, key) => void tx.objectStore(store).delete(key),
  rows: (store, index, range) => answerOf(tx.objectStore(store).index(index).getAll(range)),
});

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new DOMException("no reason given", "UnknownError"));
  });

const abortQuietly = (tx: IDBTransaction): void => {
  try {
    tx.abort();
  } catch {
    // It had ended already.
  }
};
