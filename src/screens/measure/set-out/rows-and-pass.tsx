import { useState } from "preact/hooks";
import { readNumber } from "../../../record/number.ts";
import { fromShown, toShown } from "../../../record/units.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { WriteLine } from "../../parts/keys.tsx";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { UNIT_WORDS } from "../../parts/words.units.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { Choices } from "./model.ts";

/** Limits of the record, in metres; what lies outside is not a row spacing or a pass. */
const LIMITS = { rowSpacingM: { min: 0.01, max: 10 }, passWidthM: { min: 0.1, max: 100 } } as const;

/** Row spacing and pass width, in the person's units; both may stay empty. */
export const RowsAndPass = (props: {
  readonly choices: Choices;
  readonly onChange: (patch: Partial<Choices>) => void;
}) => {
  const { words, settings } = useHouse();
  const { habits } = settings.value;
  const units = useWordsOf(UNIT_WORDS);
  const write = (key: keyof typeof LIMITS, quantity: "spacing" | "distance") => (
    <Length
      label={(key === "rowSpacingM" ? words.value.setOut.rowSpacing : words.value.setOut.passWidth)(
        units[habits[quantity]],
      )}
      first={
        props.choices[key] === null
          ? ""
          : writeNumber(toShown(quantity, props.choices[key], habits).value, TONGUE, 2)
      }
      read={(typed) => {
        if (typed.trim() === "") {
          props.onChange({ [key]: null });
          return null;
        }
        const number = readNumber(typed, { min: 0, max: Number.MAX_VALUE });
        if (!number.ok) return sentenceFor(words.value, number.problem);
        const metres = fromShown(quantity, number.value.value, habits);
        const { min, max } = LIMITS[key];
        if (metres < min || metres > max) return words.value.setOut.notALength;
        props.onChange({ [key]: metres });
        return null;
      }}
    />
  );
  return (
    <>
      {write("rowSpacingM", "spacing")}
      {write("passWidthM", "distance")}
      <p class="aside">{words.value.setOut.layoutWhy}</p>
    </>
  );
};

const Length = (props: {
  readonly label: string;
  readonly first: string;
  readonly read: (typed: string) => string | null;
}) => {
  const [typed, setTyped] = useState(props.first);
  const [wrong, setWrong] = useState<string | null>(null);
  return (
    <WriteLine
      numeric
      label={props.label}
      value={typed}
      wrong={wrong}
      onWrite={(text) => {
        setTyped(text);
        setWrong(props.read(text));
      }}
    />
  );
};
