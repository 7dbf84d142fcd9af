/** Questions that a ring asks by itself: two answers for one look, two starts, water that rose. */
import type { Command, Draft } from "../../../record/command/command.ts";
import type { GoneEntry, LevelEntry, RulerReads, StartEntry } from "../../../record/ring/entries.ts";
import type { LevelRead } from "../../../record/ring/events.ts";
import { type House, useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useOnce } from "../../parts/once.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { clockWithSeconds } from "./figures.ts";
import { correct } from "./hand.ts";
import { Panel } from "./panel.tsx";
import type { RingModel } from "./ring-model.ts";
import { lastRise } from "./rose.ts";
import { valueText } from "./say.ts";
import { RING_WORDS } from "./words.ts";

interface Of {
  readonly model: RingModel;
  readonly ring: DayRing;
}

/** How many questions have two answers. */
export const doubtsIn = ({ reading }: DayRing): number =>
  reading.inDoubt.length + (reading.startsInDoubt.length > 0 ? 1 : 0);

/** A level as it was, with another way of reading the ruler or behind a refill. */
const levelDraft = (
  { ring, value, unit, typed, reads, of, afterRefill, unusual, timed }: LevelEntry,
  change: { readonly reads?: RulerReads; readonly afterRefill?: true },
): Draft => ({
  type: "level",
  ring,
  value,
  unit,
  typed,
  timed,
  reads: change.reads ?? reads,
  ...(of === undefined ? {} : { of }),
  ...(change.afterRefill === true || afterRefill === true ? { afterRefill: true as const } : {}),
  ...(unusual === undefined ? {} : { unusual }),
});

export const otherWay = (reads: RulerReads): RulerReads =>
  reads === "water-depth" ? "down-from-rim" : "water-depth";

const turned = (house: House, ring: DayRing, level: LevelRead): Command => ({
  op: "append",
  id: ring.id,
  frame: null,
  at: { ...house.pen.moment(), lookedAtMs: level.entry.lookedAtMs },
  draft: {
    ...levelDraft(level.entry, { reads: otherWay(level.reads) }),
    replaces: [level.entry.id],
  } as Draft,
});

/** Every level of the ring was read the other way round, and those to come will be. */
const turnAll = async (house: House, ring: DayRing) => {
  const levels = ring.reading.events.filter((event) => event.type === "level");
  const written = await house.write(
    ...levels.map((level) => turned(house, ring, level)),
    house.pen.change(ring.id, { rulerReads: otherWay(ring.header.rulerReads) }),
  );
  if (written.ok) return written.value.slice(0, levels.length);
  house.tell(written.problem);
  return null;
};

const turnOne = async (house: House, ring: DayRing, level: LevelRead) => {
  const written = await house.write(turned(house, ring, level));
  if (written.ok) return written.value;
  house.tell(written.problem);
  return null;
};

/** The water rose without a refill. */
export const RosePanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const [busy, once] = useOnce();
  const rise = lastRise(ring);
  if (rise === null)
    return (
      <Panel question={words.rose.settled}>
        <Key look="solid" onPress={model.close}>
          {house.words.value.common.done}
        </Key>
      </Panel>
    );
  const { before, now } = rise;
  const after = () =>
    correct(house, ring.id, [now.entry.id], now.entry, () => levelDraft(now.entry, { afterRefill: true }));
  const all = () => turnAll(house, ring);
  const only = () => turnOne(house, ring, now);
  const key = (label: string, write: () => ReturnType<typeof correct>, look: "straw" | "plain" = "plain") => (
    <Key
      off={busy}
      look={look}
      onPress={() =>
        once(async () => {
          if (await model.took(write(), "keys")) await model.refresh();
        })
      }
    >
      {label}
    </Key>
  );
  return (
    <Panel
      question={words.rose.question[otherWay(now.reads)]}
      hint={words.rose.hint(valueText(words, before.entry), valueText(words, now.entry))}
    >
      {key(words.rose.all[otherWay(now.reads)], all, "straw")}
      {key(words.rose.only[otherWay(now.reads)], only)}
      {key(words.rose.refilled, after)}
      <Key off={busy} onPress={model.close}>
        {words.rose.asRead}
      </Key>
    </Panel>
  );
};

/** Two phones gave two answers: none of them counts until one is chosen. */
export const DoubtsPanel = ({ model, ring }: Of) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const tongue = house.words.value.common.tongue;
  const [busy, once] = useOnce();
  const { inDoubt, startsInDoubt } = ring.reading;
  const choose = (answer: LevelEntry | GoneEntry, all: readonly { readonly id: string }[]) =>
    once(async () => {
      const draft = (): Draft =>
        answer.type === "level"
          ? levelDraft(answer, {})
          : {
              type: "gone",
              ring: answer.ring,
              timed: answer.timed,
              ...(answer.of === undefined ? {} : { of: answer.of }),
            };
      const ids = all.map(({ id }) => id);
      await model.took(correct(house, ring.id, ids, answer, draft));
    });
  const chooseStart = (start: StartEntry) =>
    once(async () => {
      const ids = startsInDoubt.map(({ id }) => id);
      await model.took(correct(house, ring.id, ids, start, (timed) => ({ type: "start", timed })));
    });
  return (
    <>
      <main class="ring-list">
        <h2 class="running-question" tabIndex={-1}>
          {words.doubts.title}
        </h2>
        {doubtsIn(ring) === 0 ? <p>{words.doubts.none}</p> : null}
        {startsInDoubt.length === 0 ? null : (
          <section>
            <h3>{words.doubts.starts}</h3>
            <div class="keys">
              {startsInDoubt.map((start) => (
                <Key key={start.id} off={busy} onPress={() => chooseStart(start)}>
                  {clockWithSeconds(start.lookedAtMs, tongue)}
                </Key>
              ))}
            </div>
          </section>
        )}
        {inDoubt.map(({ look, moment, answers }) => (
          <section key={look.id}>
            <h3>{words.doubts.look(clockWithSeconds(moment.lookedAtMs, tongue))}</h3>
            <div class="keys two">
              {answers.map((answer) => (
                <Key key={answer.id} off={busy} onPress={() => choose(answer, answers)}>
                  {valueText(words, answer)}
                </Key>
              ))}
            </div>
          </section>
        ))}
      </main>
      <div class="count-keys">
        <Key look="solid" onPress={model.close}>
          {house.words.value.common.done}
        </Key>
      </div>
    </>
  );
};
