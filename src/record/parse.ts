/** The only door for data that somebody else wrote: rows of an older app and lines of a file. */
import type { Json } from "./canonical.ts";
import { ENTRY_VERSION } from "./entry.ts";
import { isRecordId, kindOf } from "./ids.ts";
import { KIND } from "./kinds/all.ts";
import {
  arranged,
  entryList,
  erasedRecord,
  MAX_ENTRIES,
  MAX_SIDE_BY_SIDE,
  type RecordState,
  type Revision,
  revisionFrame,
} from "./record.ts";
import { type Failed, failed, ok, type Result } from "./result.ts";
import { compareText } from "./stamp.ts";
import { upcast, upcastEntry } from "./upcast.ts";
import * as z from "./zod.ts";

/** Deepest nesting a record may have. Deeper input would overflow the stack of the schema library. */
export const MAX_DEPTH = 20;

const FORBIDDEN = new Set(["__proto__", "constructor", "prototype"]);

/** Depth and key names, checked without recursion before anything else looks at the value. */
const unsafe = (value: unknown): Failed | undefined => {
  const left: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    if (typeof next.value !== "object" || next.value === null) continue;
    if (next.depth >= MAX_DEPTH) return failed("record/too-deep", { deepest: MAX_DEPTH });
    for (const [key, item] of Object.entries(next.value)) {
      if (FORBIDDEN.has(key)) return failed("record/forbidden-key", { key });
      left.push({ value: item, depth: next.depth + 1 });
    }
  }
  return undefined;
};

const frame = z.strictObject({
  id: z.string(),
  erased: z.boolean(),
  revs: z.array(z.strictObject({ ...revisionFrame, body: z.anything })).check(z.maxLength(MAX_SIDE_BY_SIDE)),
  entries: z.array(z.anything).check(z.maxLength(MAX_ENTRIES)),
});

const notValid = (where: string, what: string): Failed => failed("record/not-valid", { where, what });

const firstIssue = (error: z.SchemaError): Failed => {
  const issue = error.issues[0];
  return notValid(issue?.path.join(".") ?? "", issue?.message ?? "");
};

const newestEntry = (entries: readonly unknown[]): number =>
  entries.reduce<number>((newest, item) => {
    const v = typeof item === "object" && item !== null && "v" in item ? item.v : 0;
    return typeof v === "number" && v > newest ? v : newest;
  }, 0);

const allDiffer = (texts: readonly string[]): boolean => new Set(texts).size === texts.length;

/** Something twice under one id would leave it to chance which of the two a device keeps. */
const twice = (revs: readonly Pick<Revision, "rev" | "seen">[]): Failed | undefined => {
  if (!allDiffer(revs.map(({ rev }) => rev))) return notValid("revs", "the same revision twice");
  const at = revs.findIndex(({ seen }) => !allDiffer(seen.map(([actor]) => actor)));
  return at < 0 ? undefined : notValid(`revs.${at}.seen`, "the same actor twice");
};

/**
 * Reads one record from a plain value.
 *
 * @param value what `JSON.parse` gave, or a database row
 * @returns the record, lifted to the current version and in its one order; or why not:
 * `record/too-deep`, `record/forbidden-key`, `record/not-valid` (where, what), `record/from-the-future`
 */
export const parseRecord = (value: unknown): Result<RecordState> => {
  const danger = unsafe(value);
  if (danger !== undefined) return danger;
  const framed = z.safeParse(frame, value);
  if (!framed.success) return firstIssue(framed.error);
  const { id, erased, revs, entries } = framed.data;
  if (!isRecordId(id)) return notValid("id", "not a record id");
  if (erased) {
    return revs.length === 0 && entries.length === 0
      ? ok(erasedRecord(id))
      : notValid("erased", "an erased record holds nothing");
  }
  const kind = kindOf(id);
  const newest = newestEntry(entries);
  if (newest > ENTRY_VERSION)
    return failed("record/from-the-future", { kind, needs: newest, knows: ENTRY_VERSION });
  const double = twice(revs);
  if (double !== undefined) return double;
  const lifted: Revision[] = [];
  for (const revision of revs) {
    const body = upcast(kind, revision.v, revision.body as Json);
    if (!body.ok) return body;
    const checked = z.safeParse(KIND[kind].body, body.value);
    if (!checked.success) return firstIssue(checked.error);
    const seen = [...revision.seen].sort(([a], [b]) => compareText(a, b));
    lifted.push({ ...revision, seen, v: KIND[kind].version, body: checked.data });
  }
  const read = z.safeParse(entryList, (entries as readonly Json[]).map(upcastEntry));
  if (!read.success) return firstIssue(read.error);
  if (!allDiffer(read.data.map(({ id: entryId }) => entryId)))
    return notValid("entries", "the same entry twice");
  if (kind !== "observation" && entries.length > 0) return notValid("entries", `a ${kind} has no entries`);
  return ok(arranged({ id, erased, revs: lifted, entries: read.data }));
};
