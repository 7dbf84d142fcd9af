/** What stood there before a correction: kept, and shown struck through. */
import type { Entry } from "../../../record/entry.ts";

/**
 * The answers that an entry took the place of, newest first. A look that was answered by water is no answer.
 *
 * @param entries all entries of the ring
 */
export const oldAnswers = (entries: readonly Entry[], entry: Entry): readonly Entry[] => {
  const byId = new Map(entries.map((one) => [one.id, one]));
  const found: Entry[] = [];
  // Each entry once: a file may hold entries that point at each other in a circle.
  const seen = new Set([entry.id]);
  const follow = (one: Entry): void => {
    for (const id of "replaces" in one ? (one.replaces ?? []) : []) {
      const old = byId.get(id);
      if (old === undefined || seen.has(id)) continue;
      seen.add(id);
      if (old.type !== "look") found.push(old);
      follow(old);
    }
  };
  follow(entry);
  return found;
};
