/** A rope or tape: its name, its marks, its spacing. New, or corrected. */

import type { RecordId } from "../../record/ids.ts";
import type { Rope } from "../../record/kinds/kit.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { NumberLine, numberState } from "../parts/number-line.tsx";
import { useTried } from "../parts/tried.ts";
import { useTyped, withTyped } from "../parts/typed.tsx";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { KitForm, kitFormName } from "./kit-form.tsx";
import { type KnownSize, sizeToKeep } from "./measured.ts";
import { marksRule, spacingRule, spacingText, USUAL } from "./rope-sizes.ts";
import { KIT_WORDS } from "./words.ts";

/** A size put into the form. */
const sizeIn = (size: { readonly marks: number; readonly spacingM: number }, unit: "cm" | "in") => ({
  marks: String(size.marks),
  spacing: { si: size.spacingM, text: spacingText(size.spacingM, unit) },
});

interface RopeFormProps {
  readonly onDone: (id: RecordId<"kit"> | null) => void;
  readonly rope?: { readonly id: RecordId<"kit">; readonly rope: Rope };
}

const Form = (props: RopeFormProps) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS).ropes;
  const unit = house.settings.value.habits.spacing;
  const before = props.rope;
  const first = before === undefined ? null : sizeIn(before.rope, unit);
  const [marks, setMarks] = useTyped("marks", { typed: first?.marks ?? "", confirmed: first !== null });
  // What was typed in another unit is another size.
  const [spacing, setSpacing] = useTyped(`spacing, ${unit}`, {
    typed: first?.spacing.text ?? "",
    confirmed: first !== null,
  });
  const [known, setKnown] = useTyped<KnownSize | null>(`known, ${unit}`, first?.spacing ?? null);
  const [tried, triedNow] = useTried();
  const marksNow = numberState(words, marks, marksRule(kit.marksRefused));
  const spacingNow = numberState(words, spacing, spacingRule(unit, kit.spacingRefused));
  const usual = (size: (typeof USUAL)[keyof typeof USUAL]) => {
    const put = sizeIn(size, unit);
    setMarks({ typed: put.marks, confirmed: true });
    setSpacing({ typed: put.spacing.text, confirmed: true });
    setKnown(put.spacing);
  };
  const sizes = () => {
    if (marksNow.is !== "good" || spacingNow.is !== "good") {
      triedNow();
      return null;
    }
    return {
      marks: marksNow.value,
      spacingM: sizeToKeep(known, spacing.typed, spacingNow.value, unit),
    };
  };
  const fewer = before !== undefined && marksNow.is === "good" && marksNow.value < before.rope.marks;
  return (
    <KitForm<Rope>
      type="rope"
      before={before === undefined ? undefined : { id: before.id, body: before.rope }}
      sizes={sizes}
      {...(fewer ? { touchesMore: kit.fewerMarks(marksNow.value) } : {})}
      onDone={(id) => props.onDone(id ?? null)}
      below={before === undefined ? <p class="aside usual-source">{kit.usualSource}</p> : null}
    >
      {before === undefined ? (
        <fieldset class="usual">
          <legend>{kit.usual}</legend>
          <div class="keys two">
            <Key onPress={() => usual(USUAL.metric)}>{kit.usualMetric}</Key>
            <Key onPress={() => usual(USUAL.foot)}>{kit.usualFoot}</Key>
          </div>
        </fieldset>
      ) : null}
      <NumberLine
        label={kit.marks}
        unit={kit.marksUnit}
        draft={marks}
        onDraft={setMarks}
        state={marksNow}
        tried={tried}
      />
      <NumberLine
        label={kit.spacing(useWordsOf(UNIT_WORDS)[unit])}
        unit={unit}
        hint={kit.spacingHint}
        draft={spacing}
        onDraft={setSpacing}
        state={spacingNow}
        tried={tried}
      />
    </KitForm>
  );
};

/**
 * The form. `onDone` gets the rope once it is written down, or null when the form was closed without.
 * With `rope` it corrects that one.
 */
export const RopeForm = withTyped(({ rope }: RopeFormProps) => kitFormName("rope", rope?.id), Form);
