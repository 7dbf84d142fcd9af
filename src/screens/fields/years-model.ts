/** Results of a field by harvest year and strip, newest first: what was measured, and what came from paper. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import type { EarlierResult } from "../../record/kinds/earlier.ts";
import type { WormsOnDay } from "../../science/earthworms/worms-of-field.ts";
import type { FieldResults } from "../../science/field-results.ts";
import type { StripOnDay } from "../../science/ground-cover/field-cover.ts";
import type { SoakedOnDay } from "../../science/infiltration/soaked-of-field.ts";
import type { House } from "../parts/house.ts";
import type { Listed } from "../parts/reader.ts";
import { wantedBy, whileItLasts } from "../parts/results-desk.ts";
import { sameStrip } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";
import { visitsOf } from "../parts/visits.ts";
import { besides, stripsOf } from "./strips-by-id.ts";

/** Stands for all old grass of the field: the farm's own yardstick, which lies in no strip. */
export const OLD_GRASS = "old-grass";

/** Null stands for the field as a whole, where paper names no strip. */
export type StripKey = RecordId<"strip"> | typeof OLD_GRASS | null;

/** One strip, or old grass, on one day: whatever was measured there. */
export interface DayFound {
  readonly day: string;
  readonly strip: StripKey;
  readonly cover: Omit<StripOnDay, "strip" | "chance"> | null;
  readonly worms: Omit<WormsOnDay, "strip"> | null;
  readonly soaked: Omit<SoakedOnDay, "strip"> | null;
}

/** A result from paper, with its record. */
export interface Paper extends EarlierResult {
  readonly id: RecordId<"earlier">;
}

/** One strip in one year; days newest first. */
export interface StripFound {
  readonly strip: StripKey;
  readonly days: readonly DayFound[];
  readonly papers: readonly Paper[];
}

/** One harvest year, or a calendar year where the harvest year was not said. */
export interface YearFound {
  readonly year: number;
  readonly said: boolean;
  /** The strip measured last first; old grass stands below all of them. */
  readonly strips: readonly StripFound[];
}

/** The harvest year that was said for each day; two visits of one day are one. */
export const saidYears = (
  visits: readonly { readonly body: { readonly day: string; readonly harvestYear: number | null } }[],
): ReadonlyMap<string, number> =>
  new Map(
    visits.flatMap(({ body }) => (body.harvestYear === null ? [] : [[body.day, body.harvestYear] as const])),
  );

interface Gathering {
  readonly year: number;
  readonly said: boolean;
  newest: string;
  readonly strips: Map<StripKey, { newest: string; days: Map<string, DayFound>; papers: Paper[] }>;
}

const later = (a: { readonly newest: string }, b: { readonly newest: string }): number =>
  a.newest === b.newest ? 0 : a.newest < b.newest ? 1 : -1;

/**
 * Puts the results of a field under their years and strips.
 *
 * @param said harvest year by day; a day without one stands under its calendar year, marked as such
 * @param stripOf which strip a strip stands for
 */
export const yearsFound = (
  results: FieldResults,
  papers: readonly Paper[],
  said: ReadonlyMap<string, number>,
  stripOf: (strip: RecordId<"strip">) => RecordId<"strip">,
): readonly YearFound[] => {
  const years = new Map<string, Gathering>();
  const stripIn = (day: string, strip: StripKey) => {
    const of = said.get(day);
    const year = of ?? Number(day.slice(0, 4));
    const key = `${year} ${of !== undefined}`;
    const there = years.get(key) ?? { year, said: of !== undefined, newest: "", strips: new Map() };
    years.set(key, there);
    if (day > there.newest) there.newest = day;
    const found = there.strips.get(strip) ?? { newest: "", days: new Map(), papers: [] };
    there.strips.set(strip, found);
    if (day > found.newest) found.newest = day;
    return found;
  };
  const add = (day: string, strip: StripKey, part: Partial<DayFound>) => {
    const { days } = stripIn(day, strip);
    const empty = { day, strip, cover: null, worms: null, soaked: null };
    days.set(day, { ...(days.get(day) ?? empty), ...part });
  };
  for (const cover of results.cover.onDays) add(cover.day, cover.strip, { cover });
  for (const worms of results.worms) add(worms.day, worms.strip, { worms });
  for (const soaked of results.soaked) add(soaked.day, soaked.strip, { soaked });
  for (const cover of results.cover.oldGrass) add(cover.day, OLD_GRASS, { cover });
  for (const worms of results.oldGrass.worms) add(worms.day, OLD_GRASS, { worms });
  for (const soaked of results.oldGrass.soaked) add(soaked.day, OLD_GRASS, { soaked });
  for (const paper of papers)
    stripIn(paper.day, paper.strip === null ? null : stripOf(paper.strip)).papers.push(paper);
  return [...years.values()].sort(later).map(({ year, said: isSaid, strips }) => ({
    year,
    said: isSaid,
    strips: [...strips]
      .sort(([one, a], [other, b]) => Number(one === OLD_GRASS) - Number(other === OLD_GRASS) || later(a, b))
      .map(([strip, found]) => ({
        strip,
        days: [...found.days.values()].sort((a, b) => (a.day < b.day ? 1 : -1)),
        papers: found.papers.sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0)),
      })),
  }));
};

/** Everything that the part shows. */
export interface YearsNow {
  /** False: these are results from before the last changes, and the new ones are being worked out. */
  readonly upToDate: boolean;
  readonly years: readonly YearFound[];
  /** Strips by id, deleted ones too: their results stay. */
  readonly strips: ReadonlyMap<RecordId<"strip">, Listed<"strip">>;
  /** Where old grass was measured. */
  readonly spots: readonly Listed<"spot">[];
}

const spotsIn = ({ cover, oldGrass }: FieldResults): readonly RecordId<"spot">[] => [
  ...new Set([...cover.oldGrass, ...oldGrass.worms, ...oldGrass.soaked].flatMap(({ spots }) => spots)),
];

const isStrip = (id: RecordId): id is RecordId<"strip"> => kindOf(id) === "strip";

/**
 * Reads the results of a field.
 *
 * @param fields the field first, then all that are the same
 * @param meanwhile gets what was found before the last changes while the new results are worked out
 */
export const readYears = async (
  { records, results }: House,
  settings: Settings,
  fields: readonly RecordId<"field">[],
  meanwhile: (before: YearsNow) => void,
): Promise<YearsNow> => {
  const around = Promise.all([
    visitsOf(records, fields),
    records.joins(),
    stripsOf(records, fields),
    Promise.all(fields.map((id) => records.list({ field: id, kind: "earlier" }))),
  ]);
  const now = async (found: FieldResults, upToDate: boolean): Promise<YearsNow> => {
    const [visits, joins, living, papers] = await around;
    const years = yearsFound(
      found,
      papers.flat().map(({ id, body }) => ({ ...body, id })),
      saidYears(visits),
      sameStrip(joins),
    );
    const ids = new Set(
      years.flatMap(({ strips }) =>
        strips.flatMap(({ strip }) => (strip === null || strip === OLD_GRASS ? [] : [strip])),
      ),
    );
    const [strips, spots] = await Promise.all([
      besides(records, living, [...ids].filter(isStrip)),
      records.many(spotsIn(found)),
    ]);
    return { upToDate, years, strips, spots };
  };
  const all = results.all(
    fields,
    wantedBy(settings),
    whileItLasts((before) => now(before, false), meanwhile),
  );
  const [, found] = await Promise.all([around, all]);
  return now(found, true);
};
