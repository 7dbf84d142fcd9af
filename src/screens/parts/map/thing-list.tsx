/** What lies on the map, as a list: the same for somebody who cannot see or touch it. */
import { useState } from "preact/hooks";
import type { LatitudeLongitude } from "../../../science/position/distance.ts";
import { useHouse } from "../house.ts";
import { Key } from "../keys.tsx";
import { lengthWords } from "../lengths.ts";
import { useWordsOf } from "../words-of.ts";
import type { Thing } from "./drawing.ts";
import { wayBetween } from "./way.ts";
import { MAP_WORDS } from "./words.ts";

/** Rows shown before "show more". */
const AT_ONCE = 20;

/** From where distances are counted: the person, or the middle of the field. */
export interface CountedFrom {
  readonly at: LatitudeLongitude;
  readonly who: "you" | "middle";
}

/** Distance and direction in words; nothing when they are not known. */
export const useAway = (): ((from: CountedFrom | null, to: LatitudeLongitude) => string) => {
  const words = useWordsOf(MAP_WORDS);
  const { habits } = useHouse().settings.value;
  return (from, to) => {
    const way = from === null ? null : wayBetween(from.at, to);
    if (way === null) return "";
    // Under half a metre a direction says nothing.
    const wind = way.wind === null || way.distanceM < 0.5 ? null : words.winds[way.wind];
    return words.away(lengthWords("distance", way.distanceM, habits), wind);
  };
};

/** What stands in the list: what has a sign on the map, a strip, or the boundary, which lies at no one place. */
export type Row = Pick<Thing, "id" | "name" | "about" | "href"> & { readonly at: LatitudeLongitude | null };

/** A thing with its distance, leading to its own screen. */
export const ThingRow = (props: { readonly thing: Row; readonly from: CountedFrom | null }) => {
  const away = useAway();
  const words = useWordsOf(MAP_WORDS);
  const { thing, from } = props;
  const where = thing.at === null ? "" : away(from, thing.at);
  const inside = (
    <>
      <span>
        <b>{thing.name}</b>
        <small>{[thing.about, where].filter((part) => part !== "").join(" · ")}</small>
      </span>
      {thing.href === null ? null : <b>{words.open}</b>}
    </>
  );
  return thing.href === null ? (
    <div class="row">{inside}</div>
  ) : (
    <a class="row" href={thing.href}>
      {inside}
    </a>
  );
};

export const ThingList = (props: { readonly things: readonly Row[]; readonly from: CountedFrom | null }) => {
  const words = useWordsOf(MAP_WORDS);
  const [most, setMost] = useState(AT_ONCE);
  const { things, from } = props;
  const hidden = things.length - most;
  if (things.length === 0) return null;
  return (
    <section class="ruled">
      <h2>{words.onIt}</h2>
      {from === null ? null : <p>{words.distancesFrom[from.who]}</p>}
      <ul class="rows">
        {things.slice(0, most).map((thing) => (
          <li key={thing.id}>
            <ThingRow thing={thing} from={from} />
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{words.more(Math.min(hidden, AT_ONCE))}</Key>
      ) : null}
    </section>
  );
};
