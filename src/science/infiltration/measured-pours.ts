/** One measured pour after the other: how long each takes to soak in. */
import type { RingEvent } from "../../record/ring/events.ts";
import { JOINED_MIN } from "../constants.ts";
import { NO_PIECES, type PieceAt, type Pieces, pieceList } from "./pieces.ts";
import { type RingSet, rimToSoilMm } from "./ring-set.ts";

const MINUTE_MS = 60_000;

/** Water from the moment it is poured until the last of it is gone. */
export interface PourRun {
  /** 1 for the wetting. */
  readonly number: number;
  readonly wetting: boolean;
  readonly pouredMm: number;
  readonly fromMs: number;
  /** When the last of it was gone, or the last level while it is not; null when neither was read. */
  readonly toMs: number | null;
  /** What is left at that moment. */
  readonly leftMm: number;
  readonly drained: boolean;
}

/** Water depth that a level shows, in millimetres; null when it cannot be told. */
const depthOf = (event: Extract<RingEvent, { type: "level" }>, rimMm: number | null): number | null => {
  if (event.reads === "water-depth") return event.levelM * 1000;
  return rimMm === null ? null : rimMm - event.levelM * 1000;
};

/** What is known while the readings are walked through. */
interface Walk {
  readonly list: ReturnType<typeof pieceList>;
  readonly runs: PourRun[];
  run: PourRun | null;
  /** The last moment at which the water in the ring was known, and how much it was. */
  atMs: number;
  waterMm: number;
  zeroMs: number | null;
  readings: number;
}

/** The ring holds no water: from when the last of it was gone until the next pour. */
const without = (fromMs: number, toMs: number): PieceAt => {
  const joined = toMs - fromMs <= JOINED_MIN * MINUTE_MS;
  const shared = { fromMs, toMs, mm: 0, wetting: false, steps: null };
  return joined ? { ...shared, kind: "refill", leftOut: null } : { ...shared, kind: "dry", leftOut: "dry" };
};

const poured = (walk: Walk, ms: number, mm: number): void => {
  if (walk.run === null) {
    if (walk.zeroMs !== null) walk.list.add(without(walk.atMs, ms));
    const number = walk.runs.length + 1;
    const wetting = number === 1;
    walk.run = { number, wetting, pouredMm: 0, fromMs: ms, toMs: null, leftMm: 0, drained: false };
    walk.atMs = ms;
    walk.waterMm = 0;
    walk.zeroMs ??= ms;
    walk.readings++;
  }
  walk.waterMm += mm;
  walk.run = { ...walk.run, pouredMm: walk.run.pouredMm + mm, leftMm: walk.run.leftMm + mm };
};

/** So much water is left; `stepMm` of the ruler that says so, null when it is gone. */
const left = (walk: Walk, ms: number, leftMm: number, stepMm: number | null): void => {
  const { run } = walk;
  if (run === null) return;
  const mm = walk.waterMm - leftMm;
  walk.list.add({
    fromMs: walk.atMs,
    toMs: ms,
    mm,
    kind: "soak",
    wetting: run.wetting,
    steps: stepMm === null ? null : Math.abs(mm) / stepMm,
    leftOut: mm < -(stepMm ?? 0) ? "level-rose" : null,
  });
  walk.atMs = ms;
  walk.waterMm = leftMm;
  walk.readings++;
  const now = { ...run, toMs: ms, leftMm, drained: stepMm === null };
  walk.run = stepMm === null ? null : now;
  if (stepMm === null) walk.runs.push(now);
};

/**
 * Pieces and runs from measured pours: depth is volume over the measured inside area, never a volume known by
 * name. The first run, on soil that was not wet yet, is the wetting. A level read meanwhile tells how much is
 * left; one right after the water tells less than the bottle did and is left out.
 *
 * @param events of one ring, in order of the moment they were looked at
 */
export const pourPieces = (
  events: readonly RingEvent[],
  set: Pick<RingSet, "stepMm" | "rimToSoilM">,
  areaM2: number,
): Pieces & { readonly runs: readonly PourRun[] } => {
  const rimMm = rimToSoilMm(set);
  const walk: Walk = {
    list: pieceList(),
    runs: [],
    run: null,
    atMs: 0,
    waterMm: 0,
    zeroMs: null,
    readings: 0,
  };
  for (const event of events) {
    const ms = event.moment.sinceStartMs;
    if (event.type === "pour") {
      const mm = (1000 * event.cubicMetres) / areaM2;
      if (mm > 0 && Number.isFinite(mm)) poured(walk, ms, mm);
    } else if (event.type === "gone") left(walk, ms, 0, null);
    else if (!event.afterRefill) {
      const depthMm = depthOf(event, rimMm);
      if (depthMm !== null && Number.isFinite(depthMm)) left(walk, ms, Math.max(0, depthMm), set.stepMm);
    }
  }
  const runs = walk.run === null ? walk.runs : [...walk.runs, walk.run];
  const { zeroMs, readings } = walk;
  return zeroMs === null
    ? { ...NO_PIECES, runs }
    : { pieces: walk.list.pieces, zeroMs, readings, wrongWay: false, runs };
};
