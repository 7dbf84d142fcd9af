import type { HabitsName } from "../../record/units.ts";
import { TRADE_WORDS, type Trade } from "../parts/trade.ts";
import type { WordsOf } from "../parts/words-of.ts";

const example = (trade: Trade): string => `${TRADE_WORDS[trade].swath}, ${TRADE_WORDS[trade].drilled}`;

const english = () => ({
  stays: "Everything you write down stays on this device. Nothing is sent anywhere.",
  language: "Which English do you speak?",
  trades: {
    "uk-ie": "UK & Ireland",
    "us-ca": "US & Canada",
    "au-nz": "Australia & New Zealand",
  } satisfies Record<Trade, string>,
  tradeHints: {
    "uk-ie": example("uk-ie"),
    "us-ca": example("us-ca"),
    "au-nz": example("au-nz"),
  } satisfies Record<Trade, string>,
  units: "Which units?",
  habits: {
    metric: "Metric",
    us: "US customary",
    "uk-mixed": "Mixed",
  } satisfies Record<HabitsName, string>,
  habitHints: {
    metric: "cm, m, ha",
    us: "in, ft, ac",
    "uk-mixed": "cm, m, ac, and inches for the mulch",
  } satisfies Record<HabitsName, string>,
  who: "Who is measuring?",
  name: "Name",
  nameHint: "May stay empty. It is kept beside what you count.",
  now: "Measure now, name the field later",
  field: "Add a field",
  later: "All of this can be changed later under Settings.",
  iosTitle: "This is a browser tab",
  ios: "If you put Mulchmark on the home screen later, the records of this tab do not move there by themselves: make a copy under Send & back up here and bring it in there. Or put it on the home screen first, with Share, then Add to Home Screen. You can measure here either way.",
});

/** Words of the first run, and of the same questions under Settings. */
export const WELCOME_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
