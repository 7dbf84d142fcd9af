/** Big figures: no keys, legible from two metres. Depth so far of each ring and its next reading by the clock. */
import { type ReadonlySignal, useComputed } from "@preact/signals";
import type { RecordId } from "../../../record/ids.ts";
import type { RingNow } from "../../../record/ring/clock.ts";
import { useScreenOn } from "../../parts/can-ring.ts";
import { useHouse } from "../../parts/house.ts";
import { writeClock } from "../../parts/numbers.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type BoardRing, useBoard } from "./board-model.ts";
import { depthFigure } from "./figures.ts";
import { resultOf } from "./result.ts";
import { inReadingOrder, nextReading, stageOf } from "./status.ts";
import { useNow } from "./tick.ts";
import { RING_WORDS } from "./words.ts";
import "./rings.css";

const BigRow = (props: { readonly of: BoardRing; readonly now: ReadonlySignal<RingNow> }) => {
  const house = useHouse();
  const { board } = useWordsOf(RING_WORDS);
  const { tongue } = house.words.value.common;
  const { habits } = house.settings.value;
  const { of, now } = props;
  const ring = of.ring.value;
  const clock = useComputed(() => {
    const next = nextReading(of.ring.value, now.value);
    return next === null ? "" : writeClock(next.atMs, tongue);
  });
  const when = useComputed(() => {
    const next = nextReading(of.ring.value, now.value);
    if (next === null) return "";
    return next.when === "late" ? board.late(next.minutes) : next.when === "now" ? board.now : board.next;
  });
  const { soFar } = resultOf(ring);
  const figure = soFar === null ? null : depthFigure(soFar.mm, habits);
  return (
    <li class="big-row">
      <b>{ring.letter}</b>
      <b class="big-mm">
        {figure === null ? "–" : figure.value}
        <small> {figure === null ? habits.depthSoaked : figure.unit}</small>
      </b>
      <span class="big-next">
        {clock}
        <small>
          {stageOf(ring) === "stopped" ? board.over : stageOf(ring) === "waiting" ? board.waitingShort : when}
        </small>
      </span>
    </li>
  );
};

export const BigFiguresScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).big;
  const model = useBoard(props.visit);
  const now = useNow();
  useScreenOn();
  const order = useComputed(() =>
    inReadingOrder(
      model.rings.value.map(({ ring }) => ring.value),
      now.value,
    )
      .map(({ id }) => id)
      .join(" "),
  );
  if (model.board.value === undefined) return <div class="frame" aria-busy="true" />;
  const rings = order.value.split(" ").flatMap((id) => model.rings.value.filter((one) => one.id === id));
  return (
    <main class="big-page">
      <h1 class="out-of-sight">{words.title}</h1>
      <ul class="big-rows">
        {rings.map((one) => (
          <BigRow key={one.id} of={one} now={now} />
        ))}
      </ul>
      {rings.length === 0 ? <p class="big-leave">{words.none}</p> : null}
      <button
        type="button"
        class="big-leave"
        onClick={() => house.goInstead({ at: "rings", visit: props.visit })}
      >
        {words.leave}
      </button>
    </main>
  );
};
