/** Records laid into the database of a running app by the raw interface, without one touch. */
import { ENTRY_VERSION, type Entry } from "../../src/record/entry.ts";
import type { Kind, RecordId } from "../../src/record/ids.ts";
import type { BodyOf } from "../../src/record/kinds/all.ts";
import { KIND } from "../../src/record/kinds/all.ts";
import type { LineHeader } from "../../src/record/kinds/observation.ts";
import { arranged, type Revision } from "../../src/record/record.ts";
import { entriesRow, headerRow } from "../../src/store/rows.ts";
import type { EntriesRow, HeaderRow } from "../../src/store/schema.ts";
import { type Driver, type Plain, untilStarted } from "../browser/drivers/driver.ts";

/** Rows of records, ready to be put. */
export interface Rows {
  readonly records: readonly HeaderRow[];
  readonly entries: readonly EntriesRow[];
}

/** Where the records of a sample come from: ids count up, times are given. */
export interface Sample {
  readonly rows: () => Rows;
  readonly add: <K extends Kind>(kind: K, body: BodyOf[K], more?: More<K>) => RecordId<K>;
}

interface More<K extends Kind> {
  readonly entries?: readonly Entry[];
  readonly deleted?: true;
  /** A second version that stands beside the first. */
  readonly beside?: BodyOf[K];
}

const device = "d".repeat(16);
/** 7 May 2024, 09:00 UTC. */
export const sampleStartMs = Date.UTC(2024, 4, 7, 9);

/** Begins a sample. */
export const beginSample = (): Sample => {
  const records: HeaderRow[] = [];
  const entries: EntriesRow[] = [];
  let counted = 0;
  const hex = (digits: number): string => {
    counted += 1;
    return counted.toString(16).padStart(digits, "0");
  };
  return {
    rows: () => ({ records, entries }),
    add: <K extends Kind>(kind: K, body: BodyOf[K], more: More<K> = {}) => {
      const id: RecordId<K> = `${kind}-${hex(32)}`;
      const revision = (actor: string, of: BodyOf[K]): Revision<K> => ({
        rev: hex(16),
        dot: [actor.repeat(16), counted],
        seen: [],
        stamp: { wallMs: sampleStartMs, counter: counted, device },
        author: null,
        v: KIND[kind].version,
        body: of,
        ...(more.deleted === true ? { deleted: true as const } : {}),
      });
      const revs = [revision("a", body), ...(more.beside === undefined ? [] : [revision("b", more.beside)])];
      const record = arranged({ id, erased: false, revs, entries: more.entries ?? [] });
      records.push(headerRow(record));
      if (record.entries.length > 0) entries.push(entriesRow(record));
      return id;
    },
  };
};

/** Marks of a line, read one second apart; a letter a mark: r residue, f standing, b bare, g green, s stone. */
export const marksRead = (letters: string, firstMs = sampleStartMs): Entry[] =>
  [...letters].map((letter, at) => ({
    v: ENTRY_VERSION,
    type: "mark",
    id: (at + 1).toString(16).padStart(16, "0"),
    n: at + 1,
    mark: at + 1,
    ...coverOf(letter),
    lookedAtMs: firstMs + at * 1000,
    enteredAtMs: firstMs + at * 1000,
    monoMs: 5000 + at * 1000,
    page: "e".repeat(16),
    device,
    by: null,
  }));

const coverOf = (letter: string): Pick<Extract<Entry, { type: "mark" }>, "cover" | "stance"> => {
  if (letter === "r" || letter === "f")
    return { cover: "residue", stance: letter === "r" ? "flat" : "standing" };
  return { cover: letter === "b" ? "bare" : letter === "g" ? "green" : "stone" };
};

/** The body of a field of this name. */
export const fieldOf = (name: string, farm: RecordId<"farm"> | null = null): BodyOf["field"] => ({
  name,
  farm,
  boundary: null,
  rowDirectionDeg: null,
  soilTexture: null,
  harvestCrop: null,
});

const nowhere = { position: null, why: "not-asked" } as const;

/** The body of a line; what a sample does not care about stands as usual. */
export const lineOf = (
  on: Pick<LineHeader, "visit" | "field" | "strip" | "rope">,
  more: Partial<LineHeader> = {},
): LineHeader => ({
  ...on,
  type: "line",
  way: "mark-by-mark",
  angleToRowsDeg: 90,
  rowSpacingM: null,
  passWidthM: null,
  place: "between-rows",
  start: nowhere,
  end: nowhere,
  person: null,
  fifthKey: null,
  askThickness: false,
  startedAtMs: sampleStartMs,
  ...more,
});

/**
 * Puts rows into the database that the app has made. The app must not be writing just then; it is to be
 * loaded again afterwards.
 *
 * @param settings taken as chosen by the person
 */
export const putRows = async (
  page: Driver,
  rows: Rows,
  settings: { readonly [name: string]: Plain } = {},
): Promise<void> => {
  // Until it has drawn its first questions, it may still lead back to them.
  await untilStarted(page);
  await page.run(
    async (text, chosen) => {
      const { records, entries } = JSON.parse(text);
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open("mulchmark");
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      const tx = db.transaction(["records", "entries", "meta"], "readwrite");
      for (const row of records) tx.objectStore("records").put(row);
      for (const row of entries) tx.objectStore("entries").put(row);
      tx.objectStore("meta").put({ welcomed: true, ...chosen }, "settings");
      await new Promise<void>((resolve, reject) => {
        tx.oncomplete = () => resolve();
        tx.onabort = () => reject(tx.error);
      });
      db.close();
    },
    JSON.stringify(rows),
    settings,
  );
};
