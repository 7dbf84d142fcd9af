/** The methods behind a number: each in words, in symbols, and with the constants that it holds. */

import { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";
import { useHouse } from "../parts/house.ts";
import { writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { commonSymbolsIn } from "./common-symbols.ts";
import { SPECIALIST } from "./specialist.ts";
import { FINDINGS_WORDS } from "./words.ts";
import type { ConstantUsed, WorkedOut } from "./worked-out-model.ts";

/** A subscript that ends a symbol belongs to what stood in braces behind it. */
const shownSymbol = (symbol: string): string => symbol.replace(/_$/, "");

export const Methods = ({ now }: { readonly now: WorkedOut }) => {
  const { words: live, settings } = useHouse();
  const words = useWordsWith(FINDINGS_WORDS).workedOut;
  const { targetPercent, stonesCount } = settings.value;
  if (now.methods.length === 0) return null;
  const special = SPECIALIST[settings.value.language];
  const common = commonSymbolsIn(now.methods);
  return (
    <section class="ruled">
      <h2>{words.formulas}</h2>
      {now.methods.map((id) => (
        <Method key={id} id={id} constants={now.constants.get(id) ?? []} />
      ))}
      <dl class="symbols">
        {common.map((symbol) => (
          <Explained key={symbol} symbol={symbol} says={special.commonSymbols[symbol]} />
        ))}
      </dl>
      <h2>{words.yourSettings}</h2>
      <table class="figures">
        <tbody>
          <tr>
            <th scope="row">{words.stonesSetting}</th>
            <td class="number">{stonesCount ? words.yes : words.no}</td>
          </tr>
          {targetPercent === null ? null : (
            <tr>
              <th scope="row">{words.targetSetting}</th>
              <td class="number">{`${writeNumber(targetPercent, TONGUE, 1)} ${live.value.common.percent}`}</td>
            </tr>
          )}
        </tbody>
      </table>
    </section>
  );
};

const Explained = (props: { readonly symbol: string; readonly says: string }) => (
  <>
    <dt>{shownSymbol(props.symbol)}</dt>
    <dd>{props.says}</dd>
  </>
);

const Method = (props: { readonly id: MethodId; readonly constants: readonly ConstantUsed[] }) => {
  const { settings } = useHouse();
  const words = useWordsWith(FINDINGS_WORDS).workedOut;
  const special = SPECIALIST[settings.value.language];
  const { id, constants } = props;
  return (
    <>
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
      {constants.length === 0 ? null : (
        <table class="figures constants">
          <caption class="out-of-sight">{words.constants}</caption>
          <tbody>
            {constants.map((one) => (
              <tr key={one.symbol}>
                <th scope="row">{one.symbol}</th>
                <td class="number">
                  {writeNumber(one.value, TONGUE, 6)}
                  {one.unit === "1" ? "" : ` ${one.unit}`}
                </td>
                <td>
                  {special.marks[one.mark]}
                  {one.source === null ? null : <small>{one.source.citation}</small>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
};
