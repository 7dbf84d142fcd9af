/** The start of Measure: go on where a line was left, or say which field one stands in. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { DemoTagPlace } from "../../demo/demo-place.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { fieldName } from "../../parts/names.ts";
import { writeDay } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { todaysVisit, useToday } from "../../parts/visits.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type FieldToChoose, type HomeNow, measureNow, readHome, type TodayIn } from "./model.ts";
import { NearHere } from "./near.tsx";
import { NotFinished } from "./not-finished.tsx";
import { OPEN_WORDS } from "./words.open.ts";
import "./home.css";

/** Fields shown before "show more". */
const FIELDS_AT_ONCE = 30;

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
  const { open, openTests, today: here, fields } = props.home;
  return (
    <>
      <NotFinished open={open} openTests={openTests} />
      <h2>{words.home.question}</h2>
      {here.length + fields.length === 0 ? <p>{words.home.noFields}</p> : null}
      {here.length + fields.length === 0 ? null : <NearHere onChoose={props.onChoose} />}
      {here.length === 0 ? null : <Today here={here} />}
      {fields.length === 0 ? null : <Fields fields={fields} onChoose={props.onChoose} />}
    </>
  );
};

const Today = ({ here }: { readonly here: readonly TodayIn[] }) => {
  const words = useHouse().words.value;
  const says = useWordsOf(OPEN_WORDS);
  return (
    <section>
      <h3>{words.home.today}</h3>
      <ul class="rows">
        {here.map(({ field, visit, counts, begunOn }) => (
          <li key={visit}>
            <a class="row" href={href({ at: "visit", visit })}>
              <span>
                <b>{fieldName(words, field)}</b>
                <small>
                  {begunOn === null
                    ? says.today(counts)
                    : says.begunOn(writeDay(begunOn, words.common.tongue), counts)}
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
