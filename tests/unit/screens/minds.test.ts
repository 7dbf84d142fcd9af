import { expect, it } from "vitest";
import { HABITS } from "../../../src/record/units.ts";
import { english } from "../../../src/screens/catalogue.ts";
import { type Mind, mindsTexts } from "../../../src/screens/findings/minds.tsx";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { BESIDE_WORDS } from "../../../src/screens/findings/words.beside.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const trade = TRADE_WORDS["uk-ie"];
const said = (...minds: readonly Mind[]) =>
  mindsTexts(
    english(trade),
    HABITS.metric,
    { beside: BESIDE_WORDS.en(trade), sentences: SENTENCES.en(trade) },
    minds,
  );
const burrows = (of: string | null, rings: number): Mind => ({
  of,
  caution: { code: "science/rings-with-burrow", facts: { rings } },
});

it("says once what holds for several strips, and apart what differs in a number", () => {
  expect(said(burrows("straw left", 1), burrows("carried off", 1), burrows("sown", 2))).toEqual([
    "Straw left, carried off: 1 ring has a burrow. It counts.",
    "Sown: 2 rings have a burrow. It counts.",
  ]);
});

it("names nobody where it stands right beside the number, and says nothing where there is nothing to say", () => {
  expect(said(burrows(null, 2))).toEqual(["2 rings have a burrow. It counts."]);
  expect(said()).toEqual([]);
});
