/** The readings at the end of a test that give a rate, and the rate of its last half hour. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LAST_MIN } from "../constants.ts";
import type { Estimate } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { SoakPiece } from "./pieces.ts";
import type { Soaking } from "./soaking.ts";

const counts = (piece: SoakPiece): boolean => piece.leftOut === null && !piece.wetting;

/**
 * The last unbroken row of pieces that count: behind the wetting, a leak cut off, and none left out in
 * between. The dry while between two measured pours does not part them.
 */
export const lastStretch = ({ pieces, way }: Soaking): readonly SoakPiece[] => {
  const end = pieces.findLastIndex((piece) => piece.kind === "soak" && counts(piece));
  const stretch: SoakPiece[] = [];
  for (let at = end; at >= 0; at--) {
    const piece = pieces[at];
    if (piece === undefined) break;
    if (piece.kind === "soak" && counts(piece)) stretch.unshift(piece);
    else if (piece.kind === "refill" || (piece.kind === "dry" && way === "measured-pour")) continue;
    else break;
  }
  return stretch;
};

/**
 * Rate of the last half hour: what soaked in during it over the time that water stood in the ring, straight
 * between readings. It ends with the last reading that counts.
 *
 * @returns millimetres an hour with the pieces that it rests on. `science/no-half-hour-yet` when the last
 * unbroken readings do not span half an hour
 *
 * @example
 * rateOfLastHalfHour(soaking); // 33.6 mm/h
 */
export const rateOfLastHalfHour = (soaking: Soaking): Result<Estimate> => {
  const stretch = lastStretch(soaking);
  const toMin = stretch.at(-1)?.toMin ?? 0;
  const span = toMin - (stretch[0]?.fromMin ?? toMin);
  // Moments are milliseconds: half an hour read to the second must not fail by a rounded one.
  if (span < LAST_MIN - 1e-9)
    return failed("science/no-half-hour-yet", { minutes: Math.floor(Math.max(0, span)) });
  const from = toMin - LAST_MIN;
  let mm = 0;
  let minutes = 0;
  let n = 0;
  for (const piece of stretch) {
    const overlap = piece.toMin - Math.max(from, piece.fromMin);
    if (!(overlap > 1e-9)) continue;
    const part = overlap / (piece.toMin - piece.fromMin);
    mm += part * piece.mm;
    minutes += overlap;
    n++;
  }
  const methods: MethodId[] = [...soaking.methods, "ring-last-half-hour"];
  return ok({
    value: (60 * mm) / minutes,
    unit: "mm/h",
    n,
    sampledBy: "intervals",
    range: failed("science/one-ring-only"),
    cautions: soaking.cautions,
    methods,
    sources: sourcesOf(methods),
  });
};
