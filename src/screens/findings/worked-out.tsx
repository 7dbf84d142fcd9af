/** How a strip's ground cover was worked out: readings, formulas in words and symbols, constants, sources. */

import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { endedUnread } from "../../record/line/finished.ts";
import { KINDS_OF_A_MARK } from "../../science/ground-cover/line.ts";
import { SOURCES } from "../../science/sources.ts";
import { sentenceFor } from "../catalogue.ts";
import { DemoNote } from "../demo/demo-note.tsx";
import { nameWithFate } from "../fields/cover-model.ts";
import { moreSentence } from "../parts/cover-words.ts";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { writeDay, writeNumber, writePercent } from "../parts/numbers.ts";
import { Page } from "../parts/page.tsx";
import { rangeWords } from "../parts/range-words.ts";
import { href } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf, useWordsWith } from "../parts/words-of.ts";
import { Methods } from "./methods.tsx";
import { SENTENCES } from "./sentences.ts";
import { SPECIALIST } from "./specialist.ts";
import { FINDINGS_WORDS } from "./words.ts";
import { readWorkedOut, type WorkedOut } from "./worked-out-model.ts";
import "./findings.css";

export const WorkedOutScreen = (props: {
  readonly strip: RecordId<"strip">;
  readonly visit: RecordId<"visit"> | null;
}) => {
  const house = useHouse();
  const words = useWordsWith(FINDINGS_WORDS);
  const settings = house.settings.value;
  const { strip, visit } = props;
  const now = useLive(() => readWorkedOut(house, settings, strip, visit), [strip, visit, settings]);
  const back = href(
    now === undefined || now === null ? { at: "findings" } : { at: "visit", visit: now.visit },
  );
  return (
    <Page
      title={words.workedOut.title}
      under={now === undefined || now === null ? "\u00a0" : underWords(now)}
      back={back}
      area="findings"
    >
      {now === undefined ? null : now === null ? <h2>{words.workedOut.gone}</h2> : <Sheet now={now} />}
    </Page>
  );

  function underWords(found: WorkedOut): string {
    const { same, day } = found;
    return [
      fieldName(words, same?.field),
      nameWithFate(words, found.strip),
      writeDay(day, words.common.tongue),
    ].join(" · ");
  }
};

const Sheet = ({ now }: { readonly now: WorkedOut }) => {
  const { settings } = useHouse();
  const words = useWordsWith(FINDINGS_WORDS);
  const { cover } = now.cover;
  return (
    <>
      <DemoNote id={now.same?.field.id} />
      {cover.ok ? (
        <div class="figure">
          <span class="big">
            {writePercent(cover.value.value, TONGUE)}
            <small> {words.common.percent}</small>
          </span>
          <p>
            {words.workedOut.soFar}
            <br />
            <b>{`${rangeWords(words, cover.value)}, ${words.common.lines(cover.value.n)}`}</b>
          </p>
        </div>
      ) : (
        <h2>{words.workedOut.noLines}</h2>
      )}
      <p>{moreSentence(words, now.cover, settings.value)}</p>
      <Cautions now={now} />
      <Readings now={now} />
      <Kinds now={now} />
      <Methods now={now} />
      <Sources now={now} />
      <section class="ruled keys after-found">
        <LinkKey to={href({ at: "help-topic", topic: "line" })}>{words.common.howTo}</LinkKey>
        <LinkKey to={href({ at: "help-topic", topic: "methods" })}>{words.workedOut.toMethods}</LinkKey>
        <LinkKey to={href({ at: "visit", visit: now.visit })}>{words.workedOut.toVisit}</LinkKey>
      </section>
    </>
  );
};

const Cautions = ({ now }: { readonly now: WorkedOut }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  const sentences = useWordsOf(SENTENCES);
  if (!now.cover.cover.ok) return null;
  return (
    <section class="ruled">
      <h2>{words.workedOut.cautions}</h2>
      {now.cautions.length === 0 ? <p>{words.workedOut.noCautions}</p> : null}
      <ul class="caution-list">
        {now.cautions.map((caution) => (
          <li key={caution.code}>{sentenceFor(words, caution, sentences)}</li>
        ))}
      </ul>
    </section>
  );
};

/** Lines shown before "show all". */
const AT_ONCE = 40;

const Readings = ({ now }: { readonly now: WorkedOut }) => {
  const { settings } = useHouse();
  const words = useWordsWith(FINDINGS_WORDS);
  const [all, setAll] = useState(false);
  const lines = all ? now.lines : now.lines.slice(0, AT_ONCE);
  return (
    <section class="ruled">
      <h2>{words.workedOut.readings}</h2>
      <p>{words.workedOut.hitMeans(settings.value.stonesCount)}</p>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{words.workedOut.line}</th>
            <th scope="col">{words.workedOut.place}</th>
            <th scope="col" class="number">
              {words.workedOut.hits}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ line, index, hits, marks }) => (
            <tr key={line.id}>
              <th scope="row">
                <a class="line-link" href={href({ at: "line-sheet", line: line.id })}>
                  {words.line.title(index)}
                </a>
              </th>
              <td>
                {line.header.place === null ? words.workedOut.placeNotSaid : words.place[line.header.place]}
              </td>
              <td class="number">
                {words.workedOut.of(writeNumber(hits, TONGUE), writeNumber(marks, TONGUE))}
                {line.finished ? null : (
                  <small>
                    {endedUnread(line.reading) ? words.workedOut.nothingRead : words.workedOut.notFinished}
                  </small>
                )}
                {line.counts.notRead === 0 ? null : (
                  <small>{words.workedOut.notRead(line.counts.notRead)}</small>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {lines.length < now.lines.length ? (
        <Key onPress={() => setAll(true)}>{words.workedOut.showLines}</Key>
      ) : null}
    </section>
  );
};

const Kinds = ({ now }: { readonly now: WorkedOut }) => {
  const words = useWordsWith(FINDINGS_WORDS);
  if (!now.kinds.ok) return null;
  const kinds = now.kinds.value.percent;
  return (
    <section class="ruled">
      <h2>{words.workedOut.allKinds}</h2>
      <table class="figures">
        <tbody>
          {KINDS_OF_A_MARK.map((kind) => (
            <tr key={kind}>
              <th scope="row">{words.workedOut.kinds[kind]}</th>
              <td class="number">{`${writeNumber(kinds[kind], TONGUE)} ${words.common.percent}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

const Sources = ({ now }: { readonly now: WorkedOut }) => {
  const { settings } = useHouse();
  const words = useWordsWith(FINDINGS_WORDS);
  const { marks } = SPECIALIST[settings.value.language];
  if (now.sources.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.workedOut.sources}</h2>
      <ul class="source-list">
        {now.sources.map((id) => (
          <li key={id}>
            {SOURCES[id].citation}
            <small>
              {marks[SOURCES[id].mark]}
              {"address" in SOURCES[id] ? ` · ${SOURCES[id].address}` : ""}
            </small>
          </li>
        ))}
      </ul>
    </section>
  );
};
