/** What somebody corrected of a record. */

/** What to put on, and what the record is to have no more. */
export interface Changes<T, L extends string> {
  readonly patch: Partial<T>;
  readonly without: readonly L[];
}

/**
 * What was said otherwise than it is stored; empty when nothing was. Only that is written: another window may have
 * corrected the rest meanwhile.
 *
 * @param mayLack properties that go when they are stored and were left out here
 *
 * @example
 * changesOf({ name: "A", edge: 1 }, { name: "B" }, ["edge"]) // { patch: { name: "B" }, without: ["edge"] }
 */
export const changesOf = <T extends object, L extends keyof T & string>(
  stored: T,
  said: Partial<T>,
  mayLack: readonly L[],
): Changes<T, L> => ({
  patch: Object.fromEntries(
    Object.entries(said).filter(
      ([key, value]) => JSON.stringify(value) !== JSON.stringify(stored[key as keyof T]),
    ),
  ) as Partial<T>,
  without: mayLack.filter((key) => key in stored && !(key in said)),
});

/** Whether anything was said otherwise. */
export const isChanged = ({ patch, without }: Changes<object, string>): boolean =>
  Object.keys(patch).length + without.length > 0;
