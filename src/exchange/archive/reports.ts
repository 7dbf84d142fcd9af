/** What jobs with files tell while they run and when they are done. */
import type { Problem } from "../../record/result.ts";

/** How far a job has come. */
export interface FileProgress {
  readonly step: "gathering" | "writing" | "comparing" | "reading" | "bringing-in";
  /** Parts of the step that are done, and all of them; null while nobody knows how many there are. */
  readonly done: number;
  readonly of: number | null;
}

/** How a job is watched and stopped. */
export interface Watch {
  readonly onProgress: (progress: FileProgress) => void;
  readonly signal: AbortSignal;
}

/** A record or photo of a file that stays out. */
export interface Refused {
  /** Its place in the file, such as `records.ndjson:12` or the name of a photo. */
  readonly what: string;
  readonly problem: Problem;
}

/** What bringing a file in would do. */
export interface Preview {
  readonly import: string;
  readonly file: {
    readonly name: string;
    readonly byteCount: number;
    readonly madeAtMs: number | null;
    readonly madeBy: string | null;
  };
  readonly records: { readonly new: number; readonly changed: number; readonly same: number };
  readonly photos: { readonly new: number; readonly same: number };
  readonly sideBySide: number;
  readonly twoAnswers: { readonly marks: number; readonly lines: number };
  readonly refused: readonly Refused[];
  readonly refusedCount: number;
}

/** What was brought in. */
export interface BroughtIn {
  readonly import: string;
  readonly name: string;
  readonly new: number;
  readonly changed: number;
  readonly photos: number;
}
