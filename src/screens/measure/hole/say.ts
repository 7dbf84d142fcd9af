/** Entries of a hole in words. */
import type { Entry } from "../../../record/entry.ts";
import type { UnitHabits } from "../../../record/units.ts";
import type { LastEntry } from "./model.ts";
import { litresWords, readDegrees } from "./sizes.ts";
import type { HoleWords } from "./words.ts";

/** What an entry says; empty for one that does not belong to a hole. */
export const entryWords = (words: HoleWords, habits: UnitHabits, entry: Entry): string => {
  const { did } = words;
  switch (entry.type) {
    case "worm":
      return did.worm(entry.from);
    case "found":
      return did.found(entry.from, entry.count);
    case "placed":
      return did.placed(entry.group);
    case "sorted":
      return did.sorted(entry.group, entry.count);
    case "sorting":
      return did.sorting(entry.from, entry.people);
    case "mustard":
      return did.mustard(entry.litres === null ? null : litresWords(entry.litres, habits));
    case "temperature":
      return did.temperature(readDegrees(entry));
    case "wetness":
      return did.wetness(entry.is);
    case "closed":
      return did.closed;
    default:
      return "";
  }
};

/** The last entry in words: taken, undone or redone. */
export const sayEntry = (words: HoleWords, habits: UnitHabits, last: LastEntry): string => {
  const what = entryWords(words, habits, last.entry);
  if (last.how === "took") return words.took(what);
  return last.how === "undone" ? words.undone(what) : words.redone(what);
};
