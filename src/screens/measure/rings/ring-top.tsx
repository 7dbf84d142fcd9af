/** What a running ring says: the next reading, the figure, the headline, the curve. Its height never changes. */
import type { ReadonlySignal } from "@preact/signals";
import type { RingNow } from "../../../record/ring/clock.ts";
import { SENTENCES } from "../../findings/sentences.ts";
import { useHouse } from "../../parts/house.ts";
import { writeClock } from "../../parts/numbers.ts";
import { ScreenWords } from "../../parts/screen-words.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { Curve } from "./curve.tsx";
import type { DayRing } from "./day.ts";
import { doubtsIn } from "./doubt-panels.tsx";
import { depthFigure, minutesText } from "./figures.ts";
import { resultOf } from "./result.ts";
import { headlineCells, saidBeside } from "./result-words.ts";
import type { RingModel } from "./ring-model.ts";
import { lastRise } from "./rose.ts";
import { sayLast } from "./say.ts";
import { lostBy, minutesRun, nextReading, stageOf, whyStopped } from "./status.ts";
import { RING_WORDS } from "./words.ts";

/** When it is to be read next, in words, which change once a minute. */
export const useNextText = (): ((ring: DayRing, now: RingNow) => string) => {
  const words = useWordsOf(RING_WORDS);
  const { tongue } = useHouse().words.value.common;
  return (ring, now) => {
    const next = nextReading(ring, now);
    if (next === null) return words.next.none;
    const clock = writeClock(next.atMs, tongue);
    switch (next.when) {
      case "in":
        return words.next.in(clock, next.minutes);
      case "late":
        return words.next.late(clock, next.minutes);
      default:
        return words.next[next.when](clock);
    }
  };
};

const Question = (props: { readonly ring: DayRing; readonly now: ReadonlySignal<RingNow> }) => {
  const words = useWordsOf(RING_WORDS);
  const house = useHouse();
  const text = useNextText();
  const { ring } = props;
  const now = props.now.value;
  const sentence = (): string => {
    const minutes = minutesRun(ring, now);
    switch (stageOf(ring)) {
      case "waiting":
        return words.ring.ready;
      case "running":
        return text(ring, now);
      case "stopped": {
        const stop = ring.reading.stop;
        const clock = writeClock(stop?.moment.lookedAtMs ?? 0, house.words.value.common.tongue);
        return words.ring.stopped(
          clock,
          minutes === null ? null : minutesText(minutes),
          words.stops[whyStopped(ring) ?? "done"],
        );
      }
    }
  };
  return (
    <h2 class="running-question" tabIndex={-1}>
      {sentence()}
    </h2>
  );
};

export const RingTop = (props: {
  readonly model: RingModel;
  readonly ring: DayRing;
  readonly now: ReadonlySignal<RingNow>;
  readonly guessMm: number | null;
}) => {
  const { model, ring } = props;
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const catalogue = house.words.value;
  const { habits } = house.settings.value;
  const sentences = useWordsOf(SENTENCES);
  const result = resultOf(ring);
  const { soFar, soaking } = result;
  const figure = soFar === null ? null : depthFigure(soFar.mm, habits);
  const last = model.last.value;
  const doubts = doubtsIn(ring);
  const lost = stageOf(ring) === "running" ? lostBy(ring) : null;
  const rise = lastRise(ring);
  const notice = (open: "doubts" | "lost" | "rose", text: string) => (
    <button type="button" class="key ring-notice" data-opens={open} onClick={() => model.open(open)}>
      {text}
    </button>
  );
  return (
    <main class="running ring-top">
      <Question ring={ring} now={props.now} />
      <div class="ring-now">
        <div class="figure">
          <p class="big">
            {figure === null ? "–" : figure.value}
            <small> {figure === null ? habits.depthSoaked : figure.unit}</small>
          </p>
          <p>{soFar === null ? words.result.nothingYet : words.result.soFar(Math.floor(soFar.atMin))}</p>
        </div>
        <div class="ring-curve">
          <Curve points={soaking.ok ? soaking.value.curve : []} widePx={210} highPx={122} table={false} />
        </div>
      </div>
      <dl class="ring-headline">
        {headlineCells(words, result, props.guessMm, habits).map(({ of, value, guessed }) => (
          <div key={of}>
            <dt>{of}</dt>
            <dd>
              <b>{value ?? "–"}</b>
              {guessed === null ? null : <small>{guessed}</small>}
            </dd>
          </div>
        ))}
      </dl>
      {doubts > 0 ? (
        notice("doubts", words.doubts.open(doubts))
      ) : lost !== null ? (
        notice("lost", words.lost.notice[lost])
      ) : rise !== null ? (
        notice("rose", words.rose.notice)
      ) : (
        <p class="ring-said">{saidBeside(catalogue, words, ring, result, habits, sentences).join(" ")}</p>
      )}
      {stageOf(ring) === "running" ? <ScreenWords short /> : null}
      <p class="last">{last === null ? "" : sayLast(words, catalogue.common.tongue, last)}</p>
    </main>
  );
};
