/** Values of a measure as the person writes them. */
import type { UnitHabits } from "../../../record/units.ts";
import type { MeanFound } from "../../../science/earthworms/worms-of-field.ts";
import { depthFigure, depthText } from "../../measure/rings/figures.ts";
import { writeNumber, writePercent } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { Measure } from "./conditions.ts";

/** A value without its unit. */
export const valueText = (measure: Measure, value: number, habits: UnitHabits): string => {
  switch (measure) {
    case "cover":
      return writePercent(value, TONGUE);
    case "worms":
      return writeNumber(value, TONGUE, value < 10 ? 1 : 0);
    case "soak":
      return depthFigure(value, habits).value;
  }
};

/** The short unit behind a value; worms are named in the heading. */
export const shortUnit = (measure: Measure, habits: UnitHabits): string => {
  if (measure === "cover") return "%";
  return measure === "soak" ? depthFigure(1, habits).unit : "";
};

/** A value with its unit. */
export const withUnit = (measure: Measure, value: number, habits: UnitHabits): string =>
  measure === "soak"
    ? depthText(value, habits)
    : `${valueText(measure, value, habits)} ${shortUnit(measure, habits)}`.trim();

/** How far a range may reach past the largest value before the drawing cuts it off. */
const TALLEST = 3;

/** The end of the scale: all of a hundred percent, else past every value and range, on a round number. */
export const scaleEnd = (measure: Measure, estimates: readonly MeanFound[]): number => {
  if (measure === "cover") return 1;
  const largest = Math.max(...estimates.map(({ value }) => value), 0);
  const reach = Math.max(
    ...estimates.map(({ value, range }) =>
      range.ok ? Math.min(range.value.upper, largest * TALLEST) : value,
    ),
    largest,
  );
  if (!(reach > 0)) return 1;
  const step = 10 ** Math.floor(Math.log10(reach));
  const round = [1, 2, 2.5, 5, 10].find((one) => one * step >= reach) ?? 10;
  return round * step;
};
