/** Depths, rates, water and times at a ring, as the person writes them. */
import { inUnit, toShown, toSi, type UnitHabits } from "../../../record/units.ts";
import { RULER_STEP_MM } from "../../../science/constants.ts";
import { stepWords } from "../../kit/fine-lengths.ts";
import { plural, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";

const MM = 1000;

/** A value and its unit, apart: the screen writes them in two sizes. */
export interface Figure {
  readonly value: string;
  readonly unit: string;
}

const decimals = (value: number, unit: string): number => (unit === "in" ? 2 : Math.abs(value) < 10 ? 1 : 0);

/** A depth soaked in, from millimetres. */
export const depthFigure = (mm: number, habits: UnitHabits): Figure => {
  const { value, unit } = toShown("depthSoaked", mm / MM, habits);
  return { value: writeNumber(value, TONGUE, decimals(value, unit)), unit };
};

/** The same in one text. */
export const depthText = (mm: number, habits: UnitHabits): string => {
  const { value, unit } = depthFigure(mm, habits);
  return `${value} ${unit}`;
};

/** A rate from millimetres an hour. */
export const rateFigure = (mmPerH: number, habits: UnitHabits): Figure => {
  const { value, unit } = toShown("rate", mmPerH / MM, habits);
  return { value: writeNumber(value, TONGUE, decimals(value, unit)), unit: `${unit}/h` };
};

/** The same in one text. */
export const rateText = (mmPerH: number, habits: UnitHabits): string => {
  const { value, unit } = rateFigure(mmPerH, habits);
  return `${value} ${unit}`;
};

/** The area of a ring, in the unit that its size is read in. */
export const areaText = (areaM2: number, { ringSize }: Pick<UnitHabits, "ringSize">): string =>
  `${writeNumber(areaM2 / toSi(1, ringSize) ** 2, TONGUE, 1)} ${ringSize}²`;

/** What a ruler reads that nobody named. */
export const plainStep = (habits: UnitHabits): string => stepWords(RULER_STEP_MM / MM, habits);

/** Water in litres or gallons, from litres. */
export const waterText = (litres: number, habits: UnitHabits): string => {
  const { value, unit } = toShown("waterCarried", toSi(litres, "L"), habits);
  return `${writeNumber(value, TONGUE, 1)} ${unit}`;
};

/** What water weighs: 1 L is 1 kg. */
export const weightText = (litres: number, habits: UnitHabits): string =>
  habits.waterCarried === "gal"
    ? // A pound is 0.45359237 kg by definition (NIST Special Publication 811, from memory).
      `${writeNumber(litres / 0.453_592_37, TONGUE)} lb`
    : `${writeNumber(litres, TONGUE)} kg`;

/** A length of time since the start: "12 min", "12 min 30 s", "−2 min". */
export const sinceText = (ms: number): string => {
  const seconds = Math.round(Math.abs(ms) / 1000);
  const [minutes, left] = [Math.floor(seconds / 60), seconds % 60];
  const sign = ms < 0 && seconds > 0 ? "−" : "";
  if (minutes === 0 && left > 0) return `${sign}${writeNumber(left, TONGUE)} s`;
  const whole = `${sign}${writeNumber(minutes, TONGUE)} min`;
  return left === 0 ? whole : `${whole} ${writeNumber(left, TONGUE)} s`;
};

/** Minutes in words. */
export const minutesText = (minutes: number): string =>
  `${writeNumber(minutes, TONGUE)} ${plural(minutes, TONGUE, { one: "minute", other: "minutes" })}`;

const secondsFormats = new Map<string, Intl.DateTimeFormat>();

/** The clock time of a moment with its seconds: two looks may lie in one minute. */
export const clockWithSeconds = (atMs: number, tongue: string): string => {
  // A phone that is carried into another time zone gets another formatter.
  const name = `${tongue} ${new Date(atMs).getTimezoneOffset()}`;
  const format =
    secondsFormats.get(name) ??
    new Intl.DateTimeFormat(tongue, { hour: "2-digit", minute: "2-digit", second: "2-digit" });
  secondsFormats.set(name, format);
  return format.format(new Date(atMs));
};

/** A number ready to be typed over, without the gaps of a number that is only read. */
export const typedIn = (si: number, unit: "mL" | "fl-oz" | "mm" | "in"): string =>
  String(Number(inUnit(si, unit).toPrecision(4)));
