import type { Command } from "../record/command/command.ts";
import type { Problem } from "../record/result.ts";

/** What the store has to say without being asked; each has its words on a screen. */
export type Notice =
  /** The database cannot be brought up to date while another window has it open. */
  | { readonly type: "blocked" }
  /** A newer version of the app was opened in another window; this one can write no more. */
  | { readonly type: "newer-window" }
  /** A write has waited for three seconds, because another window is busy; `waiting` ends with it. */
  | { readonly type: "busy"; readonly waiting: boolean }
  /** No room left: readings are still taken, photos are not. */
  | { readonly type: "storage-full" }
  /** The database cannot be reached and reloading has not helped: these are the values not saved. */
  | { readonly type: "gone"; readonly commands: readonly Command[] }
  /** Values kept from before a reload were refused, and why. */
  | { readonly type: "refused"; readonly commands: readonly Command[]; readonly problem: Problem };

/** Takes what the store has to say. */
export type Tell = (notice: Notice) => void;
