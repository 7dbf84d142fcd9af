/** The key that looks at the outer ring of a double ring: offered beside a look at the inner one, never asked for. */
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useOnce } from "../../parts/once.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { lookNow } from "./hand.ts";
import type { RingModel } from "./ring-model.ts";
import { RING_WORDS } from "./words.ts";

export const OuterKey = (props: {
  readonly model: RingModel;
  readonly ring: DayRing;
  /** Its water was added just before, with that of the inner ring. */
  readonly behindRefill: boolean;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).ring;
  const { model, ring, behindRefill } = props;
  const [busy, once] = useOnce();
  const look = () =>
    once(async () => {
      const written = lookNow(house, ring.id, "outer");
      if (!(await model.took(written)) || !behindRefill) return;
      const made = (await written)?.[0]?.added[0];
      if (made !== undefined) model.refilled(made.id);
    });
  return ring.header.outer === null ? null : (
    <Key off={busy} onPress={look}>
      {words.readOuter}
    </Key>
  );
};
