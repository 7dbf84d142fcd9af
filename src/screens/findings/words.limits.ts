/** Words of the limits at which the cautions of a method begin. */
import type { CautionLimit, LookedAt } from "../../science/method.ts";
import { writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

const UNITS: Readonly<Record<string, string>> = { "1": "", Cel: " °C", d: " days", m: " m", mm: " mm" };

const english = (_trade: TradeWords) => ({
  begin: "Where its cautions begin",
  looksAt: {
    chance: "smallest chance that the order can reach",
    cover: "ground cover, as a share",
    "days-since-worked": "time since the soil was worked",
    "efforts-apart": "people × minutes, the larger over the smaller",
    head: "depth of the water",
    hits: "marks that hit",
    holes: "holes of one place",
    "metres-apart": "distance to the next hole",
    misses: "marks that missed",
    "other-spread-share": "spread beyond chance of the other side, over that of this one",
    plants: "plants in all frames",
    quadrats: "frames",
    "ring-depth": "depth of the ring in the ground",
    rings: "rings",
    "share-apart": "difference between the shares of a place",
    "sizes-apart": "difference in size, as a share",
    skewness: "skewness, to either side",
    "soil-temperature": "temperature of the soil",
    spread: "spread over the mean",
    "spread-beyond-chance": "spread beyond chance, over the mean",
    values: "values",
    worms: "worms on one side",
    years: "years",
  } satisfies Record<LookedAt, string>,
  said: {
    below: (value: string) => `below ${value}`,
    "up-to": (value: string) => `up to ${value}`,
    from: (value: string) => `from ${value} on`,
    above: (value: string) => `above ${value}`,
  } satisfies Record<CautionLimit["said"], (value: string) => string>,
  value: (value: number, unit: string) => `${writeNumber(value, TONGUE, 4)}${UNITS[unit] ?? ` ${unit}`}`,
});

export const LIMITS_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
