/** What was noted beside the readings of a ring: how wet the ground was, and how warm the water. */
import type { TemperatureEntry, WetnessEntry } from "../../../record/conditions.ts";
import { type Entry, fatesOf, inOrder } from "../../../record/entry.ts";

export interface RingConditions {
  readonly wetness: WetnessEntry["is"] | null;
  /** The answers that a correction of it takes the place of. */
  readonly wetnessIds: readonly string[];
  readonly water: TemperatureEntry | null;
}

/** The newest answers that were not taken back or corrected; null where nobody said anything. */
export const conditionsOf = (entries: readonly Entry[]): RingConditions => {
  const ordered = inOrder(entries);
  const fates = fatesOf(ordered);
  let wetness: RingConditions["wetness"] = null;
  const wetnessIds: string[] = [];
  let water: TemperatureEntry | null = null;
  for (const [at, entry] of ordered.entries()) {
    if (fates[at] !== "counts") continue;
    if (entry.type === "wetness") {
      wetness = entry.is;
      wetnessIds.push(entry.id);
    } else if (entry.type === "temperature" && entry.of === "water") water = entry;
  }
  return { wetness, wetnessIds, water };
};

/** Degrees Celsius of a temperature as it was read. */
export const celsiusOf = ({ value, unit }: Pick<TemperatureEntry, "value" | "unit">): number =>
  unit === "C" ? value : ((value - 32) * 5) / 9;
