/** Words of notes. */

import { plural, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";
import type { Step } from "./steps.ts";

const english = () => ({
  notes: {
    title: "Note",
    newTitle: "Write a note",
    write: "Write a note",
    writeHere: "Write a note here",
    noSpotName: "marked spot without a name",
    heading: "Notes",
    label: "What do you see here?",
    onRecord: "On record.",
    typing: "Not yet on record …",
    begins: "It is kept as you write.",
    strip: "Which strip?",
    wholeField: "the whole field",
    atSpot: (name: string) => `At the marked spot ${name}`,
    stand: "Stand still where it is",
    positionHere: "Where it is",
    takePosition: "Take my position for it",
    takePositionHint: "Only if you stand where the note is about.",
    usePosition: "Use this position",
    undone: {
      words: "Undone: what was written last",
      strip: "Undone: the choice of the strip",
      position: "Undone: the position",
      photo: "Undone: the photo",
    } satisfies Record<Step["what"], string>,
    redone: {
      words: "Redone: what was written last",
      strip: "Redone: the choice of the strip",
      position: "Redone: the position",
      photo: "Redone: the photo",
    } satisfies Record<Step["what"], string>,
    gone: "This note is not on this device.",
    deleted: "This note is deleted. It can be brought back for 30 days.",
    bringBack: "Bring the note back",
    delete: "Delete this note",
    deleteAsk: "Delete this note?",
    deleteHint: "It can be brought back for 30 days, with its photos.",
    twoVersions: "This note was changed on two devices. Choose one before you write on.",
    chooseVersion: "Choose a version",
    wordless: "No words",
    photos: (count: number) =>
      `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "photo", other: "photos" })}`,
  },
});

export const NOTE_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
