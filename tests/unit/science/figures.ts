import type { Unit } from "../../../src/science/estimate.ts";
import { type AssumptionName, assumed, exactly, type Ranged } from "../../../src/science/residue/ranged.ts";

/** A figure without width, or with ends. */
export const figure = (
  name: AssumptionName,
  value: number | readonly [number, number, number],
  unit: Unit = "1",
): Ranged => {
  if (typeof value === "number") return assumed(name, exactly(value), unit, "yours");
  const [low, middle, high] = value;
  return assumed(name, { low, middle, high }, unit, "yours");
};

/** What no reading can be. */
export const UNUSABLE = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY] as const;

/** Every number inside an answer, however deep. */
export const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
};

/** The codes of cautions. */
export const codesOf = (cautions: readonly { readonly code: string }[]): readonly string[] =>
  cautions.map(({ code }) => code);
