/** What the page and the worker for files say to each other. */
import type { BroughtIn, FileProgress, Preview } from "../../exchange/archive/reports.ts";
import type { Origin, Written } from "../../exchange/archive/write.ts";
import type { Result } from "../../record/result.ts";

/** What the page may ask for, and what it gets. */
export interface FileJobTable {
  "make-copy": { readonly wants: Origin; readonly gives: Written };
  stage: { readonly wants: { readonly id: string; readonly file: File }; readonly gives: Preview };
  "bring-in": { readonly wants: { readonly id: string }; readonly gives: BroughtIn };
  leave: { readonly wants: { readonly id: string }; readonly gives: undefined };
  finish: { readonly wants: null; readonly gives: readonly BroughtIn[] };
}

export type FileJobName = keyof FileJobTable;

/** A question of the page, or that the job of this number be stopped. */
export type FileQuestion =
  | {
      readonly [J in FileJobName]: {
        readonly n: number;
        readonly job: J;
        readonly wants: FileJobTable[J]["wants"];
      };
    }[FileJobName]
  | { readonly n: number; readonly job: "stop" };

/** How far the job of this number is, or what came of it. */
export type FileAnswer =
  | { readonly n: number; readonly progress: FileProgress }
  | { readonly n: number; readonly answer: Result<FileJobTable[FileJobName]["gives"]> };
