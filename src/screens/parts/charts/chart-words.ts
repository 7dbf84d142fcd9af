/** Words of charts. */
import { plural, writeNumber } from "../numbers.ts";
import type { TradeWords } from "../trade.ts";
import { TONGUE } from "../words.common.ts";
import type { WordsOf } from "../words-of.ts";

const english = (trade: TradeWords) => ({
  year: trade.harvestYear,
  yearTitle: `${trade.harvestYear.charAt(0).toUpperCase()}${trade.harvestYear.slice(1)}`,
  strip: "Strip",
  range: "Range, samples",
  fromPaper: "from paper",
  asTable: "Show as table",
  touch: "Touch a point to read it.",
  paperKey: "Hollow: an earlier result from paper, without raw readings. No line joins it.",
  arrowKey: "A bar that ends in an arrow goes on beyond the chart; the table has its end.",
  rangeKey: "Bars: the range. A point without a bar has too few samples to give one.",
  says: (title: string, strips: number, first: number, last: number) =>
    `${title}, ${first === last ? String(first) : `${first} to ${last}`}, ${writeNumber(strips, TONGUE)} ${plural(
      strips,
      TONGUE,
      { one: "strip", other: "strips" },
    )}. The same values stand in the table below.`,
  others: (strips: number) =>
    `Show the other ${writeNumber(strips, TONGUE)} ${plural(strips, TONGUE, { one: "strip", other: "strips" })}`,
});

export type ChartWords = ReturnType<typeof english>;
export const CHART_WORDS: WordsOf<ChartWords> = { en: english };
