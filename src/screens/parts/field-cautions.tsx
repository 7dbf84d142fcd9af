/** What to mind before a line, a ring or a hole, said where and when it matters. It never holds anyone up. */
import type { ComponentChild } from "preact";
import { useState } from "preact/hooks";
import { toSi, type UnitHabits } from "../../record/units.ts";
import { type CautionsRead, cautionsDue, type DueCaution, isOfThisPlace, nowRead } from "./cautions-due.ts";
import { useHouse } from "./house.ts";
import { Key, LinkKey } from "./keys.tsx";
import { lengthWords } from "./lengths.ts";
import { useLive } from "./live.ts";
import { writeDay, writeNumber } from "./numbers.ts";
import { type CautionsAt, readCautionFacts } from "./read-cautions.ts";
import { href } from "./route.ts";
import { CAUTION_WORDS } from "./words.cautions.ts";
import { TONGUE } from "./words.common.ts";
import { useWordsOf } from "./words-of.ts";
import "./field-cautions.css";

/** What has to be said at a set-out. */
export interface ShownCautions {
  readonly test: CautionsAt["test"];
  /** Those of this place first; empty when nothing has to be said. */
  readonly list: readonly DueCaution[];
  /** Keeps on this device that the list was read. */
  readonly understood: () => void;
  /** Litres poured into rings today, on whatever field; nought when none was. */
  readonly litresToday: number;
}

/** The cautions of a set-out; undefined while they are read. */
const useCautions = (at: CautionsAt): ShownCautions | undefined => {
  const house = useHouse();
  const { cautionsRead } = house.settings.value;
  const found = useLive(() => readCautionFacts(house, at), [at.visit, at.field, at.test, at.person]);
  // What was read before the screen opened counts; a person who is chosen on it is asked anew.
  const [known, setKnown] = useState<CautionsRead>(cautionsRead);
  if (found === undefined) return undefined;
  const list = cautionsDue(found.facts, known);
  return {
    test: at.test,
    list,
    litresToday: found.litresToday,
    understood: () => {
      const read = nowRead(house.settings.value.cautionsRead, list, found.facts.nowMs);
      setKnown(read);
      house.changeSettings({ cautionsRead: read });
    },
  };
};

/** A form that is drawn once its cautions are known: nothing pushes the keys down afterwards. */
export const WithCautions = (
  props: Omit<CautionsAt, "person"> & { readonly children: (now: ShownCautions) => ComponentChild },
) => {
  const { visit, field, test } = props;
  const now = useCautions({ visit, field, test, person: useHouse().settings.value.person });
  return now === undefined ? <div class="frame" aria-busy="true" /> : props.children(now);
};

const LB_PER_KG = 2.204_62;

/** The weight of so much water: 1 L is 1 kg. */
const weightWords = (litres: number, habits: UnitHabits): string =>
  habits.waterCarried === "L"
    ? `${writeNumber(litres, TONGUE, 1)} kg`
    : `${writeNumber(litres * LB_PER_KG, TONGUE)} lb`;

/** The cautions; nothing when none is due. */
export const Cautions = (props: { readonly now: ShownCautions }) => {
  const house = useHouse();
  const words = useWordsOf(CAUTION_WORDS);
  const { tongue } = house.words.value.common;
  const { habits } = house.settings.value;
  const { now } = props;
  if (now.list.length === 0) return null;
  return (
    <section class="cautions">
      <h2>{now.test === "line" ? words.titleLine : words.title}</h2>
      <ul>
        {now.list.map(({ name, key, day }) => (
          <li key={key} class={isOfThisPlace(name) ? "of-this-place" : ""}>
            <b>{day === null ? words.names[name].what : words.sprayedOn(writeDay(day, tongue))}</b>
            {isOfThisPlace(name) ? " " : ": "}
            {words.names[name].mind}
            {name === "lifting" && now.litresToday > 0 ? (
              <>
                {" "}
                {words.pouredToday(
                  lengthWords("waterCarried", toSi(now.litresToday, "L"), habits),
                  weightWords(now.litresToday, habits),
                )}
              </>
            ) : null}
          </li>
        ))}
      </ul>
      <p>{words.local}</p>
      <div class="keys two">
        <LinkKey to={href({ at: "help-topic", topic: "cautions" })}>{words.all}</LinkKey>
        <Key onPress={now.understood}>{words.taken}</Key>
      </div>
    </section>
  );
};
