/** Findings: what each test found last on each field, strip beside strip. */

import { useState } from "preact/hooks";
import type { Place } from "../../record/shapes.ts";
import { kindAimedAt } from "../../science/ground-cover/targets.ts";
import type { Catalogue } from "../catalogue.ts";
import { DemoNote } from "../demo/demo-note.tsx";
import { nameWithFate } from "../fields/cover-model.ts";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { writeDay, writeNumber } from "../parts/numbers.ts";
import { ownSentence } from "../parts/own-units.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf, useWordsWith } from "../parts/words-of.ts";
import { Drawing } from "./drawing.tsx";
import { drawnOf, mindsOf } from "./drawn-of.ts";
import { Minds } from "./minds.tsx";
import { type FieldFound, readFindings } from "./model.ts";
import type { StripFound, TestFound } from "./newest-test.ts";
import { SENTENCES } from "./sentences.ts";
import { sharesText } from "./side-by-side/say.ts";
import { SIDE_WORDS } from "./side-by-side/words.ts";
import { ValuesTable } from "./table.tsx";
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
      {now === undefined ? (
        <p aria-busy="true">{words.findings.working}</p>
      ) : now.found.length === 0 ? (
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
  const { field } = found.same;
  const isOneDay = new Set(found.tests.map(({ day }) => day)).size === 1;
  const compared = found.tests.map(({ strips }) => strips.filter((one) => one.found.ok));
  const longest = compared.reduce((most, one) => (one.length > most.length ? one : most), []);
  return (
    <section class="found">
      <h2>{fieldName(words, field)}</h2>
      <DemoNote id={field.id} />
      {found.tests.map((test) => (
        <Test key={test.measure} test={test} table={table} targetPercent={targetPercent} />
      ))}
      {found.tests.every(({ grass }) => grass === null) ? null : <p>{words.findings.yardstick}</p>}
      {longest.length < 2 ? null : <p>{besideWords(words, longest)}</p>}
      {found.besides.length === 0 ? null : <p>{words.findings.besides}</p>}
      <p class="aside">{words.findings.localFirst}</p>
      <div class="keys two">
        {found.besides.map(({ day, visit }) => (
          <LinkKey key={day} to={href({ at: "side-by-side", visit, strip: null })}>
            {isOneDay ? words.findings.beside : words.findings.besideOn(writeDay(day, words.common.tongue))}
          </LinkKey>
        ))}
        <Key onPress={() => setTable(!table)}>
          {table ? words.findings.showDrawing : words.findings.showTable}
        </Key>
        <LinkKey to={href({ at: "field", field: field.id })}>{words.findings.toField}</LinkKey>
      </div>
    </section>
  );
};

const headingOf = (
  { findings, common }: Catalogue & FindingsWords,
  { measure, per, minutes, day }: TestFound,
): string => {
  const on = writeDay(day, common.tongue);
  if (measure === "soak") return findings.onDay.soak(writeNumber(minutes, TONGUE), on);
  return findings.onDay[measure === "worms" ? per : "cover"](on);
};

const Test = (props: {
  readonly test: TestFound;
  readonly table: boolean;
  readonly targetPercent: number | null;
}) => {
  const words = useWordsWith(FINDINGS_WORDS);
  const { test, table } = props;
  const { measure } = test;
  const sentences = useWordsOf(SENTENCES);
  const { habits } = useHouse().settings.value;
  const drawn = drawnOf(words, test, (problem) => ownSentence(words, habits, problem, sentences));
  const target = measure === "cover" ? props.targetPercent : null;
  return (
    <>
      <h3>{headingOf(words, test)}</h3>
      {test.since === null ? null : (
        <p>
          {words.findings.since(
            writeDay(test.since.day, words.common.tongue),
            nameWithFate(words, test.since.strip),
          )}
        </p>
      )}
      <Unlike test={test} />
      {table ? (
        <ValuesTable measure={measure} rows={drawn} />
      ) : (
        <Drawing
          measure={measure}
          drawn={drawn}
          target={
            // Residue alone has no place on a scale of ground cover.
            target === null || kindAimedAt(target / 100) === "residue"
              ? null
              : { share: target / 100, words: words.findings.target(writeNumber(target, TONGUE, 1)) }
          }
        />
      )}
      <Minds minds={mindsOf(words, test)} />
      {target === null ? null : <Chances strips={test.strips} targetPercent={target} />}
      {measure === "soak" ? <p class="aside">{words.findings.ringsCompare}</p> : null}
    </>
  );
};

/** Said before any number: the tests lie at unlike places against the row. */
const Unlike = ({ test }: { readonly test: TestFound }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  const sideWords = useWordsOf(SIDE_WORDS);
  const { unlike, strips, measure } = test;
  if (unlike.length === 0) return null;
  const nameOf = (id: string): string => nameWithFate(words, strips.find((one) => one.id === id)?.strip);
  const placesOf = (places: readonly string[]): string =>
    places.length === 0
      ? sideWords.notSaid
      : sharesText(
          sideWords,
          places.map((one) => words.place[one as Place] ?? one),
        );
  return (
    <p class="unlike">
      {words.findings.unlike[measure]}
      {unlike.map(({ strip, places }) => (
        <small key={strip}>{words.findings.stripPlaces(nameOf(strip), placesOf(places))}</small>
      ))}
    </p>
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
  const what = words.findings.aimedAt[kindAimedAt(props.targetPercent / 100)];
  if (props.strips.every(({ chance }) => chance === null))
    return <p>{words.findings.noChances(what, percent)}</p>;
  return (
    <>
      {props.strips.map(({ id, strip, chance }) => {
        const name = nameWithFate(words, strip);
        return (
          <p key={id}>
            {chance === null
              ? words.findings.noChance(name, what, percent)
              : words.findings.chance(chance, what, percent, name)}
          </p>
        );
      })}
      <p class="aside">{words.findings.chanceSampling}</p>
    </>
  );
};
