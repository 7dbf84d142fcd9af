/** One strip on this visit: its ground cover so far, and its lines. */
import { useState } from "preact/hooks";
import type { Place } from "../../../record/shapes.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { moreSentence } from "../../parts/cover-words.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { groundCoverOf } from "../../parts/line-counts.ts";
import { progressOf } from "../../parts/line-progress.ts";
import { dayOf, writeClock, writeDay, writePercent } from "../../parts/numbers.ts";
import { rangeWords } from "../../parts/range-words.ts";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { StripHoles } from "../hole/strip-holes.tsx";
import type { NumberedLine, StripNow, VisitNow } from "./model.ts";

/** Lines shown at first, and added by each "show more". */
const LINES_AT_ONCE = 12;

export const StripOfVisit = (props: { readonly now: VisitNow; readonly strip: StripNow }) => {
  const words = useHouse().words.value;
  const { now, strip } = props;
  const [most, setMost] = useState(LINES_AT_ONCE);
  // Whatever waits to be finished is shown, however long the day was.
  const shown = strip.lines.filter(({ line }, at) => at < most || !line.finished);
  const hidden = strip.lines.length - shown.length;
  const placeWords = (place: Place | null): string =>
    place === null ? words.visit.placeNotSaid : words.place[place];
  const said = strip.places.filter((place) => place !== null);
  return (
    <section class="ruled">
      <h2>{nameWithFate(words, strip.strip)}</h2>
      {said.length > 1 ? (
        <p class="notice">{words.visit.unlike(strip.places.map(placeWords).join(", "))}</p>
      ) : null}
      <Figure now={now} strip={strip} />
      {strip.places.length === 1 && said.length === 1 ? (
        <p>{words.visit.allAt(strip.places.map(placeWords).join(""))}</p>
      ) : null}
      <h3 class="out-of-sight">{words.visit.lines}</h3>
      <ul class="rows">
        {shown.map((one) => (
          <li key={one.line.id}>
            <LineRow one={one} day={now.visit.body.day} place={placeWords(one.line.header.place)} />
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + LINES_AT_ONCE)}>
          {words.visit.moreLines(Math.min(hidden, LINES_AT_ONCE))}
        </Key>
      ) : null}
      <StripHoles visit={now.visit.id} strip={strip.id} />
    </section>
  );
};

/** The strip's value; touching it shows how it was worked out. */
const Figure = (props: { readonly now: VisitNow; readonly strip: StripNow }) => {
  const { words: live, settings } = useHouse();
  const words = live.value;
  const { cover } = props.strip.cover;
  if (!cover.ok) return <p class="strip-figure">{words.visit.noLine}</p>;
  const more = moreSentence(words, props.strip.cover, settings.value);
  return (
    <a
      class="strip-figure"
      href={href({ at: "worked-out", strip: props.strip.id, visit: props.now.visit.id })}
    >
      <span class="figure">
        <span class="big">
          {writePercent(cover.value.value, TONGUE)}
          <small> {words.common.percent}</small>
        </span>
        <span>
          {words.visit.soFar}
          <b>{`${rangeWords(words, cover.value)}, ${words.common.lines(cover.value.n)}`}</b>
        </span>
      </span>
      {more === "" ? null : <span class="below">{more}</span>}
      <span class="below worked-out">{words.visit.workedOut}</span>
    </a>
  );
};

const LineRow = (props: {
  readonly one: NumberedLine;
  /** The day of the visit; the clock time alone says enough for lines of that day only. */
  readonly day: string;
  readonly place: string;
}) => {
  const { words: live, settings } = useHouse();
  const words = live.value;
  const { line, index } = props.one;
  const { startedAtMs } = line.header;
  const { tongue } = words.common;
  const begunOn = dayOf(startedAtMs);
  const clock = writeClock(startedAtMs, tongue);
  const { share, read } = groundCoverOf(line.reading.tally, settings.value.stonesCount);
  const shown = line.finished || line.header.way === "mark-by-mark";
  const route = line.finished
    ? ({ at: "line-sheet", line: line.id } as const)
    : ({ at: "line", line: line.id } as const);
  return (
    <a class="row" href={href(route)}>
      <span>
        <b>
          {words.line.title(index)}
          {line.finished ? "" : ` · ${words.visit.goOn}`}
        </b>
        <small>
          {[
            begunOn === props.day ? clock : words.visit.onAnotherDay(writeDay(begunOn, tongue), clock),
            props.place,
            line.finished ? words.common.marks(read) : progressOf(words, line),
          ].join(" · ")}
        </small>
      </span>
      {share === null || !shown ? null : (
        <span class="value">
          {writePercent(share, TONGUE)}
          <small> {words.common.percent}</small>
        </span>
      )}
    </a>
  );
};
