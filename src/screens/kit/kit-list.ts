/** The kit in lists: what there is of each type, how often it was used, and when it was changed. */
import type { RecordId } from "../../record/ids.ts";
import type { Bottle, HoleTemplate, Kit, Ring, Rope, Ruler } from "../../record/kinds/kit.ts";
import type { Observation } from "../../record/kinds/observation.ts";
import type { Listed, Reader } from "../parts/reader.ts";

/** When a record was last changed, by the clock of that device, and by whom. */
export interface LastChange {
  readonly atMs: number;
  readonly by: RecordId<"person"> | null;
}

/** One thing of the kit. */
export interface KitItem<B extends Kit = Kit> {
  readonly id: RecordId<"kit">;
  readonly body: B;
  /** Null while it stands as it was first written down. */
  readonly changed: LastChange | null;
}

/** The kit by type, each list by name. */
export interface KitList {
  readonly ropes: readonly KitItem<Rope>[];
  readonly rings: readonly KitItem<Ring>[];
  readonly templates: readonly KitItem<HoleTemplate>[];
  readonly bottles: readonly KitItem<Bottle>[];
  readonly rulers: readonly KitItem<Ruler>[];
}

/** The change behind the version that is shown; null for a version that was made from no other. */
export const lastChangeOf = ({ revision }: Pick<Listed, "revision">): LastChange | null =>
  revision.seen.length === 0
    ? null
    : { atMs: revision.stamp.wallMs, by: revision.author as RecordId<"person"> | null };

const isType =
  <T extends Kit["type"]>(type: T) =>
  (item: KitItem): item is KitItem<Extract<Kit, { type: T }>> =>
    item.body.type === type;

/** Sorts things of the kit into their types. */
export const sortedKit = (rows: readonly Listed<"kit">[]): KitList => {
  const items: KitItem[] = rows
    .map((row) => ({ id: row.id, body: row.body, changed: lastChangeOf(row) }))
    .sort((a, b) => a.body.name.localeCompare(b.body.name, undefined, { numeric: true }));
  return {
    ropes: items.filter(isType("rope")),
    rings: items.filter(isType("ring")),
    templates: items.filter(isType("hole-template")),
    bottles: items.filter(isType("bottle")),
    rulers: items.filter(isType("ruler")),
  };
};

/** Reads the living kit. */
export const readKit = async (records: Reader): Promise<KitList> =>
  sortedKit(await records.list({ kind: "kit" }));

/** The things of the kit that a test was made with. */
export const kitOf = (test: Observation): readonly RecordId<"kit">[] => {
  const used =
    test.type === "line"
      ? [test.rope]
      : test.type === "ring"
        ? [test.ring, test.outer, test.ruler, test.bottle]
        : test.type === "hole"
          ? [test.template]
          : [];
  return [...new Set(used.filter((id) => id !== null))];
};

/** How many living tests were made with each thing; what was never used is not in it. */
export const testsByKit = (
  tests: readonly Pick<Listed<"observation">, "body">[],
): ReadonlyMap<RecordId<"kit">, number> => {
  const counts = new Map<RecordId<"kit">, number>();
  for (const { body } of tests) for (const id of kitOf(body)) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
};

/** Reads how many living tests were made with each thing. */
export const readTestsByKit = async (records: Reader): Promise<ReadonlyMap<RecordId<"kit">, number>> =>
  testsByKit(await records.list({ kind: "observation" }));

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Whether another thing of the same type has this name already; nameless ones are never alike. */
export const nameTaken = (
  items: readonly KitItem[],
  name: string,
  but: RecordId<"kit"> | undefined,
): boolean => name.trim() !== "" && items.some(({ id, body }) => id !== but && sameName(body.name, name));

/**
 * The next free letter for a ring.
 *
 * @returns A to Z, then AA to ZZ; empty when all of them are taken
 *
 * @example
 * nextLetter(["A", "b", "D"]) // => "C"
 */
export const nextLetter = (taken: readonly string[]): string => {
  const pairs = [...LETTERS].flatMap((first) => [...LETTERS].map((second) => first + second));
  return [...LETTERS, ...pairs].find((letter) => !taken.some((one) => sameName(one, letter))) ?? "";
};
