/** Fields, their farms and strips: what is read for the list and for the page of one, and what is changed. */

import { kindOf, type RecordId } from "../../record/ids.ts";
import type { Strip } from "../../record/kinds/strip.ts";
import type { House } from "../parts/house.ts";
import { newField } from "../parts/new-field.ts";
import { newestOf, type TestOf } from "../parts/newest-of.ts";
import { type Spots, spotsOf } from "../parts/old-grass.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { allFields, onceEach, type SameField, sameField, sameStrip } from "../parts/same-field.ts";
import { visitsOf } from "../parts/visits.ts";
import { type FarmChoice, farmOf } from "./farms.tsx";

/** A field with the day of its last visit. */
export interface FieldOfFarm {
  readonly same: SameField;
  readonly lastDay: string | null;
}

/** The fields of one farm, by name; `farm` is undefined for those whose farm nobody has said. */
export interface FarmFields {
  readonly farm: Listed<"farm"> | undefined;
  readonly fields: readonly FieldOfFarm[];
}

const byName = (a: string, b: string): number => a.localeCompare(b, "en", { numeric: true });

/** Every living field by farm, farms by name, those without one last. */
export const readFields = async (records: Reader): Promise<readonly FarmFields[]> => {
  const [fields, visits, farms] = await Promise.all([
    allFields(records),
    records.list({ kind: "visit" }),
    records.list({ kind: "farm" }),
  ]);
  const lastDay = new Map<RecordId<"field">, string>();
  for (const { body } of visits) {
    const before = lastDay.get(body.field);
    if (before === undefined || body.day > before) lastDay.set(body.field, body.day);
  }
  const lastOf = ({ ids }: SameField): string | null =>
    ids.reduce<string | null>((last, id) => {
      const day = lastDay.get(id) ?? null;
      return last === null || (day !== null && day > last) ? day : last;
    }, null);
  const groups = new Map<Listed<"farm"> | undefined, FieldOfFarm[]>();
  for (const same of [...fields].sort((a, b) => byName(a.field.body.name, b.field.body.name))) {
    const farm = farms.find(({ id }) => id === same.field.body.farm);
    groups.set(farm, [...(groups.get(farm) ?? []), { same, lastDay: lastOf(same) }]);
  }
  return [...groups]
    .map(([farm, own]) => ({ farm, fields: own }))
    .sort((a, b) =>
      a.farm === undefined || b.farm === undefined
        ? Number(a.farm === undefined) - Number(b.farm === undefined)
        : byName(a.farm.body.name, b.farm.body.name),
    );
};

/** The newest lines of a field, from their headers alone. */
export interface NewestLines {
  readonly lines: readonly TestOf<"line">[];
  /** There are older ones. */
  readonly more: boolean;
  /** There may be older ones behind hundreds of other tests. */
  readonly unread: boolean;
  /** The strips that they lie on, deleted ones too. */
  readonly strips: ReadonlyMap<RecordId<"strip">, Listed<"strip">>;
  /** The marked spots that they lie at. */
  readonly spots: Spots;
}

/** Headers that are looked through for each line that is listed: rings and holes may lie between (own choice). */
const AMONG_FOR_EACH = 40;

const newestLines = async (
  records: Reader,
  ids: readonly RecordId<"field">[],
  most: number,
): Promise<NewestLines> => {
  const lists = await Promise.all(
    ids.map((field) => newestOf(records, field, "line", { most, among: most * AMONG_FOR_EACH })),
  );
  const newest = lists.flatMap(({ tests }) => tests).sort((a, b) => b.row.keys.atMs - a.row.keys.atMs);
  const lines = newest.slice(0, most);
  const [strips, spots] = await Promise.all([
    records.many([...new Set(lines.map(({ body }) => body.strip))]),
    spotsOf(records, lines),
  ]);
  return {
    lines,
    more: newest.length > most || lists.some(({ more }) => more),
    unread: lists.some(({ unread }) => unread),
    strips: new Map(strips.map((strip) => [strip.id, strip])),
    spots,
  };
};

/** Everything of a field but its results. */
export interface FieldNow {
  readonly same: SameField;
  readonly farm: Listed<"farm"> | undefined;
  readonly farms: readonly Listed<"farm">[];
  readonly strips: readonly Listed<"strip">[];
  /** Newest first. */
  readonly visits: readonly Listed<"visit">[];
  readonly newest: NewestLines;
}

/**
 * Reads the page of a field; null when it is not on this device. A field holds thousands of lines: no more
 * than the headers that are shown are read, and no entries at all.
 *
 * @param most how many lines are listed
 */
export const readField = async (
  records: Reader,
  id: RecordId<"field">,
  most: number,
): Promise<FieldNow | null> => {
  const same = await sameField(records, id);
  if (same === undefined) return null;
  const [newest, farms, visits, joins, ...strips] = await Promise.all([
    newestLines(records, same.ids, most),
    records.list({ kind: "farm" }),
    visitsOf(records, same.ids),
    records.joins(),
    ...same.ids.map((field) => records.list({ field, kind: "strip" })),
  ]);
  const stripOf = sameStrip(joins);
  return {
    same,
    farm: farms.find((farm) => farm.id === same.field.body.farm),
    farms,
    strips: onceEach(strips.flat(), stripOf),
    visits: [...visits].reverse(),
    newest,
  };
};

/** Writes a new field. Null, and the reason is shown, when it could not be written. */
export const addField = async (
  house: House,
  name: string,
  choice: FarmChoice,
): Promise<RecordId<"field"> | null> => {
  const { farm, commands } = farmOf(house.pen, choice);
  const made = newField(house.pen, name.trim(), farm);
  const written = await house.write(...commands, ...made.commands);
  if (written.ok) return made.field;
  house.tell(written.problem);
  return null;
};

/** Corrects the name and the farm. */
export const correctField = async (
  house: House,
  field: RecordId<"field">,
  name: string,
  choice: FarmChoice,
): Promise<boolean> => {
  const { farm, commands } = farmOf(house.pen, choice);
  const written = await house.write(...commands, house.pen.change(field, { name: name.trim(), farm }));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};

/** Writes a strip: a new one, or a correction of one that is there. */
export const writeStrip = async (
  house: House,
  strip: RecordId<"strip"> | null,
  body: Strip,
): Promise<boolean> => {
  const written = await house.write(
    strip === null ? house.pen.write("strip", body) : house.pen.change(strip, body),
  );
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};

/**
 * Deletes records together; they can be brought back. All strips that are the same go together: one left
 * behind would stand in the list under another name.
 */
export const remove = async (
  house: House,
  ids: readonly (RecordId<"field"> | RecordId<"strip">)[],
): Promise<boolean> => {
  const joins = await house.records.joins();
  const stripOf = sameStrip(joins);
  const joinedTo = joins.flatMap(({ from, to }) => [from, to]).filter((id) => kindOf(id) === "strip");
  const wanted = new Set(ids.map((id) => (kindOf(id) === "strip" ? stripOf(id as RecordId<"strip">) : id)));
  const same = joinedTo.filter((id) => wanted.has(stripOf(id as RecordId<"strip">)));
  const living = (await house.records.many([...new Set<RecordId>([...ids, ...same])])).filter(
    ({ deleted }) => !deleted,
  );
  const written = await house.write(...living.map(({ id }) => house.pen.remove(id)));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};
