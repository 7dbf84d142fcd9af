/** Strips by id: the living ones are read beside the results that name them, and only what is missing after. */
import type { RecordId } from "../../record/ids.ts";
import type { Listed, Reader } from "../parts/reader.ts";

type Strips = ReadonlyMap<RecordId<"strip">, Listed<"strip">>;

/** The living strips of a field and of those that are the same. */
export const stripsOf = async (records: Reader, fields: readonly RecordId<"field">[]): Promise<Strips> => {
  const lists = await Promise.all(fields.map((field) => records.list({ field, kind: "strip" })));
  return new Map(lists.flat().map((strip) => [strip.id, strip]));
};

/** The strips that were read, and those of `ids` that were not: deleted ones, or ones of another field. */
export const besides = async (
  records: Reader,
  read: Strips,
  ids: readonly RecordId<"strip">[],
): Promise<Strips> => {
  const missing = [...new Set(ids)].filter((id) => !read.has(id));
  const others = missing.length === 0 ? [] : await records.many(missing);
  return new Map([...read, ...others.map((strip) => [strip.id, strip] as const)]);
};
