/** Ground cover of a field by harvest year and strip, newest first. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import type { FieldCover, StripOnDay } from "../../science/ground-cover/field-cover.ts";
import type { Catalogue } from "../catalogue.ts";
import type { House } from "../parts/house.ts";
import { stripName } from "../parts/names.ts";
import type { Listed } from "../parts/reader.ts";
import { wantedBy } from "../parts/results-desk.ts";
import { sameStrip } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";

/** A strip within one year. */
export interface StripOfYear {
  readonly strip: RecordId<"strip">;
  readonly onDays: readonly StripOnDay[];
}

/** One harvest year, or a calendar year where the harvest year was not said. */
export interface YearOfField {
  readonly year: number;
  readonly said: boolean;
  readonly days: ReadonlySet<string>;
}

export interface CoverNow {
  readonly cover: FieldCover;
  /** The newest finding of each strip. */
  readonly newest: ReadonlyMap<RecordId<"strip">, StripOnDay>;
  /** Strips by id, deleted ones too: their lines stay in the results. */
  readonly strips: ReadonlyMap<RecordId<"strip">, Listed<"strip">>;
}

/**
 * The years that visits belong to, the one of the newest visit first. Known from the visits alone, so that
 * their keys stand before any result is worked out.
 *
 * @param visits newest first
 */
export const yearsOf = (visits: readonly Pick<Listed<"visit">, "body">[]): readonly YearOfField[] => {
  // Two visits of one day are one visit: a year said for either holds for both.
  const saidOn = new Map<string, number>();
  for (const { body } of visits) if (body.harvestYear !== null) saidOn.set(body.day, body.harvestYear);
  const years = new Map<string, { year: number; said: boolean; days: Set<string> }>();
  for (const { body } of visits) {
    const said = saidOn.get(body.day);
    const year = said ?? Number(body.day.slice(0, 4));
    const key = `${year} ${said !== undefined}`;
    const there = years.get(key) ?? { year, said: said !== undefined, days: new Set() };
    years.set(key, there);
    there.days.add(body.day);
  }
  return [...years.values()];
};

/** The results of one year by strip, the strip measured last first. */
export const stripsOfYear = (onDays: readonly StripOnDay[], year: YearOfField): readonly StripOfYear[] => {
  const strips = new Map<RecordId<"strip">, StripOnDay[]>();
  for (const one of onDays)
    if (year.days.has(one.day)) strips.set(one.strip, [...(strips.get(one.strip) ?? []), one]);
  return [...strips].map(([strip, days]) => ({ strip, onDays: days }));
};

const isStrip = (id: RecordId): id is RecordId<"strip"> => kindOf(id) === "strip";

/** Reads the ground cover of a field. */
export const readCover = async (
  { records, results }: House,
  settings: Settings,
  ids: readonly RecordId<"field">[],
): Promise<CoverNow> => {
  const [cover, joins] = await Promise.all([results.field(ids, wantedBy(settings)), records.joins()]);
  const newest = new Map<RecordId<"strip">, StripOnDay>();
  for (const one of cover.onDays) if (one.cover.ok && !newest.has(one.strip)) newest.set(one.strip, one);
  // Results stand under the strip that others were joined to; when that one is deleted, another is listed.
  const stripOf = sameStrip(joins);
  for (const id of joins.flatMap(({ from, to }) => [from, to]).filter(isStrip)) {
    const found = newest.get(stripOf(id));
    if (found !== undefined) newest.set(id, found);
  }
  const strips = await records.many([...new Set(cover.onDays.map(({ strip }) => strip))]);
  return { cover, newest, strips: new Map(strips.map((strip) => [strip.id, strip])) };
};

/** The name of a strip, with the word that it was deleted. */
export const nameWithFate = (words: Catalogue, strip: Listed<"strip"> | undefined): string => {
  const name = stripName(words, strip);
  return strip?.deleted === true ? words.fields.stripDeleted(name) : name;
};
