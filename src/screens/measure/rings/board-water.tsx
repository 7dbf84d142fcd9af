/** Water of the day: what was poured, what is left, and which rings to finish first when it runs short. */
import type { ReadonlySignal } from "@preact/signals";
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import type { RingNow } from "../../../record/ring/clock.ts";
import { fromShown, inUnit, toSi } from "../../../record/units.ts";
import { litresUsed } from "../../../science/infiltration/water.ts";
import { WorkedOutLater } from "../../findings/worked-out-later.tsx";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { type NumberDraft, NumberLine, numberState } from "../../parts/number-line.tsx";
import { useFocusHere } from "../../parts/opens-here.tsx";
import { UNIT_WORDS } from "../../parts/words.units.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { waterText, weightText } from "./figures.ts";
import { finishing, litresLeft, sayWaterReady, type WaterReady, waterReady } from "./water-ready.ts";
import { RING_WORDS } from "./words.ts";

/** More than a large tank (own choice, no source). */
const MOST_LITRES = 2000;
/** No one carries more in one go (own choice, no source). */
const HEAVY_LITRES = 10;

export const BoardWater = (props: {
  readonly visit: RecordId<"visit">;
  readonly rings: readonly DayRing[];
  readonly now: ReadonlySignal<RingNow>;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).water;
  const { habits } = house.settings.value;
  const [ready, setReady] = useState<WaterReady | null>(() => waterReady(props.visit));
  const [asking, setAsking] = useState(false);
  const used = litresUsed(props.rings);
  // As long as nothing was poured since it was said, it is as exact as what was said.
  const since = used.value === ready?.usedThen ? litresUsed([]) : used;
  const left = ready === null ? null : litresLeft(ready, used.value);
  const [form, line] = useFocusHere<HTMLDivElement, HTMLDivElement>(asking);
  return asking ? (
    <div ref={form} tabIndex={-1}>
      <WaterForm
        litres={left}
        onKeep={(litres) => {
          const said = { litres, usedThen: used.value };
          sayWaterReady(props.visit, said);
          setReady(said);
          setAsking(false);
        }}
        onClose={() => setAsking(false)}
      />
    </div>
  ) : (
    <div ref={line}>
      <button type="button" class="board-water" onClick={() => setAsking(true)}>
        <span>{words.usedLine(words.used(waterText(used.value, habits), used))}</span>
        <span>{left === null ? words.ask : words.line(words.left(waterText(left, habits), since))}</span>
      </button>
      {left === null ? null : <FinishFirst rings={props.rings} now={props.now} left={left} />}
    </div>
  );
};

const FinishFirst = (props: {
  readonly rings: readonly DayRing[];
  readonly now: ReadonlySignal<RingNow>;
  readonly left: number;
}) => {
  const { settings } = useHouse();
  const { water: words, board } = useWordsOf(RING_WORDS);
  const { habits } = settings.value;
  // What is needed changes slowly: it is worked out when something was read, not at every second.
  const plan = finishing(props.rings, props.now.peek(), props.left);
  const { order } = plan;
  if (order.length === 0 || order.every(({ enough }) => enough)) return null;
  const letterOf = (id: string): string => props.rings.find((ring) => ring.id === id)?.letter ?? "";
  return (
    <section class="board-part board-short">
      <p>
        <b>{order.some(({ enough }) => enough) ? words.short : words.tooLittle}</b>
      </p>
      <ol>
        {order.map(({ id, litres, enough }) => (
          <li key={id}>
            {`${board.ringOf(letterOf(id))}: ${
              litres !== null ? words.needs(waterText(litres, habits)) : words.unknown
            }, ${enough ? words.reaches : words.notEnough}`}
          </li>
        ))}
      </ol>
      <WorkedOutLater of={words.short} methods={plan.methods} sources={plan.sources} />
    </section>
  );
};

const WaterForm = (props: {
  readonly litres: number | null;
  readonly onKeep: (litres: number) => void;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(RING_WORDS).water;
  const { habits } = house.settings.value;
  const unit = habits.waterCarried;
  const first = props.litres === null ? "" : String(Number(inUnit(toSi(props.litres, "L"), unit).toFixed(1)));
  const [draft, setDraft] = useState<NumberDraft>({ typed: first, confirmed: first !== "" });
  const [tried, setTried] = useState(false);
  const most = inUnit(toSi(MOST_LITRES, "L"), unit);
  const state = numberState(catalogue, draft, {
    bounds: { min: -Number.MIN_VALUE, max: most },
    refuse: (value) => (value < 0 ? (catalogue.problems["record/number-not-a-number"] ?? "") : null),
  });
  const litres = state.is === "good" ? inUnit(fromShown("waterCarried", state.value, habits), "L") : null;
  return (
    <section class="board-part keys beside">
      <NumberLine
        label={words.question(useWordsOf(UNIT_WORDS)[unit])}
        unit={unit}
        hint={
          litres !== null && litres > HEAVY_LITRES
            ? words.hint(words.weighs[unit], weightText(litres, habits))
            : words.hintPlain(words.weighs[unit])
        }
        draft={draft}
        onDraft={setDraft}
        state={state}
        tried={tried}
      />
      <div class="keys two">
        <Key onPress={props.onClose}>{catalogue.common.close}</Key>
        <Key
          look="solid"
          onPress={() => {
            if (litres === null) setTried(true);
            else props.onKeep(litres);
          }}
        >
          {words.keep}
        </Key>
      </div>
    </section>
  );
};
