import { dayOf, writeClock, writeDay } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";

/** A moment as day and clock time on this device. */
export const writeMoment = (atMs: number): string =>
  `${writeDay(dayOf(atMs), TONGUE)}, ${writeClock(atMs, TONGUE)}`;
