/** A double ring: whether water went sideways. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SIDE_FLOW_RATIO } from "../constants.ts";
import type { Caution } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { SourceId } from "../sources.ts";
import type { SoakPiece } from "./pieces.ts";
import type { Soaking } from "./soaking.ts";

/** What went in between the rings, against what went in inside the inner one. The inner ring is the result. */
export interface SideFlow {
  readonly innerMmPerH: number;
  readonly betweenMmPerH: number;
  /** Between the rings over inside. */
  readonly ratio: number;
  readonly cautions: readonly Caution[];
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

/** Depth per hour over the time that two rings were both read. */
const rateWithin = (pieces: readonly SoakPiece[], fromMin: number, toMin: number): number | null => {
  let mm = 0;
  let minutes = 0;
  for (const piece of pieces) {
    const overlap = Math.min(toMin, piece.toMin) - Math.max(fromMin, piece.fromMin);
    if (piece.kind !== "soak" || piece.leftOut !== null || !(overlap > 1e-9)) continue;
    mm += (overlap / (piece.toMin - piece.fromMin)) * piece.mm;
    minutes += overlap;
  }
  return minutes > 0 ? (60 * mm) / minutes : null;
};

const spanOf = ({ pieces, zeroMs }: Soaking): { from: number; to: number } | null => {
  const good = pieces.filter(({ kind, leftOut }) => kind === "soak" && leftOut === null);
  const first = good[0];
  const last = good.at(-1);
  if (first === undefined || last === undefined) return null;
  return { from: first.fromMin + zeroMs / 60_000, to: last.toMin + zeroMs / 60_000 };
};

/**
 * Rate between the rings over the rate inside the inner one, over the time that both were read. More than
 * twice as much between them: water goes sideways, and the inner ring may read too fast as well.
 *
 * @returns `science/rings-not-read-together` when their readings share no time, `science/nothing-soaked-yet`
 * when nothing soaked in inside the inner ring
 *
 * Source: ASTM D3385 (from memory): both rates are worked out, the inner one is the result; the bound of two is
 * a rule of this product.
 *
 * @example
 * sideFlow(inner, outer); // { innerMmPerH: 19.8, betweenMmPerH: 28.3, ratio: 1.43, cautions: [] }
 */
export const sideFlow = (inner: Soaking, outer: Soaking): Result<SideFlow> => {
  const a = spanOf(inner);
  const b = spanOf(outer);
  if (a === null || b === null) return failed("science/rings-not-read-together");
  const from = Math.max(a.from, b.from);
  const to = Math.min(a.to, b.to);
  const within = ({ pieces, zeroMs }: Soaking): number | null =>
    rateWithin(pieces, from - zeroMs / 60_000, to - zeroMs / 60_000);
  const innerMmPerH = within(inner);
  const betweenMmPerH = within(outer);
  if (innerMmPerH === null || betweenMmPerH === null) return failed("science/rings-not-read-together");
  if (!(innerMmPerH > 0)) return failed("science/nothing-soaked-yet");
  const ratio = betweenMmPerH / innerMmPerH;
  const cautions: Caution[] =
    ratio > SIDE_FLOW_RATIO
      ? [{ code: "science/side-flow", facts: { ratio: Math.round(ratio * 10) / 10 } }]
      : [];
  const methods: MethodId[] = ["ring-side-flow"];
  return ok({ innerMmPerH, betweenMmPerH, ratio, cautions, methods, sources: sourcesOf(methods) });
};
