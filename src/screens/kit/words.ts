import { writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { commonWords, TONGUE } from "../parts/words.common.ts";

const number = (value: number): string => writeNumber(value, TONGUE);

/** Words of the kit: ropes and tapes. */
export const kitWords = (trade: TradeWords) => {
  const { lines, marks } = commonWords(trade).common;
  return {
    kit: {
      title: "Kit",
      ropes: "Ropes and tapes",
      about: "Measured once, chosen by name at every line.",
      none: "No rope or tape yet.",
      size: (count: number, spacing: string) => `${marks(count)}, ${spacing} apart`,
      length: (length: string) => `${length} long`,
      add: "Add a rope",
      addTitle: "New rope or tape",
      correct: "Correct",
      correctTitle: (name: string) => `Correct ${name}`,
      name: "Name",
      nameHint: "Write the same name on the rope itself.",
      nameTaken: "Another rope has this name. Two of one name are easily mixed up.",
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
      touches: (count: number) =>
        count === 0
          ? "No line was made with this rope yet."
          : `${lines(count)} ${count === 1 ? "was" : "were"} made with this rope. What you correct here is corrected for ${count === 1 ? "that line" : "all of them"}.`,
      fewerMarks: (count: number) =>
        `Marks after number ${number(count)} will leave the sums of those lines.`,
      save: "Keep this rope",
      saveCorrected: (count: number) =>
        count === 0 ? "Correct this rope" : `Correct this rope and ${lines(count)}`,
      deleteTitle: (name: string) => `Delete ${name}?`,
      deleteHint: (count: number) =>
        `${count === 0 ? "No line was made with it." : `${lines(count)} made with it ${count === 1 ? "stays as it is" : "stay as they are"}.`} It can be brought back for 30 days under Deleted records.`,
    },
  };
};
