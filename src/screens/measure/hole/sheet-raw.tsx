/** Everything that was touched at a hole, on its sheet. */
import { useState } from "preact/hooks";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { writeClock } from "../../parts/numbers.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { entryWords } from "./say.ts";
import type { HoleSheet } from "./sheet-model.ts";
import { HOLE_WORDS } from "./words.ts";
import "./hole.css";

/** Rows shown before "show all". */
const AT_ONCE = 40;

/** Everything that was touched; what was corrected or undone is struck through and says so. */
export const Raw = ({ sheet }: { readonly sheet: HoleSheet }) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const [all, setAll] = useState(false);
  const { tongue } = house.words.value.common;
  const { habits } = house.settings.value;
  const rows = all ? sheet.raw : sheet.raw.slice(0, AT_ONCE);
  if (rows.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.sheets.raw}</h2>
      <p class="aside">{words.sheets.rawHint}</p>
      <table class="figures raw-rows">
        <tbody>
          {rows.map(({ entry, times, fate }) => {
            const did = words.sheets.taken(times, entryWords(words, habits, entry));
            return (
              <tr key={entry.id}>
                <td>{writeClock(entry.lookedAtMs, tongue)}</td>
                <td>
                  {fate === "counts" ? did : <del>{did}</del>}
                  {fate === "counts" ? null : (
                    <small>
                      {" "}
                      {fate === "replaced" ? words.sheets.correctedMark : words.sheets.undoneMark}
                    </small>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {rows.length < sheet.raw.length ? <Key onPress={() => setAll(true)}>{words.sheets.showAll}</Key> : null}
    </section>
  );
};
