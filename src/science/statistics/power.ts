/** How often a difference that is there would show, how many samples it takes, and the smallest that shows. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SAMPLES_FOR_A_RANGE } from "../constants.ts";
import { noncentralStudentProbability, normalQuantile, studentQuantile } from "./distributions.ts";

/** Blocks that each hold so many treatments, of which two are compared. */
export interface InBlocks {
  readonly treatments: number;
}

/** Pairs whose differences are tested, two groups of as many samples each, or blocks. */
export type TestDesign = "pairs" | "two-groups" | InBlocks;

/** The test that is planned for: a design, the level of its range and the power wanted. */
export interface TestWanted {
  readonly design: TestDesign;
  /** For example 0.95. */
  readonly level: number;
  /** For example 0.8. */
  readonly power: number;
}

/** Most samples that are planned for; beyond it another way of measuring helps more. */
export const MOST_PLANNED = 1000;

const freedomOf = (design: TestDesign, n: number): number => {
  if (typeof design === "object") return (design.treatments - 1) * (n - 1);
  return design === "pairs" ? n - 1 : 2 * (n - 1);
};
/** Standard error of the difference over the spread. */
const errorOf = (design: TestDesign, n: number): number => Math.sqrt((design === "pairs" ? 1 : 2) / n);

const good = (design: TestDesign, n: number, spread: number): Result<null> => {
  if (typeof design === "object" && !(Number.isSafeInteger(design.treatments) && design.treatments > 1))
    return failed("science/too-few-treatments", {
      needs: 2,
      has: Number.isSafeInteger(design.treatments) ? design.treatments : 0,
    });
  if (!(Number.isSafeInteger(n) && n >= SAMPLES_FOR_A_RANGE))
    return failed("science/too-few-samples", {
      needs: SAMPLES_FOR_A_RANGE,
      has: Number.isSafeInteger(n) ? n : 0,
    });
  return spread > 0 && Number.isFinite(spread) ? ok(null) : failed("science/no-spread-seen");
};

/**
 * How often a range would exclude no difference when the true one is `difference`: from the noncentral t with
 * `δ = d/(s·√(c/n))`, c being 1 for pairs and 2 for two groups and for two treatments in n blocks, where the rest has
 * (k−1)(n−1) degrees of freedom; both tails count.
 *
 * @param difference in the unit of the spread; its sign does not matter
 * @param spread of differences between pairs, of samples within a group, or of the rest of blocks; above 0
 * @param n pairs, samples in each group, or blocks; whole, 3 or more, as fewer give no range
 * @returns a share; `science/too-few-samples`, `science/no-spread-seen` unless the spread is above 0 and finite,
 * `science/no-number` when the difference is not finite, `science/too-few-treatments` for blocks of fewer than two
 *
 * Source: NIST/SEMATECH e-Handbook, 7.2.2.2; the noncentral t as in programs for power.
 *
 * @example
 * powerOf(2, 1, 4, { design: "two-groups", level: 0.95, power: 0.8 }).value // => ≈ 0.657
 */
export const powerOf = (
  difference: number,
  spread: number,
  n: number,
  { design, level }: TestWanted,
): Result<number> => {
  const usable = good(design, n, spread);
  if (!usable.ok) return usable;
  const freedom = freedomOf(design, n);
  const t = studentQuantile((1 + level) / 2, freedom);
  if (!t.ok) return t;
  const shift = Math.abs(difference) / (spread * errorOf(design, n));
  if (!Number.isFinite(shift)) return failed("science/no-number");
  // So far off, the sum behind the distribution has no digits left, and the answer is known.
  if (shift > 37) return ok(1);
  const below = noncentralStudentProbability(t.value, freedom, shift);
  if (!below.ok) return below;
  const other = noncentralStudentProbability(-t.value, freedom, shift);
  return other.ok ? ok(Math.min(1, Math.max(0, 1 - below.value + other.value))) : other;
};

