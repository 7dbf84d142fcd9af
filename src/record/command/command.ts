/**
 * Commands: what a touch asks for, as plain data. They wait in a queue, survive a page that dies, and
 * are applied to the stored row inside the transaction that writes it, so two tabs cannot overwrite
 * each other.
 */
import type { Json } from "../canonical.ts";
import type { Entry, MarkEntry } from "../entry.ts";
import type { RecordId } from "../ids.ts";
import type { LineFrame } from "../line/reading.ts";
import type { Stamp } from "../stamp.ts";

/** Which revision a command makes, chosen when the command is made so that a replay is the same one. */
export interface Signature {
  readonly rev: string;
  /** Random per start of the app. */
  readonly actor: string;
  /** Rises with every revision that this actor makes. */
  readonly n: number;
  readonly stamp: Stamp;
  readonly author: RecordId<"person"> | null;
}

/** When and by whom something was read. */
export type Moment = Pick<Entry, "id" | "lookedAtMs" | "enteredAtMs" | "monoMs" | "page" | "device" | "by">;

type Reading<E> = E extends Entry ? Omit<E, keyof Moment | "v" | "n"> : never;

/** What was read; a mark may be `next`: the one that the line stands at when the command is applied. */
export type Draft =
  | Exclude<Reading<Entry>, { type: "undo" | "mark" | "end" }>
  | (Omit<Reading<MarkEntry>, "mark"> & { readonly mark: number | "next" })
  | (Omit<Extract<Reading<Entry>, { type: "end" }>, "mark"> & { readonly mark: number | "here" });

/** Writes a new record. */
export interface Write {
  readonly op: "write";
  readonly id: RecordId;
  readonly by: Signature;
  readonly body: { readonly [key: string]: Json };
}

/** Changes some properties of the version that is shown; settles versions that stand side by side. */
export interface Change {
  readonly op: "change";
  readonly id: RecordId;
  readonly by: Signature;
  readonly patch: { readonly [key: string]: Json };
  /** Properties that it is to have no more; only those that a record may lack. Before `patch` is put on. */
  readonly without?: readonly string[];
}

/** Deletes a record, or brings it back. The body stays either way. */
export interface Delete {
  readonly op: "delete" | "restore";
  readonly id: RecordId;
  readonly by: Signature;
}

/** Forgets a record for good: id and kind stay, nothing else. */
export interface Erase {
  readonly op: "erase";
  readonly id: RecordId;
}

/** Adds a reading to a line, a ring or a hole. */
export interface Append {
  readonly op: "append";
  readonly id: RecordId<"observation">;
  /** How the line is counted; null at rings and holes, where no reading depends on the others. */
  readonly frame: LineFrame | null;
  readonly at: Moment;
  readonly draft: Draft;
}

/** Takes the last reading back, or takes that back. */
export interface Step {
  readonly op: "undo" | "redo";
  readonly id: RecordId<"observation">;
  readonly at: Moment;
}

/** Everything that a screen may ask the store to write. */
export type Command = Write | Change | Delete | Erase | Append | Step;
