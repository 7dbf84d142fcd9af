/** By which keys lists find a record: taken from the version that is shown, never a truth of their own. */
import { kindOf, type RecordId } from "./ids.ts";
import { type RecordState, shown } from "./record.ts";

/** Keys of a row in lists. A key that a record does not have is left out, and the row is not listed by it. */
export interface ListKeys {
  readonly kind: string;
  readonly living: 0 | 1;
  readonly field?: string;
  readonly visit?: string;
  readonly strip?: string;
  /** When it was begun or made, in milliseconds, for newest first. */
  readonly atMs: number;
}

const idIn = (body: object, key: "field" | "visit" | "strip"): Partial<ListKeys> => {
  const value: unknown = key in body ? body[key as never] : undefined;
  return typeof value === "string" ? { [key]: value } : {};
};

/** The list keys of a record. */
export const listKeys = (record: RecordState): ListKeys => {
  const revision = shown(record);
  if (revision === undefined) return { kind: kindOf(record.id), living: 0, atMs: 0 };
  const { body } = revision;
  return {
    kind: kindOf(record.id),
    living: revision.deleted === true ? 0 : 1,
    ...idIn(body, "field"),
    ...idIn(body, "visit"),
    ...idIn(body, "strip"),
    atMs: "startedAtMs" in body ? body.startedAtMs : revision.stamp.wallMs,
  };
};

/** Which field a record belongs to; a field belongs to itself. */
export const fieldOf = (record: RecordState): RecordId<"field"> | undefined => {
  if (kindOf(record.id) === "field") return record.id as RecordId<"field">;
  return listKeys(record).field as RecordId<"field"> | undefined;
};
