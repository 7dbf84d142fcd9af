/** The methods behind a number, wherever it stands: in words, in symbols, with their constants and sources. */
import { useState } from "preact/hooks";
import { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";
import { SOURCES, type SourceId } from "../../science/sources.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { commonSymbolsIn } from "./common-symbols.ts";
import { Limits } from "./limits.tsx";
import { SPECIALIST } from "./specialist.ts";
import { FINDINGS_WORDS } from "./words.ts";
import "./findings.css";

/** What an answer of science says of how it was worked out. */
export interface WorkedBy {
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

/** The methods and sources of several answers, each once. */
export const workedByAll = (answers: readonly WorkedBy[]): WorkedBy => ({
  methods: [...new Set(answers.flatMap(({ methods }) => methods))],
  sources: [...new Set(answers.flatMap(({ sources }) => sources))],
});

/** Methods and sources; it stands under a heading of the second level. */
export const MethodList = ({ methods, sources }: WorkedBy) => {
  const { settings } = useHouse();
  const words = useWordsOf(FINDINGS_WORDS).workedOut;
  const special = SPECIALIST[settings.value.language];
  const common = commonSymbolsIn(methods);
  return (
    <>
      {methods.map((id) => (
        <div key={id}>
          <h3>{special.methods[id].title}</h3>
          <p>{special.methods[id].says}</p>
          {METHODS[id].formulas.map((formula) => (
            <code class="formula" key={formula}>
              {formula}
            </code>
          ))}
          <Symbols says={Object.entries(special.symbols[id])} />
          <Constants id={id} />
          <Limits id={id} />
        </div>
      ))}
      <Symbols says={common.map((symbol) => [symbol, special.commonSymbols[symbol]])} />
      {sources.length === 0 ? null : <h3>{words.sources}</h3>}
      <ul class="source-list">
        {sources.map((id) => (
          <li key={id}>
            {SOURCES[id].citation}
            <small>
              {special.marks[SOURCES[id].mark]}
              {"address" in SOURCES[id] ? ` · ${SOURCES[id].address}` : ""}
            </small>
          </li>
        ))}
      </ul>
    </>
  );
};

const Symbols = (props: { readonly says: readonly (readonly [string, string])[] }) =>
  props.says.length === 0 ? null : (
    <dl class="symbols">
      {props.says.map(([symbol, says]) => (
        <div class="symbol" key={symbol}>
          {/* A subscript that ends a symbol belongs to what stood in braces behind it. */}
          <dt>{symbol.replace(/_$/, "")}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );

const Constants = ({ id }: { readonly id: MethodId }) => {
  const { settings } = useHouse();
  const words = useWordsOf(FINDINGS_WORDS).workedOut;
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

/** A key that opens "How this was worked out" right under its number, and closes it again. */
export const WorkedOutKey = (props: WorkedBy & { readonly of: string }) => {
  const words = useWordsOf(FINDINGS_WORDS).workedOut;
  const [open, setOpen] = useState(false);
  return (
    <div class="question-number">
      <Key onPress={() => setOpen(!open)}>
        {words.title}
        <span class="out-of-sight">{`: ${props.of}`}</span>
      </Key>
      {open ? <MethodList methods={props.methods} sources={props.sources} /> : null}
    </div>
  );
};
