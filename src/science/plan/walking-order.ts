/** In which order to walk to spots. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FARTHEST_ASKED_M, MOST_PLACES } from "../constants/plans.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { isPlace, type LatitudeLongitude, roughDistanceM } from "../position/distance.ts";
import { shortestOrder } from "./shortest-order.ts";

export interface WalkingOrder extends Worked {
  /** Indexes of the spots, from 0, in the order of walking. */
  readonly order: readonly number[];
  /** As the crow flies from spot to spot. */
  readonly lengthM: number;
  /** Whether no shorter order exists. */
  readonly exact: boolean;
}

/**
 * The order of walking that makes the way shortest, from where one stands through all spots, and back when wanted.
 * Ways are straight: a ditch or a hedge is not known.
 *
 * @param start the gateway, or where one stands
 * @param spots in any order; may be none
 * @returns metres; `science/not-a-place`, `science/too-many-places` beyond 300, `science/too-far-to-walk` when two
 * of them lie more than 100 km apart
 *
 * Source: as `shortestOrder`.
 *
 * @example
 * const at = (longitudeDeg) => ({ latitudeDeg: 0, longitudeDeg });
 * walkingOrder(at(0), [at(0.003), at(0.001), at(0.002)], false).value.order // => [1, 2, 0]
 */
export const walkingOrder = (
  start: LatitudeLongitude,
  spots: readonly LatitudeLongitude[],
  back: boolean,
): Result<WalkingOrder> => {
  const all = [start, ...spots];
  if (!all.every(isPlace)) return failed("science/not-a-place");
  if (spots.length > MOST_PLACES) return failed("science/too-many-places", { most: MOST_PLACES });
  const distances = all.map((from) => all.map((to) => roughDistanceM(from, to)));
  if (distances.some((row) => row.some((metres) => metres > FARTHEST_ASKED_M)))
    return failed("science/too-far-to-walk", { mostKm: FARTHEST_ASKED_M / 1000 });
  const { order, lengthM, exact } = shortestOrder(distances, back);
  return ok({
    order: order.map((place) => place - 1),
    lengthM,
    exact,
    n: spots.length,
    sampledBy: "spots",
    cautions: [],
    methods: ["walking-order", "short-distance"],
    sources: sourcesOf(["walking-order", "short-distance"]),
  });
};
