/** Deleted records, and living ones that were left without what they belong to. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import { joined } from "../../record/joined.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { type Known, readKnown } from "./describe.ts";
import { readLiving } from "./status.ts";

/** Deleted records older than this stand behind "Show older". Only a filter: nothing is ever cleared away. */
export const RECENT_DAYS = 30;
const DAY_MS = 86_400_000;

/** Things that stayed when what they belong to was deleted, or that came without it. */
export interface Orphans {
  readonly parent: RecordId;
  /** The deleted record; undefined when it is not on this device. */
  readonly deleted: Listed | undefined;
  readonly stayed: readonly Listed[];
}

export interface DeletedList {
  readonly recent: readonly Listed[];
  readonly older: readonly Listed[];
  readonly orphans: readonly Orphans[];
  readonly known: Known;
}

const PARENTS = ["farm", "field", "strip", "visit"] as const;

const parentsOf = ({ body }: Listed): readonly RecordId[] =>
  Object.entries(body).flatMap(([key, value]: [string, unknown]) =>
    typeof value === "string" && PARENTS.some((one) => one === key) ? [value as RecordId] : [],
  );

/**
 * Groups living records by what they belong to and what is gone.
 *
 * @param living every living record
 * @param deleted every deleted record that can be brought back
 * @param stands by joins, which record stands for another: what lives on under another id is not gone
 * @returns the widest parent of a record only: a line of a deleted field is not said again for its visit
 */
export const orphansAmong = (
  living: readonly Listed[],
  deleted: readonly Listed[],
  stands: (id: RecordId) => RecordId,
): readonly Orphans[] => {
  const alive = new Set(living.map(({ id }) => id));
  const gone = new Map(deleted.map((one) => [one.id, one]));
  const groups = new Map<RecordId, Listed[]>();
  for (const one of living) {
    const parent = parentsOf(one)
      .filter((id) => !alive.has(id) && !alive.has(stands(id)))
      .sort((a, b) => PARENTS.indexOf(kindOf(a) as never) - PARENTS.indexOf(kindOf(b) as never))[0];
    if (parent !== undefined) groups.set(parent, [...(groups.get(parent) ?? []), one]);
  }
  return [...groups].map(([parent, stayed]) => ({ parent, deleted: gone.get(parent), stayed }));
};

/** Reads everything that the screen shows. */
export const readDeleted = async (records: Reader, nowMs: number): Promise<DeletedList> => {
  const [deleted, living, joins] = await Promise.all([
    records.deleted(),
    readLiving(records),
    records.joins(),
  ]);
  const orphans = orphansAmong(living, deleted, joined(joins));
  const known = await readKnown(records, [...deleted, ...orphans.flatMap(({ stayed }) => stayed)]);
  // A clock set wrong must not hide what was deleted just now: only what is surely old stands behind the key.
  const isOld = ({ revision }: Listed): boolean => nowMs - revision.stamp.wallMs > RECENT_DAYS * DAY_MS;
  return {
    recent: deleted.filter((one) => !isOld(one)),
    older: deleted.filter(isOld),
    orphans,
    known,
  };
};
