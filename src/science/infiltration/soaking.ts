/** What soaked in at one ring, from its readings: the pieces, the curve, and what has to be said beside them. */

import type { RingWay } from "../../record/kinds/observation.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import type { InRing } from "../../record/ring/entries.ts";
import type { RingReading } from "../../record/ring/events.ts";
import { JOINED_MIN, RATE_ROSE, STEPS_OF_NOISE } from "../constants.ts";
import type { Caution } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { SourceId } from "../sources.ts";
import { withHappenings } from "./happenings.ts";
import { type HeadPoint, headsOf } from "./heads.ts";
import { keptLevelPieces } from "./kept-level.ts";
import { type PourRun, pourPieces } from "./measured-pours.ts";
import { type LeftOut, type Pieces, rateOf, type SoakPiece } from "./pieces.ts";
import { type RingSet, ringArea } from "./ring-set.ts";
import { rulerPieces } from "./ruler.ts";

const MINUTE_MS = 60_000;

/** How much had soaked in at one moment. */
export interface SoakPoint {
  /** Minutes since water was first in the ring. */
  readonly atMin: number;
  readonly mm: number;
}

/** One pour, for the sheet. */
export interface Pour extends Omit<PourRun, "fromMs" | "toMs"> {
  readonly fromMin: number;
  readonly toMin: number | null;
  /** Soaked in so far over the time so far; null while nothing was read. Never classed for the wetting. */
  readonly mmPerH: number | null;
  readonly leftOut: LeftOut | null;
}

