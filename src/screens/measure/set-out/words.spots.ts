import type { TradeWords } from "../../parts/trade.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const english = (_trade: TradeWords) => ({
  question: "At a marked spot?",
  none: "not at a marked spot",
  oldGrass: "old-grass spot, in no strip",
  spot: "the same place every season",
  onStrip: (what: string, strip: string) => `${what}, on ${strip}`,
  here: (distance: string) => `about ${distance} from here: you may be at it`,
  away: (distance: string) => `about ${distance} from here`,
  notYet: "how far is not known yet",
  nowhere: "its position is not known",
});

/** Words of choosing a marked spot. */
export const SPOT_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
