import { expect, it } from "vitest";
import { HELP_WORDS, type HelpWords } from "../../../src/screens/help/words.ts";
import { areaOf, HELP_TOPICS, href, routeAt } from "../../../src/screens/parts/route.ts";
import { TRADE_WORDS, TRADES } from "../../../src/screens/parts/trade.ts";
import { CAUTION_WORDS } from "../../../src/screens/parts/words.cautions.ts";

const said = (words: HelpWords): string => JSON.stringify(words);
const words = HELP_WORDS.en(TRADE_WORDS["uk-ie"]);

it("has an address for every topic, and leads to the list from an address that names none", () => {
  for (const topic of HELP_TOPICS)
    expect(routeAt(href({ at: "help-topic", topic }))).toEqual({ at: "help-topic", topic });
  expect(href({ at: "help-topic", topic: "ring" })).toBe("#/help/ring");
  expect(routeAt("#/help")).toEqual({ at: "help" });
  expect(routeAt("#/help/no-such-page")).toEqual({ at: "help" });
  expect(areaOf({ at: "help" })).toBe("send");
});

it("has three pictures with words for each test, and rules", () => {
  for (const { pictures, rules } of Object.values(words.tests)) {
    expect(pictures).toHaveLength(3);
    expect(rules.length).toBeGreaterThan(2);
    for (const { says } of rules) expect(says.length).toBeGreaterThan(0);
  }
});

it("says the counting rules of the tests", () => {
  expect(said(words)).toContain("What the raindrop meets first counts");
  expect(said(words)).toContain("Heads only");
  expect(said(words)).toContain("Young worms have no saddle");
  expect(said(words)).toContain("the ground only glistens");
  expect(said(words)).toContain("A burrow in the ring counts");
  expect(said(words)).toContain("not for sizing drains");
});

it("says how to compare fairly, what a range means, how sure the three words are, and what a guess is for", () => {
  expect(words.compare.groups.map(({ title }) => title)).toEqual([
    "Like with like",
    "What a range means",
    "Clearly, probably, cannot tell yet",
    "What a guess is for",
  ]);
  expect(said(words)).toContain("the 95 % range of the difference leaves out no difference");
  expect(said(words)).toContain("That does not mean that they are the same");
});

it("speaks in the words of each region", () => {
  const american = said(HELP_WORDS.en(TRADE_WORDS["us-ca"]));
  for (const one of ["rock", "end rows", "sprayer track", "shovel", "band", "leveled off", "windbreak"])
    expect(american).toContain(one);
  for (const one of ["stone", "headland", "tramline", "spade ", "saddle", "levelled"])
    expect(american).not.toContain(one);
  expect(said(HELP_WORDS.en(TRADE_WORDS["au-nz"]))).toContain("Shelterbelt");
});

it.each(TRADES)("has every word once, with a scientific term (%s)", (trade) => {
  const { terms } = HELP_WORDS.en(TRADE_WORDS[trade]).words;
  expect(new Set(terms.map(({ word }) => word)).size).toBe(terms.length);
  for (const { means, science } of terms) expect(Math.min(means.length, science.length)).toBeGreaterThan(3);
});

it("warns of everything that the field warns of", () => {
  const cautions = CAUTION_WORDS.en(TRADE_WORDS["uk-ie"]);
  expect(Object.keys(cautions.names).toSorted()).toEqual([
    "alone",
    "clean-kit",
    "driving",
    "fences",
    "heat",
    "lifting",
    "lightning",
    "livestock",
    "mustard",
    "services",
    "soil-between-farms",
    "sprayed",
  ]);
  expect(words.cautions.figuresSay[0]).toMatch(/^Local codes, conservation rules and licensed advice/);
});
