/** A ring: its letter, and what is measured on it. New, or corrected. */

import type { RecordId } from "../../record/ids.ts";
import type { Ring } from "../../record/kinds/kit.ts";
import { outOfRoundShare } from "../../science/infiltration/ring-set.ts";
import { useHouse } from "../parts/house.ts";
import { writeNumber } from "../parts/numbers.ts";
import { useTried } from "../parts/tried.ts";
import { withTyped } from "../parts/typed.tsx";
import { TONGUE } from "../parts/words.common.ts";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { KitForm, kitFormName, type OnDone, type Sizes } from "./kit-form.tsx";
import { nextLetter } from "./kit-list.ts";
import { useMeasured, usePossible } from "./measured.ts";
import { RingDrawing } from "./ring-drawing.tsx";
import { SizeLine } from "./size-line.tsx";
import { ACROSS, HIGH } from "./sizes.ts";
import { KIT_WORDS } from "./words.ts";

interface RingFormProps {
  readonly ring?: { readonly id: RecordId<"kit">; readonly ring: Ring };
  readonly onDone: OnDone;
}

const Form = (props: RingFormProps) => {
  const house = useHouse();
  const words = house.words.value;
  const kit = useWordsOf(KIT_WORDS).rings;
  const unit = house.settings.value.habits.ringSize;
  const unitWord = useWordsOf(UNIT_WORDS)[unit];
  const before = props.ring?.ring;
  const [tried, triedNow] = useTried();
  const sizesOf = usePossible(unit);
  const across = { ...ACROSS, refused: kit.acrossRefused(sizesOf(ACROSS.possible)) };
  const first = useMeasured("first", words, unit, across, before?.insideM[0] ?? null, false);
  const second = useMeasured("second", words, unit, across, before?.insideM[1] ?? null, true);
  const high = { ...HIGH, refused: kit.heightRefused(sizesOf(HIGH.possible)) };
  const heights = [
    useMeasured("height 1", words, unit, high, before?.heightsM[0] ?? null, true),
    useMeasured("height 2", words, unit, high, before?.heightsM[1] ?? null, true),
    useMeasured("height 3", words, unit, high, before?.heightsM[2] ?? null, true),
    useMeasured("height 4", words, unit, high, before?.heightsM[3] ?? null, true),
  ];
  const widestInsideM = Math.max(first.si ?? 0, second.si ?? 0);
  const wide = {
    usual: ACROSS.usual,
    possible: [Math.max(widestInsideM, ACROSS.possible[0]), ACROSS.possible[1]] as const,
    refused: widestInsideM > 0 ? kit.outsideRefused : across.refused,
  };
  const outside = useMeasured("outside", words, unit, wide, before?.outsideM ?? null, true);
  const differ = outOfRoundShare([first.si ?? null, second.si ?? null]);
  const sizes = (): Sizes<Ring> | null => {
    const heightsM = heights.map(({ si }) => si);
    if (
      first.si == null ||
      second.si === undefined ||
      outside.si === undefined ||
      heightsM.includes(undefined)
    ) {
      triedNow();
      return null;
    }
    return {
      insideM: [first.si, second.si],
      heightsM: heightsM.filter((si) => typeof si === "number"),
      outsideM: outside.si,
    };
  };
  return (
    <KitForm<Ring>
      type="ring"
      before={props.ring === undefined ? undefined : { id: props.ring.id, body: props.ring.ring }}
      propose={nextLetter}
      sizes={sizes}
      onDone={props.onDone}
    >
      <RingDrawing />
      <p>{kit.measure}</p>
      <SizeLine label={kit.first(unitWord)} unit={unit} of={first} tried={tried} />
      <SizeLine label={kit.second(unitWord)} hint={kit.secondHint} unit={unit} of={second} tried={tried} />
      <p class="out-of-round" role="status">
        {differ === null ? null : kit.outOfRound(writeNumber(differ * 100, TONGUE, 1))}
      </p>
      <fieldset class="heights">
        <legend>{kit.heights(unitWord)}</legend>
        <p class="aside">{kit.heightsHint}</p>
        {heights.map((height, at) => (
          <SizeLine key={String(at)} label={kit.heightAt(at + 1)} unit={unit} of={height} tried={tried} />
        ))}
      </fieldset>
      <SizeLine label={kit.outside(unitWord)} hint={kit.outsideHint} unit={unit} of={outside} tried={tried} />
    </KitForm>
  );
};

/** The form. `onDone` gets the ring once it is written down, nothing when it was closed without. */
export const RingForm = withTyped(({ ring }: RingFormProps) => kitFormName("ring", ring?.id), Form);
