import type { HelpTopic } from "../parts/route.ts";
import type { TradeWords } from "../parts/trade.ts";
import type { WordsOf } from "../parts/words-of.ts";
import { compareHelp } from "./words.compare.ts";
import { glossary } from "./words.glossary.ts";
import { holeHelp } from "./words.hole.ts";
import { lineHelp } from "./words.line.ts";
import { phoneHelp } from "./words.phone.ts";
import { ringHelp } from "./words.ring.ts";

const english = (trade: TradeWords) => ({
  title: "Help",
  under: "It all lies on this device and opens without signal.",
  topics: {
    line: { title: "Line", hint: "ground cover: what the raindrop meets first" },
    hole: { title: "Hole", hint: "worms: heads only, then young and grown" },
    ring: { title: "Ring", hint: "soak-in: pour, read, until it only glistens" },
    compare: { title: "How to compare fairly", hint: "ranges, clearly or probably different, guesses" },
    cautions: { title: "Cautions", hint: "before you dig, drive, lift or walk in" },
    keeping: { title: "What a phone may delete", hint: "the home screen, and why copies matter" },
    locked: { title: "What a locked phone cannot do", hint: "ringing, and what goes on all the same" },
    words: { title: "Words of the trade", hint: "and their scientific terms" },
    methods: { title: "Methods and sources", hint: "every formula, number and text" },
  } satisfies Record<HelpTopic, { readonly title: string; readonly hint: string }>,
  toBefore: "Back to where you were",
  cautions: {
    place: "On this ground",
    person: "Each season, for everybody",
    figures: "What the figures are for",
    figuresSay: [
      "Local codes, conservation rules and licensed advice come before anything that stands here.",
      "Ring figures are for comparing places, not for sizing drains, ponds, septic fields or structures.",
      "Ground cover speaks of the strip that was walked, on the day it was walked.",
      "Worm counts depend on season, soil and people. Guides disagree; the farm’s own old-grass spot says more.",
      "One strip against one strip compares two places: ground and treatment cannot be told apart.",
    ],
  },
  words: {
    lead: "The words on the screens and under Methods and sources, what they mean, and what a scientist would call them.",
    science: "In science:",
    elsewhere: "What others say",
    elsewhereFor: "Settings has three sets of trade words. The same thing in each:",
    regions: {
      "uk-ie": "UK, Ireland",
      "us-ca": "US, Canada",
      "au-nz": "Australia, New Zealand",
    },
    terms: glossary(trade),
  },
  tests: { line: lineHelp(trade), hole: holeHelp(trade), ring: ringHelp(trade) },
  compare: compareHelp(trade),
  ...phoneHelp(),
});

/** Words of help, without those of "Methods and sources", which come with their page. */
export type HelpWords = ReturnType<typeof english>;
export const HELP_WORDS: WordsOf<HelpWords> = { en: english };
