/** Today in this field: everything measured strip by strip, the farm's yardstick, and the keys for what is next. */

import type { RecordId } from "../../../record/ids.ts";
import { DemoPlace } from "../../demo/demo-place.tsx";
import { AfterFrames } from "../../parts/after-frames.ts";
import { fromHere } from "../../parts/from-here.ts";
import { type House, useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { lazyPart } from "../../parts/lazy-part.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import { useLive } from "../../parts/live.ts";
import { fieldName, stripName } from "../../parts/names.ts";
import { writeDay } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { beginVisit, todaysVisit, useToday } from "../../parts/visits.ts";
import { useWordsOf, useWordsWith } from "../../parts/words-of.ts";
import { SEND_WORDS } from "../../send/words.ts";
import { NotesOfVisit } from "../notes/of-visit.tsx";
import { CorrectDay } from "./day.tsx";
import { HarvestYear } from "./harvest-year.tsx";
import { readVisit, type VisitNow } from "./model.ts";
import { Naming } from "./naming.tsx";
import { StripOfVisit } from "./strip.tsx";
import { DAY_WORDS } from "./words.day.ts";
import { VISIT_WORDS } from "./words.ts";
import { OldGrass } from "./yardstick.tsx";
import "./visit.css";

const DayPhotos = lazyPart(async () => (await import("../../parts/photos/together.tsx")).DayPhotos);

export const VisitScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const house = useHouse();
  const words = useWordsWith(VISIT_WORDS);
  const chosen = house.settings.value;
  const today = useToday();
  const now = useLive(() => readVisit(house, chosen, props.visit), [props.visit, chosen, today]);
  const back = href({ at: "measure" });
  if (now === undefined)
    return (
      <Page title={"\u00a0"} back={back} area="measure">
        {null}
      </Page>
    );
  if (now === null)
    return (
      <Page title={words.visit.gone} back={back} area="measure">
        {null}
      </Page>
    );
  const { field } = now.same;
  const named = field.body.name !== "";
  const isToday = now.when === "today";
  const day = writeDay(now.visit.body.day, words.common.tongue);
  const name = fieldName(words, field);
  return (
    <Page
      title={isToday ? words.visit.today(named ? name : words.visit.unnamed) : words.visit.on(day)}
      under={isToday ? day : name}
      back={back}
      area="measure"
      foot={field.deleted ? undefined : <Foot now={now} />}
    >
      <DemoPlace id={field.id} />
      <Notices now={now} today={today} />
      {named || field.deleted ? null : <Naming field={field} />}
      {now.strips.length === 0 && !now.onGrass ? <p class="nothing-yet">{words.visit.noStrips}</p> : null}
      {now.strips.map((strip, at) => (
        <AfterFrames key={strip.id} frames={at}>
          <StripOfVisit now={now} strip={strip} />
        </AfterFrames>
      ))}
      <AfterFrames frames={now.strips.length}>
        {now.yardstick === null ? null : <OldGrass yardstick={now.yardstick} day={now.visit.body.day} />}
        {now.photos.length === 0 ? null : <DayPhotos photos={now.photos} />}
        <Without now={now} />
        <ToHandOver now={now} />
        <NotesOfVisit visits={now.visits.map(({ id }) => id)} closed={field.deleted} />
        <HarvestYear now={now} />
        <CorrectDay now={now} />
      </AfterFrames>
      <div class="ruled keys beside">
        {field.deleted ? null : (
          <LinkKey to={href({ at: "map", field: field.id, visit: now.visit.id })}>
            {useWordsOf(DAY_WORDS).map}
          </LinkKey>
        )}
        <LinkKey to={href(field.deleted ? { at: "deleted" } : { at: "field", field: field.id })}>
          {field.deleted ? useWordsOf(SEND_WORDS).deleted.title : words.visit.fieldPage}
        </LinkKey>
      </div>
    </Page>
  );
};

/** What stands in the way of reading this day, and what helps. */
const Notices = (props: { readonly now: VisitNow; readonly today: string }) => {
  const house = useHouse();
  const words = useWordsWith(VISIT_WORDS);
  const { now } = props;
  const { habits } = house.settings.value;
  const [busy, once] = useOnce();
  const day = (one: string): string => writeDay(one, words.common.tongue);
  return (
    <>
      {now.same.field.deleted ? <p class="notice">{words.visit.fieldDeleted}</p> : null}
      {now.farM === null ? null : (
        <p class="notice">{words.visit.far(lengthWords("distance", now.farM, habits))}</p>
      )}
      {now.when === "ahead" ? <p class="notice">{words.visit.ahead}</p> : null}
      {now.when === "goes-on" ? (
        <section class="goes-on">
          <p>{words.visit.goesOn(day(props.today), day(now.visit.body.day))}</p>
          <Key off={busy} onPress={() => once(() => beginAnew(house, now))}>
            {words.visit.beginAnew(day(props.today))}
          </Key>
        </section>
      ) : null}
    </>
  );
};

/** What the day comes to for somebody else, once anything was measured. */
const ToHandOver = ({ now }: { readonly now: VisitNow }) => {
  const words = useWordsOf(DAY_WORDS);
  if (now.strips.length === 0) return null;
  return (
    <div class="ruled beside">
      <LinkKey to={href({ at: "picture", visit: now.visit.id })} look="straw">
        {words.picture}
      </LinkKey>
    </div>
  );
};

const beginAnew = async (house: House, now: VisitNow): Promise<void> => {
  const go = fromHere(house.go);
  const visit = await beginVisit(house, now.same.field.id);
  if (visit !== null) go({ at: "visit", visit });
};

const measureToday = async (house: House, now: VisitNow): Promise<void> => {
  const go = fromHere(house.go);
  const visit = await todaysVisit(house, now.same.ids);
  if (visit !== null) go({ at: "visit", visit });
};

/** The key for the next line. A line counted now must not slip into a visit of long ago. */
const Foot = ({ now }: { readonly now: VisitNow }) => {
  const house = useHouse();
  const words = useWordsOf(VISIT_WORDS).visit;
  const [busy, once] = useOnce();
  const line = href({ at: "line-new", visit: now.visit.id });
  if (now.when === "today" || now.when === "goes-on")
    return (
      <div class="keys two tests">
        <LinkKey to={line} look="solid">
          {words.countLine}
        </LinkKey>
        <LinkKey to={href({ at: "hole-new", visit: now.visit.id })}>{words.digHole}</LinkKey>
        <LinkKey
          to={href(
            now.rings > 0
              ? { at: "rings", visit: now.visit.id }
              : { at: "ring-new", visit: now.visit.id, follows: null },
          )}
        >
          {now.rings > 0 ? words.ringBoard(now.rings) : words.setRing}
        </LinkKey>
      </div>
    );
  return (
    <div class="keys two">
      <LinkKey to={line}>{words.addThen}</LinkKey>
      <Key look="solid" off={busy} onPress={() => once(() => measureToday(house, now))}>
        {words.measureToday}
      </Key>
    </div>
  );
};

/** Strips of the field that nobody has measured on this visit. */
const Without = ({ now }: { readonly now: VisitNow }) => {
  const words = useWordsWith(VISIT_WORDS);
  if (now.without.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{now.when === "today" ? words.visit.stripsWithout : words.visit.stripsWithoutThen}</h2>
      <ul>
        {now.without.map((strip) => (
          <li key={strip.id}>{stripName(words, strip)}</li>
        ))}
      </ul>
    </section>
  );
};
