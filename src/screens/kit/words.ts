import type { Kit } from "../../record/kinds/kit.ts";
import { plural, writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { commonWords, TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

const number = (value: number): string => writeNumber(value, TONGUE);

type Forms = { readonly one: string; readonly other: string };

const counted = (count: number, forms: Forms): string => `${number(count)} ${plural(count, TONGUE, forms)}`;

/** Sentences that every type of the kit has, around its own name and the tests that are made with it. */
const thing = (name: string, tests: Forms) => ({
  tests: (count: number) => (count === 0 ? "not used yet" : counted(count, tests)),
  called: (which: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)} ${which}`,
  correctTitle: (which: string) => `Correct ${name} ${which}`,
  nameTaken: `Another ${name} has this name. Two of one name are easily mixed up.`,
  touches: (count: number) =>
    count === 0
      ? `No ${tests.one} was made with this ${name} yet.`
      : `${counted(count, tests)} ${count === 1 ? "was" : "were"} made with this ${name}. What you correct here is corrected for ${count === 1 ? `that ${tests.one}` : "all of them"}.`,
  save: `Keep this ${name}`,
  saveCorrected: (count: number) =>
    count === 0 ? `Correct this ${name}` : `Correct this ${name} and ${counted(count, tests)}`,
  deleteTitle: (which: string) => `Delete ${name} ${which}?`,
  deleteHint: (count: number) =>
    `${count === 0 ? `No ${tests.one} was made with it.` : `${counted(count, tests)} made with it ${count === 1 ? "stays as it is" : "stay as they are"}.`} It can be brought back for 30 days under Deleted records.`,
});

interface Thing extends ReturnType<typeof thing> {
  readonly heading: string;
  readonly about: string;
  readonly none: string;
  readonly add: string;
  readonly addTitle: string;
  readonly name: string;
  readonly nameHint: string;
}

const line: Forms = { one: "line", other: "lines" };
const ringTest: Forms = { one: "ring test", other: "ring tests" };
const hole: Forms = { one: "hole", other: "holes" };

const things = ({ spade }: TradeWords): Readonly<Record<Kit["type"], Thing>> => ({
  rope: {
    ...thing("rope", line),
    correctTitle: (which: string) => `Correct ${which}`,
    deleteTitle: (which: string) => `Delete ${which}?`,
    heading: "Ropes and tapes",
    about: "Measured once, chosen by name at every line.",
    none: "No rope or tape yet.",
    add: "Add a rope",
    addTitle: "New rope or tape",
    name: "Name",
    nameHint: "Write the same name on the rope itself.",
  },
  ring: {
    ...thing("ring", ringTest),
    heading: "Rings",
    about: "Each has a letter. The size of the water in it comes from what you measure here.",
    none: "No ring yet.",
    add: "Add a ring",
    addTitle: "New ring",
    name: "Letter",
    nameHint: "Paint the same letter on the ring itself.",
  },
  "hole-template": {
    ...thing("hole template", hole),
    heading: "Hole templates",
    about: `A frame, or a ${spade} with marks, that gives every hole the same sides.`,
    none: "No hole template yet.",
    add: "Add a hole template",
    addTitle: "New hole template",
    name: "Name",
    nameHint: "Write the same name on the template itself.",
  },
  bottle: {
    ...thing("bottle", ringTest),
    heading: "Bottles",
    about: "For measured pours: a bottle with a mark, and what it holds when full to it.",
    none: "No bottle yet.",
    add: "Add a bottle",
    addTitle: "New bottle",
    name: "Name",
    nameHint: "Write the same name on the bottle itself.",
  },
  ruler: {
    ...thing("ruler", ringTest),
    heading: "Rulers",
    about: "How finely the water in a ring can be read depends on the ruler.",
    none: "No ruler yet.",
    add: "Add a ruler",
    addTitle: "New ruler",
    name: "Name",
    nameHint: "Write the same name on the ruler itself.",
  },
});

/** Words of the kit. */
const english = (trade: TradeWords) => {
  const { marks } = commonWords(trade).common;
  return {
    title: "Kit",
    ...things(trade),
    correct: "Correct",
    changed: (when: string, by: string | null) =>
      by === null ? `Last corrected ${when}` : `Last corrected ${when} by ${by}`,
    correctedSince: (which: string, when: string, by: string | null) =>
      `${which} was corrected after this test, ${when}${by === null ? "" : ` by ${by}`}. What is shown here goes by the corrected sizes.`,
    ropes: {
      size: (count: number, spacing: string) => `${marks(count)}, ${spacing} apart`,
      length: (length: string) => `${length} long`,
      marks: "How many marks?",
      marksUnit: "marks",
      marksRefused: "A rope has whole marks, 1 to 10,000.",
      spacing: (unit: string) => `From mark to mark, in ${unit}`,
      spacingHint: "Measure it on the rope as it lies, not as it was bought.",
      spacingRefused: "That is too short or too long for two marks on a rope.",
      usual: "Start from a usual size",
      usualMetric: "100 marks, 15 cm apart",
      usualFoot: "100 marks, 1 ft apart",
      usualSource: `Usual sizes: 15 cm: a tape of 15.2 ${trade.metre}s with 100 points, used in research (Journal of Soil and Water Conservation 76(5): 403, 2021). 1 ft: a tape of 100 ft with a mark at every foot (University of Missouri Extension G1570, 1993; University of Nebraska, faculty publication 254).`,
      fewerMarks: (count: number) =>
        `Marks after number ${number(count)} will leave the sums of those lines.`,
    },
    between: (least: string, most: string, unit: string) => `${least} to ${most} ${unit}`,
    rings: {
      measure: "Measure at the numbers in the drawing, from edge to edge of the metal and not of the paint.",
      first: (unit: string) => `1. Inside edge to inside edge, in ${unit}`,
      second: (unit: string) => `2. The same at right angles, in ${unit}`,
      secondHint: "Leave it empty if you cannot measure it now. The ring then counts as round.",
      acrossRefused: (sizes: string) => `A ring is ${sizes} across.`,
      outOfRound: (percent: string) =>
        `The two measures differ by ${percent} %: the ring is out of round. Both are kept and counted. If one was misread, measure again.`,
      heights: (unit: string) => `3. Height from the lower edge to the rim, in ${unit}`,
      heightsHint: "At up to four places round, because a dented rim reads wrong. One is better than none.",
      heightAt: (place: number) => `Place ${number(place)}`,
      heightRefused: (sizes: string) => `A ring is ${sizes} high.`,
      outside: (unit: string) => `4. Outside edge to outside edge, in ${unit}`,
      outsideHint: "Only for the inner ring of a double ring: water stands around it.",
      outsideRefused: "The outside of a ring is wider than its inside.",
      inside: (across: string) => `${across} inside`,
      insideBoth: (first: string, second: string) => `${first} by ${second} inside`,
      high: (height: string) => `${height} high`,
      outsideSize: (across: string) => `${across} outside`,
      round: "not round",
    },
    templates: {
      first: (unit: string) => `One side, in ${unit}`,
      second: (unit: string) => `The other side, in ${unit}`,
      secondHint: "Leave it empty if both are alike.",
      refused: (sizes: string) => `A side is ${sizes} long.`,
      size: (first: string, second: string) => `${first} by ${second}`,
    },
    bottles: {
      volume: (unit: string) => `It holds, full to its mark, in ${unit}`,
      volumeHint: "Weigh it full and empty if you can: 1 L of water is 1 kg, 1 fl oz is about 1.04 oz.",
      refused: (sizes: string) => `A bottle holds ${sizes}.`,
      size: (volume: string) => `holds ${volume}`,
    },
    rulers: {
      step: (unit: string) => `The smallest step that you can read, in ${unit}`,
      stepHint: "From one line on it to the next.",
      refused: (sizes: string) => `A step is ${sizes}.`,
      usual: "Start from a usual step",
      usualSteps: { mm1: "1 mm", mm5: "5 mm", in16: "1/16 in", in8: "1/8 in" },
      size: (step: string) => `reads steps of ${step}`,
    },
  };
};

/** What every language has to say about the kit. */
export type KitWords = ReturnType<typeof english>;

/** The words of the kit, by language. */
export const KIT_WORDS: WordsOf<KitWords> = { en: english };
