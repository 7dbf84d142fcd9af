/** A bottle for measured pours: its name and what it holds. New, or corrected. */

import type { RecordId } from "../../record/ids.ts";
import type { Bottle } from "../../record/kinds/kit.ts";
import { useHouse } from "../parts/house.ts";
import { useTried } from "../parts/tried.ts";
import { withTyped } from "../parts/typed.tsx";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { KitForm, kitFormName, type OnDone } from "./kit-form.tsx";
import { useMeasured, usePossible } from "./measured.ts";
import { SizeLine } from "./size-line.tsx";
import { HOLDS } from "./sizes.ts";
import { KIT_WORDS } from "./words.ts";

interface BottleFormProps {
  readonly bottle?: { readonly id: RecordId<"kit">; readonly bottle: Bottle };
  readonly onDone: OnDone;
}

const Form = (props: BottleFormProps) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS).bottles;
  const unit = house.settings.value.habits.volume;
  const [tried, triedNow] = useTried();
  const before = props.bottle?.bottle.volumeM3 ?? null;
  const volume = useMeasured(
    "volume",
    words,
    unit,
    { ...HOLDS, refused: kit.refused(usePossible(unit)(HOLDS.possible)) },
    before,
    false,
  );
  const sizes = () => {
    if (volume.si == null) {
      triedNow();
      return null;
    }
    return { volumeM3: volume.si };
  };
  return (
    <KitForm<Bottle>
      type="bottle"
      before={props.bottle === undefined ? undefined : { id: props.bottle.id, body: props.bottle.bottle }}
      sizes={sizes}
      onDone={props.onDone}
    >
      <SizeLine
        label={kit.volume(useWordsOf(UNIT_WORDS)[unit])}
        hint={kit.volumeHint}
        unit={unit}
        of={volume}
        tried={tried}
      />
    </KitForm>
  );
};

/** The form. `onDone` gets the bottle once it is written down, nothing when it was closed without. */
export const BottleForm = withTyped(({ bottle }: BottleFormProps) => kitFormName("bottle", bottle?.id), Form);
