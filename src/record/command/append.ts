import { ENTRY_VERSION, type Entry, entry, livingIds, MAX_ORDER } from "../entry.ts";
import { kindOf } from "../ids.ts";
import { type LineFrame, type LineReading, readLine } from "../line/reading.ts";
import { arranged, MAX_ENTRIES, type RecordState } from "../record.ts";
import { failed, ok, type Result } from "../result.ts";
import { stepsOf } from "../steps.ts";
import * as z from "../zod.ts";
import type { Applied } from "./applied.ts";
import type { Append, Moment, Step } from "./command.ts";

const highestOrder = (entries: readonly Entry[]): number =>
  entries.reduce((highest, { n }) => Math.max(highest, n), 0);

/** Adds an entry, checked as a file would be: one bad entry would make the whole backup unreadable. */
const added = (record: RecordState, made: Entry, touched: Entry | null): Result<Applied> => {
  const checked = z.safeParse(entry, made);
  if (!checked.success) {
    const issue = checked.error.issues[0];
    return failed("record/not-valid", { where: issue?.path.join(".") ?? "", what: issue?.message ?? "" });
  }
  return ok({
    record: arranged({ ...record, entries: [...record.entries, checked.data] }),
    added: [checked.data],
    touched,
    already: false,
  });
};

const refusal = (record: RecordState, at: Moment): Result<Applied> | undefined => {
  if (record.entries.some(({ id }) => id === at.id))
    return ok({ record, added: [], touched: null, already: true });
  if (kindOf(record.id) !== "observation")
    return failed("record/not-valid", { where: "id", what: "only a measurement has entries" });
  // Readings without a header would be in no list: nobody could find them again.
  if (record.revs.length === 0) return failed("record/no-such-record");
  // Behind the highest place an undo could not come after what it takes back.
  if (record.entries.length >= MAX_ENTRIES || highestOrder(record.entries) >= MAX_ORDER)
    return failed("record/full", { most: MAX_ENTRIES });
  return undefined;
};

/**
 * What an answer takes the place of: all answers that count there, also those of a second phone that
 * agreed, because one left standing would contradict the new answer.
 */
const replacing = (
  entries: readonly Entry[],
  isSameQuestion: (one: Entry) => boolean,
): { readonly replaces?: string[] } => {
  const living = livingIds(entries);
  const ids = entries.filter((one) => isSameQuestion(one) && living.has(one.id)).map(({ id }) => id);
  return ids.length > 0 ? { replaces: ids } : {};
};

const markToRead = (
  { next, endedAt }: LineReading,
  { ropeMarks }: LineFrame,
  wanted: number | "next",
): Result<number> => {
  if (endedAt !== null && wanted === "next") return failed("record/line-ended", { mark: endedAt });
  const mark = wanted === "next" ? next : wanted;
  return mark > ropeMarks ? failed("record/line-full", { marks: ropeMarks }) : ok(mark);
};

const needsFrame = (type: string): Result<never> =>
  failed("record/not-valid", { where: "frame", what: `${type} belongs to a line` });

/**
 * Adds a reading to a measurement. At a line a mark that was read before is replaced, and the replaced
 * answer stays in the record; the same goes for a second thickness at one mark, a second set of totals and a
 * second end.
 * At rings and holes a correction says itself what it replaces.
 */
export const appendEntry = (record: RecordState, command: Append): Result<Applied> => {
  const refused = refusal(record, command.at);
  if (refused !== undefined) return refused;
  const { draft, frame } = command;
  const { entries } = record;
  const base = { v: ENTRY_VERSION, n: highestOrder(entries) + 1, ...command.at } as const;
  switch (draft.type) {
    case "mark": {
      if (frame === null) return needsFrame(draft.type);
      const mark = markToRead(readLine(entries, frame), frame, draft.mark);
      if (!mark.ok) return mark;
      const before = replacing(entries, (one) => one.type === "mark" && one.mark === mark.value);
      return added(record, { ...base, ...draft, mark: mark.value, ...before }, null);
    }
    case "thickness": {
      const before = replacing(entries, (one) => one.type === "thickness" && one.mark === draft.mark);
      return added(record, { ...base, ...draft, ...before }, null);
    }
    case "totals": {
      const before = replacing(entries, (one) => one.type === "totals");
      return added(record, { ...base, ...draft, ...before }, null);
    }
    case "end": {
      if (frame === null) return needsFrame(draft.type);
      const mark = draft.mark === "here" ? Math.max(0, readLine(entries, frame).next - 1) : draft.mark;
      const before = replacing(entries, (one) => one.type === "end");
      return added(record, { ...base, ...draft, mark: Math.min(mark, frame.ropeMarks), ...before }, null);
    }
    default:
      return added(record, { ...base, ...draft }, null);
  }
};

/** Takes the last reading that counts back, or the last undo back. */
export const stepBack = (record: RecordState, command: Step): Result<Applied> => {
  const refused = refusal(record, command.at);
  if (refused !== undefined) return refused;
  const { entries } = record;
  const { undoable, redoable } = stepsOf(entries);
  const base = { v: ENTRY_VERSION, n: highestOrder(entries) + 1, ...command.at, type: "undo" } as const;
  if (command.op === "undo") {
    if (undoable === null) return failed("record/nothing-to-undo");
    return added(record, { ...base, takesBack: undoable.id }, undoable);
  }
  if (redoable === null) return failed("record/nothing-to-redo");
  const broughtBack = entries.find(({ id }) => id === redoable.takesBack) ?? null;
  return added(record, { ...base, takesBack: redoable.id }, broughtBack);
};
