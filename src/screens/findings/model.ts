/** Per field the strips of its newest visit, side by side. */
import type { Place } from "../../record/shapes.ts";
import type { GrassOnDay, StripOnDay } from "../../science/ground-cover/field-cover.ts";
import type { House } from "../parts/house.ts";
import type { Listed } from "../parts/reader.ts";
import { wantedBy } from "../parts/results-desk.ts";
import { allFields, type SameField } from "../parts/same-field.ts";
import type { Settings } from "../parts/settings.ts";

/** One strip of the day. */
export interface StripFound {
  readonly on: StripOnDay;
  readonly strip: Listed<"strip"> | undefined;
}

/** Old grass on the day, else on the newest day before it: the farm's own yardstick, and no strip. */
export interface GrassFound {
  readonly on: GrassOnDay;
  readonly spots: readonly Listed<"spot">[];
}

/** What the newest visit of a field found. */
export interface FieldFound {
  readonly same: SameField;
  readonly day: string;
  readonly strips: readonly StripFound[];
  /** Null when nothing was finished on old grass up to that day. */
  readonly grass: GrassFound | null;
  /** The places against the row, when lines do not all lie at the same; else empty. */
  readonly unlike: readonly (Place | null)[];
}

export interface FindingsNow {
  readonly found: readonly FieldFound[];
  /** Fields that have visits and are not shown yet. */
  readonly more: boolean;
}

const findingOf = async (
  { records, results }: House,
  settings: Settings,
  same: SameField,
): Promise<readonly FieldFound[]> => {
  const { onDays, oldGrass } = await results.field(same.ids, wantedBy(settings));
  const day = onDays.find(({ finished }) => finished > 0)?.day;
  if (day === undefined) return [];
  const ofDay = onDays.filter((one) => one.day === day);
  const grass = oldGrass.find((one) => one.day <= day && one.cover.ok);
  const [strips, spots] = await Promise.all([
    records.many(ofDay.map(({ strip }) => strip)),
    grass === undefined ? [] : records.many(grass.spots),
  ]);
  const places = [...new Set(ofDay.flatMap((one) => one.places))];
  return [
    {
      same,
      day,
      strips: ofDay.map((on) => ({ on, strip: strips.find(({ id }) => id === on.strip) })),
      grass: grass === undefined ? null : { on: grass, spots },
      unlike: places.filter((place) => place !== null).length > 1 ? places : [],
    },
  ];
};

/** Reads the findings of the fields that were visited last. */
export const readFindings = async (house: House, settings: Settings, most: number): Promise<FindingsNow> => {
  const [fields, visits] = await Promise.all([
    allFields(house.records),
    house.records.list({ kind: "visit" }),
  ]);
  const groupOf = new Map(fields.flatMap((same) => same.ids.map((id) => [id, same] as const)));
  const lastDay = new Map<SameField, string>();
  for (const { body } of visits) {
    const same = groupOf.get(body.field);
    if (same !== undefined && body.day > (lastDay.get(same) ?? "")) lastDay.set(same, body.day);
  }
  const byDay = [...lastDay].sort(([, a], [, b]) => (a < b ? 1 : -1)).map(([same]) => same);
  const found: FieldFound[] = [];
  let looked = 0;
  // One after another: ten questions at once would not be answered any sooner.
  for (const same of byDay) {
    if (found.length >= most) break;
    looked += 1;
    found.push(...(await findingOf(house, settings, same)));
  }
  return { found, more: looked < byDay.length };
};
