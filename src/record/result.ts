/**
 * What a step returns when it may fail in an expected way. `throw` is for bugs only.
 *
 * @example
 * const answer: Result<number> = ok(12.5);
 */
export type Result<T> = Ok<T> | Failed;

/** It worked, and this is what came of it. */
export interface Ok<T> {
  readonly ok: true;
  readonly value: T;
}

/** It did not work, for a reason that has words on a screen. */
export interface Failed {
  readonly ok: false;
  readonly problem: Problem;
}

/**
 * Why something could not be done. The code is stable (`room/what-happened`) and has its words in
 * the message catalogue; the facts fill the gaps in those words.
 */
export interface Problem {
  readonly code: `${string}/${string}`;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** Wraps a value that was reached. */
export const ok = <T>(value: T): Ok<T> => ({ ok: true, value });

/**
 * Wraps a reason.
 *
 * @example
 * failed("science/too-few-lines", { needs: 3, has: 2 });
 */
export const failed = (
  code: Problem["code"],
  facts: Readonly<Record<string, string | number>> = {},
): Failed => ({ ok: false, problem: { code, facts } });
