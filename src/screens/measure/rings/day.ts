/** The rings of a visit as they are stored, with what was read at each. */
import type { Entry } from "../../../record/entry.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { Bottle, Kit, Ring, Ruler } from "../../../record/kinds/kit.ts";
import type { RingHeader } from "../../../record/kinds/observation.ts";
import type { RingReading } from "../../../record/ring/events.ts";
import { readRing } from "../../../record/ring/reading.ts";
import { type RingSet, ringSetOf } from "../../../science/infiltration/ring-set.ts";
import { type LastChange, lastChangeOf } from "../../kit/kit-list.ts";
import { spotsOf } from "../../parts/old-grass.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { sameField } from "../../parts/same-field.ts";
import { visitsOf } from "../../parts/visits.ts";

/** The things of the kit that a ring is read with. */
export interface RingKit {
  readonly ring: Ring;
  readonly outer: Ring | null;
  readonly ruler: Ruler | null;
  readonly bottle: Bottle | null;
}

/** One ring with everything that is known of it. Another object whenever anything of it changed. */
export interface DayRing {
  readonly id: RecordId<"observation">;
  readonly header: RingHeader;
  readonly letter: string;
  readonly kit: RingKit;
  readonly set: RingSet;
  readonly strip: Listed<"strip"> | undefined;
  readonly spot: Listed<"spot"> | undefined;
  readonly entries: readonly Entry[];
  readonly reading: RingReading;
  readonly deleted: boolean;
  /** Null while it stands as it was set out. */
  readonly changed: LastChange | null;
  /** Changes with the header, the kit, the strip and the marked spot, and not with the readings. */
  readonly version: string;
}

const bodyOf = <T extends Kit["type"]>(
  kit: readonly Listed<"kit">[],
  id: RecordId<"kit"> | null,
  type: T,
): Extract<Kit, { type: T }> | null => {
  const body = kit.find((one) => one.id === id)?.body;
  return body?.type === type ? (body as Extract<Kit, { type: T }>) : null;
};

const idsOfKit = ({ ring, outer, ruler, bottle }: RingHeader): readonly RecordId<"kit">[] =>
  [ring, outer, ruler, bottle].filter((id) => id !== null);

const versionOf = (rows: readonly (Listed | undefined)[]): string =>
  rows.map((row) => row?.revision.rev ?? "").join(" ");

/** A ring that is not of the kit any more cannot be reckoned with. */
const ringOf = (
  row: Listed<"observation">,
  kit: readonly Listed<"kit">[],
  { strip, spot }: Pick<DayRing, "strip" | "spot">,
  entries: readonly Entry[],
  before: DayRing | undefined,
): DayRing | null => {
  const header = row.body;
  if (header.type !== "ring") return null;
  const ring = bodyOf(kit, header.ring, "ring");
  if (ring === null) return null;
  const used = idsOfKit(header).map((id) => kit.find((one) => one.id === id));
  const version = versionOf([row, strip, spot, ...used]);
  if (before?.version === version && before.entries === entries) return before;
  const things = {
    ring,
    outer: bodyOf(kit, header.outer, "ring"),
    ruler: bodyOf(kit, header.ruler, "ruler"),
    bottle: bodyOf(kit, header.bottle, "bottle"),
  };
  return {
    id: row.id,
    header,
    letter: ring.name,
    kit: things,
    set: ringSetOf(header, things),
    strip,
    spot,
    entries,
    reading: readRing(entries),
    deleted: row.deleted,
    changed: lastChangeOf(row),
    version,
  };
};

const ringsOf = async (
  records: Reader,
  rows: readonly Listed<"observation">[],
  known: ReadonlyMap<RecordId, DayRing>,
  isFresh: (id: RecordId) => boolean,
): Promise<readonly DayRing[]> => {
  const headers = rows.flatMap(({ body }) => (body.type === "ring" ? [body] : []));
  const stale = rows.map(({ id }) => id).filter((id) => !known.has(id) || !isFresh(id));
  const [kit, strips, spots, entries] = await Promise.all([
    records.many([...new Set(headers.flatMap(idsOfKit))]),
    records.many([...new Set(headers.map(({ strip }) => strip))]),
    spotsOf(records, rows),
    records.entries(stale),
  ]);
  return rows.flatMap((row) => {
    const before = known.get(row.id);
    const own = stale.includes(row.id) ? (entries.get(row.id) ?? []) : (before?.entries ?? []);
    const { strip, spot } = row.body;
    const ring = ringOf(
      row,
      kit,
      {
        strip: strips.find(({ id }) => id === strip),
        spot: spot === undefined ? undefined : spots.get(spot),
      },
      own,
      before,
    );
    return ring === null ? [] : [ring];
  });
};

/** Rings of rows, read anew. */
export const readRings = (
  records: Reader,
  rows: readonly Listed<"observation">[],
): Promise<readonly DayRing[]> => ringsOf(records, rows, new Map(), () => false);

/** The ring of an id; null when it is not on this device. */
export const readRingOf = async (records: Reader, id: RecordId<"observation">): Promise<DayRing | null> => {
  const row = await records.one(id);
  if (row === undefined) return null;
  const [ring] = await readRings(records, [row]);
  return ring ?? null;
};

/** The field and the rings of one day. */
export interface RingDay {
  readonly visit: Listed<"visit">;
  readonly field: Listed<"field">;
  /** In the order in which they were set out. */
  readonly rings: readonly DayRing[];
}

/**
 * Reads the rings of a visit, and of every other visit of the same field on the same day.
 *
 * @param known rings as they were read before
 * @param isFresh whether the readings of a known ring have not changed since
 * @returns null when the visit is not on this device
 */
export const readRingDay = async (
  records: Reader,
  id: RecordId<"visit">,
  known: ReadonlyMap<RecordId, DayRing>,
  isFresh: (id: RecordId) => boolean,
): Promise<RingDay | null> => {
  const visit = await records.one(id);
  const same = visit === undefined ? undefined : await sameField(records, visit.body.field);
  if (visit === undefined || same === undefined) return null;
  const all = await visitsOf(records, same.ids);
  const ids = new Set([
    visit.id,
    ...all.filter(({ body }) => body.day === visit.body.day).map((one) => one.id),
  ]);
  const lists = await Promise.all([...ids].map((one) => records.list({ visit: one, kind: "observation" })));
  const rows = lists
    .flat()
    .filter(({ body }) => body.type === "ring")
    .sort((a, b) => a.body.startedAtMs - b.body.startedAtMs);
  return { visit, field: same.field, rings: await ringsOf(records, rows, known, isFresh) };
};
