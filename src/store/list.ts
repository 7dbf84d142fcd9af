/** Lists: headers by kind, by field, by visit or by strip, in the order of time. */
import { KINDS, type Kind, kindOf, type RecordId } from "../record/ids.ts";
import type { Join } from "../record/kinds/join.ts";
import { shown } from "../record/record.ts";
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import { currentHeaders } from "./read.ts";
import type { Database, HeaderIndex, HeaderRow } from "./schema.ts";

/** What a list holds. */
export type ListOf<K extends Kind> =
  | { readonly kind: K }
  | { readonly field: RecordId<"field">; readonly kind: K }
  | { readonly visit: RecordId<"visit">; readonly kind: K }
  | { readonly strip: RecordId<"strip">; readonly kind: K };

/** How much of it, and in which order. */
export interface ListPart {
  /** Newest first; else oldest first. */
  readonly newestFirst?: boolean;
  readonly limit?: number;
  /** Newest first only: what follows this row, the last one of the part before. */
  readonly after?: HeaderRow;
  /** Deleted records instead of living ones. */
  readonly deleted?: boolean;
}

/**
 * Headers in the order of time (begun or made, by the device's own clock).
 *
 * @returns headers without entries; `record/from-the-future` as a whole when a newer app wrote one
 * @example
 * await list(store, { field, kind: "visit" }, { newestFirst: true, limit: 20 });
 */
export const list = <K extends Kind = Kind>(
  connection: Connection,
  of: ListOf<K>,
  part: ListPart = {},
): Promise<Result<readonly HeaderRow<K>[]>> =>
  connection.use(async (db) => {
    const rows = await readPart(db, of, part);
    return currentHeaders(rows.filter(({ erased }) => !erased)) as Result<readonly HeaderRow<K>[]>;
  });

interface Key {
  readonly index: "kind" | "field" | "visit" | "strip";
  readonly key: string[];
  /** Rows of other kinds stand under the same key: a guess belongs to its visit as a test does. */
  readonly mixed: boolean;
}

const keyOf = <K extends Kind>(of: ListOf<K>): Key => {
  if ("field" in of) return { index: "field", key: [of.field, of.kind], mixed: false };
  if ("visit" in of) return { index: "visit", key: [of.visit], mixed: true };
  if ("strip" in of) return { index: "strip", key: [of.strip], mixed: true };
  return { index: "kind", key: [of.kind], mixed: false };
};

/**
 * The newest rows of a range, in a few requests instead of one for each row: where they end, and all of them.
 *
 * @param after rows of its millisecond share its key, and stand in the range beside it: they follow each other by id,
 * and what was shown before is left out
 */
const newestOf = async (
  source: HeaderIndex,
  range: IDBKeyRange,
  limit: number,
  after: HeaderRow | undefined,
): Promise<HeaderRow[]> => {
  const beside = after === undefined ? 0 : await source.count(IDBKeyRange.only(range.upper));
  const most = limit + beside;
  const newest = await source.openKeyCursor(range, "prev");
  const oldest = most > 1 ? await newest?.advance(most - 1) : newest;
  const part = oldest == null ? range : IDBKeyRange.bound(oldest.key, range.upper);
  return (await source.getAll(part))
    .reverse()
    .filter(({ id, keys }) => after === undefined || keys.atMs !== after.keys.atMs || id < after.id)
    .slice(0, limit);
};

const readPart = async <K extends Kind>(
  db: Database,
  of: ListOf<K>,
  part: ListPart,
): Promise<HeaderRow[]> => {
  const { index, key, mixed } = keyOf(of);
  const { after, limit, newestFirst } = part;
  const prefix = [...key, part.deleted === true ? 0 : 1];
  // An array sorts behind every number, so this is the end of the prefix.
  const range = IDBKeyRange.bound(prefix, [...prefix, after?.keys.atMs ?? []]);
  const source = db.transaction("records").store.index(index);
  const wanted = ({ id }: HeaderRow): boolean => !mixed || kindOf(id) === of.kind;
  if (newestFirst !== true)
    return mixed ? (await source.getAll(range)).filter(wanted).slice(0, limit) : source.getAll(range, limit);
  if (limit === undefined && after === undefined)
    return (await source.getAll(range)).filter(wanted).reverse();
  if (limit !== undefined && !mixed) return newestOf(source, range, limit, after);
  const rows: HeaderRow[] = [];
  for (let cursor = await source.openCursor(range, "prev"); cursor; cursor = await cursor.continue()) {
    const row = cursor.value;
    // Rows of one millisecond follow each other by id: what was shown before is left out.
    if (after !== undefined && row.keys.atMs === after.keys.atMs && row.id >= after.id) continue;
    if (!wanted(row)) continue;
    rows.push(row);
    if (rows.length === limit) break;
  }
  return rows;
};

/** Every deleted record that can be brought back, newest first. */
export const listDeleted = (connection: Connection): Promise<Result<readonly HeaderRow[]>> =>
  connection.use(async (db) => {
    const index = db.transaction("records").store.index("kind");
    const rows = await Promise.all(
      KINDS.map((kind) => index.getAll(IDBKeyRange.bound([kind, 0], [kind, 0, []]))),
    );
    const deleted = rows.flat().filter(({ revs }) => revs.length > 0);
    return currentHeaders(deleted.sort((a, b) => stampOf(b) - stampOf(a)));
  });

const stampOf = (row: HeaderRow): number => shown(row)?.stamp.wallMs ?? 0;

/** Every joining that stands, for `joined`. */
export const listJoins = async (connection: Connection): Promise<Result<readonly Join[]>> => {
  const rows = await list(connection, { kind: "join" });
  return rows.ok ? ok(rows.value.flatMap((row) => shown(row)?.body ?? [])) : rows;
};

/** How many records there are of each kind, living and not. */
export const counts = (
  connection: Connection,
): Promise<Result<Readonly<Record<Kind, { living: number; other: number }>>>> =>
  connection.use(async (db) => {
    const index = db.transaction("records").store.index("kind");
    const count = (kind: Kind, living: 0 | 1) =>
      index.count(IDBKeyRange.bound([kind, living], [kind, living, []]));
    const pairs = await Promise.all(
      KINDS.map(async (kind) => {
        const [living, other] = await Promise.all([count(kind, 1), count(kind, 0)]);
        return [kind, { living, other }] as const;
      }),
    );
    return ok(Object.fromEntries(pairs) as Record<Kind, { living: number; other: number }>);
  });
