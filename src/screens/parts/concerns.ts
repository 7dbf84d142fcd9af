import { type Kind, kindOf } from "../../record/ids.ts";
import type { Changed } from "../../store/changes.ts";

/** Whether a change touches records of a kind, for queries that read no other. */
export const concerns =
  (kind: Kind) =>
  (changed: Changed): boolean =>
    changed === "everything" || changed.some((id) => kindOf(id) === kind);
