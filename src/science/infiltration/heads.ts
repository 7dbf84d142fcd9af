/** How deep the water stood in a ring, as far as it was read. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { RingEvent } from "../../record/ring/events.ts";
import { type RingSet, rimToSoilMm } from "./ring-set.ts";

/** Water depth at one moment. */
export interface HeadAt {
  readonly ms: number;
  readonly mm: number;
  /** Water was added since the moment before: nothing tells how deep it stood in between. */
  readonly filled: boolean;
}

/** The same, in minutes since water was first in the ring. */
export interface HeadPoint extends Omit<HeadAt, "ms"> {
  readonly atMin: number;
}

/** Share of a stretch of time over which the depth has to be known for its mean to stand for the stretch. */
const KNOWN_SHARE = 0.5;

type Level = Extract<RingEvent, { type: "level" }>;

/** Water depth that a level shows; null when the rim was not read. */
const depthOf = ({ reads, levelM }: Level, rimMm: number | null): number | null => {
  if (reads === "water-depth") return levelM * 1000;
  return rimMm === null ? null : rimMm - levelM * 1000;
};

/** A level that is kept stands at the first one read from the first event to the last. */
const keptAt = (mark: HeadAt | undefined, events: readonly RingEvent[]): readonly HeadAt[] => {
  const first = events[0];
  const last = events.at(-1);
  if (mark === undefined || first === undefined || last === undefined) return [];
  return [
    { ms: first.moment.sinceStartMs, mm: mark.mm, filled: true },
    { ms: last.moment.sinceStartMs, mm: mark.mm, filled: false },
  ];
};

/**
 * Water depths from the events of one ring: levels, and with measured pours the depth that each pour makes. A
 * level kept at its mark stands at the first level read. Levels read down from the rim need the rim's own
 * reading; without it nothing is known.
 *
 * @param events of one ring, in order of the moment they were looked at
 */
export const headsOf = (
  events: readonly RingEvent[],
  set: Pick<RingSet, "way" | "rimToSoilM">,
  areaM2: number,
): readonly HeadAt[] => {
  const rimMm = rimToSoilMm(set);
  const poured = set.way === "measured-pour";
  const heads: HeadAt[] = [];
  let waterMm = 0;
  let filled = false;
  for (const event of events) {
    let mm: number | null;
    if (event.type === "pour") {
      filled = true;
      mm = poured ? waterMm + (1000 * event.cubicMetres) / areaM2 : null;
    } else mm = event.type === "gone" ? 0 : depthOf(event, rimMm);
    if (mm === null || !(mm >= 0 && Number.isFinite(mm))) continue;
    if (event.type === "level" && event.afterRefill) filled = true;
    heads.push({ ms: event.moment.sinceStartMs, mm, filled });
    waterMm = mm;
    filled = false;
  }
  return set.way === "kept-at-one-level" ? keptAt(heads[0], events) : heads;
};

/**
 * Mean water depth over a stretch of time, straight between readings.
 *
 * @param fromMin minutes since water was first in the ring, before `toMin`
 * @returns millimetres; `science/head-not-known` when less than half of the stretch was read
 *
 * @example
 * meanHeadMm([{ atMin: 0, mm: 60, filled: true }, { atMin: 30, mm: 40, filled: false }], 0, 30).value // => 50
 */
export const meanHeadMm = (heads: readonly HeadPoint[], fromMin: number, toMin: number): Result<number> => {
  let area = 0;
  let minutes = 0;
  for (const [at, head] of heads.entries()) {
    const before = heads[at - 1];
    if (before === undefined || head.filled || !(head.atMin > before.atMin)) continue;
    const from = Math.max(fromMin, before.atMin);
    const to = Math.min(toMin, head.atMin);
    if (!(to > from)) continue;
    const middle = (from + to) / 2;
    const part = (middle - before.atMin) / (head.atMin - before.atMin);
    area += (to - from) * (before.mm + part * (head.mm - before.mm));
    minutes += to - from;
  }
  if (!(minutes > 0 && minutes >= KNOWN_SHARE * (toMin - fromMin))) return failed("science/head-not-known");
  return ok(area / minutes);
};
