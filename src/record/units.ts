/**
 * Units that people read and write in. Inside, everything is SI without prefixes: metres, square
 * metres, cubic metres, and shares from 0 to 1. Words and number formats belong to the screens.
 */

/** What a unit is worth, as a fraction of whole numbers, so that 12 in is 0.3048 m to the last bit. */
interface Worth {
  readonly numerator: number;
  readonly denominator: number;
}

/**
 * Exact by definition: 1 in = 0.0254 m, 1 ft = 0.3048 m, 1 ha = 10 000 m² (NIST Special Publication 811,
 * 2008, appendix B.8, from memory). The acre is the international one, 43 560 square feet of 0.3048 m =
 * 4046.856 422 4 m²: since 2023-01-01 the US survey foot "should not be used" (Federal Register 85,
 * 62698, 5 October 2020; table of NIST, "U.S. Survey Foot: Revised Unit Conversion Factors"). The survey
 * acre is larger by 4 parts in a million, about 160 cm² in each acre. The gallon is the US one of 231 cubic
 * inches and the fluid ounce its 128th part (same appendix, from memory); the imperial ones are others and
 * are not offered.
 */
const WORTH = {
  mm: { numerator: 1, denominator: 1000 },
  cm: { numerator: 1, denominator: 100 },
  m: { numerator: 1, denominator: 1 },
  in: { numerator: 254, denominator: 10_000 },
  ft: { numerator: 3048, denominator: 10_000 },
  ha: { numerator: 10_000, denominator: 1 },
  ac: { numerator: 40_468_564_224, denominator: 10_000_000 },
  mL: { numerator: 1, denominator: 1_000_000 },
  L: { numerator: 1, denominator: 1000 },
  "fl-oz": { numerator: 3_785_411_784, denominator: 128_000_000_000_000 },
  gal: { numerator: 3_785_411_784, denominator: 1_000_000_000_000 },
  "%": { numerator: 1, denominator: 100 },
} as const satisfies Readonly<Record<string, Worth>>;

/** A unit on a screen or in a raw reading. */
export type Unit = keyof typeof WORTH;

/** Every unit that a reading may be written in. */
export const UNITS = Object.keys(WORTH) as readonly Unit[];

/** The units that each quantity may be read in; the first is the metric one. */
export const UNITS_OF = {
  /** From mark to mark on a rope. */
  spacing: ["cm", "in"],
  ropeLength: ["m", "ft"],
  mulchThickness: ["mm", "in"],
  distance: ["m", "ft"],
  area: ["ha", "ac"],
  depthSoaked: ["mm", "in"],
  /** Depth soaked in per hour. */
  rate: ["mm", "in"],
  /** Across a ring, its height, and how deep it stands. */
  ringSize: ["cm", "in"],
  /** What the ruler in a ring shows. */
  level: ["mm", "in"],
  /** Water poured from a bottle. */
  volume: ["mL", "fl-oz"],
  /** Water carried to the field. */
  waterCarried: ["L", "gal"],
  /** Ground cover and other shares of a whole. */
  share: ["%"],
} as const satisfies Readonly<Record<string, readonly Unit[]>>;

/** Something that is measured. */
export type Quantity = keyof typeof UNITS_OF;

/** The units that one person reads and writes in, chosen quantity by quantity. */
export type UnitHabits = { readonly [Q in Quantity]: (typeof UNITS_OF)[Q][number] };

/**
 * Habits to begin with; each quantity can be changed alone. What is mixed in the UK preset is common
 * practice, no source.
 */
export const HABITS = {
  metric: {
    spacing: "cm",
    ropeLength: "m",
    mulchThickness: "mm",
    distance: "m",
    area: "ha",
    depthSoaked: "mm",
    rate: "mm",
    ringSize: "cm",
    level: "mm",
    volume: "mL",
    waterCarried: "L",
    share: "%",
  },
  us: {
    spacing: "in",
    ropeLength: "ft",
    mulchThickness: "in",
    distance: "ft",
    area: "ac",
    depthSoaked: "in",
    rate: "in",
    ringSize: "in",
    level: "in",
    volume: "fl-oz",
    waterCarried: "gal",
    share: "%",
  },
  "uk-mixed": {
    spacing: "cm",
    ropeLength: "m",
    mulchThickness: "in",
    distance: "m",
    area: "ac",
    depthSoaked: "mm",
    rate: "mm",
    ringSize: "cm",
    level: "mm",
    volume: "mL",
    waterCarried: "L",
    share: "%",
  },
} as const satisfies Readonly<Record<string, UnitHabits>>;

/** Name of a set of habits to begin with. */
export type HabitsName = keyof typeof HABITS;

/**
 * Habits that were kept before every quantity was known. What is missing follows the preset that the water
 * soaked in goes by, so that somebody who reads inches is not shown millimetres at a new test.
 *
 * @example
 * filledHabits({ ...HABITS.us, volume: undefined }).volume // => "fl-oz"
 */
export const filledHabits = (kept: { readonly [Q in Quantity]?: UnitHabits[Q] | undefined }): UnitHabits => {
  const preset = kept.depthSoaked === "in" ? HABITS.us : HABITS.metric;
  const known = Object.entries(kept).filter(([, unit]) => unit !== undefined);
  return { ...preset, ...Object.fromEntries(known) };
};

/** A value in the unit that it is shown in. */
export interface Shown {
  readonly value: number;
  readonly unit: Unit;
}

/**
 * A raw reading in SI. It goes by the unit that was kept with the reading, never by today's habits:
 * else changing a setting would change what was measured.
 *
 * @param value a finite number in `unit`
 * @returns metres, square metres, cubic metres, or a share from 0 to 1
 * @example
 * toSi(12, "in") // => 0.3048
 */
export const toSi = (value: number, unit: Unit): number =>
  (value * WORTH[unit].numerator) / WORTH[unit].denominator;

/**
 * An SI value in one given unit.
 *
 * @param si metres, square metres, cubic metres, or a share from 0 to 1; finite
 * @example
 * inUnit(0.3048, "in") // => 12
 */
export const inUnit = (si: number, unit: Unit): number =>
  (si * WORTH[unit].denominator) / WORTH[unit].numerator;

/**
 * An SI value as this person wants to see it, not rounded.
 *
 * @param si metres, square metres, cubic metres, or a share from 0 to 1; finite
 * @example
 * toShown("mulchThickness", 0.0254, HABITS.us) // => { value: 1, unit: "in" }
 */
export const toShown = (quantity: Quantity, si: number, habits: UnitHabits): Shown => {
  const unit = habits[quantity];
  return { value: inUnit(si, unit), unit };
};

/**
 * A value as this person writes it, in SI.
 *
 * @param value a finite number in the unit of the person's habits
 * @example
 * fromShown("area", 2, HABITS.metric) // => 20000
 */
export const fromShown = (quantity: Quantity, value: number, habits: UnitHabits): number =>
  toSi(value, habits[quantity]);
