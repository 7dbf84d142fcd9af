/**
 * Files in and out, as the screens ask for them. Behind it stands a worker that starts at first use; a
 * long job tells how far it is and can be stopped, and nothing that it does holds up a touch.
 */
import type { Problem, Result } from "../../record/result.ts";

/** How far a job has come. */
export interface FileProgress {
  readonly step: "gathering" | "writing" | "comparing" | "reading" | "bringing-in";
  /** Parts of the step that are done, and all of them; null while nobody knows how many there are. */
  readonly done: number;
  readonly of: number | null;
}

/** A copy of everything, ready to be handed over; each part was read back and compared. */
export interface ReadyCopy {
  /** The first part holds every record; further parts hold photos only. */
  readonly parts: readonly File[];
  /** Counted while reading back, not while writing. */
  readonly records: number;
  readonly photos: number;
}

/** What bringing a file in would do. Nothing has changed when it is shown. */
export interface Preview {
  /** Names what waits to be brought in or left. */
  readonly import: string;
  readonly file: {
    readonly name: string;
    readonly byteCount: number;
    /** When it was written, by the clock of the device that wrote it; null when it does not say. */
    readonly madeAtMs: number | null;
    /** Who wrote it, as that device named the person; null when nobody was named. */
    readonly madeBy: string | null;
  };
  readonly records: {
    readonly new: number;
    readonly changed: number;
    readonly same: number;
  };
  readonly photos: { readonly new: number; readonly same: number };
  /** Records that will have several versions side by side and have not now. */
  readonly sideBySide: number;
  /** Marks that will have two answers and have not now, and on how many lines. */
  readonly twoAnswers: { readonly marks: number; readonly lines: number };
  /** What stays out, at most 50 of them, with the reason of each. */
  readonly refused: readonly { readonly what: string; readonly problem: Problem }[];
  readonly refusedCount: number;
}

/** What was brought in. */
export interface BroughtIn {
  readonly import: string;
  /** Name of the file, as the preview showed it. */
  readonly name: string;
  readonly new: number;
  readonly changed: number;
  readonly photos: number;
}

export interface FilesDesk {
  /**
   * Writes a copy of all records and photos and reads it back.
   *
   * @returns `exchange/stopped` when `signal` ended it, `exchange/not-as-written` when reading back gave
   * something else, or what the store reports
   */
  readonly makeCopy: (
    onProgress: (progress: FileProgress) => void,
    signal: AbortSignal,
  ) => Promise<Result<ReadyCopy>>;
  /**
   * Reads a file and lays it beside the records without changing any.
   *
   * @returns what it would do; else the sentence's code (foreign, damaged, from the future, too large)
   */
  readonly stage: (
    file: File,
    onProgress: (progress: FileProgress) => void,
    signal: AbortSignal,
  ) => Promise<Result<Preview>>;
  /** Brings a previewed file in. Once it has begun it is finished, if need be at the next start. */
  readonly bringIn: (
    staged: string,
    onProgress: (progress: FileProgress) => void,
  ) => Promise<Result<BroughtIn>>;
  /** Forgets a previewed file; the records stay as they are. */
  readonly leave: (staged: string) => Promise<Result<undefined>>;
  /**
   * Finishes what was being brought in when the page was closed. Asked at every start and when the screen
   * is opened; two windows that ask at once finish it once.
   *
   * @returns one entry per file that was finished now
   */
  readonly finish: (onProgress: (progress: FileProgress) => void) => Promise<Result<readonly BroughtIn[]>>;
}
