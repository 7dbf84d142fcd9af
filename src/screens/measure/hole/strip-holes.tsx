/** Worms of one strip so far today: per hole, then per m², kinds of grown worms, and what guides say of it. */

import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import type { Result } from "../../../record/result.ts";
import type { Bounds, Estimate } from "../../../science/estimate.ts";
import { sentenceFor } from "../../catalogue.ts";
import { MethodList } from "../../findings/method-list.tsx";
import { SENTENCES } from "../../findings/sentences.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useLastShown } from "../../parts/last-shown.ts";
import { useLive } from "../../parts/live.ts";
import { NotRead } from "../../parts/not-read.tsx";
import { writeClock, writeNumber, writePercent } from "../../parts/numbers.ts";
import { ownSentence } from "../../parts/own-units.ts";
import { href } from "../../parts/route.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayHole } from "./holes-of-day.ts";
import { type StripHoles as Found, readStripHoles } from "./strip-model.ts";
import { HOLE_WORDS } from "./words.ts";
import "./hole.css";

/**
 * The holes of a strip on the day of a visit; nothing at all while there is none. With a name it is a section
 * of its own, for a strip where no line was counted.
 */
export const StripHoles = (props: {
  readonly visit: RecordId<"visit">;
  readonly strip: RecordId<"strip">;
  readonly name?: string;
}) => {
  const { records } = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const found = useLastShown(
    useLive(() => readStripHoles(records, props.visit, props.strip), [props.visit, props.strip]),
  );
  if (found === undefined) return <NotRead />;
  if (found === null) return null;
  return (
    <section class={props.name === undefined ? "strip-holes" : "strip-holes ruled"}>
      {props.name === undefined ? null : <h2>{props.name}</h2>}
      <h3>{words.strip.title}</h3>
      <Figure found={found} />
      <Groups found={found} />
      <Guides found={found} />
      <Cautions found={found} />
      <ul class="rows">
        {[...found.holes].reverse().map((hole) => (
          <li key={hole.id}>
            <HoleRow hole={hole} />
          </li>
        ))}
      </ul>
    </section>
  );
};

type Part = { readonly found: Found };

/** One decimal below ten: 1 or 2 worms apart is much there. */
const count = (value: number): string => writeNumber(value, TONGUE, value < 10 ? 1 : 0);

const ends = (range: Result<Bounds>): readonly [string, string] | null =>
  range.ok ? [count(range.value.lower), count(range.value.upper)] : null;

const Figure = ({ found }: Part) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const [open, setOpen] = useState(false);
  const { perHole, perM2, more, unfinished, guess } = found;
  const first = perHole.ok ? perHole : perM2;
  const left = unfinished === 0 ? null : <p>{words.strip.open(unfinished)}</p>;
  if (!first.ok)
    return (
      <>
        <p>{words.strip.none}</p>
        {left}
      </>
    );
  const behind = ({ range, n }: Estimate): string => {
    const both = ends(range);
    return both === null
      ? words.strip.tooFew(words.holes(n))
      : words.strip.range(both[0], both[1], words.holes(n));
  };
  return (
    <>
      <div class="figure">
        <p class="big">{count(first.value.value)}</p>
        <p>
          {perHole.ok ? words.strip.perHole : words.strip.perM2Only}
          <br />
          <b>{behind(first.value)}</b>
        </p>
      </div>
      {perHole.ok && perM2.ok ? <p>{perM2Words(perM2.value)}</p> : null}
      {perHole.ok ? null : <p>{sentenceFor(house.words.value, perHole.problem, sentences)}</p>}
      {more === null ? null : (
        <p>
          {more.ok
            ? words.strip.more(more.value.more.low, more.value.more.high)
            : sentenceFor(house.words.value, more.problem, sentences)}
        </p>
      )}
      {guess === null ? null : <p>{words.strip.guess(writeNumber(guess, TONGUE, 1))}</p>}
      {left}
      {open ? (
        <MethodList
          methods={[...new Set([...first.value.methods, ...(more?.ok === true ? more.value.methods : [])])]}
          sources={[...new Set([...first.value.sources, ...(more?.ok === true ? more.value.sources : [])])]}
        />
      ) : (
        <Key onPress={() => setOpen(true)}>{words.sheets.workedOut}</Key>
      )}
    </>
  );

  function perM2Words({ value, range }: Estimate): string {
    const both = ends(range);
    return both === null
      ? words.strip.perM2NoRange(count(value))
      : words.strip.perM2(count(value), both[0], both[1]);
  }
};

