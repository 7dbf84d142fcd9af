import { type LineFrame, type LineReading, marksSaid } from "./reading.ts";

/**
 * Whether a line is done: it was ended, its last mark was read, or its totals are in; its end and its totals
 * are not in doubt, and at least one mark says what lay there. A line that is not done has no part in its
 * strip's cover: one that was ended before its first mark would be counted among the lines and say nothing.
 */
export const lineFinished = (reading: LineReading, frame: LineFrame): boolean => {
  if (marksSaid(reading.tally) === 0) return false;
  if (frame.way === "totals") return reading.totals !== null && reading.totalsInDoubt.length === 0;
  if (reading.endsInDoubt.length > 0) return false;
  return reading.endedAt !== null || (frame.way === "mark-by-mark" && reading.next > frame.ropeMarks);
};

/** Whether a line was ended before anything was read on it: to be gone on with, or deleted. */
export const endedUnread = ({ endedAt, tally }: Pick<LineReading, "endedAt" | "tally">): boolean =>
  endedAt !== null && marksSaid(tally) === 0 && tally.unsettled === 0;