/** From the normal curve, with what t takes on top: a sample or two off at most. */
const nearlyNeeded = (
  difference: number,
  spread: number,
  { design, level, power }: TestWanted,
): Result<number> => {
  const ofLevel = normalQuantile((1 + level) / 2);
  if (!ofLevel.ok) return ofLevel;
  const ofPower = normalQuantile(power);
  if (!ofPower.ok) return ofPower;
  const plain = errorOf(design, 1) ** 2 * (((ofLevel.value + ofPower.value) * spread) / difference) ** 2;
  return ok(
    Math.min(
      MOST_PLANNED - 1,
      Math.max(SAMPLES_FOR_A_RANGE, Math.ceil(plain + ofLevel.value ** 2 / (design === "pairs" ? 2 : 4))),
    ),
  );
};

/**
 * The least number of pairs, of samples in each group, or of blocks, with which `difference` shows as often as wanted.
 *
 * @returns 3 or more; `science/no-worthwhile-difference` when the difference is 0, `science/too-many-samples`
 * when more than 1000 would be needed, else reasons as `powerOf`
 *
 * Source: as `powerOf`.
 *
 * @example
 * samplesNeeded(1, 1, { design: "two-groups", level: 0.95, power: 0.8 }).value // => 17
 */
export const samplesNeeded = (difference: number, spread: number, wanted: TestWanted): Result<number> => {
  if (difference === 0) return failed("science/no-worthwhile-difference");
  const reaches = (n: number): Result<boolean> => {
    const power = powerOf(difference, spread, n, wanted);
    return power.ok ? ok(power.value >= wanted.power) : power;
  };
  const enough = reaches(MOST_PLANNED);
  if (!enough.ok) return enough;
  if (!enough.value) return failed("science/too-many-samples", { most: MOST_PLANNED });
  const near = nearlyNeeded(difference, spread, wanted);
  if (!near.ok) return near;
  // Steps that double away from the guess, then halves: the power rises with every sample.
  let [low, high] = [SAMPLES_FOR_A_RANGE - 1, MOST_PLANNED];
  for (let at = near.value, step = 1; at > low && at < high; step *= 2) {
    const there = reaches(at);
    if (!there.ok) return there;
    if (there.value) high = at;
    else low = at;
    at += there.value ? -step : step;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const there = reaches(middle);
    if (!there.ok) return there;
    if (there.value) high = middle;
    else low = middle;
  }
  return ok(high);
};

/**
 * The smallest difference that n pairs, or n samples in each group, show as often as wanted.
 *
 * @param spread as `powerOf`
 * @returns in the unit of the spread, to 1 part in 10⁶; reasons as `powerOf`
 *
 * Source: as `powerOf`.
 *
 * @example
 * smallestVisible(1, 17, { design: "two-groups", level: 0.95, power: 0.8 }).value // => ≈ 0.991
 */
export const smallestVisible = (spread: number, n: number, wanted: TestWanted): Result<number> => {
  const usable = good(wanted.design, n, spread);
  if (!usable.ok) return usable;
  const error = spread * errorOf(wanted.design, n);
  const freedom = freedomOf(wanted.design, n);
  const [ofLevel, ofPower] = [
    studentQuantile((1 + wanted.level) / 2, freedom),
    studentQuantile(wanted.power, freedom),
  ];
  if (!ofLevel.ok) return ofLevel;
  if (!ofPower.ok) return ofPower;
  // Close to the answer already; with few samples it lies up to a tenth too high.
  const guess = (ofLevel.value + Math.max(0, ofPower.value)) * error;
  let [low, high] = [0, 2 * guess];
  let at = guess;
  for (let step = 0; step < 60 && high - low > 1e-6 * guess; step++) {
    const power = powerOf(at, spread, n, wanted);
    if (!power.ok) return power;
    const over = power.value - wanted.power;
    if (over < 0) low = at;
    else high = at;
    // Newton's step on the normal scale, where power is nearly a straight line; halves when it leaves the bracket.
    const [seen, goal] = [
      normalQuantile(Math.min(1 - 1e-9, Math.max(1e-9, power.value))),
      normalQuantile(wanted.power),
    ];
    if (!seen.ok) return seen;
    if (!goal.ok) return goal;
    const stepped = at - (seen.value - goal.value) * error;
    if (Math.abs(stepped - at) <= 1e-7 * guess) return ok(stepped);
    at = step % 3 < 2 && stepped > low && stepped < high ? stepped : (low + high) / 2;
  }
  return ok((low + high) / 2);
};
