/**
 * Further constants of ground cover and of standing still. They stand apart from their methods, since the first page
 * of a line reads those and must not wait for what "How this was worked out" alone shows.
 */
import * as constant from "../constants.ts";
import type { Constant, Method } from "../method.ts";
import { GROUND_COVER_METHODS as early } from "./ground-cover.ts";

const FEWEST = {
  symbol: "n_least",
  value: constant.SAMPLES_FOR_A_RANGE,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

export const GROUND_COVER_LATE = {
  "logit-t": {
    ...early["logit-t"],
    constants: [
      ...early["logit-t"].constants,
      FEWEST,
      { symbol: "h_few", value: constant.FEW_HITS, unit: "1", source: "own-rule" },
    ],
  },
  "lines-needed": {
    ...early["lines-needed"],
    constants: [
      ...early["lines-needed"].constants,
      { symbol: "N_most", value: constant.MOST_LINES, unit: "1", source: "own-rule" },
    ],
  },
  "mean-t": { ...early["mean-t"], constants: [...early["mean-t"].constants, FEWEST] },
  "standing-still": {
    ...early["standing-still"],
    constants: [
      ...early["standing-still"].constants,
      { symbol: "c_68", value: constant.RADIUS_95_PER_68, unit: "1", source: "geometry" },
      { symbol: "n_spread", value: constant.FIXES_FOR_A_SPREAD, unit: "1", source: "own-rule" },
      { symbol: "n_drift", value: constant.FIXES_FOR_A_DRIFT, unit: "1", source: "own-rule" },
    ],
  },
} as const satisfies Readonly<Record<string, Method>>;
