/** How a number of worms was worked out: the methods in words and symbols, constants, sources. */

import { METHODS, type MethodId } from "../../../science/methods.ts";
import { SOURCES, type SourceId } from "../../../science/sources.ts";
import { commonSymbolsIn } from "../../findings/common-symbols.ts";
import { SPECIALIST } from "../../findings/specialist.ts";
import { FINDINGS_WORDS } from "../../findings/words.ts";
import { useHouse } from "../../parts/house.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import "../../findings/findings.css";

export const WorkedOutOf = (props: {
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}) => {
  const { settings } = useHouse();
  const special = SPECIALIST[settings.value.language];
  return (
    <>
      {props.methods.map((id) => (
        <section key={id}>
          <h3>{special.methods[id].title}</h3>
          <p>{special.methods[id].says}</p>
          {METHODS[id].formulas.map((formula) => (
            <code class="formula" key={formula}>
              {formula}
            </code>
          ))}
          <dl class="symbols">
            {Object.entries(special.symbols[id]).map(([symbol, says]) => (
              <Explained key={symbol} symbol={symbol} says={says} />
            ))}
          </dl>
          {METHODS[id].constants.length === 0 ? null : (
            <table class="figures constants">
              <tbody>
                {METHODS[id].constants.map((one) => (
                  <tr key={one.symbol}>
                    <th scope="row">{one.symbol}</th>
                    <td class="number">
                      {writeNumber(one.value, TONGUE, 6)}
                      {one.unit === "1" ? "" : ` ${one.unit}`}
                    </td>
                    <td>
                      {special.marks[SOURCES[one.source].mark]}
                      <small>{SOURCES[one.source].citation}</small>
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
        </section>
      ))}
      <dl class="symbols">
        {commonSymbolsIn(props.methods).map((symbol) => (
          <Explained key={symbol} symbol={symbol} says={special.commonSymbols[symbol]} />
        ))}
      </dl>
      <h3>{useWordsOf(FINDINGS_WORDS).workedOut.sources}</h3>
      <ul class="source-list">
        {props.sources.map((id) => (
          <li key={id}>
            {SOURCES[id].citation}
            <small>{special.marks[SOURCES[id].mark]}</small>
          </li>
        ))}
      </ul>
    </>
  );
};

/** A subscript that ends a symbol belongs to what stood in braces behind it. */
const Explained = (props: { readonly symbol: string; readonly says: string }) => (
  <>
    <dt>{props.symbol.replace(/_$/, "")}</dt>
    <dd>{props.says}</dd>
  </>
);
