/** What is chosen before anybody has chosen, from the languages of the browser. */
import type { HabitsName } from "../../record/units.ts";
import type { Trade } from "../parts/trade.ts";

/** Trade words and units to begin with. */
export interface FirstChoice {
  readonly trade: Trade;
  readonly habits: HabitsName;
}

// Under the plain C locale some engines report a language that Intl refuses; the app must start anyway.
const localeOf = (tag: string): Intl.Locale | undefined => {
  try {
    return new Intl.Locale(tag);
  } catch {
    return undefined;
  }
};

/** The region that a browser's languages speak of: one that is written out before one that is only likely. */
const regionOf = (languages: readonly string[]): string | undefined => {
  const locales = languages.map(localeOf).filter((locale) => locale !== undefined);
  return locales.find(({ region }) => region !== undefined)?.region ?? locales[0]?.maximize().region;
};

const TRADE_OF: Readonly<Record<string, Trade>> = { US: "us-ca", CA: "us-ca", AU: "au-nz", NZ: "au-nz" };

/**
 * Units by region as in the Unicode CLDR supplemental data, `measurementSystem`: `US` for the United
 * States, `UK` for Great Britain, metric elsewhere (from memory; the two other regions that it lists
 * under `US` are left out).
 */
const HABITS_OF: Readonly<Record<string, HabitsName>> = { US: "us", GB: "uk-mixed" };

/**
 * The first choice.
 *
 * @param languages BCP 47 tags as `navigator.languages` gives them, the most wanted first; may be empty
 * or hold what is no tag
 * @example
 * firstChoice(["en-US"]) // => { trade: "us-ca", habits: "us" }
 */
export const firstChoice = (languages: readonly string[]): FirstChoice => {
  const region = regionOf(languages) ?? "";
  return { trade: TRADE_OF[region] ?? "uk-ie", habits: HABITS_OF[region] ?? "metric" };
};
