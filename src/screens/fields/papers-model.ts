/** Results from paper: how each is typed, what is no such result, and how it is written. */
import type { RecordId } from "../../record/ids.ts";
import type { EarlierResult } from "../../record/kinds/earlier.ts";
import { inUnit, toSi, type UnitHabits } from "../../record/units.ts";
import type { NumberRule } from "../parts/number-line.tsx";
import type { Listed, Reader } from "../parts/reader.ts";
import { sameField } from "../parts/same-field.ts";
import { toChoose } from "./timeline-model.ts";
import { scaleOf } from "./years-series.ts";

type What = EarlierResult["what"];

/** What the charts call each of them. */
export const MEASURE_OF = {
  "ground-cover-percent": "cover",
  "worms-per-hole": "worms-per-hole",
  "soaked-in-60-min-mm": "soaked",
} as const satisfies Record<What, string>;

/** The unit that it is shown and typed in; empty for worms, which are counted. */
export const unitOf = (what: What, { depthSoaked }: Pick<UnitHabits, "depthSoaked">): string =>
  ({ "ground-cover-percent": "%", "worms-per-hole": "", "soaked-in-60-min-mm": depthSoaked })[what];

/** The value as this person writes it, without its unit. */
export const paperValue = (what: What, value: number, habits: Pick<UnitHabits, "depthSoaked">): string => {
  const { times, write } = scaleOf(MEASURE_OF[what], habits);
  // Paper keeps percent as they were written there.
  return write(what === "ground-cover-percent" ? value : value * times);
};

/** The same with its unit. */
export const paperText = (what: What, value: number, habits: Pick<UnitHabits, "depthSoaked">): string =>
  `${paperValue(what, value, habits)} ${unitOf(what, habits)}`.trim();

/** From here on a number is asked about once, and none beyond `most` is kept (own choices, no source). */
const BOUNDS = {
  "ground-cover-percent": { odd: 101, most: 100 },
  "worms-per-hole": { odd: 200, most: 10_000 },
  "soaked-in-60-min-mm": { odd: 500, most: 5000 },
} as const satisfies Record<What, object>;

const inMm = (value: number, unit: UnitHabits["depthSoaked"]): number =>
  Number((toSi(value, unit) * 1000).toFixed(4));

/** A number as it is typed, as the record keeps it: percent, worms or millimetres. */
export const toKeep = (what: What, typed: number, unit: UnitHabits["depthSoaked"]): number =>
  what === "soaked-in-60-min-mm" ? inMm(typed, unit) : typed;

/** A number that is kept, as it is typed. */
export const toType = (what: What, value: number, unit: UnitHabits["depthSoaked"]): string =>
  String(what === "soaked-in-60-min-mm" ? Number(inUnit(value / 1000, unit).toPrecision(6)) : value);

/** What such a number has to be. */
export const ruleOf = (what: What, unit: UnitHabits["depthSoaked"], refused: string): NumberRule => {
  const { odd, most } = BOUNDS[what];
  return {
    // Nothing at all is a plain answer, so 0 lies inside.
    bounds: { min: -1, max: what === "soaked-in-60-min-mm" ? inUnit(odd / 1000, unit) : odd },
    refuse: (value) => {
      const kept = toKeep(what, value, unit);
      return kept >= 0 && kept <= most ? null : refused;
    },
  };
};

/** How many samples, as typed: null for an empty line; undefined for what is no such number. */
export const readSamples = (typed: string): number | null | undefined => {
  const text = typed.trim();
  if (text === "") return null;
  const count = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  return count >= 1 && count <= 100_000 ? count : undefined;
};

/** The field itself and its strips; null when it is not on this device. */
export const readPlaces = async (
  records: Reader,
  field: RecordId<"field">,
): Promise<{ readonly field: RecordId<"field">; readonly strips: readonly Listed<"strip">[] } | null> => {
  const same = await sameField(records, field);
  if (same === undefined) return null;
  const [joins, ...strips] = await Promise.all([
    records.joins(),
    ...same.ids.map((id) => records.list({ field: id, kind: "strip" })),
  ]);
  return { field: same.field.id, strips: toChoose(strips.flat(), joins) };
};
