/** One ring on the board: what it is, how much soaked in so far, when it is read next, and the key for that. */
import { type ReadonlySignal, useComputed } from "@preact/signals";
import type { RingNow } from "../../../record/ring/clock.ts";
import { groundName } from "../../parts/ground-name.ts";
import { useHouse } from "../../parts/house.ts";
import { writeClock } from "../../parts/numbers.ts";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { BoardRing } from "./board-model.ts";
import { BoardResult } from "./board-result.tsx";
import type { DayRing } from "./day.ts";
import { doubtsIn } from "./doubt-panels.tsx";
import { depthFigure } from "./figures.ts";
import { resultOf } from "./result.ts";
import { levellingWord, standsStill } from "./result-words.ts";
import { lastRise } from "./rose.ts";
import { minutesRun, nextReading, stageOf, whyStopped } from "./status.ts";
import { RING_WORDS, type RingWords } from "./words.ts";

/** In the place of a moment: it can start right now. */
const AT_ONCE = 0;

/** What the key of a row does. */
export type RowJob = "read" | "start" | "stop";

/** A touch on a key of a row, or a press of the keyboard on it. */
export type OnJob = (ring: DayRing, job: RowJob, touch: MouseEvent) => void;

/** What changes with the clock, as one text each: a signal that stays the same redraws nothing. */
const useTold = (ring: ReadonlySignal<DayRing>, now: ReadonlySignal<RingNow>) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).board;
  const { tongue } = house.words.value.common;
  const next = useComputed(() => nextReading(ring.value, now.value));
  const clock = useComputed(() => (next.value === null ? "" : writeClock(next.value.atMs, tongue)));
  const when = useComputed(() => {
    if (next.value === null) return stageOf(ring.value) === "running" ? words.noneLeft : "";
    const { when: how, minutes } = next.value;
    if (how === "in") return words.in(minutes);
    return how === "late" ? words.late(minutes) : words[how];
  });
  const late = useComputed(() => next.value?.when === "now" || next.value?.when === "late");
  const runs = useComputed(() => minutesRun(ring.value, now.value));
  return { clock, when, late, runs };
};

/** When a ring that waits is best started. */
const useStartWords = (): ((startAtMs: number | undefined) => string) => {
  const house = useHouse();
  const { board } = useWordsOf(RING_WORDS);
  return (startAtMs) => {
    if (startAtMs === undefined) return board.waiting;
    if (startAtMs === AT_ONCE) return board.startNow;
    return board.startAt(writeClock(startAtMs, house.words.value.common.tongue));
  };
};

/** How a running ring does. */
const runningWords = (words: RingWords, ring: DayRing, runs: number | null): readonly string[] => {
  const { board, happenings } = words;
  const result = resultOf(ring);
  const has = (what: string): boolean => ring.reading.happenings.some((one) => one.what === what);
  const burrow = has("burrow") ? [happenings.burrow.toLowerCase()] : [];
  if (has("moved")) return [board.moved, ...burrow];
  if (has("leaked")) return [board.leaked, ...burrow];
  if (lastRise(ring) !== null) return [board.rose, ...burrow];
  const still = standsStill(words, result) === null ? [] : [board.standsStill];
  if (result.levelling.ok) return [...still, levellingWord(words, result), ...burrow];
  return runs === null ? [...still, ...burrow] : [...still, board.running(runs), ...burrow];
};

/** The state of a ring in words: what needs somebody's eyes first. */
const useStateWords = (ring: DayRing, runs: number | null, startAtMs: number | undefined): string => {
  const words = useWordsOf(RING_WORDS);
  const startWords = useStartWords();
  const { board } = words;
  const open = ring.reading.openLooks.length;
  const stage = stageOf(ring);
  return [
    ...(doubtsIn(ring) > 0 ? [board.doubts] : []),
    ...(open > 0 ? [board.missing(open)] : []),
    ...(stage === "waiting" ? [startWords(startAtMs)] : []),
    ...(stage === "running" ? runningWords(words, ring, runs) : []),
    ...(stage === "stopped" ? [board.stopped(words.stops[whyStopped(ring) ?? "done"])] : []),
  ].join(" · ");
};

