/** Looks over what a plan asks for. */
import { failed, ok, type Result } from "../../record/result.ts";
import { MOST_POINTS } from "../constants/plans.ts";

/**
 * @param count whole, 1 or more, at most 200
 * @param lengthsM each 0 or more
 * @returns `science/not-a-count`, `science/too-many-points`, `science/not-a-length`
 */
export const goodWishes = (count: number, lengthsM: readonly number[]): Result<null> => {
  if (!(Number.isSafeInteger(count) && count > 0)) return failed("science/not-a-count");
  if (count > MOST_POINTS) return failed("science/too-many-points", { most: MOST_POINTS });
  const bad = lengthsM.find((metres) => !(metres >= 0 && Number.isFinite(metres)));
  return bad === undefined ? ok(null) : failed("science/not-a-length", { value: String(bad) });
};
