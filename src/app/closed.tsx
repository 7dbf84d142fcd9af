import type { Problem } from "../record/result.ts";
import { CATALOGUES, fillGaps } from "../screens/catalogue.ts";
import { TRADE_WORDS } from "../screens/parts/trade.ts";

/** What stands there when the records cannot be opened; nothing was touched. */
export const Closed = ({ problem }: { readonly problem: Problem }) => {
  // Settings cannot be read either, so the words of the first region stand here.
  const words = CATALOGUES.en(TRADE_WORDS["uk-ie"]).closed;
  const sentence = problem.code.endsWith("/from-the-future") ? words.future : words.other;
  return (
    <main class="leaf">
      <h1 class="question">{words.title}</h1>
      <p>{fillGaps(sentence, problem.facts)}</p>
      <p>
        <small>{problem.code}</small>
      </p>
      <button type="button" class="key solid" onClick={() => location.reload()}>
        {words.load}
      </button>
    </main>
  );
};
