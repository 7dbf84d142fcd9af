import { expect } from "vitest";
import type { Driver } from "../../browser/drivers/driver.ts";

/** An entry of a line as it lies in the database, as far as these tests look at it. */
export interface StoredEntry {
  readonly id: string;
  readonly n: number;
  readonly type: string;
  readonly mark: number | null;
  readonly cover: string | null;
  readonly monoMs: number;
  readonly page: string;
}

/**
 * Reads the entries of a line by the browser's own interface, past the app's code. It is sent into pages
 * as text and sees nothing around it.
 */
export async function readEntries(line: string): Promise<StoredEntry[]> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open("mulchmark");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const row = await new Promise<{ count: number; columns: Record<string, Record<string, unknown>> }>(
    (resolve, reject) => {
      const asking = db.transaction("entries").objectStore("entries").get(line);
      asking.onsuccess = () => resolve(asking.result ?? { count: 0, columns: {} });
      asking.onerror = () => reject(asking.error);
    },
  );
  db.close();
  const valueAt = (name: string, index: number): unknown => {
    const { all, each, at, of } = row.columns[name] ?? {};
    if (Array.isArray(each)) return each[index];
    if (Array.isArray(at) && Array.isArray(of)) return of[at.indexOf(index)] ?? null;
    return all ?? null;
  };
  return Array.from({ length: row.count }, (_, index) => ({
    id: String(valueAt("id", index)),
    n: Number(valueAt("n", index)),
    type: String(valueAt("type", index)),
    mark: valueAt("mark", index) as number | null,
    cover: valueAt("cover", index) as string | null,
    monoMs: Number(valueAt("monoMs", index)),
    page: String(valueAt("page", index)),
  }));
}

/** The entries of a line as they lie in the database of this page. */
export function storedEntries(driver: Driver, line: string): Promise<StoredEntry[]> {
  return driver.run(readEntries, line);
}

/**
 * The entries of a ring or a hole: each is there once, with a place of its own in the order.
 *
 * @param type at least one entry is of this type
 */
export function expectEachOnce(entries: readonly StoredEntry[], type?: string): void {
  expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
  expect(entries.map(({ n }) => n).sort((a, b) => a - b)).toEqual(entries.map((_, index) => index + 1));
  if (type !== undefined) expect(entries.map((one) => one.type)).toContain(type);
}

/** Every mark from 1 on is there once and in order: none lost, none twice, none overtaken. */
export function expectUnbroken(entries: readonly StoredEntry[]): void {
  const inOrder = [...entries].sort((a, b) => a.n - b.n);
  expect(inOrder.map(({ type }) => type)).toEqual(entries.map(() => "mark"));
  expect(inOrder.map(({ mark }) => mark)).toEqual(entries.map((_, index) => index + 1));
  expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
  expect(new Set(entries.map(({ n }) => n)).size).toBe(entries.length);
}
