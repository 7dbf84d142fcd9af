/** How much longer a ring would have to run until its rate is called levelled off. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LEVEL_SPAN, LONGEST_MIN, ROOT_TIME_SHARE } from "../constants.ts";
import type { Soaking } from "./soaking.ts";

/**
 * Minutes until the last third of the run would agree within 10 %, if it goes on as it did.
 *
 * The two-term curve `F = S·√t + A·t` is laid through what soaked in during each piece by least squares. Over
 * the last third of a time T, cut into three, its rates are `A + S·k/√T` with k = 0.5888, 0.5480, 0.5147; they
 * agree within 10 % once `√T ≥ 0.1901·S/A`. A rough guide, given as the least it would take.
 *
 * @param fromMin when the last three intervals begin, and `toMin` when they end
 * @returns `science/not-levelling-yet` when no steady part can be seen (A ≤ 0), `science/rates-scatter` when
 * the rates do not fall but differ all the same, `science/levels-not-in-a-day` when it would take more than a
 * day from the start
 *
 * Source: two-term equation of Philip 1957 (from memory); the rule, and the constant from it, worked out here.
 */
export const minutesUntilLevel = (soaking: Soaking, fromMin: number, toMin: number): Result<number> => {
  let rootRoot = 0;
  let rootTime = 0;
  let timeTime = 0;
  let rootMm = 0;
  let timeMm = 0;
  for (const { fromMin: from, toMin: to, mm, kind, wetting, leftOut } of soaking.pieces) {
    if (kind !== "soak" || wetting || leftOut !== null) continue;
    const root = Math.sqrt(to) - Math.sqrt(from);
    const time = to - from;
    rootRoot += root * root;
    rootTime += root * time;
    timeTime += time * time;
    rootMm += root * mm;
    timeMm += time * mm;
  }
  const determinant = rootRoot * timeTime - rootTime * rootTime;
  if (!(determinant > 1e-12 * rootRoot * timeTime)) return failed("science/not-levelling-yet");
  const sorptivity = (rootMm * timeTime - timeMm * rootTime) / determinant;
  const steady = (timeMm * rootRoot - rootMm * rootTime) / determinant;
  // Intervals that follow a stretch left out have to span a third of the whole run first.
  const spannedMin = toMin - fromMin < LEVEL_SPAN * toMin ? fromMin / (1 - LEVEL_SPAN) : 0;
  if (!(sorptivity > 0)) return spannedMin > toMin ? ok(spannedMin - toMin) : failed("science/rates-scatter");
  if (!(steady > 0)) return failed("science/not-levelling-yet");
  const levelMin = Math.max(spannedMin, (ROOT_TIME_SHARE * sorptivity) ** 2 / steady ** 2);
  if (levelMin > LONGEST_MIN) return failed("science/levels-not-in-a-day");
  return levelMin > toMin ? ok(levelMin - toMin) : failed("science/rates-scatter");
};
