/** A ruler: its name and the smallest step that can be read on it. New, or corrected. */

import type { RecordId } from "../../record/ids.ts";
import type { Ruler } from "../../record/kinds/kit.ts";
import { toSi } from "../../record/units.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useTried } from "../parts/tried.ts";
import { withTyped } from "../parts/typed.tsx";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { KitForm, kitFormName, type OnDone } from "./kit-form.tsx";
import { useMeasured, usePossible } from "./measured.ts";
import { SizeLine } from "./size-line.tsx";
import { STEP } from "./sizes.ts";
import { KIT_WORDS } from "./words.ts";

/** Steps that rulers are made with (common practice, no source). */
const USUAL_STEPS = {
  mm: { mm1: toSi(1, "mm"), mm5: toSi(5, "mm") },
  in: { in16: toSi(1 / 16, "in"), in8: toSi(1 / 8, "in") },
} as const;

interface RulerFormProps {
  readonly ruler?: { readonly id: RecordId<"kit">; readonly ruler: Ruler };
  readonly onDone: OnDone;
}

const Form = (props: RulerFormProps) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS).rulers;
  const unit = house.settings.value.habits.level;
  const [tried, triedNow] = useTried();
  const step = useMeasured(
    "step",
    words,
    unit,
    { ...STEP, refused: kit.refused(usePossible(unit)(STEP.possible)) },
    props.ruler?.ruler.stepM ?? null,
    false,
  );
  const sizes = () => {
    if (step.si == null) {
      triedNow();
      return null;
    }
    return { stepM: step.si };
  };
  const usual = Object.entries(USUAL_STEPS[unit]) as [keyof typeof kit.usualSteps, number][];
  return (
    <KitForm<Ruler>
      type="ruler"
      before={props.ruler === undefined ? undefined : { id: props.ruler.id, body: props.ruler.ruler }}
      sizes={sizes}
      onDone={props.onDone}
    >
      {props.ruler === undefined ? (
        <fieldset class="usual">
          <legend>{kit.usual}</legend>
          <div class="keys two">
            {usual.map(([name, stepM]) => (
              <Key key={name} onPress={() => step.put(stepM)}>
                {kit.usualSteps[name]}
              </Key>
            ))}
          </div>
        </fieldset>
      ) : null}
      <SizeLine
        label={kit.step(useWordsOf(UNIT_WORDS)[unit])}
        hint={kit.stepHint}
        unit={unit}
        of={step}
        tried={tried}
      />
    </KitForm>
  );
};

/** The form. `onDone` gets the ruler once it is written down, nothing when it was closed without. */
export const RulerForm = withTyped(({ ruler }: RulerFormProps) => kitFormName("ruler", ruler?.id), Form);
