/** Commands that could not be written down, in words that a person can copy onto paper. */
import type { Command, Draft } from "../record/command/command.ts";
import { kindOf } from "../record/ids.ts";
import type { Catalogue } from "../screens/catalogue.ts";
import { UNSAVED_WORDS } from "../screens/parts/words.unsaved.ts";

const said = UNSAVED_WORDS.en;

/** The number that somebody typed, with its unit; empty for a reading without one. */
const typedIn = (draft: Draft): string =>
  [
    ...("typed" in draft ? [draft.typed] : []),
    ...("unit" in draft && typeof draft.unit === "string" ? [draft.unit] : []),
  ].join(" ");

const draftWords = (words: Catalogue, draft: Draft): string => {
  const { line } = words;
  switch (draft.type) {
    case "mark": {
      const cover = line.cover[draft.cover].toLowerCase();
      const what = draft.stance === undefined ? cover : `${cover}, ${line[draft.stance]}`;
      return draft.mark === "next" ? said.nextMark(what) : line.atMark(draft.mark, what);
    }
    case "thickness":
      return `${line.did.thickness(draft.mark)}: ${draft.typed} ${draft.unit}`;
    case "set-mark":
      return line.did.setMark(draft.mark);
    case "end":
      return draft.mark === "here" ? said.endsHere : line.did.end(draft.mark);
    case "totals":
      return [
        `${line.kinds.flat} ${draft.flat}`,
        `${line.kinds.standing} ${draft.standing}`,
        ...(["bare", "green", "stone", "own"] as const).map((kind) => `${line.cover[kind]} ${draft[kind]}`),
      ].join(", ");
    case "worm":
      return said.oneWorm;
    case "placed":
      return said.oneWormPlaced;
    case "happened":
      return said.reading(draft.words);
    default:
      return said.reading(typedIn(draft));
  }
};

/** A name or another short text among what was written. */
const textsOf = (body: { readonly [key: string]: unknown }): string =>
  ["name", "day", "words"]
    .flatMap((key) => {
      const text = body[key];
      return typeof text === "string" && text !== "" ? [text] : [];
    })
    .join(", ");

/**
 * One command in words.
 *
 * @example
 * unsavedWords(words, { op: "append", draft: { type: "mark", mark: 13, cover: "bare" }, … }) // => "mark 13: bare"
 */
export const unsavedWords = (words: Catalogue, command: Command): string => {
  const kind = words.records.kinds[kindOf(command.id)];
  switch (command.op) {
    case "append":
      return draftWords(words, command.draft);
    case "undo":
      return words.common.undo;
    case "redo":
      return words.common.redo;
    case "write":
    case "change": {
      const text = textsOf(command.op === "write" ? command.body : command.patch);
      return text === "" ? kind : `${kind}: ${text}`;
    }
    case "delete":
      return said.toDelete(kind);
    case "restore":
      return said.toRestore(kind);
    case "erase":
      return said.toForget(kind);
  }
};
