/** Whether the rate of a ring has levelled off, and how long it would take. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LEVEL_SPAN, LEVEL_SPREAD, LEVEL_STEPS, LEVEL_UNEVEN, LONGEST_MIN } from "../constants.ts";
import type { Caution, Estimate } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { lastStretch } from "./last-stretch.ts";
import { rateOf, type SoakPiece } from "./pieces.ts";
import type { Soaking } from "./soaking.ts";
import { minutesUntilLevel } from "./until-level.ts";

/** How the rate stands. */
export type LevelStatus = "levelled-off" | "still-slowing" | "cannot-tell";

/** What keeps a rate from being called levelled off. */
export type NotLevel = "rates-differ" | "too-short-a-span" | "uneven-intervals" | "small-drops";

/** The last three intervals and what they say. */
export interface Levelling {
  readonly status: LevelStatus;
  /** Empty when levelled off. */
  readonly because: readonly NotLevel[];
  /** Depth soaked in over the three intervals over their time. */
  readonly rate: Estimate;
  /** The three rates in mm/h, first to last. */
  readonly rates: readonly number[];
  /** (max − min)/mean of the three; null when nothing soaks in. */
  readonly spread: number | null;
  /** How much longer it would take at the least; 0 when levelled off. */
  readonly moreMin: Result<number>;
}

/** Several pieces as one interval. */
interface Interval {
  readonly fromMin: number;
  readonly toMin: number;
  readonly minutes: number;
  readonly mm: number;
  readonly steps: number | null;
}

const joined = (pieces: readonly SoakPiece[], stepMm: number): Interval => {
  const mm = pieces.reduce((sum, piece) => sum + piece.mm, 0);
  const ruled = pieces.some(({ steps }) => steps !== null);
  return {
    fromMin: pieces[0]?.fromMin ?? 0,
    toMin: pieces.at(-1)?.toMin ?? 0,
    minutes: pieces.reduce((sum, { fromMin, toMin }) => sum + toMin - fromMin, 0),
    mm,
    steps: ruled ? Math.abs(mm) / stepMm : null,
  };
};

/** The complete pours behind the wetting: each of them is one interval. */
const poursOf = ({ pours }: Soaking): readonly SoakPiece[] =>
  pours.flatMap(({ fromMin, toMin, pouredMm, wetting, drained, leftOut }): SoakPiece[] =>
    wetting || !drained || leftOut !== null || toMin === null || !(toMin > fromMin)
      ? []
      : [{ fromMin, toMin, mm: pouredMm, kind: "soak", wetting: false, steps: null, leftOut: null }],
  );

/**
 * The last three intervals. Where single readings follow each other so fast that three of them say nothing
 * about levelling off, neighbours are put together until the three span a third of the time run: a test read
 * every five minutes would else never be called levelled off.
 */
export const lastThree = (soaking: Soaking): readonly Interval[] => {
  const pieces = soaking.way === "measured-pour" ? poursOf(soaking) : lastStretch(soaking);
  const endMin = pieces.at(-1)?.toMin ?? 0;
  const wantedMin = endMin - LEVEL_SPAN * endMin;
  const enough = pieces.findLastIndex(({ fromMin }) => fromMin <= wantedMin + 1e-9);
  const used = pieces.slice(Math.max(0, Math.min(enough, pieces.length - 3)));
  const [first] = used;
  if (first === undefined || used.length < 3) return used.map((piece) => joined([piece], soaking.stepMm));
  const third = (endMin - first.fromMin) / 3;
  // The two cuts fall on the readings nearest to the thirds, with a piece left on either side.
  const cutNear = (min: number, low: number, high: number): number => {
    let best = low;
    for (let at = low; at <= high; at++) {
      const off = Math.abs((used[at]?.fromMin ?? 0) - min);
      if (off < Math.abs((used[best]?.fromMin ?? 0) - min)) best = at;
    }
    return best;
  };
  const one = cutNear(first.fromMin + third, 1, used.length - 2);
  const two = cutNear(first.fromMin + 2 * third, one + 1, used.length - 1);
  return [used.slice(0, one), used.slice(one, two), used.slice(two)].map((part) =>
    joined(part, soaking.stepMm),
  );
};

