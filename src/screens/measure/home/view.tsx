/** The start of Measure: go on where a line was left, or say which field one stands in. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { DemoTagPlace } from "../../demo/demo-place.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { groundName } from "../../parts/ground-name.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { progressOf } from "../../parts/line-progress.ts";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { dayOf, writeClock, writeDay } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { today, todaysVisit, useToday } from "../../parts/visits.ts";
import {
  type FieldToChoose,
  type HomeNow,
  measureNow,
  type OpenLine,
  readHome,
  type TodayIn,
} from "./model.ts";
import { NearHere } from "./near.tsx";
import "./home.css";

/** Fields shown before "show more". */
const FIELDS_AT_ONCE = 30;
/** Unfinished lines shown before "show more": the fields below them must stay within reach. */
const OPEN_AT_ONCE = 3;

export const HomeScreen = () => {
  const house = useHouse();
  const words = house.words.value;
  const day = useToday();
  const home = useLive(() => readHome(house.records), [day]);
  const [busy, once] = useOnce();
  const choose = (fields: readonly RecordId<"field">[]) =>
    once(async () => {
      const go = fromHere(house.go);
      const visit = await todaysVisit(house, fields);
      if (visit !== null) go({ at: "visit", visit });
    });
  return (
    <Page
      title={words.home.title}
      area="measure"
      foot={
        <>
          <Key onPress={() => once(() => measureNow(house))} off={busy}>
            {words.home.nameLater}
          </Key>
          <LinkKey to={href({ at: "field-new" })}>{words.home.addField}</LinkKey>
        </>
      }
    >
      {home === undefined ? null : <Places home={home} onChoose={choose} />}
    </Page>
  );
};

const Places = (props: {
  readonly home: HomeNow;
  readonly onChoose: (fields: readonly RecordId<"field">[]) => void;
}) => {
  const words = useHouse().words.value;
  const { open, today: here, fields } = props.home;
  return (
    <>
      {open.length === 0 ? null : <OpenLines open={open} />}
      <h2>{words.home.question}</h2>
      {here.length + fields.length === 0 ? <p>{words.home.noFields}</p> : null}
      {here.length + fields.length === 0 ? null : <NearHere onChoose={props.onChoose} />}
      {here.length === 0 ? null : <Today here={here} />}
      {fields.length === 0 ? null : <Fields fields={fields} onChoose={props.onChoose} />}
    </>
  );
};

const OpenLines = ({ open }: { readonly open: readonly OpenLine[] }) => {
  const words = useHouse().words.value;
  const [most, setMost] = useState(OPEN_AT_ONCE);
  const hidden = open.length - most;
  const { tongue } = words.common;
  /** Two lines of one strip are told apart by when they were begun. */
  const begun = (atMs: number): string => {
    const day = dayOf(atMs);
    const clock = writeClock(atMs, tongue);
    return words.home.begun(day === today() ? clock : `${writeDay(day, tongue)}, ${clock}`);
  };
  return (
    <section class="go-on">
      <h2>{words.home.open}</h2>
      <ul class="keys">
        {open.slice(0, most).map(({ line, field, strip, spot }) => (
          <li key={line.id}>
            <LinkKey to={href({ at: "line", line: line.id })} look="straw">
              <span class="stacked">
                {`${fieldName(words, field)} · ${groundName(words, strip, spot)}`}
                <small>
                  {[progressOf(words, line), begun(line.header.startedAtMs), words.home.goOn].join(" · ")}
                </small>
                <DemoTagPlace id={line.header.field} />
              </span>
            </LinkKey>
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <div class="more-open">
          <Key onPress={() => setMost(open.length)}>{words.home.more(hidden)}</Key>
        </div>
      ) : null}
    </section>
  );
};

const Today = ({ here }: { readonly here: readonly TodayIn[] }) => {
  const words = useHouse().words.value;
  return (
    <section>
      <h3>{words.home.today}</h3>
      <ul class="rows">
        {here.map(({ field, visit, lines, begunOn }) => (
          <li key={visit}>
            <a class="row" href={href({ at: "visit", visit })}>
              <span>
                <b>{fieldName(words, field)}</b>
                <small>
                  {begunOn === null
                    ? words.home.linesToday(lines)
                    : words.home.begunOn(
                        writeDay(begunOn, words.common.tongue),
                        lines === 0 ? null : words.common.lines(lines),
                      )}
                </small>
                <DemoTagPlace id={visit} />
              </span>
              <b>{words.home.goOn}</b>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
};

const Fields = (props: {
  readonly fields: readonly FieldToChoose[];
  readonly onChoose: (fields: readonly RecordId<"field">[]) => void;
}) => {
  const words = useHouse().words.value;
  const [shown, setShown] = useState(FIELDS_AT_ONCE);
  const hidden = props.fields.length - shown;
  return (
    <section>
      <h3>{words.home.fields}</h3>
      <ul class="rows">
        {props.fields.slice(0, shown).map(({ same, farm, lastDay }) => (
          <li key={same.field.id}>
            <button type="button" class="row" onClick={() => props.onChoose(same.ids)}>
              <span>
                <b>{fieldName(words, same.field)}</b>
                <small>
                  {[
                    ...(farm === undefined ? [] : [farm.body.name]),
                    lastDay === null
                      ? words.home.neverVisited
                      : words.home.lastVisit(writeDay(lastDay, words.common.tongue)),
                  ].join(" · ")}
                </small>
                <DemoTagPlace id={same.field.id} />
              </span>
            </button>
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <Key onPress={() => setShown(shown + FIELDS_AT_ONCE)}>
          {words.home.more(Math.min(hidden, FIELDS_AT_ONCE))}
        </Key>
      ) : null}
    </section>
  );
};
