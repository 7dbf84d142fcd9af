/** All readings of a ring, in the order of their moments; each can be touched and corrected. */
import type { Entry } from "../../../record/entry.ts";
import type { InRing } from "../../../record/ring/entries.ts";
import type { RingMoment } from "../../../record/ring/events.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { clockWithSeconds, sinceText } from "./figures.ts";
import { oldAnswers } from "./history.ts";
import type { RingModel } from "./ring-model.ts";
import { valueText } from "./say.ts";
import { RING_WORDS } from "./words.ts";

/** One line of the list. */
export interface ReadingRow {
  readonly entry: Entry;
  readonly moment: RingMoment;
  readonly afterRefill: boolean;
  readonly outer: boolean;
  readonly old: readonly Entry[];
}

/** Everything that counts at a ring, by its moment. */
export const rowsOf = ({ reading, entries }: DayRing): readonly ReadingRow[] => {
  const row = (entry: Entry, moment: RingMoment, ring: InRing = "inner"): ReadingRow => ({
    entry,
    moment,
    afterRefill: entry.type === "level" && entry.afterRefill === true,
    outer: ring === "outer",
    old: oldAnswers(entries, entry),
  });
  const rows = [
    ...(reading.start === null ? [] : [row(reading.start.entry, reading.start.moment)]),
    ...reading.events.map(({ entry, moment, ring }) => row(entry, moment, ring)),
    ...reading.openLooks.map(({ look, moment }) => row(look, moment, look.ring)),
    ...reading.happenings.map(({ entry, moment, ring }) => row(entry, moment, ring)),
    ...(reading.stop === null ? [] : [row(reading.stop.entry, reading.stop.moment)]),
  ];
  // Two of one moment stay in the order in which they were written: the start stands before its first level.
  return rows.sort(
    (a, b) => Math.sign(a.moment.sinceStartMs - b.moment.sinceStartMs) || Math.sign(a.entry.n - b.entry.n),
  );
};

/** What is said beside a reading. */
export const useFlags = (): ((row: ReadingRow) => readonly string[]) => {
  const { flags } = useWordsOf(RING_WORDS);
  return ({ entry, moment, afterRefill, outer, old }) => [
    ...(outer ? [flags.outer] : []),
    ...(afterRefill ? [flags.afterRefill] : []),
    ...(moment.enteredLater ? [flags.enteredLater] : []),
    ...("unusual" in entry && entry.unusual === true ? [flags.unusual] : []),
    ...(moment.clocksApart ? [flags.clocksApart] : []),
    ...(old.length > 0 ? [flags.corrected] : []),
  ];
};

export const ReadingsPanel = (props: { readonly model: RingModel; readonly ring: DayRing }) => {
  const { model, ring } = props;
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const tongue = house.words.value.common.tongue;
  const flagsOf = useFlags();
  const rows = rowsOf(ring);
  return (
    <>
      <main class="ring-list">
        <h2 class="running-question" tabIndex={-1}>
          {words.readings.title}
        </h2>
        {rows.length === 0 ? <p>{words.readings.none}</p> : null}
        <ol class="reading-rows">
          {rows.map((row) => (
            <li key={row.entry.id}>
              <button
                type="button"
                data-reading={row.entry.id}
                data-was={row.old.map(({ id }) => id).join(" ")}
                disabled={row.entry.type === "look"}
                onClick={() => model.open("correct", row.entry.id)}
              >
                <span>
                  {sinceText(row.moment.sinceStartMs)}
                  <small>{clockWithSeconds(row.moment.lookedAtMs, tongue)}</small>
                </span>
                <span>
                  <b>{valueText(words, row.entry)}</b>
                  {row.old.map((old) => (
                    <s key={old.id}>{valueText(words, old)}</s>
                  ))}
                  <small>{flagsOf(row).join(" · ")}</small>
                </span>
              </button>
            </li>
          ))}
        </ol>
      </main>
      <div class="count-keys">
        <Key look="solid" onPress={model.close}>
          {house.words.value.common.done}
        </Key>
      </div>
    </>
  );
};