/** Rate of an interval over the time that water stood in the ring. */
const rateIn = ({ minutes, mm }: Interval): number => rateOf({ fromMin: 0, toMin: minutes, mm });

/**
 * Whether the rate has levelled off: the rates of the last three intervals agree within
 * `(max − min)/mean ≤ 10 %`, **and** together they span at least a third of the time run, none of them more
 * than five times another, **and** each drop is at least 20 steps of the ruler (measured water has no such
 * bound). The bare 10 % would also be met by a curve that slows for ever: pure `√t` read every five minutes
 * meets it after an hour; over a third of the time its rates differ by 13 %.
 *
 * The intervals are the readings, or neighbours put together where three single ones are too short; with
 * measured pours each complete pour behind the wetting is one.
 *
 * @returns the pooled rate `ΔF/Δt` of the three in mm/h, which weighs each by its time.
 * `science/too-few-intervals` for fewer than three
 *
 * @example
 * levellingOf(soaking); // { status: "still-slowing", rate: { value: 34.4, … }, moreMin: { value: 95 } }
 */
export const levellingOf = (soaking: Soaking): Result<Levelling> => {
  const three = lastThree(soaking);
  if (three.length < 3) return failed("science/too-few-intervals", { needs: 3, has: three.length });
  const rates = three.map(rateIn);
  const sum = rates.reduce((all, rate) => all + rate, 0);
  const widest = Math.max(...rates) - Math.min(...rates);
  const spread = sum > 0 ? widest / (sum / 3) : null;
  const fromMin = three[0]?.fromMin ?? 0;
  const toMin = three.at(-1)?.toMin ?? 0;
  const lengths = three.map(({ minutes }) => minutes);
  const because: NotLevel[] = [];
  if (spread === null ? widest > 0 : spread > LEVEL_SPREAD + 1e-9) because.push("rates-differ");
  if (toMin - fromMin < LEVEL_SPAN * toMin - 1e-9) because.push("too-short-a-span");
  if (Math.max(...lengths) > LEVEL_UNEVEN * Math.min(...lengths)) because.push("uneven-intervals");
  const small = three.some(({ steps }) => steps !== null && steps < LEVEL_STEPS - 1e-9);
  if (small) because.push("small-drops");
  const status = small ? "cannot-tell" : because.length === 0 ? "levelled-off" : "still-slowing";
  const cautions: Caution[] = [...soaking.cautions];
  if (small)
    cautions.push({
      code: "science/drops-too-small",
      facts: { steps: LEVEL_STEPS, mm: Math.round(LEVEL_STEPS * soaking.stepMm * 10) / 10 },
    });
  const mm = three.reduce((all, interval) => all + interval.mm, 0);
  const minutes = lengths.reduce((all, length) => all + length, 0);
  const methods: MethodId[] = [...soaking.methods, "ring-levelled-off"];
  if (status === "still-slowing") methods.push("ring-until-level");
  return ok({
    status,
    because,
    rate: {
      value: (60 * mm) / minutes,
      unit: "mm/h",
      n: three.length,
      sampledBy: "intervals",
      range: failed("science/one-ring-only"),
      cautions,
      methods,
      sources: sourcesOf(methods),
    },
    rates,
    spread,
    moreMin:
      status === "levelled-off"
        ? ok(0)
        : small
          ? failed("science/drops-too-small", {
              steps: LEVEL_STEPS,
              mm: Math.round(LEVEL_STEPS * soaking.stepMm * 10) / 10,
            })
          : minutesUntilLevel(soaking, fromMin, toMin),
  });
};

/**
 * How long each of three intervals has to last for this ruler to tell whether the rate has levelled off: as
 * long as the water takes to fall by 20 of its steps.
 *
 * @param mmPerH the rate just now
 * @returns minutes; `science/nothing-soaked-yet` for a rate of nothing, `science/levels-not-in-a-day` when
 * three of them are longer than a day
 *
 * @example
 * minutesForRuler(60, 1).value // => 20
 */
export const minutesForRuler = (mmPerH: number, stepMm: number): Result<number> => {
  if (!(mmPerH > 0)) return failed("science/nothing-soaked-yet");
  const minutes = (60 * LEVEL_STEPS * Math.max(0, stepMm)) / mmPerH;
  return 3 * minutes <= LONGEST_MIN ? ok(minutes) : failed("science/levels-not-in-a-day");
};
