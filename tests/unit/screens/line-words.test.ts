import { expect, it } from "vitest";
import { emptyTally } from "../../../src/record/line/reading.ts";
import { CATALOGUES, fillGaps, sentenceFor } from "../../../src/screens/catalogue.ts";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { missesIn } from "../../../src/screens/parts/line-counts.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const words = CATALOGUES.en(TRADE_WORDS["uk-ie"]);

it("says one mark and several marks as people do", () => {
  expect(words.line.read(0, 1)).toBe("0 of 1 mark");
  expect(words.line.read(1, 1)).toBe("1 of 1 mark");
  expect(words.line.read(1, 100)).toBe("1 of 100 marks");
  expect(words.line.totalsSum(1, 1)).toBe("1 of 1 mark");
  expect(words.line.totalsTooMany(2, 1)).toBe("That makes 2, but the rope has 1 mark.");
  expect(words.line.onTheRope(1)).toBe("That number is not on the rope: it has one mark.");
  expect(words.line.onTheRope(50)).toBe("That number is not on the rope: it has marks 1 to 50.");
  expect(words.setOut.ropeMarks(1, "30 cm")).toBe("1 mark");
  expect(words.setOut.ropeMarks(50, "30 cm")).toBe("50 marks, 30 cm apart");
});

it("picks the word for a number in the sentence of a problem too", () => {
  expect(fillGaps("{marks} {marks|mark|marks}, {other}", { marks: 1 })).toBe("1 mark, {other}");
  expect(fillGaps("{marks} {marks|mark|marks}", { marks: 2 })).toBe("2 marks");
  expect(fillGaps("{marks|mark|marks}", {})).toBe("{marks|mark|marks}");
  const said = (code: `${string}/${string}`, facts: Readonly<Record<string, number>>) =>
    sentenceFor(words, { code, facts }, SENTENCES.en(TRADE_WORDS["uk-ie"]));
  expect(said("record/line-full", { marks: 1 })).toBe("The rope has only 1 mark: the line is full.");
  expect(said("science/marks-not-read", { notRead: 1 })).toBe("1 mark was not read and is left out.");
  expect(said("science/marks-not-read", { notRead: 3 })).toBe("3 marks were not read and are left out.");
  expect(said("science/too-few-lines", { needs: 3, has: 1 })).toBe(
    "Too few lines to give a range: it needs 3, there is 1.",
  );
});

it("says no name of the inside when something cannot be kept", () => {
  const sentence = sentenceFor(words, {
    code: "record/not-valid",
    facts: { where: "body.name", what: "Too big" },
  });
  expect(sentence).not.toMatch(/body|name|Too big|[(){}]/);
});

it("counts as misses what was called and is not residue after all", () => {
  const tally = { ...emptyTally(), bare: 2, green: 1, residueFlat: 1, notRead: 5, unsettled: 1 };
  expect(missesIn(tally)).toBe(4);
});
