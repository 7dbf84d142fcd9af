import { plural, writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";

const number = (value: number): string => writeNumber(value, TONGUE);

/** Words of Deleted records and Two versions. */
export const deletedWords = () => ({
  deleted: {
    title: "Deleted records",
    about: "Deleting takes a record out of every list and every sum. Nothing deleted is lost.",
    none: "Nothing was deleted in the last 30 days.",
    noneAtAll: "Nothing is deleted.",
    when: (when: string) => `deleted ${when}`,
    whenBy: (when: string, who: string) => `deleted ${when} by ${who}`,
    bringBack: "Bring back",
    bringBackWhat: (what: string) => `Bring back: ${what}`,
    back: (what: string) => `Brought back: ${what}`,
    older: (count: number) => `Show ${number(count)} older`,
    orphans: "Left without what they belong to",
    orphansAbout:
      "Deleting one thing never deletes another. These stayed, but what they belong to is deleted or not on this device.",
    orphanOf: (parent: string, count: number, gone: boolean) =>
      `${parent} is ${gone ? "not on this device" : "deleted"}; ${number(count)} ${plural(count, TONGUE, { one: "record", other: "records" })} of it stayed.`,
    missing: (kind: string) => `A ${kind}`,
    moreOrphans: (count: number) => `and ${number(count)} more`,
  },
  versions: {
    title: "Two versions",
    about:
      "Two devices changed the same record without knowing of each other. Both are kept until one is chosen; the newer one is shown until then.",
    none: "No record has two versions, and no mark has two answers.",
    records: "Which one stands?",
    version: (who: string | null, when: string) => (who === null ? when : `${who}, ${when}`),
    shownNow: "shown now",
    keep: "Keep this one",
    keepWhat: (what: string, which: string) => `Keep this one: ${what}, ${which}`,
    kept: (what: string) => `Settled: ${what}`,
    deletedHere: "deleted",
    livesHere: "not deleted",
    state: "Deleted or not",
    alike: "Both say the same.",
    answers: "Two answers for one mark",
    answersAbout: "Touch a line, then touch the rope to choose the answer that stands.",
    inDoubt: (of: {
      readonly marks: number;
      readonly thickness: number;
      readonly totals: boolean;
      readonly ends: boolean;
    }) =>
      [
        ...(of.marks === 0
          ? []
          : [
              `${number(of.marks)} ${plural(of.marks, TONGUE, { one: "mark", other: "marks" })} with two answers`,
            ]),
        ...(of.thickness === 0
          ? []
          : [
              `mulch thickness in doubt at ${number(of.thickness)} ${plural(of.thickness, TONGUE, { one: "mark", other: "marks" })}`,
            ]),
        ...(of.totals ? ["two sets of totals"] : []),
        ...(of.ends ? ["two ends of the line"] : []),
      ].join(", "),
  },
});
