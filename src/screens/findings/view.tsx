/** Findings: what the newest visit of each field says, strip beside strip. */

import { useState } from "preact/hooks";
import type { Catalogue } from "../catalogue.ts";
import { DemoNote } from "../demo/demo-note.tsx";
import { nameWithFate } from "../fields/cover-model.ts";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { writeDay, writeNumber, writePercent } from "../parts/numbers.ts";
import { grassNames } from "../parts/old-grass.ts";
import { Page } from "../parts/page.tsx";
import { rangeWords } from "../parts/range-words.ts";
import { href } from "../parts/route.ts";
import { toVisit } from "../parts/to-visit.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { Drawing, type Shown } from "./drawing.tsx";
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
  const shown = shownOf(words, found);
  const measured = found.strips.filter(({ on }) => on.cover.ok);
  const places = found.unlike.map((place) =>
    place === null ? words.findings.placeNotSaid : words.place[place],
  );
  return (
    <section class="found">
      <h2>{fieldName(words, found.same.field)}</h2>
      <DemoNote id={found.same.field.id} />
      <p>{words.findings.onDay(writeDay(found.day, words.common.tongue))}</p>
      {places.length === 0 ? null : <p class="unlike">{words.findings.unlike(places.join(", "))}</p>}
      {table ? (
        <Table shown={shown} />
      ) : (
        <Drawing shown={shown} target={targetPercent === null ? null : targetPercent / 100} />
      )}
      {found.grass === null ? null : <p>{words.findings.yardstick}</p>}
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

const shownOf = (words: Catalogue & FindingsWords, { strips, grass, day }: FieldFound): readonly Shown[] => [
  ...strips.map(({ on, strip }) => ({
    key: on.strip,
    name: nameWithFate(words, strip),
    to: href({ at: "worked-out", strip: on.strip, visit: on.visits[0] ?? null }),
    cover: on.cover,
  })),
  ...(grass === null
    ? []
    : [
        {
          key: "old-grass",
          name: words.findings.grass(
            grassNames(grass.spots),
            grass.on.day === day ? "" : writeDay(grass.on.day, words.common.tongue),
          ),
          to: toVisit(grass.on.visits),
          cover: grass.on.cover,
        },
      ]),
];

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

const Table = ({ shown }: { readonly shown: readonly Shown[] }) => {
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
        {shown.map(({ key, name, cover }) => (
          <tr key={key}>
            <th scope="row">{name}</th>
            <td class="number">
              {cover.ok ? `${writePercent(cover.value.value, TONGUE)} ${words.common.percent}` : "\u2013"}
            </td>
            <td class="number range-cell">
              {cover.ok ? rangeWords(words, cover.value) : words.findings.unfinished}
              {cover.ok ? <small>{words.common.lines(cover.value.n)}</small> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
