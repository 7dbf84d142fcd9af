/** Water that rose without a refill: perhaps the ruler was read the other way round. */
import type { LevelRead } from "../../../record/ring/events.ts";
import type { DayRing } from "./day.ts";

/** Two readings between which the water went up. */
export interface Rise {
  readonly before: LevelRead;
  readonly now: LevelRead;
}

/**
 * The last reading, when it says that the water rose by more than one step of the ruler since the one before
 * it, and no water was added in between.
 *
 * @returns null when nothing rose, or the two were read in different ways
 */
export const lastRise = ({ reading, set }: Pick<DayRing, "reading" | "set">): Rise | null => {
  const inner = reading.events.filter(({ ring }) => ring === "inner");
  const now = inner.at(-1);
  const before = inner.at(-2);
  if (now?.type !== "level" || before?.type !== "level") return null;
  if (now.afterRefill || now.reads !== before.reads) return null;
  const upM = now.reads === "water-depth" ? now.levelM - before.levelM : before.levelM - now.levelM;
  // A hair more than the step: 42 mm and 41 mm differ by 1.0000000000000009 in binary.
  return upM * 1000 > set.stepMm * 1.000_001 ? { before, now } : null;
};
