import type { Entry } from "../entry.ts";
import type { RecordState } from "../record.ts";

/** What a command did. */
export interface Applied {
  readonly record: RecordState;
  /** Entries that were added; empty for revisions. */
  readonly added: readonly Entry[];
  /** The entry that an undo took back or a redo brought back. */
  readonly touched: Entry | null;
  /** The command had been applied before; nothing changed. */
  readonly already: boolean;
}
