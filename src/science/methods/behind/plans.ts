/** The sources behind the methods of positions and plans. */
import type { SourceId } from "../../sources.ts";

export const PLANS_BEHIND = {
  "field-area": ["snyder-1987", "nima-tr8350-2", "geometry"],
  geodesic: ["vincenty-1975", "nima-tr8350-2"],
  "true-magnetic": ["declination-definition"],
  headland: ["geometry", "own-rule"],
  "fields-near": ["snyder-1987", "geometry", "own-rule"],
  "random-points": ["cochran-1977", "diggle-2003", "freeman-shapira-1975", "own-rule"],
  "w-walk": ["w-walk-practice", "freeman-shapira-1975", "own-rule"],
  "pairs-along-edge": ["cochran-1977", "geometry", "own-rule"],
  "walking-order": ["held-karp-1962", "croes-1958", "geometry"],
  "day-plan": ["field-minutes", "own-rule"],
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;
