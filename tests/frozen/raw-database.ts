/**
 * A whole database as one file, and back, by the browser's own interface: none of the app's code, which may
 * long have changed when an old database is laid out again. Both functions run in a page by themselves:
 * they are also sent there as text, so they use nothing around them.
 */

/** A database as it was once left behind by the app. */
export interface FrozenDatabase {
  readonly version: number;
  readonly stores: readonly FrozenStore[];
}

interface FrozenStore {
  readonly name: string;
  readonly keyPath: string | readonly string[] | null;
  readonly autoIncrement: boolean;
  readonly indexes: readonly FrozenIndex[];
  /** `key` only where the store keeps keys beside its rows. Bytes stand as `{"$bytes": "<base64>"}`. */
  readonly rows: readonly { readonly key?: IDBValidKey; readonly value: unknown }[];
}

interface FrozenIndex {
  readonly name: string;
  readonly keyPath: string | readonly string[];
  readonly unique: boolean;
  readonly multiEntry: boolean;
}

/**
 * Writes a database down as it stands.
 *
 * @returns the text of a frozen database: JSON, one row a line
 */
export const dumpDatabase = async (name: string): Promise<string> => {
  const answer = <T>(request: IDBRequest<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const base64 = (bytes: Uint8Array): string =>
    btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(""));
  const plain = (value: unknown): unknown => {
    if (value instanceof ArrayBuffer) return { $bytes: base64(new Uint8Array(value)) };
    if (ArrayBuffer.isView(value) || value instanceof Blob || value instanceof Date)
      throw new TypeError("a row holds something that JSON would lose");
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== "object" || value === null) {
      if (value === undefined || (JSON.stringify(value) === "null") !== (value === null))
        throw new TypeError("a row holds something that JSON would lose");
      return value;
    }
    return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, plain(item)]));
  };
  const db = await answer(indexedDB.open(name));
  const names = [...db.objectStoreNames].sort();
  const tx = db.transaction(names);
  const stores: string[] = [];
  for (const storeName of names) {
    const store = tx.objectStore(storeName);
    const indexes = [...store.indexNames].sort().map((indexName) => {
      const { keyPath, unique, multiEntry } = store.index(indexName);
      return { name: indexName, keyPath, unique, multiEntry };
    });
    const [keys, values] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
    const rows = values.map((value, at) =>
      JSON.stringify(
        store.keyPath === null ? { key: keys[at], value: plain(value) } : { value: plain(value) },
      ),
    );
    const { keyPath, autoIncrement } = store;
    const head = JSON.stringify({ name: storeName, keyPath, autoIncrement, indexes }).slice(0, -1);
    stores.push(rows.length === 0 ? `${head},"rows":[]}` : `${head},"rows":[\n${rows.join(",\n")}\n]}`);
  }
  db.close();
  return `{"version":${db.version},"stores":[\n${stores.join(",\n")}\n]}\n`;
};

/**
 * Lays a frozen database out again under a name that no database has.
 *
 * @param text of a frozen database
 */
export const loadDatabase = async (name: string, text: string): Promise<void> => {
  const { version, stores }: FrozenDatabase = JSON.parse(text);
  const living = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(living);
    if (typeof value !== "object" || value === null) return value;
    if ("$bytes" in value)
      return Uint8Array.from(atob(String(value.$bytes)), (letter) => letter.charCodeAt(0)).buffer;
    return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, living(item)]));
  };
  const pathOf = (path: string | readonly string[]): string | string[] =>
    typeof path === "string" ? path : [...path];
  if ((await indexedDB.databases()).some((one) => one.name === name))
    throw new Error(`there is a database ${name} already`);
  await new Promise<void>((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onerror = () => reject(request.error);
    request.onupgradeneeded = () => {
      for (const { name: storeName, keyPath, autoIncrement, indexes, rows } of stores) {
        const store = request.result.createObjectStore(storeName, {
          keyPath: keyPath === null ? null : pathOf(keyPath),
          autoIncrement,
        });
        for (const index of indexes)
          store.createIndex(index.name, pathOf(index.keyPath), {
            unique: index.unique,
            multiEntry: index.multiEntry,
          });
        for (const { key, value } of rows) store.put(living(value), key);
      }
    };
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
};
