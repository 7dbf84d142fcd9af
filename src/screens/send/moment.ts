import { dayOf, type Tongue, writeClock, writeDay } from "../parts/numbers.ts";

/** A moment as day and clock time on this device. */
export const writeMoment = (atMs: number, tongue: Tongue): string =>
  `${writeDay(dayOf(atMs), tongue)}, ${writeClock(atMs, tongue)}`;
