/** A double ring: whether water went sideways. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SIDE_FLOW_RATIO } from "../constants.ts";
import type { Caution, Estimate } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { SoakPiece } from "./pieces.ts";
import type { Soaking } from "./soaking.ts";

/**
 * What went in between the rings over what went in inside the inner one, as a share. The inner ring is the result.
 * One double ring is one point, so there is no range.
 */
export interface SideFlow extends Estimate {
  readonly innerMmPerH: number;
  readonly betweenMmPerH: number;
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
 * sideFlow(inner, outer); // { value: 1.43, unit: "1", n: 1, innerMmPerH: 19.8, betweenMmPerH: 28.3, cautions: [] }
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
  const methods: MethodId[] = [...new Set([...inner.methods, ...outer.methods]), "ring-side-flow"];
  return ok({
    value: ratio,
    unit: "1",
    n: 1,
    sampledBy: "rings",
    range: failed("science/one-ring-only"),
    cautions,
    methods,
    sources: sourcesOf(methods),
    innerMmPerH,
    betweenMmPerH,
  });
};
