/**
 * Words of the trade that differ between English-speaking regions (common practice, no source). The
 * standard or scientific term stands in "How this was worked out".
 */
export interface TradeWords {
  /** BCP 47 tag of the region: how it writes days and the time. */
  readonly tongue: string;
  readonly stone: string;
  readonly tramline: string;
  readonly swath: string;
  readonly headland: string;
  readonly drilled: string;
  readonly harvestYear: string;
  readonly maize: string;
  readonly soybean: string;
  readonly oilseedRape: string;
  /** The soil between a sandy loam and a silt. */
  readonly siltLoam: string;
  readonly stubble: string;
  readonly metre: string;
  readonly grey: string;
  readonly spade: string;
  readonly saddle: string;
  readonly levelledOff: string;
  readonly shelter: string;
}

/** Names of the word sets, by where they are at home. */
export const TRADES = ["uk-ie", "us-ca", "au-nz"] as const;
export type Trade = (typeof TRADES)[number];

export const TRADE_WORDS: Readonly<Record<Trade, TradeWords>> = {
  "uk-ie": {
    tongue: "en-GB",
    stone: "stone",
    tramline: "tramline",
    swath: "straw swath",
    headland: "headland",
    drilled: "drilled",
    harvestYear: "harvest year",
    maize: "maize",
    soybean: "soya",
    oilseedRape: "oilseed rape",
    siltLoam: "sandy silt loam or silt loam",
    stubble: "stubble",
    metre: "metre",
    grey: "grey",
    spade: "spade",
    saddle: "saddle",
    levelledOff: "levelled off",
    shelter: "hedge",
  },
  "us-ca": {
    tongue: "en-US",
    stone: "rock",
    tramline: "sprayer track",
    swath: "windrow",
    headland: "end rows",
    drilled: "planted",
    harvestYear: "crop year",
    maize: "corn",
    soybean: "soybeans",
    oilseedRape: "canola",
    siltLoam: "silt loam",
    stubble: "stubble",
    metre: "meter",
    grey: "gray",
    spade: "shovel",
    saddle: "band",
    levelledOff: "leveled off",
    shelter: "windbreak",
  },
  "au-nz": {
    tongue: "en-AU",
    stone: "stone",
    tramline: "tramline",
    swath: "windrow",
    headland: "headland",
    drilled: "sown",
    harvestYear: "harvest year",
    maize: "maize",
    soybean: "soybeans",
    oilseedRape: "canola",
    siltLoam: "silt loam",
    stubble: "stubble",
    metre: "metre",
    grey: "grey",
    spade: "spade",
    saddle: "saddle",
    levelledOff: "levelled off",
    shelter: "shelterbelt",
  },
};
