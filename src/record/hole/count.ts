/** One count of a hole: worms touched in one by one, a number typed at once, or both. */
import type { Entry } from "../entry.ts";
import { type Answer, settledFrom, standing } from "./answers.ts";
import type { FoundEntry, SortedEntry } from "./entries.ts";

/** Most entries that one entry can name as replaced. */
const MOST_REPLACED = 1000;

/** The worms of one layer, or of one group. */
export interface CountRead<E> {
  /** Worms that count; while numbers contradict each other only those touched in since. */
  readonly count: number;
  /** Touches that count: all of them, or those after the number typed at once. */
  readonly oneByOne: number;
  /** The number typed at once. */
  readonly atOnce: E | null;
  /** Numbers of two phones that contradict each other; none counts until one is chosen. */
  readonly inDoubt: readonly E[];
  /** Touches of another phone that the number typed at once does not know of; they are added to it. */
  readonly fromOtherPhones: number;
  /** What a number typed now would stand in the place of: its `replaces`. Empty when there is nothing. */
  readonly standsFor: readonly string[];
}

/** A touch with its place in the order of entries. */
export interface Touch {
  readonly entry: Pick<Entry, "id" | "device">;
  readonly at: number;
}

/**
 * Counts one layer or one group.
 *
 * A number typed at once stands in the place of everything that its own phone counted there before, and of
 * what it names in `replaces`. Touches of another phone that it does not name were other worms, as far as
 * anybody can tell: they are added, and `fromOtherPhones` says how many, so that no worm is lost silently.
 *
 * @param touches that count, in order
 * @param typed numbers that were not taken back, in order
 */
export const countOf = <E extends FoundEntry | SortedEntry>(
  touches: readonly Touch[],
  typed: readonly Answer<E>[],
): CountRead<E> => {
  // The last number of a phone covers as much as all its earlier ones together.
  const lastOfPhone = new Map(typed.map(({ entry, at }) => [entry.device, at]));
  const counting = touches.filter(({ entry, at }) => at > (lastOfPhone.get(entry.device) ?? -1));
  const stood = standing(typed);
  const { answer, inDoubt } = settledFrom(stood, ({ count }) => count);
  return {
    count: (answer?.count ?? 0) + counting.length,
    oneByOne: counting.length,
    atOnce: answer,
    inDoubt,
    fromOtherPhones:
      answer === null ? 0 : counting.filter(({ entry }) => !lastOfPhone.has(entry.device)).length,
    standsFor: [...stood, ...counting.map(({ entry }) => entry)].slice(0, MOST_REPLACED).map(({ id }) => id),
  };
};
