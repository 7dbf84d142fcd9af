/**
 * Entries as columns: one row of columns per measurement is read several times faster than a list of
 * objects, and a column in which every value is the same is written once.
 */
import type { Json } from "./canonical.ts";
import type { Entry } from "./entry.ts";

/** One property of all entries: the same for all, one for each, or only for some. */
type Column =
  | { readonly all: Json }
  | { readonly each: readonly Json[] }
  | { readonly at: readonly number[]; readonly of: readonly Json[] };

/** The entries of one measurement, packed. */
export interface EntryColumns {
  readonly count: number;
  readonly columns: Readonly<Record<string, Column>>;
}

type Sparse = Extract<Column, { readonly at: unknown }>;

const isBare = (value: Json): boolean => value === null || typeof value !== "object";

const packed = ({ at, of }: Sparse, count: number): Column => {
  const [first] = of;
  if (of.length < count) return { at, of };
  return first !== undefined && isBare(first) && of.every((value) => value === first)
    ? { all: first }
    : { each: of };
};

/** Packs entries into columns; their order stays. */
export const packEntries = (entries: readonly Entry[]): EntryColumns => {
  const found = new Map<string, { at: number[]; of: Json[] }>();
  for (const [index, entry] of entries.entries()) {
    for (const [key, value] of Object.entries(entry)) {
      const column = found.get(key) ?? { at: [], of: [] };
      found.set(key, column);
      column.at.push(index);
      column.of.push(value);
    }
  }
  const columns: Record<string, Column> = {};
  for (const [key, column] of found) columns[key] = packed(column, entries.length);
  return { count: entries.length, columns };
};

const oneMore = (column: Column | undefined, count: number, value: Json | undefined): Column => {
  if (column === undefined)
    return value === undefined ? { at: [], of: [] } : packed({ at: [count], of: [value] }, count + 1);
  if ("all" in column && value === column.all) return column;
  if ("at" in column)
    return value === undefined ? column : { at: [...column.at, count], of: [...column.of, value] };
  const before = "all" in column ? new Array<Json>(count).fill(column.all) : column.each;
  if (value !== undefined) return { each: [...before, value] };
  return { at: before.map((_, index) => index), of: before };
};

/**
 * The columns with one more entry behind the others: a touch changes one of a hundred, and packing all of
 * them again was half of what a touch had to work out.
 */
export const packOneMore = ({ count, columns }: EntryColumns, entry: Entry): EntryColumns => {
  const values = new Map<string, Json>(Object.entries(entry));
  const keys = new Set([...Object.keys(columns), ...values.keys()]);
  return {
    count: count + 1,
    columns: Object.fromEntries([...keys].map((key) => [key, oneMore(columns[key], count, values.get(key))])),
  };
};

/**
 * One property of all packed entries, in their order; undefined where an entry does not have it, and an
 * empty list when none has it.
 */
export const valuesOf = ({ count, columns }: EntryColumns, key: string): readonly (Json | undefined)[] => {
  const column = columns[key];
  if (column === undefined) return [];
  if ("all" in column) return new Array<Json>(count).fill(column.all);
  if ("each" in column) return column.each;
  const values = new Array<Json | undefined>(count).fill(undefined);
  for (let place = 0; place < column.at.length; place++) values[column.at[place] ?? -1] = column.of[place];
  return values;
};

/** The entries that were packed, in the same order. */
export const unpackEntries = (packedEntries: EntryColumns): Entry[] => {
  const { count, columns } = packedEntries;
  const rows: Record<string, Json>[] = [];
  const filled = Object.keys(columns).map((key) => [key, valuesOf(packedEntries, key)] as const);
  for (let index = 0; index < count; index++) {
    const row: Record<string, Json> = {};
    for (const [key, values] of filled) {
      const value = values[index];
      if (value !== undefined) row[key] = value;
    }
    rows.push(row);
  }
  return rows as unknown as Entry[];
};