/** Where the ring stands, in one line. */
const useWhere = ({ header, strip, spot }: DayRing): string => {
  const words = useWordsOf(RING_WORDS);
  const catalogue = useHouse().words.value;
  return [
    groundName(catalogue, strip, spot),
    ...(header.place === null ? [] : [catalogue.place[header.place]]),
    ...(header.mulch === null ? [] : [words.mulch[header.mulch]]),
    ...(header.follows === null ? [] : [words.board.follows]),
  ].join(", ");
};

const Figure = ({ ring }: { readonly ring: DayRing }) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).board;
  const { habits } = settings.value;
  const { soFar } = resultOf(ring);
  if (soFar === null)
    return (
      <span class="board-figure">
        –<span class="board-unit"> {habits.depthSoaked}</span>
      </span>
    );
  const { value, unit } = depthFigure(soFar.mm, habits);
  return (
    <span class="board-figure">
      {value}
      <span class="board-unit"> {words.inTime(unit, Math.floor(soFar.atMin))}</span>
    </span>
  );
};

const jobOf = (ring: DayRing, stopping: boolean): RowJob | null => {
  const stage = stageOf(ring);
  if (stage === "stopped") return null;
  if (stage === "waiting") return "start";
  return stopping ? "stop" : "read";
};

export const BoardRow = (props: {
  readonly of: BoardRing;
  readonly now: ReadonlySignal<RingNow>;
  readonly starts: ReadonlySignal<ReadonlyMap<string, number>>;
  readonly stopping: boolean;
  readonly readers: ReadonlyMap<string, string>;
  readonly onJob: OnJob;
}) => {
  const words = useWordsOf(RING_WORDS).board;
  const { of, now } = props;
  const ring = of.ring.value;
  const told = useTold(of.ring, now);
  const start = useComputed(() => {
    const atMs = props.starts.value.get(of.id);
    if (atMs === undefined) return undefined;
    // Whole minutes, and one value for at once: a proposal that moved every second would redraw every second.
    return atMs - now.value.wallMs < 60_000 ? AT_ONCE : Math.ceil(atMs / 60_000) * 60_000;
  });
  const where = useWhere(ring);
  const state = useStateWords(ring, told.runs.value, start.value);
  const by = ring.reading.events.at(-1)?.moment.by ?? ring.reading.start?.moment.by ?? ring.header.person;
  const reader = by === null ? undefined : props.readers.get(by);
  const job = jobOf(ring, props.stopping);
  const labels: Readonly<Record<RowJob, string>> = {
    start: words.start,
    stop: words.stop,
    read: words.readNow,
  };
  return (
    <li class={`board-row ${told.late.value ? "late" : ""}`} data-ring={ring.letter}>
      <span class="board-letter" aria-hidden="true">
        {ring.letter}
      </span>
      <span class="board-where">{where}</span>
      <a class="board-open" href={href({ at: "ring", ring: ring.id })}>
        <span class="out-of-sight">{words.ringOf(ring.letter)}</span>
        <Figure ring={ring} />
        <span class="board-state">{state}</span>
        <BoardResult ring={ring} />
        {reader === undefined ? null : <span class="board-reader">{words.readBy(reader)}</span>}
      </a>
      <div class="board-act">
        {stageOf(ring) === "running" ? (
          <p class="board-next">
            <b>{told.clock}</b>
            {told.when}
          </p>
        ) : null}
        {job === null ? null : (
          <button
            type="button"
            class={`key ${told.late.value ? "solid" : ""}`}
            aria-label={`${labels[job]}: ${words.ringOf(ring.letter)}`}
            onClick={(event) => props.onJob(ring, job, event)}
          >
            {labels[job]}
          </button>
        )}
      </div>
    </li>
  );
};
