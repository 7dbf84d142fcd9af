/** The timeline of a field: what was done, the rain that fell and the visits, on one axis, newest first. */
import type { RecordId } from "../../record/ids.ts";
import type { EVENTS, ManagementEvent } from "../../record/kinds/event.ts";
import type { Rain } from "../../record/kinds/rain.ts";
import { type LastRain, rainSince } from "../../record/rain-since.ts";
import { inUnit, toSi, type UnitHabits } from "../../record/units.ts";
import { isRecent } from "../parts/cautions-due.ts";
import { writeNumber } from "../parts/numbers.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { onceEach, sameField, sameStrip } from "../parts/same-field.ts";
import { visitsOf } from "../parts/visits.ts";
import { TONGUE } from "../parts/words.common.ts";

/** The usual events, in the order of a year; one touch each. */
export const USUAL = [
  "drilled",
  "harvested",
  "straw-baled",
  "straw-left",
  "grazed",
  "cover-crop-sown",
  "cover-crop-terminated",
  "tilled",
  "sprayed",
  "other",
] as const satisfies typeof EVENTS;

/** One thing on the axis. */
export type OnAxis =
  | { readonly kind: "event"; readonly day: string; readonly of: Listed<"event"> }
  | { readonly kind: "rain"; readonly day: string; readonly of: Listed<"rain"> }
  | { readonly kind: "paper"; readonly day: string; readonly of: Listed<"earlier"> }
  | { readonly kind: "visit"; readonly day: string; readonly of: Listed<"visit"> };

export interface TimelineNow {
  readonly field: RecordId<"field">;
  /** Newest first. */
  readonly axis: readonly OnAxis[];
  /** Strips that can be chosen: living ones, without the one that is the whole field. */
  readonly strips: readonly Listed<"strip">[];
  /** Every strip that an event or a paper names, deleted ones too. */
  readonly named: ReadonlyMap<RecordId<"strip">, Listed<"strip">>;
  readonly lastRain: LastRain | null;
  /** The last spraying that may still keep people out; null for none. */
  readonly sprayed: Listed<"event"> | null;
}

const KINDS = ["visit", "paper", "rain", "event"] as const;

/** Newest first; on one day what was done stands above the visit, and what was written last above the rest. */
const newer = (a: OnAxis, b: OnAxis): number => {
  if (a.day !== b.day) return a.day < b.day ? 1 : -1;
  const kinds = KINDS.indexOf(b.kind) - KINDS.indexOf(a.kind);
  return kinds || b.of.row.keys.atMs - a.of.row.keys.atMs;
};

/** Living strips, once each, without the one that is the whole field. */
export const toChoose = (
  strips: readonly Listed<"strip">[],
  joins: Parameters<typeof sameStrip>[0],
): readonly Listed<"strip">[] => onceEach(strips, sameStrip(joins)).filter(({ body }) => !body.wholeField);

/**
 * Reads the timeline; null when the field is not on this device.
 *
 * @param today the calendar day that days are counted to
 */
export const readTimeline = async (
  records: Reader,
  field: RecordId<"field">,
  today: string,
): Promise<TimelineNow | null> => {
  const same = await sameField(records, field);
  if (same === undefined) return null;
  const [visits, joins, events, rains, papers, strips] = await Promise.all([
    visitsOf(records, same.ids),
    records.joins(),
    Promise.all(same.ids.map((id) => records.list({ field: id, kind: "event" }))),
    Promise.all(same.ids.map((id) => records.list({ field: id, kind: "rain" }))),
    Promise.all(same.ids.map((id) => records.list({ field: id, kind: "earlier" }))),
    Promise.all(same.ids.map((id) => records.list({ field: id, kind: "strip" }))),
  ]);
  const axis: OnAxis[] = [
    ...visits.map((of) => ({ kind: "visit" as const, day: of.body.day, of })),
    ...events.flat().map((of) => ({ kind: "event" as const, day: of.body.day, of })),
    ...rains.flat().map((of) => ({ kind: "rain" as const, day: of.body.day, of })),
    ...papers.flat().map((of) => ({ kind: "paper" as const, day: of.body.day, of })),
  ];
  const named = await records.many([
    ...new Set(
      [...events.flat(), ...papers.flat()].flatMap(({ body }) => (body.strip === null ? [] : [body.strip])),
    ),
  ]);
  const sprayed = events
    .flat()
    .filter(({ body }) => body.what === "sprayed" && isRecent(body.day, today))
    .sort((a, b) => (a.body.day < b.body.day ? 1 : -1));
  return {
    field: same.field.id,
    axis: axis.sort(newer),
    strips: toChoose(strips.flat(), joins),
    named: new Map(named.map((strip) => [strip.id, strip])),
    lastRain: rainSince(
      rains.flat().map(({ body }) => body),
      today,
    ),
    sprayed: sprayed[0] ?? null,
  };
};

/** The body of an event that one touch makes. */
export const eventOf = (
  field: RecordId<"field">,
  what: ManagementEvent["what"],
  at: { readonly day: string; readonly strip: RecordId<"strip"> | null },
): ManagementEvent => ({ field, strip: at.strip, day: at.day, what, words: "" });

/** The most that a gauge can show in a day: more than ever fell (1,825 mm in 24 hours, from memory). */
const MOST_RAIN_MM = 2000;
/** More than this in a day is asked about once (own choice, no source). */
const ODD_RAIN_MM = 150;

/** How rain is typed in this unit: what is odd, and what is no rain at all. */
export const rainRule = (unit: UnitHabits["depthSoaked"], refused: string) => ({
  // A gauge that shows nothing is a plain answer, so 0 lies inside.
  bounds: { min: -1, max: inUnit(ODD_RAIN_MM / 1000, unit) },
  refuse: (value: number): string | null => {
    const depthMm = depthMmOf(value, unit);
    return depthMm >= 0 && depthMm <= MOST_RAIN_MM ? null : refused;
  },
});

/** Rain in millimetres from what was typed, to a ten-thousandth so that 0.1 in is 2.54 mm. */
export const depthMmOf = (value: number, unit: UnitHabits["depthSoaked"]): number =>
  Number((toSi(value, unit) * 1000).toFixed(4));

/** Rain as this person writes it. */
export const rainText = ({ depthMm }: Pick<Rain, "depthMm">, unit: UnitHabits["depthSoaked"]): string =>
  `${writeNumber(inUnit(depthMm / 1000, unit), TONGUE, unit === "in" ? 2 : 1)} ${unit}`;

/** The day before a day of the calendar. */
export const dayBefore = (day: string): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);

/** Whole days from one calendar day to another. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);

/** Whether a text is a day of the calendar, as a date field writes it. */
export const isDay = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(`${text}T00:00:00Z`));
