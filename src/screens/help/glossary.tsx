/** Words of the trade, and the same thing in the words of each region. */
import { TRADE_WORDS, TRADES, type TradeWords } from "../parts/trade.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { HELP_WORDS } from "./words.ts";

/** The words that are not the same everywhere; the language tag is no word. */
const DIFFERENT = (Object.keys(TRADE_WORDS["uk-ie"]) as (keyof TradeWords)[]).filter(
  (name) => name !== "tongue" && new Set(TRADES.map((trade) => TRADE_WORDS[trade][name])).size > 1,
);

export const Glossary = () => {
  const { words } = useWordsOf(HELP_WORDS);
  return (
    <>
      <p class="help-lead">{words.lead}</p>
      <dl class="help-terms">
        {words.terms.map(({ word, means, science }) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>
              {means}
              <small>
                {words.science} {science}
              </small>
            </dd>
          </div>
        ))}
      </dl>
      <section class="ruled">
        <h2>{words.elsewhere}</h2>
        <p>{words.elsewhereFor}</p>
        <table class="figures">
          <thead>
            <tr>
              {TRADES.map((trade) => (
                <th key={trade} scope="col">
                  {words.regions[trade]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {DIFFERENT.map((name) => (
              <tr key={name}>
                {TRADES.map((trade) => (
                  <td key={trade}>{TRADE_WORDS[trade][name]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
};
