/** A frame against the rows of a drill: how far off it can be. */
import { ok, type Result } from "../../record/result.ts";
import { FRAME_OFF } from "../constants/water.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { where } from "../water/bounded.ts";

/** How far off a frame is with the fewest and with the most rows that it can catch, as shares; n counts the frame. */
export interface FrameError extends Worked {
  readonly fewestRows: number;
  readonly mostRows: number;
}

const OF_ONE_FRAME = {
  n: 1,
  sampledBy: "quadrats",
  methods: ["frame-against-rows"],
  sources: sourcesOf(["frame-against-rows"]),
} as const;

/**
 * How far off mass per area is when the frame is no whole number of rows wide: `n·s/w − 1` for the n rows that are
 * caught. Where the frame is laid decides which of two it is, so the error does not average out when every frame starts
 * at a row.
 *
 * @param widthM across the rows, 0.05 to 20 m
 * @param rowSpacingM 0.05 to 3 m
 * @returns shares, both 0 for a whole number of rows, −1 for a frame that can fall between two, with
 * `science/frame-not-whole-rows` in percent beside them;
 * `science/out-of-bounds` for what cannot be
 *
 * Source: Brennan 2023.
 *
 * @example
 * frameError(0.5, 0.19).value.fewestRows // => ≈ -0.24
 */
export const frameError = (widthM: number, rowSpacingM: number): Result<FrameError> => {
  const rows = where(
    [
      ["frame", widthM, 0.05, 20],
      ["row spacing", rowSpacingM, 0.05, 3],
    ],
    () => widthM / rowSpacingM,
  );
  if (!rows.ok) return rows;
  const whole = Math.round(rows.value);
  // Widths turned from inches carry rounding: 18 in over rows of 6 in are three rows.
  if (whole > 0 && Math.abs(rows.value - whole) <= FRAME_OFF * whole)
    return ok({ fewestRows: 0, mostRows: 0, ...OF_ONE_FRAME, cautions: [] });
  const error = {
    fewestRows: Math.floor(rows.value) / rows.value - 1,
    mostRows: Math.ceil(rows.value) / rows.value - 1,
  };
  const facts = { least: Math.round(100 * error.fewestRows), most: Math.round(100 * error.mostRows) };
  return ok({ ...error, ...OF_ONE_FRAME, cautions: [{ code: "science/frame-not-whole-rows", facts }] });
};

/** Frame and rows of one round of quadrats. */
export interface FrameAndRows {
  /** Across the rows, m. */
  readonly widthM: number;
  /** m; null where seed was broadcast. */
  readonly rowSpacingM: number | null;
}

/**
 * What is to be said of a frame beside a mass or a count.
 *
 * @returns nothing for broadcast seed and for whole rows, else `science/frame-not-whole-rows` with both errors in
 * percent; reasons as `frameError`
 *
 * @example
 * frameCautions({ widthM: 0.5, rowSpacingM: 0.19 }).value[0].facts // => { least: -24, most: 14 }
 */
export const frameCautions = ({ widthM, rowSpacingM }: FrameAndRows): Result<readonly Caution[]> => {
  if (rowSpacingM === null) return ok([]);
  const error = frameError(widthM, rowSpacingM);
  return error.ok ? ok(error.value.cautions) : error;
};