/** What soaked in at one ring. */
export interface Soaking {
  readonly way: RingWay;
  readonly ring: InRing;
  readonly areaM2: number;
  readonly stepMm: number;
  /** In order of time. */
  readonly pieces: readonly SoakPiece[];
  /** Depth soaked in since water was first in the ring, up to the first stretch that does not count. */
  readonly curve: readonly SoakPoint[];
  /** What ended the curve before the readings did; null when nothing did. */
  readonly brokenBy: LeftOut | null;
  /** Of a test with measured pours; else empty. */
  readonly pours: readonly Pour[];
  /** They count, and are named with the result. */
  readonly named: { readonly burrow: boolean; readonly crack: boolean };
  readonly leaked: boolean;
  /** How deep the water stood, where that was read; empty when it cannot be told. */
  readonly heads: readonly HeadPoint[];
  /** Readings used. */
  readonly n: number;
  /** When water was first in the ring, in milliseconds since the start. */
  readonly zeroMs: number;
  readonly cautions: readonly Caution[];
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

const WAYS = {
  "measured-pour": "ring-measured-pour",
  ruler: "ring-ruler",
  "kept-at-one-level": "ring-kept-level",
} as const satisfies Readonly<Record<RingWay, MethodId>>;

const LEFT_OUT: Readonly<Record<Exclude<LeftOut, "dry">, Caution["code"]>> = {
  leaked: "science/ring-leaked",
  moved: "science/ring-moved",
  rain: "science/ring-rained-on",
  "ran-dry": "science/ring-ran-dry",
  bumped: "science/ring-bumped",
  "no-water-left": "science/ring-no-water-left",
  "topped-up-late": "science/ring-topped-up-late",
  "level-rose": "science/ring-level-rose",
  "refill-unseen": "science/ring-refill-unseen",
  "levels-unlike": "science/ring-levels-unlike",
};

/** A rate well above the one before it, by more than the ruler can explain. */
const rises = (pieces: readonly SoakPiece[], stepMm: number): boolean => {
  const soaks = pieces.filter(
    ({ kind, leftOut, wetting }) => kind === "soak" && leftOut === null && !wetting,
  );
  return soaks.some((piece, at) => {
    const before = soaks[at - 1];
    if (before === undefined) return false;
    const expectedMm = (rateOf(before) * (piece.toMin - piece.fromMin)) / 60;
    const noiseMm = piece.steps === null && before.steps === null ? 0 : STEPS_OF_NOISE * stepMm;
    return piece.mm > expectedMm * RATE_ROSE + noiseMm && expectedMm > 0;
  });
};

const cautionsOf = (
  reading: RingReading,
  pieces: readonly SoakPiece[],
  raw: Pieces,
  set: RingSet,
): Caution[] => {
  const cautions: Caution[] = [];
  const say = (code: Caution["code"], count = 1, facts: Caution["facts"] = {}): void => {
    if (count > 0) cautions.push({ code, facts });
  };
  const count = (what: string): number => reading.happenings.filter((one) => one.what === what).length;
  say("science/ring-burrow", count("burrow"));
  say("science/ring-crack", count("crack"));
  if (raw.wrongWay) say("science/ruler-wrong-way");
  for (const [why, code] of Object.entries(LEFT_OUT)) {
    const left = pieces.filter(({ leftOut }) => leftOut === why);
    const minutes = left.reduce((sum, { fromMin, toMin }) => sum + toMin - fromMin, 0);
    say(code, left.length, { minutes: Math.round(minutes * 10) / 10 });
  }
  say("science/ring-answers-in-doubt", reading.inDoubt.length, { looks: reading.inDoubt.length });
  say("science/ring-numbers-missing", reading.openLooks.length, { looks: reading.openLooks.length });
  const apart = reading.events.filter(({ moment }) => moment.clocksApart).length;
  say("science/clocks-apart", apart, { readings: apart });
  const lateMin = (raw.zeroMs ?? 0) / MINUTE_MS;
  if (reading.start !== null && Math.abs(lateMin) > JOINED_MIN)
    say("science/ring-began-apart", 1, { minutes: Math.round(Math.abs(lateMin) * 10) / 10 });
  if (rises(pieces, set.stepMm)) say("science/ring-rate-rose");
  return cautions;
};

const curveOf = (pieces: readonly SoakPiece[]) => {
  const curve: SoakPoint[] = [{ atMin: 0, mm: 0 }];
  let mm = 0;
  for (const piece of pieces) {
    const { leftOut, toMin } = piece;
    if (leftOut !== null) return { curve, brokenBy: leftOut };
    mm += piece.mm;
    curve.push({ atMin: toMin, mm });
  }
  return { curve, brokenBy: null };
};

const pourOf = (run: PourRun, zeroMs: number, pieces: readonly SoakPiece[]): Pour => {
  const { fromMs, toMs, ...rest } = run;
  const fromMin = (fromMs - zeroMs) / MINUTE_MS;
  const toMin = toMs === null ? null : (toMs - zeroMs) / MINUTE_MS;
  const minutes = toMin === null ? 0 : toMin - fromMin;
  const within = pieces.filter((piece) => piece.fromMin >= fromMin && toMin !== null && piece.toMin <= toMin);
  return {
    ...rest,
    fromMin,
    toMin,
    mmPerH: minutes > 0 ? (60 * (run.pouredMm - run.leftMm)) / minutes : null,
    leftOut: within.find(({ leftOut }) => leftOut !== null)?.leftOut ?? null,
  };
};

const piecesOf = (
  reading: RingReading,
  set: RingSet,
  ring: InRing,
  areaM2: number,
): Pieces & { readonly runs?: readonly PourRun[] } => {
  const events = reading.events.filter((event) => event.ring === ring);
  if (set.way === "measured-pour") return pourPieces(events, set, areaM2);
  return set.way === "ruler" ? rulerPieces(events, set, areaM2) : keptLevelPieces(events, set, areaM2);
};

/**
 * What soaked in at a ring. Readings of any way to read become pieces `(from, to, depth)`: volume over the
 * measured inside area, or drops of the level between refills. What happened to the ring takes pieces out; the
 * curve of depth against time goes as far as no piece is missing, rates also come from what lies behind.
 *
 * Times run from the moment at which water was first known to be in the ring. Where that lies more than a
 * minute from the start it is said, since nothing tells what soaked in between.
 *
 * @param reading from `readRing`: in any order, with any gaps
 * @param ring `inner` gives the result of a double ring, `outer` what went in between the rings
 * @returns `science/not-a-ring` or `science/no-outer-ring` as `ringArea`, `science/nothing-read` when no pour
 * or level can be used. One reading gives a curve of one point, at which nothing has soaked in
 *
 * @example
 * soakingOf(readRing(entries), set); // { curve: [{ atMin: 0, mm: 0 }, { atMin: 12, mm: 24.3 }], … }
 */
export const soakingOf = (reading: RingReading, set: RingSet, ring: InRing = "inner"): Result<Soaking> => {
  const area = ringArea(set, ring);
  if (!area.ok) return area;
  const raw = piecesOf(reading, set, ring, area.value.areaM2);
  const { zeroMs } = raw;
  if (zeroMs === null) return failed("science/nothing-read");
  const events = reading.events.filter((event) => event.ring === ring);
  const pieces = withHappenings(raw.pieces, reading.happenings, events, set.way === "kept-at-one-level").map(
    ({ fromMs, toMs, ...rest }): SoakPiece => ({
      ...rest,
      fromMin: (fromMs - zeroMs) / MINUTE_MS,
      toMin: (toMs - zeroMs) / MINUTE_MS,
    }),
  );
  const methods: MethodId[] = ["ring-area", WAYS[set.way]];
  return ok({
    way: set.way,
    ring,
    areaM2: area.value.areaM2,
    stepMm: set.stepMm,
    pieces,
    ...curveOf(pieces),
    pours: (raw.runs ?? []).map((run) => pourOf(run, zeroMs, pieces)),
    named: {
      burrow: reading.happenings.some(({ what }) => what === "burrow"),
      crack: reading.happenings.some(({ what }) => what === "crack"),
    },
    leaked: pieces.some(({ leftOut }) => leftOut === "leaked"),
    heads: headsOf(events, set, area.value.areaM2).map(({ ms, mm, filled }) => ({
      atMin: (ms - zeroMs) / MINUTE_MS,
      mm,
      filled,
    })),
    n: raw.readings,
    zeroMs,
    cautions: [...area.value.cautions, ...cautionsOf(reading, pieces, raw, set)],
    methods,
    sources: sourcesOf(methods),
  });
};