const Groups = ({ found }: Part) => {
  const words = useWordsOf(HOLE_WORDS);
  if (found.groups.length === 0) return null;
  return (
    <>
      <h3>{words.strip.groupsTitle}</h3>
      <table class="figures">
        <tbody>
          {found.groups.map(({ group, share, seenIn, holes, notDetermined }) => (
            <tr key={group}>
              <th scope="row">{words.strip.group[group]}</th>
              <td class="number">
                {share.ok || seenIn > 0 ? words.strip.share(seenIn, holes) : words.strip.notDetermined}
                {share.ok && share.value.range.ok ? (
                  <small>
                    {words.strip.shareRange(
                      writePercent(share.value.range.value.lower, TONGUE),
                      writePercent(share.value.range.value.upper, TONGUE),
                    )}
                  </small>
                ) : null}
                {notDetermined > 0 && share.ok ? (
                  <small>{words.strip.notDeterminedIn(notDetermined)}</small>
                ) : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
};

/** Said of any guide. */
const DISAGREE = "science/guides-disagree";

const Guides = ({ found }: Part) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const { guides, perHole, perM2 } = found;
  if (!perHole.ok && !perM2.ok) return null;
  // What is said of every guide stands once, below all of them.
  const ofAll = guides[0]?.cautions.filter(({ code }) => code === DISAGREE) ?? [];
  return (
    <>
      <h3>{words.strip.guidesTitle}</h3>
      {guides.length === 0 ? <p>{words.strip.noGuide}</p> : null}
      <ul>
        {guides.map(({ guide, level, levelsOfRange, cautions }) => (
          <li key={guide.id} class="guide">
            {words.strip.guide(words.strip.says[level.says], guide.name)}
            {levelsOfRange !== null && levelsOfRange.lower.says !== levelsOfRange.upper.says ? (
              <small>
                {words.strip.unclear(
                  words.strip.says[levelsOfRange.lower.says],
                  words.strip.says[levelsOfRange.upper.says],
                )}
              </small>
            ) : null}
            {cautions
              .filter(({ code }) => code !== DISAGREE)
              .map((caution) => (
                <small key={caution.code}>{sentenceFor(house.words.value, caution, sentences)}</small>
              ))}
            {guide.mark === "not-checked" ? <small>{words.dig.memory}</small> : null}
          </li>
        ))}
      </ul>
      {ofAll.map((caution) => (
        <p class="aside" key={caution.code}>
          {sentenceFor(house.words.value, caution, sentences)}
        </p>
      ))}
    </>
  );
};

const Cautions = ({ found }: Part) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  if (found.cautions.length === 0) return null;
  return (
    <>
      <h3>{words.strip.cautions}</h3>
      {found.cautions.map((caution) => (
        <p class="hole-caution" key={caution.code}>
          {ownSentence(house.words.value, house.settings.value.habits, caution, sentences)}
        </p>
      ))}
    </>
  );
};

/** A hole of the day. */
export const HoleRow = ({ hole }: { readonly hole: DayHole }) => {
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const { common, place: placeWords, setOut } = house.words.value;
  const { header, reading } = hole;
  const closed = reading.closed !== null;
  return (
    <a class="row" href={href(closed ? { at: "hole-sheet", hole: hole.id } : { at: "hole", hole: hole.id })}>
      <span>
        <b>
          {words.capitalTitle(header.number)}
          {closed ? "" : ` · ${words.strip.goOn}`}
        </b>
        <small>
          {[
            writeClock(header.startedAtMs, common.tongue),
            header.place === null ? setOut.unplaced : placeWords[header.place],
            ...(reading.placedTotal > 0
              ? [words.tally(reading.foundTotal, reading.placedTotal, reading.left)]
              : []),
          ].join(" · ")}
        </small>
      </span>
      <span class="value">{reading.settled ? writeNumber(reading.foundTotal, TONGUE) : "?"}</span>
    </a>
  );
};
