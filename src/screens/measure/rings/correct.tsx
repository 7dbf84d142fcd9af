/** Another answer in the place of one that stands there; what stood there stays on record, struck through. */
import { useState } from "preact/hooks";
import type { Draft } from "../../../record/command/command.ts";
import type { Entry } from "../../../record/entry.ts";
import type { Timed } from "../../../record/ring/entries.ts";
import { useHouse } from "../../parts/house.ts";
import { Halves, Key, Tick } from "../../parts/keys.tsx";
import { useOnce } from "../../parts/once.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { clockWithSeconds } from "./figures.ts";
import { correct } from "./hand.ts";
import { levelBounds, pourBounds } from "./numbers-of-ring.ts";
import { type PadAnswer, PadQuestion } from "./pad-question.tsx";
import { Panel } from "./panel.tsx";
import type { RingModel } from "./ring-model.ts";
import { valueText } from "./say.ts";
import type { When } from "./when.ts";
import { RING_WORDS } from "./words.ts";

type Correctable = Extract<Entry, { type: "level" | "pour" | "gone" | "start" | "stop" | "happened" }>;

const isCorrectable = (entry: Entry): entry is Correctable =>
  ["level", "pour", "gone", "start", "stop", "happened"].includes(entry.type);

/** The same entry with another number, another way of reading, or only another moment. */
const draftOf = (
  entry: Correctable,
  answer: PadAnswer | null,
  more: { readonly reads?: "water-depth" | "down-from-rim"; readonly afterRefill?: boolean },
  timed: Timed,
): Draft => {
  const number = answer === null ? null : { value: answer.read.value, typed: answer.read.typed };
  const odd = answer?.odd === true ? { unusual: true as const } : {};
  switch (entry.type) {
    case "level": {
      const { ring, unit, value, typed, of } = entry;
      return {
        type: "level",
        ring,
        unit,
        ...(number ?? { value, typed }),
        ...odd,
        reads: more.reads ?? entry.reads,
        ...(of === undefined ? {} : { of }),
        ...((more.afterRefill ?? entry.afterRefill === true) ? { afterRefill: true as const } : {}),
        timed,
      };
    }
    case "pour": {
      const { ring, unit, value, typed } = entry;
      return { type: "pour", ring, unit, ...(number ?? { value, typed }), ...odd, timed };
    }
    case "gone":
      return {
        type: "gone",
        ring: entry.ring,
        timed,
        ...(entry.of === undefined ? {} : { of: entry.of }),
      };
    case "start":
      return { type: "start", timed };
    case "stop":
      return { type: "stop", why: entry.why, timed };
    case "happened":
      return { type: "happened", what: entry.what, words: entry.words, timed };
  }
};

export const CorrectPanel = (props: { readonly model: RingModel; readonly ring: DayRing }) => {
  const { model, ring } = props;
  const words = useWordsOf(RING_WORDS);
  const house = useHouse();
  const entry = ring.entries.find(({ id }) => id === model.about.value);
  if (entry === undefined || !isCorrectable(entry))
    return (
      <Panel question={words.readings.none}>
        <Key onPress={model.close}>{house.words.value.common.close}</Key>
      </Panel>
    );
  return <Correcting key={entry.id} model={model} ring={ring} entry={entry} />;
};

const Correcting = (props: {
  readonly model: RingModel;
  readonly ring: DayRing;
  readonly entry: Correctable;
}) => {
  const { model, ring, entry } = props;
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const common = house.words.value.common;
  const [typed, setTyped] = useState<string | null>(null);
  const [reads, setReads] = useState(entry.type === "level" ? entry.reads : null);
  const [refilled, setRefilled] = useState(entry.type === "level" && entry.afterRefill === true);
  const [busy, once] = useOnce();
  const clock = clockWithSeconds(entry.lookedAtMs, common.tongue);
  const more = { ...(reads === null ? {} : { reads }), afterRefill: refilled };
  const keep = (answer: PadAnswer | null) =>
    once(async () => {
      // The same moment keeps its clocks; only a time that was typed is another one.
      const moment: When | Correctable = typed === null ? entry : { how: "typed", text: typed };
      const done = correct(house, ring.id, [entry.id], moment, (how) => draftOf(entry, answer, more, how));
      if (await model.took(done, "readings")) model.open("readings");
    });
  const takeOut = () =>
    once(async () => {
      const done = correct(house, ring.id, [entry.id], entry, (how) => ({
        type: "happened",
        what: "missed-reading",
        words: words.readings.takenOut,
        timed: how,
      }));
      if (await model.took(done, "readings")) model.open("readings");
    });
  const above = (
    <div class="ring-above">
      {typed === null ? (
        <Key onPress={() => setTyped("")}>{words.readings.anotherTime(clock)}</Key>
      ) : (
        <label class="when-typed">
          {words.when.clock}
          <input
            type="text"
            inputMode="numeric"
            autocomplete="off"
            maxLength={8}
            placeholder={words.when.clockExample}
            value={typed}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
        </label>
      )}
      {entry.type === "level" && reads !== null ? (
        <Halves
          label={words.setOut.reads}
          options={[
            { value: "water-depth", label: words.setOut.readsWords["water-depth"] },
            { value: "down-from-rim", label: words.setOut.readsWords["down-from-rim"] },
          ]}
          chosen={reads}
          onChoose={setReads}
        />
      ) : null}
    </div>
  );
  const question = words.readings.question(valueText(words, entry));
  if (entry.type === "level" || entry.type === "pour")
    return (
      <PadQuestion
        question={question}
        hint={words.readings.oldStays}
        unit={entry.unit}
        first={entry.typed}
        bounds={entry.type === "level" ? levelBounds(ring, entry.unit, entry.ring) : pourBounds(entry.unit)}
        busy={busy}
        three
        onKeep={keep}
        above={above}
        over={
          entry.type === "level" && ring.header.way === "ruler" ? (
            <Tick label={words.ring.afterRefill} on={refilled} onChange={setRefilled} />
          ) : null
        }
        beside={
          <>
            <Key onPress={model.close}>{common.close}</Key>
            <Key off={busy} onPress={takeOut}>
              {words.readings.takeOut}
            </Key>
          </>
        }
      />
    );
  return (
    <Panel question={question} hint={words.readings.oldStays} above={above}>
      <div class="keys two">
        <Key onPress={model.close}>{common.close}</Key>
        <Key look="solid" off={busy || typed === null || typed === ""} onPress={() => keep(null)}>
          {common.done}
        </Key>
      </div>
      {entry.type === "gone" || (entry.type === "happened" && entry.what !== "missed-reading") ? (
        <Key off={busy} onPress={takeOut}>
          {words.readings.takeOut}
        </Key>
      ) : null}
    </Panel>
  );
};
