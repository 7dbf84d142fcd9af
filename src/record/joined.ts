/** Joins: which record stands for which, when somebody said "these are the same". */
import type { RecordId } from "./ids.ts";
import type { Join } from "./kinds/join.ts";
import { compareText } from "./stamp.ts";

/**
 * Resolves joins when records are read. The target of a join stands for its source. A circle of joins (two
 * devices joined the same pair the other way round) is cut where it would close, which is at its
 * greatest id, so every device shows the same one.
 *
 * @param joins living joins, in any order
 * @returns for an id the id that stands for it; an id that was not joined stands for itself
 */
export const joined = (joins: readonly Join[]): ((id: RecordId) => RecordId) => {
  const parent = new Map<RecordId, RecordId>();
  const root = (id: RecordId): RecordId => {
    let top = id;
    for (let up = parent.get(top); up !== undefined; up = parent.get(top)) top = up;
    // Shortens the way for the next look-up: a long chain would otherwise be walked once per join.
    for (let at = id; at !== top; ) {
      const up = parent.get(at) ?? top;
      parent.set(at, top);
      at = up;
    }
    return top;
  };
  // Sorted, so that the order of arrival does not matter.
  const sorted = [...joins].sort((a, b) => compareText(a.from, b.from) || compareText(a.to, b.to));
  for (const { from, to } of sorted) {
    const [source, target] = [root(from), root(to)];
    if (source !== target) parent.set(source, target);
  }
  return root;
};
