import { plural, writeNumber } from "./numbers.ts";
import { TONGUE } from "./words.common.ts";
import type { WordsOf } from "./words-of.ts";

const minutes = (count: number): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "minute", other: "minutes" })}`;

const english = () => ({
  label: "Next reading",
  ring: (letter: string) => `Ring ${letter}`,
  hole: (index: number) => `Hole ${writeNumber(index, TONGUE)}`,
  soon: "in less than a minute",
  in: (count: number) => `in ${writeNumber(count, TONGUE)} min`,
  now: "now",
  /** Of a wait for worms in mustard water that is over. */
  look: "look for worms",
  waitOver: (index: number, clock: string) =>
    `${clock}: hole ${writeNumber(index, TONGUE)}, look for worms now.`,
  late: (count: number) => `${writeNumber(count, TONGUE)} min late`,
  /** Said aloud once, when the time has come; the clock time makes each time another sentence. */
  due: (letter: string, clock: string, lateMin: number) =>
    lateMin === 0
      ? `${clock}: ring ${letter} is to be read now.`
      : `Ring ${letter} was to be read at ${clock}. It is ${minutes(lateMin)} late.`,
  silent: "silent until touched",
  wake: "Touch anywhere. The first touch only lights the screen.",
  locked:
    "A locked phone cannot ring. While a ring runs the screen stays on and is dimmed. Do not lock the phone and stay in Mulchmark, or read by the clock times that every ring shows.",
  lockedTaken: "I understand",
  lockedMore: "More on this",
  /** Where there is room for two lines, and for a few words alone. */
  screenShort: "The screen may go dark, and then it cannot ring: read by the clock.",
  dark: "screen may go dark",
  screenRefused:
    "This phone will not keep its screen on just now, perhaps to save its battery. It cannot ring once the screen is off: read by the clock.",
  screenNotHere:
    "This browser cannot keep the screen on. Set the phone to stay lit, or read by the clock: it cannot ring once the screen is off.",
});

/** Words for the next reading of the rings and the end of a wait at a hole, and for what rings when it is due. */
export const ALARM_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
