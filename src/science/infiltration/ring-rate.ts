/** The one rate of a ring that enters the mean of its strip, and what kind of rate it is. */
import { failed, ok, type Result } from "../../record/result.ts";
import { lastStretch } from "./last-stretch.ts";
import { type LevelStatus, levellingOf } from "./levelling.ts";
import { rateOf } from "./pieces.ts";
import type { Soaking } from "./soaking.ts";

/**
 * What a rate rests on: a pour behind the wetting that drained · the last three intervals · fewer intervals ·
 * a pour that did not drain, with what soaked in of it so far.
 */
export type RateFrom = "drained-pour" | "last-three" | "last-readings" | "undrained-pour";

/** One ring as a point. */
export interface RingRate {
  readonly mmPerH: number;
  readonly from: RateFrom;
  /** It did not drain: the rate is what soaked in so far over the time so far. */
  readonly censored: boolean;
  readonly status: LevelStatus | null;
  /** The least rate that the readings could have shown; stands in for a rate of nothing on logs. */
  readonly leastMmPerH: number;
}

/**
 * The rate of a ring. Measured pours: of the last complete pour behind the wetting; while the only one behind
 * it has not drained, what soaked in of it so far, as censored. Else the pooled rate of the last three
 * intervals, or of as many as there are.
 *
 * @returns `science/only-wetting` when nothing was poured after the wetting, `science/nothing-soaked-yet`
 * when no stretch of time can be used, `science/undrained-unread` when no later pour drained and nothing
 * tells how much of it is left
 *
 * @example
 * ringRate(soaking); // { mmPerH: 121.7, from: "drained-pour", censored: false, … }
 */
export const ringRate = (soaking: Soaking): Result<RingRate> => {
  const levelling = levellingOf(soaking);
  const status = levelling.ok ? levelling.value.status : null;
  const least = (minutes: number): number => (60 * soaking.stepMm) / minutes;
  if (soaking.way === "measured-pour") {
    const later = soaking.pours.filter(({ wetting }) => !wetting);
    const usable = later.filter(({ leftOut, mmPerH }) => leftOut === null && mmPerH !== null);
    const pour = usable.findLast(({ drained }) => drained) ?? usable.at(-1);
    if (later.length === 0) return failed("science/only-wetting");
    if (pour === undefined || pour.mmPerH === null || pour.toMin === null)
      return failed("science/undrained-unread");
    const leastMmPerH = least(pour.toMin - pour.fromMin);
    const mmPerH = pour.mmPerH;
    return pour.drained
      ? ok({ mmPerH, from: "drained-pour", censored: false, status, leastMmPerH })
      : ok({ mmPerH, from: "undrained-pour", censored: true, status, leastMmPerH });
  }
  if (levelling.ok) {
    const { rate } = levelling.value;
    const stretchMin = lastStretch(soaking).reduce((sum, { fromMin, toMin }) => sum + toMin - fromMin, 0);
    return ok({
      mmPerH: rate.value,
      from: "last-three",
      censored: false,
      status,
      leastMmPerH: least(stretchMin),
    });
  }
  const few = lastStretch(soaking);
  const minutes = few.reduce((sum, { fromMin, toMin }) => sum + toMin - fromMin, 0);
  if (!(minutes > 0)) return failed("science/nothing-soaked-yet");
  const mm = few.reduce((sum, piece) => sum + piece.mm, 0);
  return ok({
    mmPerH: rateOf({ fromMin: 0, toMin: minutes, mm }),
    from: "last-readings",
    censored: false,
    status,
    leastMmPerH: least(minutes),
  });
};
