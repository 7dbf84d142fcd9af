import { describe, expect, it } from "vitest";
import { HABITS } from "../../../src/record/units.ts";
import { english } from "../../../src/screens/catalogue.ts";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { resultOf } from "../../../src/screens/measure/rings/result.ts";
import { headlineCells, saidBeside, standsStill } from "../../../src/screens/measure/rings/result-words.ts";
import { RING_WORDS } from "../../../src/screens/measure/rings/words.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { ringWith } from "./ring-samples.ts";

const catalogue = english(TRADE_WORDS["uk-ie"]);
const sentences = SENTENCES.en(TRADE_WORDS["uk-ie"]);
const words = RING_WORDS.en(TRADE_WORDS["uk-ie"]);

const levels = (each: readonly (readonly [atMin: number, mm: number])[]) =>
  each.map(([atMin, mm]) => ({ type: "level" as const, atMin, mm }));

const said = (ring: ReturnType<typeof ringWith>): string =>
  saidBeside(catalogue, words, ring, resultOf(ring), HABITS.metric, sentences).join(" ");

describe("the headline", () => {
  it("is the depth after 30, 60 and 180 minutes as far as it was read, and the last half hour", () => {
    // 30 mm in the first half hour, 20 mm in the second: 40 mm/h.
    const ring = ringWith([
      { type: "start", atMin: 0 },
      ...levels([
        [0, 100],
        [30, 70],
        [60, 50],
      ]),
    ]);
    expect(headlineCells(words, resultOf(ring), 40, HABITS.metric)).toEqual([
      { of: "30 min", value: "30 mm", guessed: null },
      { of: "60 min", value: "50 mm", guessed: "guessed 40 mm" },
      { of: "180 min", value: null, guessed: null },
      { of: "last ½ h", value: "40 mm/h", guessed: null },
    ]);
  });

  it("never reaches beyond the last reading, and keeps the guess meanwhile", () => {
    const ring = ringWith([
      { type: "start", atMin: 0 },
      ...levels([
        [0, 100],
        [29, 70],
      ]),
    ]);
    const cells = headlineCells(words, resultOf(ring), 40, HABITS.metric);
    expect(cells.map(({ value }) => value)).toEqual([null, null, null, null]);
    expect(cells[1]?.guessed).toBe("guessed 40 mm");
  });
});

describe("levelling off", () => {
  it("says how long this ruler would need, when it cannot tell", () => {
    // 10 mm in 10 minutes is 60 mm/h; 20 steps of 1 mm take 20 minutes.
    const ring = ringWith([
      { type: "start", atMin: 0 },
      ...levels([
        [0, 100],
        [10, 90],
        [20, 80],
        [30, 70],
      ]),
    ]);
    expect(said(ring)).toBe(
      "About 60 mm/h; cannot tell with this ruler whether it has levelled off. It takes three intervals of 20 min, or a top-up from a measured bottle.",
    );
  });

  it("asks for no interval that would not fit into a day", () => {
    // 1 mm an hour: 20 mm take 20 hours, three of them 60.
    const ring = ringWith([
      { type: "start", atMin: 0 },
      ...levels([
        [0, 100],
        [120, 98],
        [240, 96],
        [360, 94],
      ]),
    ]);
    expect(said(ring)).not.toContain("three intervals");
  });
});

describe("a depth that stands still", () => {
  it("says why, when nobody saw what soaked in during a refill", () => {
    const ring = ringWith([
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 100 },
      { type: "level", atMin: 10, mm: 80 },
      { type: "level", atMin: 20, mm: 100, afterRefill: true },
      { type: "level", atMin: 30, mm: 85 },
    ]);
    expect(standsStill(words, resultOf(ring))).toBe(
      "Depth stands still: nobody saw what soaked in during the refill.",
    );
    expect(said(ring)).toContain("Depth stands still");
  });

  it("leaves a leak to its own words", () => {
    const ring = ringWith([
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 100 },
      { type: "level", atMin: 10, mm: 80 },
      { type: "happened", atMin: 11, what: "leaked" },
      { type: "level", atMin: 20, mm: 10 },
    ]);
    expect(standsStill(words, resultOf(ring))).toBe(null);
    expect(said(ring)).toContain("It leaked: nothing after that counts.");
  });
});

it("speaks in the words of the region", () => {
  const american = RING_WORDS.en(TRADE_WORDS["us-ca"]).result;
  expect(american.levelledOff("2 in/h")).toBe("Leveled off at 2 in/h.");
  expect(american.short["levelled-off"]).toBe("leveled off");
  expect(words.result.levelledOff("2 in/h")).toBe("Levelled off at 2 in/h.");
});
