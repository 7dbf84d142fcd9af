/** What was written at a ring, in words. */
import type { Entry } from "../../../record/entry.ts";
import { readDegrees } from "../hole/sizes.ts";
import { clockWithSeconds } from "./figures.ts";
import type { LastAnswer } from "./ring-model.ts";
import type { RingWords } from "./words.ts";

/** The value of an entry as it was read: never turned into another unit. */
export const valueText = ({ say, happenings, stops }: RingWords, entry: Entry): string => {
  switch (entry.type) {
    case "level":
      return entry.reads === "down-from-rim"
        ? say.downFromRim(`${entry.typed} ${entry.unit}`)
        : say.deep(`${entry.typed} ${entry.unit}`);
    case "pour":
      return say.poured(`${entry.typed} ${entry.unit}`);
    case "gone":
      return say.gone;
    case "look":
      return say.look;
    case "start":
      return say.start;
    case "stop":
      return say.stop(stops[entry.why]);
    case "happened":
      return entry.words === "" ? happenings[entry.what] : `${happenings[entry.what]}: ${entry.words}`;
    case "wetness":
      return say.wetness;
    case "temperature":
      return say.waterWarm(readDegrees(entry));
    default:
      return "";
  }
};

/** An entry with the clock time at which it was looked at. */
export const entryText = (words: RingWords, tongue: string, entry: Entry): string =>
  words.say.at(
    `${"ring" in entry && entry.ring === "outer" ? `${words.flags.outer}, ` : ""}${
      entry.type === "look" ? words.say.readNow : valueText(words, entry)
    }`,
    clockWithSeconds(entry.lookedAtMs, tongue),
  );

/** The last answer in words: taken, undone or redone. */
export const sayLast = (words: RingWords, tongue: string, { how, entry }: LastAnswer): string =>
  words.say[how](entryText(words, tongue, entry));
