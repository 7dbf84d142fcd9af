import { plural, writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";
import { deletedWords } from "./words.deleted.ts";

const number = (value: number, decimals = 0): string => writeNumber(value, TONGUE, decimals);
const count = (n: number, one: string, other: string): string =>
  `${number(n)} ${plural(n, TONGUE, { one, other })}`;
const records = (n: number): string => count(n, "record", "records");
const photos = (n: number): string => count(n, "photo", "photos");

/** The size of a file in words. */
const size = (bytes: number): string =>
  bytes < 1e6 ? `${number(Math.max(1, bytes / 1000))} kB` : `${number(bytes / 1e6, 1)} MB`;

const english = () => ({
  ...deletedWords(),
  send: {
    title: "Send & back up",
    copy: "A copy of everything",
    copyFor:
      "A copy holds all records and photos: one file, or several when there are many photos. It brings them back if this device is lost, and hands them to somebody else.",
    never: "No copy has left this device yet.",
    last: (when: string) => `The last copy was handed over on ${when}.`,
    atAll: (n: number) => `${records(n)} ${n === 1 ? "is" : "are"} on this device.`,
    since: (n: number) => (n === 0 ? "Nothing new since." : `${records(n)} new or changed since.`),
    sinceSome: "Some records are new or changed since.",
    nothing: "There is nothing to copy yet.",
    make: "Make a copy",
    stop: "Stop",
    steps: {
      gathering: "gathering the records",
      writing: "writing the copy",
      comparing: "reading back and comparing",
      reading: "reading the file",
      "bringing-in": "bringing in",
    },
    progress: (step: string, done: number, of: number | null) =>
      of === null ? `${step} …` : `${step} … ${number(done)} of ${number(of)}`,
    compared: (n: number, pictures: number) => `Read back and compared: ${records(n)}, ${photos(pictures)}.`,
    part: (at: number, of: number, name: string, bytes: number) =>
      of === 1 ? `${name}, ${size(bytes)}` : `Part ${number(at)} of ${number(of)}: ${name}, ${size(bytes)}`,
    parts: "The first part holds every record, the others photos only. Keep them together.",
    share: "Share",
    save: "Save",
    shared: "Handed over.",
    saved:
      "The browser has it now. Look under Downloads or Files on this device. From there it can be sent by mail, by message or by cable; a copy that stays on this device is lost with it.",
    cannotShare:
      "This browser does not share files of this kind: it is saved first and sent from where it lies.",
    another: "Make another copy",
    bringIn: "Bring in a file",
    bringInFor: "A copy from another device, or an older one from here. What is here already stays.",
    choose: "Choose a file",
    preview: "This is what the file holds",
    nothingYet: "Nothing has changed yet.",
    made: (when: string | null, who: string | null) =>
      [
        when === null ? "Written at an unknown time" : `Written on ${when}`,
        who === null ? "" : ` by ${who}`,
      ].join(""),
    rows: {
      new: "New here",
      changed: "Adds to a record here",
      same: "The same here already",
      photos: "New photos",
      sideBySide: "Two versions side by side",
      twoAnswers: "Two answers for one mark",
      refused: "Stay out",
    },
    sideBySideNote: "Both versions are kept. Which one stands is chosen under Two versions, now or later.",
    twoAnswersNote: (marks: number, lines: number) =>
      `${count(marks, "mark", "marks")} on ${count(lines, "line", "lines")}: both answers are kept, and neither counts until one is chosen.`,
    refusedTitle: "What stays out, and why",
    refusedMore: (n: number) => `and ${number(n)} more`,
    allSame: "Everything in this file is here already.",
    take: "Bring in",
    leave: "Leave it",
    left: "Left. Nothing was changed.",
    doNotClose: "It may be left alone: what is begun is finished, even after this page was closed.",
    done: (name: string, n: number, changed: number, pictures: number) =>
      `Brought in ${name}: ${records(n)} new, ${number(changed)} changed, ${photos(pictures)}.`,
    beside: "Also here",
    kit: "Kit",
    kitHint: "ropes, rings, hole templates, bottles, rulers",
    help: "Help",
    helpHint: "how to measure, cautions, methods and sources",
    settings: "Settings",
    settingsHint: "words, units, light, who is measuring",
    deleted: "Deleted records",
    deletedHint: "can be brought back",
    versions: "Two versions",
    versionsHint: "of one record, or two answers for one mark",
  },
});

/** Words of Send & back up, and of the lists behind it. */
export type SendWords = ReturnType<typeof english>;
export const SEND_WORDS: WordsOf<SendWords> = { en: english };
