/** Own sizes of a hole: a template from the kit, or sides typed; depth and minutes. */
import { useEffect, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { readNumber } from "../../../record/number.ts";
import { fromShown, toShown, type UnitHabits } from "../../../record/units.ts";
import { type Catalogue, sentenceFor } from "../../catalogue.ts";
import { KIT_FORM } from "../../kit/kit-form.tsx";
import { TemplateForm } from "../../kit/template-form.tsx";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key, WriteLine } from "../../parts/keys.tsx";
import { writeNumber } from "../../parts/numbers.ts";
import type { Listed } from "../../parts/reader.ts";
import { useTyped } from "../../parts/typed.tsx";
import { typedHere } from "../../parts/typed-store.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { UNIT_WORDS } from "../../parts/words.units.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type Dimensions, isTemplate } from "./new-model.ts";
import { sidesWords } from "./sizes.ts";
import { HOLE_WORDS } from "./words.ts";

/** Limits of the record. */
const SIDE_M = { min: 0.02, max: 3 } as const;
const DEPTH_M = { min: 0.01, max: 3 } as const;
const MINUTES = { min: 0.5, max: 600 } as const;
const MUSTARD_MIN = { min: 0.5, max: 240 } as const;

interface Written {
  readonly template: RecordId<"kit"> | null;
  readonly side: string;
  readonly otherSide: string;
  readonly depth: string;
  readonly minutes: string;
  readonly mustard: string;
}

type Read = { readonly value: number | null; readonly wrong: string | null };

const read = (
  words: Catalogue,
  typed: string,
  limits: { readonly min: number; readonly max: number },
  outside: string,
  toRecord: (value: number) => number = (value) => value,
): Read => {
  if (typed.trim() === "") return { value: null, wrong: null };
  const number = readNumber(typed, { min: -Number.MAX_VALUE, max: Number.MAX_VALUE });
  if (!number.ok) return { value: null, wrong: sentenceFor(words, number.problem) };
  const value = toRecord(number.value.value);
  return value >= limits.min && value <= limits.max
    ? { value, wrong: null }
    : { value: null, wrong: outside };
};

const shown = (metres: number | undefined, habits: UnitHabits): string =>
  metres === undefined ? "" : writeNumber(toShown("ringSize", metres, habits).value, TONGUE, 1);

const minutesShown = (minutes: number | null | undefined): string =>
  minutes === null || minutes === undefined ? "" : writeNumber(minutes, TONGUE, 1);

export const OwnSizes = (props: {
  readonly templates: readonly Listed<"kit">[];
  readonly first: Dimensions | null;
  /** Null as long as something needed is not written. */
  readonly onChange: (own: Dimensions | null) => void;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(HOLE_WORDS);
  const { habits } = house.settings.value;
  const { first, templates, onChange } = props;
  // What was typed in another unit is another size.
  const [written, setWritten] = useTyped<Written>(
    `own sizes, ${habits.ringSize}`,
    {
      template: first?.template ?? null,
      side: shown(first?.sidesM?.[0], habits),
      otherSide: shown(first?.sidesM?.[1], habits),
      depth: shown(first?.depthM, habits),
      minutes: minutesShown(first?.minutes),
      mustard: minutesShown(first?.mustardMin),
    },
    ({ template }) => isTemplate(template, templates, first),
  );
  const [adding, setAdding] = useState(() => typedHere(KIT_FORM).length > 0);
  const metres = (value: number) => fromShown("ringSize", value, habits);
  const side = read(catalogue, written.side, SIDE_M, words.dig.notASize, metres);
  const otherSide = read(catalogue, written.otherSide, SIDE_M, words.dig.notASize, metres);
  const depth = read(catalogue, written.depth, DEPTH_M, words.dig.notASize, metres);
  const minutes = read(catalogue, written.minutes, MINUTES, words.dig.notMinutes);
  const mustard = read(catalogue, written.mustard, MUSTARD_MIN, words.dig.notMinutes);
  const wrong = [minutes, mustard].some((one) => one.wrong !== null);
  useEffect(() => {
    const sides: [number, number] | null =
      side.value === null || otherSide.value === null ? null : [side.value, otherSide.value];
    onChange(
      wrong || depth.value === null || (written.template === null && sides === null)
        ? null
        : {
            template: written.template,
            sidesM: written.template === null ? sides : null,
            depthM: depth.value,
            minutes: minutes.value,
            mustardMin: mustard.value,
          },
    );
    // Only what is written decides.
  }, [written]);
  const line = (key: Exclude<keyof Written, "template">, label: string, is: Read) => (
    <WriteLine
      numeric
      label={label}
      value={written[key]}
      wrong={is.wrong}
      onWrite={(text) => setWritten({ ...written, [key]: text })}
    />
  );
  const unit = useWordsOf(UNIT_WORDS)[habits.ringSize];
  return (
    <section>
      {templates.length === 0 ? null : (
        <Choice
          question={words.dig.template}
          options={[
            ...templates.flatMap(({ id, body }) =>
              body.type === "hole-template"
                ? [
                    {
                      value: id as RecordId<"kit"> | "none",
                      label: body.name === "" ? catalogue.common.noName : body.name,
                      hint: sidesWords(words, body.sidesM, habits),
                    },
                  ]
                : [],
            ),
            { value: "none" as const, label: words.dig.noTemplate },
          ]}
          chosen={written.template ?? "none"}
          onChoose={(id) => setWritten({ ...written, template: id === "none" ? null : id })}
        />
      )}
      {adding ? (
        <TemplateForm
          onDone={(id) => {
            if (id !== undefined) setWritten((before) => ({ ...before, template: id }));
            setAdding(false);
          }}
        />
      ) : (
        <div class="keys beside">
          <Key onPress={() => setAdding(true)}>{words.dig.addTemplate}</Key>
        </div>
      )}
      {written.template === null && !adding ? (
        <div class="two-lines-of-writing">
          {line("side", words.dig.side(unit), side)}
          {line("otherSide", words.dig.otherSide(unit), otherSide)}
        </div>
      ) : null}
      {line("depth", words.dig.depth(unit), depth)}
      {line("minutes", words.dig.ownMinutes, minutes)}
      {line("mustard", words.dig.ownMustard, mustard)}
    </section>
  );
};
