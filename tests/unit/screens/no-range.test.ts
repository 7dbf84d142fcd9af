import { expect, it } from "vitest";
import { english } from "../../../src/screens/catalogue.ts";
import { noRangeText } from "../../../src/screens/findings/no-range.ts";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { BESIDE_WORDS } from "../../../src/screens/findings/words.beside.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const trade = TRADE_WORDS["uk-ie"];
const said = (code: Parameters<typeof noRangeText>[3]["code"], facts = {}) =>
  noRangeText(english(trade), BESIDE_WORDS.en(trade), SENTENCES.en(trade), { code, facts });

it("says of too few lines, holes or rings that they are too few, and nothing else of them", () => {
  for (const of of ["lines", "holes", "rings"] as const)
    expect(said(`science/too-few-${of}`, { needs: 3, has: 2 })).toBe("too few to give a range");
});

it("says of rings that all read the same that there are enough of them, and no spread", () => {
  expect(said("science/rings-all-alike", { rings: 4 })).toBe("no range: all rings read the same");
});

it("says any other reason by its own sentence, without the stop, for the samples follow", () => {
  expect(said("science/no-number")).toBe("A number that this rests on cannot be used");
});
