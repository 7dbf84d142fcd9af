/** A ruler in the ring: drops of the level between refills. */
import type { RingEvent } from "../../record/ring/events.ts";
import { JOINED_MIN } from "../constants.ts";
import { NO_PIECES, type PieceAt, type Pieces, pieceList } from "./pieces.ts";
import { type RingSet, rimToSoilMm } from "./ring-set.ts";

const MINUTE_MS = 60_000;

/** A level on a scale that falls as water soaks in. */
export interface RulerLevel {
  readonly ms: number;
  readonly upMm: number;
  /** Heights on different scales cannot be compared. */
  readonly scale: "depth" | "rim";
  readonly afterRefill: boolean;
  /** The ring held no water when it was read; `gone` is the moment at which the last of it went. */
  readonly empty: "no" | "read" | "gone";
}

/**
 * The level that an event shows.
 *
 * @param rimMm from the rim down to the ground; null when it was not measured
 * @returns null for a pour, which shows none
 */
export const rulerLevelOf = (event: RingEvent, rimMm: number | null): RulerLevel | null => {
  const ms = event.moment.sinceStartMs;
  if (event.type === "gone") return { ms, upMm: 0, scale: "depth", afterRefill: false, empty: "gone" };
  if (event.type === "pour") return null;
  const { levelM, reads, afterRefill } = event;
  if (reads === "down-from-rim" && rimMm === null)
    return { ms, upMm: -levelM * 1000, scale: "rim", afterRefill, empty: "no" };
  const upMm = reads === "water-depth" ? levelM * 1000 : (rimMm ?? 0) - levelM * 1000;
  // Only the ruler that stands on the ground shows by itself that no water is left.
  const empty = reads === "water-depth" && upMm <= 0 ? "read" : "no";
  return { ms, upMm, scale: "depth", afterRefill, empty };
};

/** Counts which way levels go without a refill, and with one. */
const directions = (stepMm: number) => {
  let right = 0;
  let wrong = 0;
  const saw = (before: RulerLevel, now: RulerLevel, poured: boolean): void => {
    const upMm = now.upMm - before.upMm;
    // Water poured in without its level says nothing of the way the ruler is read.
    const isPlain = now.scale === before.scale && (now.afterRefill || !poured);
    if (!isPlain || Math.abs(upMm) <= stepMm * 1.000_001) return;
    if (upMm > 0 === now.afterRefill) right++;
    else wrong++;
  };
  return { saw, areWrong: () => wrong > 2 * right };
};

const pieceBetween = (
  before: RulerLevel,
  now: RulerLevel,
  pouredMm: number | null,
  stepMm: number,
): PieceAt => {
  const mm = before.upMm + (pouredMm ?? 0) - now.upMm;
  const piece: PieceAt = {
    fromMs: before.ms,
    toMs: now.ms,
    mm,
    kind: "soak",
    wetting: false,
    steps: Math.abs(mm) / stepMm,
    leftOut: null,
  };
  if (now.scale !== before.scale) return { ...piece, mm: 0, leftOut: "levels-unlike" };
  if (now.afterRefill) {
    const joined = now.ms - before.ms <= JOINED_MIN * MINUTE_MS;
    if (joined && before.empty === "no") return { ...piece, mm: 0, kind: "refill", steps: null };
    if (before.empty !== "no") return { ...piece, mm: 0, kind: "dry", steps: null, leftOut: "dry" };
    if (pouredMm === null) return { ...piece, mm: 0, leftOut: "refill-unseen" };
  }
  if (now.empty === "read" || before.empty !== "no") return { ...piece, leftOut: "ran-dry" };
  // One step up is how a ruler is read; more than that is water that was added, or the ruler turned round.
  return mm < -stepMm * 1.000_001 ? { ...piece, leftOut: "level-rose" } : piece;
};

/**
 * Pieces from a ruler in the ring: depth of the water, or down from the rim. A drop counts from the last
 * level after a refill. The while of a refill up to a minute is joined over, with nothing soaking in; a longer
 * one breaks the curve unless measured water says what soaked in meanwhile. Levels on both scales are compared
 * where the distance from rim to ground was measured.
 *
 * @param events of one ring, in order of the moment they were looked at
 */
export const rulerPieces = (
  events: readonly RingEvent[],
  set: Pick<RingSet, "stepMm" | "rimToSoilM">,
  areaM2: number,
): Pieces => {
  const rimMm = rimToSoilMm(set);
  const stepMm = set.stepMm > 0 && Number.isFinite(set.stepMm) ? set.stepMm : 1;
  const list = pieceList();
  const way = directions(stepMm);
  let before: RulerLevel | null = null;
  let pouredMm: number | null = null;
  let zeroMs: number | null = null;
  let readings = 0;
  for (const event of events) {
    if (event.type === "pour") {
      pouredMm = (pouredMm ?? 0) + (1000 * event.cubicMetres) / areaM2;
      continue;
    }
    const now = rulerLevelOf(event, rimMm);
    if (now === null || !Number.isFinite(now.upMm)) continue;
    if (before !== null) {
      way.saw(before, now, pouredMm !== null);
      list.add(pieceBetween(before, now, pouredMm, stepMm));
    }
    before = now;
    pouredMm = null;
    zeroMs ??= now.ms;
    readings++;
  }
  if (zeroMs === null) return NO_PIECES;
  return { pieces: list.pieces, zeroMs, readings, wrongWay: way.areWrong() };
};
