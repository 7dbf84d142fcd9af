/** Words of the trade that only help says, by region (common practice, no source). */
import type { TradeWords } from "../parts/trade.ts";

export interface RegionWords {
  readonly spade: string;
  readonly saddle: string;
  readonly levelledOff: string;
  readonly shelter: string;
}

const UK: RegionWords = {
  spade: "spade",
  saddle: "saddle",
  levelledOff: "levelled off",
  shelter: "hedge",
};

const BY_TONGUE: Readonly<Record<string, RegionWords>> = {
  "en-GB": UK,
  "en-US": {
    spade: "shovel",
    saddle: "band",
    levelledOff: "leveled off",
    shelter: "windbreak",
  },
  "en-AU": { ...UK, shelter: "shelterbelt" },
};

/** The words of the region that these trade words belong to. */
export const regionWords = (trade: TradeWords): RegionWords => BY_TONGUE[trade.tongue] ?? UK;
