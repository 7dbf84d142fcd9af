/** Answers of which one stands: numbers typed at once, and conditions. */
import type { Entry } from "../entry.ts";

/** An answer with its place in the order of entries. Answers that were taken back are not among them. */
export interface Answer<E> {
  readonly entry: E;
  readonly at: number;
  /** It was replaced by a correction. */
  readonly replaced: boolean;
}

/**
 * The answers that stand. A phone knows what it wrote before, so its later answer stands in the place of its
 * earlier ones, even when that later one was replaced since: otherwise the first would come back. Answers of
 * two phones both stand until one is chosen.
 *
 * @param answers to one question, in order
 */
export const standing = <E extends Entry>(answers: readonly Answer<E>[]): readonly E[] =>
  answers
    .filter(
      ({ entry, at, replaced }) =>
        !(replaced || answers.some((later) => later.at > at && later.entry.device === entry.device)),
    )
    .map(({ entry }) => entry);

/** What stands as one answer, or the answers that contradict each other. */
export interface Settled<E> {
  readonly answer: E | null;
  readonly inDoubt: readonly E[];
}

/**
 * One answer, when all that stand say the same.
 *
 * @param stood as `standing` gives them
 * @param said what an answer says, so that two phones which agree are one answer
 */
export const settledFrom = <E extends Entry>(
  stood: readonly E[],
  said: (entry: E) => string | number,
): Settled<E> =>
  new Set(stood.map(said)).size > 1
    ? { answer: null, inDoubt: stood }
    : { answer: stood.at(-1) ?? null, inDoubt: [] };
