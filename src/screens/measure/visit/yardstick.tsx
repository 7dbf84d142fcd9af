/** The old-grass spot: what this ground does under old grass, beside every result of the day. */
import type { Estimate } from "../../../science/estimate.ts";
import { WorkedOutKey, workedByAll } from "../../findings/method-list.tsx";
import { useHouse } from "../../parts/house.ts";
import { writeDay, writeNumber, writePercent } from "../../parts/numbers.ts";
import { grassNames } from "../../parts/old-grass.ts";
import { rangeWords } from "../../parts/range-words.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf, useWordsWith } from "../../parts/words-of.ts";
import { HoleRow } from "../hole/strip-holes.tsx";
import { depthText } from "../rings/figures.ts";
import type { Measured, Yardstick } from "./day-strips.ts";
import { LineRow } from "./line-row.tsx";
import { numbered } from "./model.ts";
import { RingRow, spokenOf, useSoakRange } from "./strip-rings.tsx";
import { DAY_WORDS } from "./words.day.ts";
import { VISIT_WORDS } from "./words.ts";

/** One decimal below ten, as beside it on the strips. */
export const wormCount = (value: number): string => writeNumber(value, TONGUE, value < 10 ? 1 : 0);

/** The values in one sentence, for the strips; null when there is none. Another day than this is named. */
export const useGrassSentence = (): ((yardstick: Yardstick | null, day: string) => string | null) => {
  const house = useHouse();
  const words = useWordsOf(DAY_WORDS).grass;
  const { tongue } = house.words.value.common;
  const { habits } = house.settings.value;
  return (yardstick, day) => {
    if (yardstick === null) return null;
    const { cover, perHole, soak, days } = yardstick;
    const dated = (value: string, on: string | null): string =>
      on === null || on === day ? value : words.on(value, writeDay(on, tongue));
    const spoken = spokenOf(soak);
    const values = [
      ...(cover.cover.ok
        ? [dated(words.cover(writePercent(cover.cover.value.value, TONGUE)), days.line)]
        : []),
      ...(perHole.ok ? [dated(words.worms(wormCount(perHole.value.value)), days.hole)] : []),
      ...(spoken === null
        ? []
        : [
            dated(
              words.soak(depthText(spoken.mean.value, habits), writeNumber(spoken.minutes, TONGUE)),
              days.ring,
            ),
          ]),
    ];
    return values.length === 0 ? null : words.beside(values.join(", "));
  };
};

/** The yardstick by itself: every value with its range, samples and day. */
export const OldGrass = (props: { readonly yardstick: Yardstick; readonly day: string }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(DAY_WORDS);
  const { habits } = house.settings.value;
  const soakRange = useSoakRange();
  const { cover, perHole, perM2, soak, days, spots, today } = props.yardstick;
  const spoken = spokenOf(soak);
  const from = (day: string | null): string =>
    day === null || day === props.day ? "" : words.grass.from(writeDay(day, catalogue.common.tongue));
  const wormRange = ({ range, n }: Estimate): string =>
    `${range.ok ? catalogue.common.range(wormCount(range.value.lower), wormCount(range.value.upper)) : catalogue.common.tooFew}, ${words.grass.holes(n)}`;
  const worked = [
    ...[cover.cover, perHole, perM2].flatMap((one) => (one.ok ? [one.value] : [])),
    ...(spoken === null ? [] : [spoken.mean]),
  ];
  const begun = today.lines.length + today.holes.length + today.rings.length;
  if (worked.length + begun === 0) return null;
  const names = grassNames(spots);
  return (
    <section class="ruled">
      <h2>{names === "" ? words.grass.title : `${words.grass.title}: ${names}`}</h2>
      <p>{words.grass.says}</p>
      {worked.length === 0 ? <p>{words.grass.nothingYet}</p> : null}
      <table class="figures soak-table">
        <tbody>
          {cover.cover.ok ? (
            <Row
              what={words.cover}
              value={`${writePercent(cover.cover.value.value, TONGUE)} ${catalogue.common.percent}`}
              range={`${rangeWords(catalogue, cover.cover.value)}, ${catalogue.common.lines(cover.cover.value.n)}`}
              from={from(days.line)}
            />
          ) : null}
          {perHole.ok ? (
            <Row
              what={words.grass.wormsPerHole}
              value={wormCount(perHole.value.value)}
              range={wormRange(perHole.value)}
              from={from(days.hole)}
            />
          ) : null}
          {perM2.ok ? (
            <Row
              what={words.grass.wormsPerM2}
              value={wormCount(perM2.value.value)}
              range={wormRange(perM2.value)}
              from={from(days.hole)}
            />
          ) : null}
          {spoken === null ? null : (
            <Row
              what={words.soFar(writeNumber(spoken.minutes, TONGUE))}
              value={depthText(spoken.mean.value, habits)}
              range={soakRange(spoken.mean)}
              from={from(days.ring)}
            />
          )}
        </tbody>
      </table>
      <Begun today={today} day={props.day} />
      {worked.length === 0 ? null : <WorkedOutKey of={words.grass.title} {...workedByAll(worked)} />}
    </section>
  );
};

/** What was begun there on this day: it stands on no strip, and is gone on with from here. */
const Begun = (props: { readonly today: Measured; readonly day: string }) => {
  const words = useWordsWith(VISIT_WORDS);
  const { today, day } = props;
  if (today.lines.length + today.holes.length + today.rings.length === 0) return null;
  return (
    <ul class="rows">
      {numbered(today.lines).map((one) => {
        const { place } = one.line.header;
        return (
          <li key={one.line.id}>
            <LineRow
              one={one}
              day={day}
              place={place === null ? words.visit.placeNotSaid : words.place[place]}
            />
          </li>
        );
      })}
      {[...today.holes].reverse().map((hole) => (
        <li key={hole.id}>
          <HoleRow hole={hole} />
        </li>
      ))}
      {[...today.rings].reverse().map((ring) => (
        <li key={ring.id}>
          <RingRow ring={ring} />
        </li>
      ))}
    </ul>
  );
};

const Row = (props: {
  readonly what: string;
  readonly value: string;
  readonly range: string;
  readonly from: string;
}) => (
  <tr>
    <th scope="row">
      {props.what}
      {props.from === "" ? null : <small>{props.from}</small>}
    </th>
    <td class="number">
      {props.value}
      <small>{props.range}</small>
    </td>
  </tr>
);
