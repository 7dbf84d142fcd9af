import { plural, writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";
import type { DemoHere } from "./here.ts";
import { type FarmWords, farmWords } from "./words.farm.ts";

const count = (many: number, one: string, other: string): string =>
  `${writeNumber(many, TONGUE)} ${plural(many, TONGUE, { one, other })}`;

const english = () => ({
  title: "Example farm",
  about:
    "An invented farm to look at: two fields, three harvest years, and a day that is going on. It stands beside your own records. A copy leaves it out, but for what your own records rest on. It goes in one touch, with everything that was counted on its own lines, rings and holes; what you began there yourself stays.",
  look: "Look at an example farm first",
  bring: "Bring in the example farm",
  bringRest: "Bring in the rest",
  bringing: "The example farm is being brought in",
  here: {
    whole: "The example farm is here.",
    part: "Bringing it in was cut short. A part of it is here.",
    rest: "A part of it stayed here when the example farm was taken away: what your own records rest on.",
  } satisfies Record<Exclude<DemoHere, "none">, string>,
  show: "Show its fields",
  take: "Take the example farm away",
  back: "Bring it back",
  taking: "The example farm is being taken away",
  gone: "The example farm is gone. Nothing else was changed.",
  goneBut: (own: number, needed: number) =>
    `The example farm is gone. ${count(own, "record of your own stays", "records of your own stay")}, and with ${own === 1 ? "it" : "them"} ${count(needed, "record", "records")} of the farm on which ${own === 1 ? "it rests" : "they rest"}: without its field and kit a measurement says nothing.`,
});

export type DemoWords = ReturnType<typeof english>;

/** Words around the example farm. */
export const DEMO_WORDS: WordsOf<DemoWords> = { en: english };

/** What its people wrote down. */
export const DEMO_FARM_WORDS: WordsOf<FarmWords> = { en: farmWords };
