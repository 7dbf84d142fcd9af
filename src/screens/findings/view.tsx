/** Findings: what the newest visit of each field says, strip beside strip. */

import { useState } from "preact/hooks";
import { nameWithFate } from "../fields/cover-model.ts";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { writeDay, writeNumber, writePercent } from "../parts/numbers.ts";
import { Page } from "../parts/page.tsx";
import { rangeWords } from "../parts/range-words.ts";
import { href } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { Drawing } from "./drawing.tsx";
import { type FieldFound, readFindings, type StripFound } from "./model.ts";
import { FINDINGS_WORDS, type FindingsWords } from "./words.ts";
import "./findings.css";

/** Fields shown before "show more". */
const AT_ONCE = 8;

export const FindingsScreen = () => {
  const house = useHouse();
  const words = useWordsWith(FINDINGS_WORDS);
  const settings = house.settings.value;
  const [most, setMost] = useState(AT_ONCE);
  const latest = useLive(() => readFindings(house, settings, most), [settings, most]);
  const now = useLastShown(latest);
  return (
    <Page title={words.findings.title} area="findings">
      {now === undefined ? null : now.found.length === 0 ? (
        <h2>{words.findings.none}</h2>
      ) : (
        <>
          {now.found.map((one) => (
            <Found key={one.same.field.id} found={one} targetPercent={settings.targetPercent} />
          ))}
          {now.more ? (
            <div class="after-found">
              <Key onPress={() => setMost(most + AT_ONCE)}>{words.findings.more}</Key>
            </div>
          ) : null}
        </>
      )}
    </Page>
  );
};

const Found = (props: { readonly found: FieldFound; readonly targetPercent: number | null }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  const { found, targetPercent } = props;
  const [table, setTable] = useState(false);
  const measured = found.strips.filter(({ on }) => on.cover.ok);
  const places = found.unlike.map((place) =>
    place === null ? words.findings.placeNotSaid : words.place[place],
  );
  return (
    <section class="found">
      <h2>{fieldName(words, found.same.field)}</h2>
      <p>{words.findings.onDay(writeDay(found.day, words.common.tongue))}</p>
      {places.length === 0 ? null : <p class="unlike">{words.findings.unlike(places.join(", "))}</p>}
      {table ? (
        <Table strips={found.strips} />
      ) : (
        <Drawing strips={found.strips} target={targetPercent === null ? null : targetPercent / 100} />
      )}
      {measured.length < 2 ? null : <p>{besideWords(words, measured)}</p>}
      {targetPercent === null ? null : <Chances strips={measured} targetPercent={targetPercent} />}
      <div class="keys two">
        <Key onPress={() => setTable(!table)}>
          {table ? words.findings.showDrawing : words.findings.showTable}
        </Key>
        <LinkKey to={href({ at: "field", field: found.same.field.id })}>{words.findings.toField}</LinkKey>
      </div>
    </section>
  );
};

/** What may be said of strips that lie side by side. */
const besideWords = (words: FindingsWords, strips: readonly StripFound[]): string => {
  const reps = new Set(strips.map(({ strip }) => strip?.body.rep ?? null));
  return reps.size > 1 && !reps.has(null) ? words.findings.reps : words.findings.twoPlaces;
};

const Chances = (props: { readonly strips: readonly StripFound[]; readonly targetPercent: number }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  const percent = writeNumber(props.targetPercent, TONGUE, 1);
  const able = props.strips.some(({ on }) => on.chance !== null);
  return (
    <>
      {props.strips.map(({ on, strip }) => {
        const name = nameWithFate(words, strip);
        return (
          <p key={on.strip}>
            {on.chance !== null
              ? words.findings.chance(on.chance, percent, name)
              : words.findings.noChance(name, percent)}
          </p>
        );
      })}
      <p class="aside">
        {able ? `${words.findings.chanceSampling} ${words.findings.localFirst}` : words.findings.localFirst}
      </p>
    </>
  );
};

const Table = ({ strips }: { readonly strips: readonly StripFound[] }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  return (
    <table class="figures strips-table">
      <thead>
        <tr>
          <th scope="col">{words.findings.strip}</th>
          <th scope="col" class="number">
            {words.findings.value}
          </th>
          <th scope="col" class="number">
            {words.findings.rangeAndLines}
          </th>
        </tr>
      </thead>
      <tbody>
        {strips.map(({ on, strip }) => (
          <tr key={on.strip}>
            <th scope="row">{nameWithFate(words, strip)}</th>
            <td class="number">
              {on.cover.ok
                ? `${writePercent(on.cover.value.value, TONGUE)} ${words.common.percent}`
                : "\u2013"}
            </td>
            <td class="number range-cell">
              {on.cover.ok ? rangeWords(words, on.cover.value) : words.findings.unfinished}
              {on.cover.ok ? <small>{words.common.lines(on.cover.value.n)}</small> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
