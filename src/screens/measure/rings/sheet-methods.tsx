/** The methods behind the numbers of a ring: in words, in symbols, with their constants and sources. */
import { METHODS, type MethodId } from "../../../science/methods.ts";
import { SOURCES, type SourceId } from "../../../science/sources.ts";
import { commonSymbolsIn } from "../../findings/common-symbols.ts";
import { SPECIALIST } from "../../findings/specialist.ts";
import { useHouse } from "../../parts/house.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { RING_WORDS } from "./words.ts";
import "../../findings/findings.css";

/** A subscript that ends a symbol belongs to what stood in braces behind it. */
const shown = (symbol: string): string => symbol.replace(/_$/, "");

const Symbols = (props: { readonly of: Readonly<Record<string, string>> }) => (
  <dl class="symbols">
    {Object.entries(props.of).map(([symbol, says]) => (
      <>
        <dt key={`${symbol} symbol`}>{shown(symbol)}</dt>
        <dd key={symbol}>{says}</dd>
      </>
    ))}
  </dl>
);

const Constants = ({ id }: { readonly id: MethodId }) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).sheet;
  const { marks } = SPECIALIST[settings.value.language];
  const { constants } = METHODS[id];
  if (constants.length === 0) return null;
  return (
    <table class="figures constants">
      <caption class="out-of-sight">{words.constants}</caption>
      <tbody>
        {constants.map(({ symbol, value, unit, source }) => (
          <tr key={symbol}>
            <th scope="row">{symbol}</th>
            <td class="number">
              {writeNumber(value, TONGUE, 6)}
              {unit === "1" ? "" : ` ${unit}`}
            </td>
            <td>
              {marks[SOURCES[source].mark]}
              <small>{SOURCES[source].citation}</small>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

export const SheetMethods = (props: {
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).sheet;
  const special = SPECIALIST[settings.value.language];
  if (props.methods.length === 0) return null;
  const common = Object.fromEntries(
    commonSymbolsIn(props.methods).map((symbol) => [symbol, special.commonSymbols[symbol]]),
  );
  return (
    <>
      <section class="ruled">
        <h2>{words.workedOut}</h2>
        {props.methods.map((id) => (
          <div key={id}>
            <h3>{special.methods[id].title}</h3>
            <p>{special.methods[id].says}</p>
            {METHODS[id].formulas.map((formula) => (
              <code class="formula" key={formula}>
                {formula}
              </code>
            ))}
            <Symbols of={special.symbols[id]} />
            <Constants id={id} />
          </div>
        ))}
        <Symbols of={common} />
      </section>
      <section class="ruled">
        <h2>{words.sources}</h2>
        <ul class="source-list">
          {props.sources.map((id) => (
            <li key={id}>
              {SOURCES[id].citation}
              <small>
                {special.marks[SOURCES[id].mark]}
                {"address" in SOURCES[id] ? ` · ${SOURCES[id].address}` : ""}
              </small>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
};
