/** A hole template: its name and its two sides. New, or corrected. */

import type { RecordId } from "../../record/ids.ts";
import type { HoleTemplate } from "../../record/kinds/kit.ts";
import { useHouse } from "../parts/house.ts";
import { useTried } from "../parts/tried.ts";
import { withTyped } from "../parts/typed.tsx";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { KitForm, kitFormName, type OnDone, type Sizes } from "./kit-form.tsx";
import { useMeasured, usePossible } from "./measured.ts";
import { SizeLine } from "./size-line.tsx";
import { SIDE } from "./sizes.ts";
import { KIT_WORDS } from "./words.ts";

interface TemplateFormProps {
  readonly template?: { readonly id: RecordId<"kit">; readonly template: HoleTemplate };
  readonly onDone: OnDone;
}

const Form = (props: TemplateFormProps) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS).templates;
  const unit = house.settings.value.habits.ringSize;
  const unitWord = useWordsOf(UNIT_WORDS)[unit];
  const before = props.template?.template;
  const [tried, triedNow] = useTried();
  const rule = { ...SIDE, refused: kit.refused(usePossible(unit)(SIDE.possible)) };
  const first = useMeasured("first", words, unit, rule, before?.sidesM[0] ?? null, false);
  const second = useMeasured("second", words, unit, rule, before?.sidesM[1] ?? null, true);
  const sizes = (): Sizes<HoleTemplate> | null => {
    if (first.si == null || second.si === undefined) {
      triedNow();
      return null;
    }
    return { sidesM: [first.si, second.si ?? first.si] };
  };
  return (
    <KitForm<HoleTemplate>
      type="hole-template"
      before={
        props.template === undefined ? undefined : { id: props.template.id, body: props.template.template }
      }
      sizes={sizes}
      onDone={props.onDone}
    >
      <SizeLine label={kit.first(unitWord)} unit={unit} of={first} tried={tried} />
      <SizeLine label={kit.second(unitWord)} hint={kit.secondHint} unit={unit} of={second} tried={tried} />
    </KitForm>
  );
};

/** The form. `onDone` gets the template once it is written down, nothing when it was closed without. */
export const TemplateForm = withTyped(
  ({ template }: TemplateFormProps) => kitFormName("hole-template", template?.id),
  Form,
);
