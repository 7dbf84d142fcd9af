import type { Json } from "../canonical.ts";
import { kindOf } from "../ids.ts";
import { KIND } from "../kinds/all.ts";
import { arranged, type RecordState, type Revision, seenNow, seenOf, shown } from "../record.ts";
import { failed, ok, type Result } from "../result.ts";
import { completed } from "../upcast.ts";
import * as z from "../zod.ts";
import type { Applied } from "./applied.ts";
import type { Change, Delete, Write } from "./command.ts";

const wasApplied = (record: RecordState, { rev, actor, n }: Write["by"]): boolean =>
  record.revs.some((revision) => revision.rev === rev || seenOf(revision, actor) >= n);

const changed = (before: Revision | undefined, { patch, without = [] }: Change): object => {
  const kept = Object.entries(before?.body ?? {}).filter(([key]) => !without.includes(key));
  return { ...Object.fromEntries(kept), ...patch };
};

/**
 * Makes the revision that a command asks for. It has seen every version that stands in the record, so
 * it takes the place of all of them.
 */
export const revise = (record: RecordState, command: Write | Change | Delete): Result<Applied> => {
  if (wasApplied(record, command.by)) return ok({ record, added: [], touched: null, already: true });
  const before = shown(record);
  if (command.op === "write" ? before !== undefined : before === undefined)
    return failed(command.op === "write" ? "record/exists" : "record/no-such-record");
  const kind = kindOf(record.id);
  const wanted =
    command.op === "write" ? command.body : command.op === "change" ? changed(before, command) : before?.body;
  const checked = z.safeParse(KIND[kind].body, completed(kind, wanted as Json));
  if (!checked.success) {
    const issue = checked.error.issues[0];
    return failed("record/not-valid", { where: issue?.path.join(".") ?? "", what: issue?.message ?? "" });
  }
  const { rev, actor, n, stamp, author } = command.by;
  const deleted = command.op === "delete" || (command.op === "change" && before?.deleted === true);
  const revision: Revision = {
    rev,
    dot: [actor, n],
    seen: seenNow(record),
    stamp,
    author,
    v: KIND[kind].version,
    body: checked.data,
    ...(deleted ? { deleted: true as const } : {}),
  };
  return ok({ record: arranged({ ...record, revs: [revision] }), added: [], touched: null, already: false });
};
