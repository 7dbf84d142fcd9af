import type { LineFrame, LineReading } from "./reading.ts";

/**
 * Whether a line is done: it was ended, its last mark was read, or its totals are in and not
 * in doubt. A line that is not done yet has no part in its strip's cover.
 */
export const lineFinished = (reading: LineReading, frame: LineFrame): boolean => {
  if (frame.way === "totals") return reading.totals !== null && reading.totalsInDoubt.length === 0;
  return reading.endedAt !== null || (frame.way === "mark-by-mark" && reading.next > frame.ropeMarks);
};
