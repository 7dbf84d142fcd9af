/** One strip on this visit: its ground cover, its worms, what soaked in, and its lines, holes and rings. */
import { useState } from "preact/hooks";
import type { Place } from "../../../record/shapes.ts";
import { sentenceFor } from "../../catalogue.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { SENTENCES } from "../../findings/sentences.ts";
import { moreSentence } from "../../parts/cover-words.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { writeNumber, writePercent } from "../../parts/numbers.ts";
import { rangeWords } from "../../parts/range-words.ts";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf, useWordsWith } from "../../parts/words-of.ts";
import { StripHoles } from "../hole/strip-holes.tsx";
import { LineRow } from "./line-row.tsx";
import type { StripNow, VisitNow } from "./model.ts";
import { StripRings } from "./strip-rings.tsx";
import { DAY_WORDS } from "./words.day.ts";
import { VISIT_WORDS } from "./words.ts";
import { useGrassSentence } from "./yardstick.tsx";

/** Lines shown at first, and added by each "show more". */
const LINES_AT_ONCE = 12;

export const StripOfVisit = (props: { readonly now: VisitNow; readonly strip: StripNow }) => {
  const words = useWordsWith(VISIT_WORDS);
  const day = useWordsOf(DAY_WORDS);
  const grass = useGrassSentence()(props.now.yardstick, props.now.visit.body.day);
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
      <Seen strip={strip} />
      {strip.lines.length === 0 ? null : (
        <>
          {said.length > 1 ? (
            <p class="notice">{words.visit.unlike(strip.places.map(placeWords).join(", "))}</p>
          ) : null}
          <h3>{day.cover}</h3>
          <Figure now={now} strip={strip} />
          <Beside strip={strip} />
          {strip.places.length === 1 && said.length === 1 ? (
            <p>{words.visit.allAt(strip.places.map(placeWords).join(""))}</p>
          ) : null}
          <h4 class="out-of-sight">{words.visit.lines}</h4>
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
        </>
      )}
      {strip.holes.length === 0 ? null : <StripHoles visit={now.visit.id} strip={strip.id} />}
      <StripRings soak={strip.soak} guessMm={strip.guesses["soaked-in-60-min-mm"] ?? null} />
      {grass === null ? null : <p class="beside-grass">{grass}</p>}
      {now.strips.length < 2 ? null : (
        <div class="beside">
          <LinkKey to={href({ at: "side-by-side", visit: now.visit.id, strip: strip.id })}>
            {now.when === "today" || now.when === "goes-on" ? day.compare : day.compareThen}
          </LinkKey>
        </div>
      )}
    </section>
  );
};

/** How many notes and photos belong to the strip on this day. */
const Seen = ({ strip }: { readonly strip: StripNow }) => {
  const words = useWordsOf(DAY_WORDS);
  const said = words.seenToo(strip.notes, strip.photos.length);
  return said === "" ? null : <p>{said}</p>;
};

/** The guess beside the cover, and what has to be borne in mind. */
const Beside = ({ strip }: { readonly strip: StripNow }) => {
  const words = useWordsWith(VISIT_WORDS);
  const day = useWordsOf(DAY_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const guess = strip.guesses["ground-cover-percent"];
  const { cover } = strip.cover;
  return (
    <>
      {guess === undefined ? null : (
        <p>{day.guess(`${writeNumber(guess, TONGUE)} ${words.common.percent}`)}</p>
      )}
      {cover.ok
        ? cover.value.cautions.map((caution) => (
            <p class="said-beside" key={caution.code}>
              {sentenceFor(words, caution, sentences)}
            </p>
          ))
        : null}
    </>
  );
};

/** The strip's value; touching it shows how it was worked out. */
const Figure = (props: { readonly now: VisitNow; readonly strip: StripNow }) => {
  const { settings } = useHouse();
  const words = useWordsWith(VISIT_WORDS);
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
