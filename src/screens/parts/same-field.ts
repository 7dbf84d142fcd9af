/** Fields that somebody said are the same, put together when they are read. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import { joined } from "../../record/joined.ts";
import type { Join } from "../../record/kinds/join.ts";
import type { Listed, Reader } from "./reader.ts";

/** A field as lists show it, with every id that stands for it. */
export interface SameField {
  readonly field: Listed<"field">;
  /** The id of `field` first. */
  readonly ids: readonly RecordId<"field">[];
}

const isField = (id: RecordId): id is RecordId<"field"> => kindOf(id) === "field";

const idsOf = (joins: readonly Join[], id: RecordId<"field">): readonly RecordId<"field">[] => {
  const same = joined(joins);
  const root = same(id);
  const all = joins.flatMap(({ from, to }) => [from, to]).filter((one) => same(one) === root);
  return [...new Set([root, id, ...all])].filter(isField);
};

/**
 * The field that an id stands for.
 *
 * @returns undefined when none of its records is on this device. The field that the others were joined to
 * is shown while it lives; a deleted one must not take those joined to it out of every list.
 */
export const sameField = async (records: Reader, id: RecordId<"field">): Promise<SameField | undefined> => {
  const ids = idsOf(await records.joins(), id);
  const found = await records.many(ids);
  const field = found.find(({ deleted }) => !deleted) ?? found[0];
  return field === undefined
    ? undefined
    : { field, ids: [field.id, ...ids.filter((one) => one !== field.id)] };
};

/** Every living field once, whatever was joined to it. */
export const allFields = async (records: Reader): Promise<readonly SameField[]> => {
  const [fields, joins] = await Promise.all([records.list({ kind: "field" }), records.joins()]);
  const same = joined(joins);
  const groups = new Map<RecordId, Listed<"field">[]>();
  for (const field of fields) groups.set(same(field.id), [...(groups.get(same(field.id)) ?? []), field]);
  return [...groups].flatMap(([root, members]) => {
    const field = members.find(({ id }) => id === root) ?? members[0];
    return field === undefined
      ? []
      : [{ field, ids: [field.id, ...idsOf(joins, field.id).filter((id) => id !== field.id)] }];
  });
};

/** Which strip a strip stands for, by the joins that stand. */
export const sameStrip = (joins: readonly Join[]): ((id: RecordId<"strip">) => RecordId<"strip">) => {
  const same = joined(joins);
  return (id) => same(id) as RecordId<"strip">;
};

/**
 * Living strips, each once, whatever was joined to it. The strip that the others were joined to stands for
 * them while it lives; a deleted one must not take those joined to it out of every list.
 */
export const onceEach = (
  strips: readonly Listed<"strip">[],
  stripOf: (id: RecordId<"strip">) => RecordId<"strip">,
): readonly Listed<"strip">[] => {
  const living = new Set<RecordId<"strip">>(strips.map(({ id }) => id));
  const stands = new Set<RecordId<"strip">>();
  return strips.filter(({ id }) => {
    const root = stripOf(id);
    if (id !== root && (living.has(root) || stands.has(root))) return false;
    stands.add(root);
    return true;
  });
};

/** The strip among those of a list that stands for this one; undefined when none does. */
export const standsFor = (
  strips: readonly Listed<"strip">[],
  stripOf: (id: RecordId<"strip">) => RecordId<"strip">,
  id: RecordId<"strip">,
): RecordId<"strip"> | undefined => strips.find((one) => stripOf(one.id) === stripOf(id))?.id;
