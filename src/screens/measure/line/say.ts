import type { Cover, Entry, Stance } from "../../../record/entry.ts";
import type { Catalogue } from "../../catalogue.ts";
import type { LastAnswer } from "./model.ts";

/** What an answer at a mark is called. */
export const coverWords = (
  words: Catalogue,
  fifthKey: string | null,
  answer: { readonly cover: Cover; readonly stance?: Stance | null | undefined },
): string => {
  const name = answer.cover === "own" ? (fifthKey ?? words.line.cover.own) : words.line.cover[answer.cover];
  const stance = answer.stance ?? null;
  return stance === null ? name.toLowerCase() : `${name.toLowerCase()}, ${words.line[stance]}`;
};

const entryWords = (words: Catalogue, fifthKey: string | null, entry: Entry): string => {
  switch (entry.type) {
    case "mark":
      return words.line.atMark(entry.mark, coverWords(words, fifthKey, entry));
    case "set-mark":
      return words.line.did.setMark(entry.mark);
    case "thickness":
      return words.line.did.thickness(entry.mark);
    case "totals":
      return words.line.did.totals;
    case "end":
      return words.line.did.end(entry.mark);
    // An undo says what it took back; the others do not belong to a line.
    default:
      return "";
  }
};

/** The last answer in words: taken, undone or redone. */
export const sayEntry = (words: Catalogue, fifthKey: string | null, last: LastAnswer): string => {
  const what = entryWords(words, fifthKey, last.entry);
  if (last.how === "took") return words.line.took(what);
  return last.how === "undone" ? words.line.undone(what) : words.line.redone(what);
};
