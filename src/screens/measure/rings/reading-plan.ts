/** When a ring is read: the usual minutes after its start, and a plan as it is written on its line. */
import type { RingWay } from "../../../record/kinds/observation.ts";
import { failed, ok, type Result } from "../../../record/result.ts";

/**
 * Minutes after the start at which a ring is usually read (own choice, no source): close together while it
 * soaks in fast, and with readings at 30, 60 and 180 minutes, so that the headline needs no guess between two.
 */
export const USUAL_PLAN_MIN: Readonly<Record<RingWay, readonly number[]>> = {
  ruler: [2, 5, 10, 15, 20, 30, 40, 50, 60, 80, 100, 120, 150, 180],
  // A pour is looked at until it is gone; then the next one is poured.
  "measured-pour": [5, 10, 20, 30, 45, 60, 90, 120, 150, 180],
  "kept-at-one-level": [5, 10, 15, 20, 30, 40, 50, 60, 75, 90, 105, 120, 135, 150, 165, 180],
};

/** Limits of the record. */
const MOST_READINGS = 200;
const LONGEST_MIN = 1440;
const SHORTEST_MIN = 0.25;

/** A plan as it is written on its line. */
export const planText = (planMin: readonly number[]): string => planMin.join(" ");

/**
 * Reads a plan: minutes with blanks between them, in any order, each once.
 *
 * @returns rising; empty for no plan; `screens/not-a-plan` for anything that is no minute of a day
 *
 * @example
 * readPlan("30 5 10") // => { ok: true, value: [5, 10, 30] }
 */
export const readPlan = (text: string): Result<readonly number[]> => {
  const pieces = text.split(/[\s;]+|,\s+/u).filter((piece) => piece !== "");
  const minutes = pieces.map((piece) => Number(piece.replace(",", ".")));
  const good = minutes.every((one) => one >= SHORTEST_MIN && one <= LONGEST_MIN);
  if (!good || minutes.length > MOST_READINGS) return failed("screens/not-a-plan");
  return ok([...new Set(minutes)].sort((a, b) => a - b));
};
