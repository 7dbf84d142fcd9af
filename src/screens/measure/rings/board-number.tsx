/** Numbers of open looks, one after the other, from whichever ring: the moments are kept already. */
import type { ReadonlySignal } from "@preact/signals";
import type { RingNow } from "../../../record/ring/clock.ts";
import { useHouse } from "../../parts/house.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { lookNow } from "./hand.ts";
import type { LookOnBoard } from "./open-looks.ts";
import { LookNumber } from "./read-number.tsx";
import { inReadingOrder, stageOf } from "./status.ts";
import { RING_WORDS } from "./words.ts";

export const BoardNumber = (props: {
  readonly rings: readonly DayRing[];
  readonly now: ReadonlySignal<RingNow>;
  readonly open: readonly LookOnBoard[];
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).board;
  const [first] = props.open;
  if (first === undefined) return null;
  const running = inReadingOrder(
    props.rings.filter((ring) => stageOf(ring) === "running"),
    props.now.peek(),
  );
  return (
    <LookNumber
      key={first.look.look.id}
      ring={first.ring}
      look={first.look}
      waiting={props.open.length}
      behindRefill={false}
      onWritten={async (written) => (await written) !== null}
      onLater={props.onClose}
      above={
        <p class="letters">
          {words.others}
          {running.map((ring) => (
            <button
              key={ring.id}
              type="button"
              class="key"
              aria-label={`${words.readNow}: ${words.ringOf(ring.letter)}`}
              onClick={() => void lookNow(house, ring.id)}
            >
              {ring.letter}
            </button>
          ))}
        </p>
      }
    />
  );
};
