/** Who sorts and for how long; and the wait for mustard water. Both keep their height, so no key moves. */
import { mustardNow, sortedSoFarNow } from "../../../record/hole/sorting.ts";
import { useHouse } from "../../parts/house.ts";
import { writeClock, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { useNow, useOver } from "./hands.ts";
import type { HoleModel } from "./model.ts";
import { litresWords, minutesSeconds } from "./sizes.ts";
import type { StoredHole } from "./stand.ts";
import { HOLE_WORDS } from "./words.ts";

const MINUTE_MS = 60_000;
/** People with a key of their own; more are typed. */
const PEOPLE = [1, 2, 3] as const;

/** People sorting this layer: 1, 2, 3 …, pause. */
export const SortingRow = (props: { readonly model: HoleModel; readonly stored: StoredHole }) => {
  const { model, stored } = props;
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const layer = model.layer.value;
  const running = reading.sorting[layer].some(({ lastedMs }) => lastedMs === null);
  const now = useNow(running);
  const { people, personMinutes, clocksApart } = sortedSoFarNow(reading, now)[layer];
  const { minutes } = stored.header;
  const most = minutes !== null && layer === "soil" ? minutes : null;
  const of = most === null ? "" : words.sorting.of(writeNumber(most, TONGUE, 1));
  const up = most !== null && running && personMinutes >= most;
  useOver(up, house.settings.value.vibrate);
  const time = minutesSeconds(personMinutes) + of;
  const says = (): string => {
    if (clocksApart) return words.sorting.apart;
    if (people > 0) return `${words.sorting.going(people, time)}${up ? `. ${words.sorting.up}` : ""}`;
    return reading.sorting[layer].length === 0 ? words.sorting.nobody : words.sorting.paused(time);
  };
  return (
    <div class="beside-count">
      <p class="clock-words">{says()}</p>
      <fieldset class="people">
        <legend class="out-of-sight">{words.sorting.question}</legend>
        <button
          type="button"
          class="key pause"
          disabled={people === 0}
          data-people="0"
          onClick={() => void model.sort(0)}
        >
          {words.sorting.pause}
        </button>
        {PEOPLE.map((count) => (
          <button
            type="button"
            key={count}
            class={`key ${people === count ? "solid" : ""}`}
            aria-pressed={people === count}
            aria-label={words.sorting.key(count)}
            data-people={count}
            onClick={() => void model.sort(count)}
          >
            {count}
          </button>
        ))}
        <button
          type="button"
          class={`key ${people > PEOPLE.length ? "solid" : ""}`}
          data-opens="people"
          onClick={() => model.open("people")}
        >
          {people > PEOPLE.length ? people : words.sorting.more}
        </button>
      </fieldset>
    </div>
  );
};

/** Mustard water: poured now, how much, how long ago, and until when to look. */
export const MustardRow = (props: { readonly model: HoleModel; readonly stored: StoredHole }) => {
  const { model, stored } = props;
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const reading = model.reading.value;
  const latest = reading.mustard.at(-1);
  const now = useNow(latest !== undefined);
  const told = mustardNow(reading, now).at(-1);
  const wait = stored.header.mustardMin;
  const over = wait !== null && told !== undefined && told.agoMs >= wait * MINUTE_MS;
  if (latest === undefined || told === undefined)
    return (
      <div class="beside-count">
        <p class="clock-words">{words.mustard.eyes}</p>
        <div class="keys">
          <button type="button" class="key solid" data-answer="pour" onClick={() => void model.pour()}>
            {words.mustard.pour}
          </button>
        </div>
      </div>
    );
  const { tongue } = house.words.value.common;
  const { litres } = latest.entry;
  const { habits } = house.settings.value;
  const clock = (atMs: number) => writeClock(atMs, tongue);
  const ends = wait === null ? null : clock(latest.poured.lookedAtMs + wait * MINUTE_MS);
  return (
    <div class="beside-count">
      <p class="clock-words">
        {words.mustard.poured(
          Math.floor(told.agoMs / MINUTE_MS),
          clock(latest.poured.lookedAtMs),
          litres === null ? null : litresWords(litres, habits),
        )}{" "}
        <b>
          {told.clocksApart
            ? words.mustard.apart
            : ends === null
              ? ""
              : over
                ? words.mustard.over(ends)
                : words.mustard.lookUntil(ends)}
        </b>
      </p>
      <div class="keys two">
        <button
          type="button"
          class="key"
          data-opens="litres"
          onClick={() => model.open("litres", latest.entry.id)}
        >
          {words.mustard.litres}
        </button>
        <button type="button" class="key" data-answer="pour" onClick={() => void model.pour()}>
          {words.mustard.again}
        </button>
      </div>
    </div>
  );
};
