/** Lines added up elsewhere: what is asked of whoever adds them up, and what comes back. */
import type { RecordId } from "../ids.ts";
import type { LineFrame, LineReading } from "./reading.ts";

/** A line to be added up. */
export interface LineAsked {
  readonly id: RecordId<"observation">;
  readonly frame: LineFrame;
}

/** A line added up. */
export interface LineSums extends Pick<LineReading, "tally" | "endedAt"> {
  readonly id: RecordId<"observation">;
  readonly finished: boolean;
}
