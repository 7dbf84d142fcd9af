/** Water kept at one level: what is poured in is what soaked in. */
import type { RingEvent } from "../../record/ring/events.ts";
import { TOGETHER_MIN } from "../constants.ts";
import { NO_PIECES, type Pieces, pieceList } from "./pieces.ts";
import type { RingSet } from "./ring-set.ts";

const MINUTE_MS = 60_000;

/** Water poured in to bring the level back to its mark, from one bottle or several. */
interface TopUp {
  ms: number;
  mm: number;
}

/** Heights of the level that rises with the water, in millimetres. */
const heightOf = (event: Extract<RingEvent, { type: "level" }>): number =>
  event.reads === "water-depth" ? event.levelM * 1000 : -event.levelM * 1000;

const isPour = (event: RingEvent): event is Extract<RingEvent, { type: "pour" }> => event.type === "pour";

/** Pours within half a minute of each other bring the level back together. */
const topUpsIn = (events: readonly RingEvent[], areaM2: number): TopUp[] => {
  const topUps: TopUp[] = [];
  for (const { cubicMetres, moment } of events.filter(isPour)) {
    const mm = (1000 * cubicMetres) / areaM2;
    const ms = moment.sinceStartMs;
    if (!(mm >= 0 && Number.isFinite(mm))) continue;
    const last = topUps.at(-1);
    if (last !== undefined && ms - last.ms <= TOGETHER_MIN * MINUTE_MS) {
      last.ms = ms;
      last.mm += mm;
    } else topUps.push({ ms, mm });
  }
  return topUps;
};

/**
 * Pieces from water kept at one level. What was poured in up to the start fills the ring and is not counted;
 * without such a pour the first one does. From then on the level is back at its mark after each pour, so each
 * pour is what soaked in since the one before. A level read in between is compared with the first level read.
 *
 * @param events of one ring, in order of the moment they were looked at
 */
export const keptLevelPieces = (
  events: readonly RingEvent[],
  set: Pick<RingSet, "stepMm">,
  areaM2: number,
): Pieces => {
  const topUps = topUpsIn(events, areaM2);
  const fills = Math.max(1, topUps.filter(({ ms }) => ms <= 0).length);
  const filled = topUps[fills - 1];
  if (filled === undefined) return NO_PIECES;
  const levels = events.filter((event) => event.type === "level");
  const [mark] = levels;
  const markMm = mark === undefined ? 0 : heightOf(mark);
  /** How far the water stands below its mark at each moment, and what was poured in until then. */
  const moments = [
    ...topUps.slice(fills).map(({ ms, mm }) => ({ ms, pouredMm: mm, lowMm: 0, ruled: false })),
    ...levels
      .filter((level) => level !== mark && !level.afterRefill && level.reads === mark?.reads)
      .map((level) => ({
        ms: level.moment.sinceStartMs,
        pouredMm: 0,
        lowMm: markMm - heightOf(level),
        ruled: true,
      }))
      .filter(({ ms, lowMm }) => ms >= filled.ms && Number.isFinite(lowMm)),
  ].sort((a, b) => a.ms - b.ms || Number(b.ruled) - Number(a.ruled));
  const list = pieceList();
  let at = { ms: filled.ms, lowMm: 0 };
  for (const { ms, pouredMm, lowMm, ruled } of moments) {
    const mm = pouredMm + lowMm - at.lowMm;
    list.add({
      fromMs: at.ms,
      toMs: ms,
      mm,
      kind: "soak",
      wetting: false,
      steps: ruled ? Math.abs(mm) / set.stepMm : null,
      leftOut: mm < -set.stepMm ? "level-rose" : null,
    });
    at = { ms, lowMm };
  }
  return { pieces: list.pieces, zeroMs: filled.ms, readings: 1 + moments.length, wrongWay: false };
};
