import type { Unit } from "../../../../src/science/estimate.ts";
import {
  type AssumptionName,
  assumed,
  exactly,
  type Ranged,
  type Span,
} from "../../../../src/science/residue/ranged.ts";

/** A figure of the person's own; one number is a range without width. */
export const own = (
  value: number | readonly [number, number, number],
  unit: Unit,
  name: AssumptionName,
): Ranged => {
  if (typeof value === "number") return assumed(name, exactly(value), unit, "yours");
  const [low, middle, high] = value;
  return assumed(name, { low, middle, high }, unit, "yours");
};
type Figure = number | readonly [number, number, number];
export const kgPerHa = (value: Figure): Ranged => own(value, "kg/har", "mass");
export const share = (value: Figure): Ranged => own(value, "1", "cover");
export const perKg = (value: Figure): Ranged => own(value, "m2/kg", "cover-coefficient");
export const metres = (value: Figure): Ranged => own(value, "m", "straw-length");

/** The three ends. */
export const endsOf = ({ low, middle, high }: Span): readonly number[] => [low, middle, high];
export const codesOf = ({ cautions }: Pick<Ranged, "cautions">): readonly string[] =>
  cautions.map(({ code }) => code);
