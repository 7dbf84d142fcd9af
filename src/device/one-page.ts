/** Something that one page does at a time. */

/** In milliseconds; a page that has the lock for longer was stopped with it, and nobody waits for that one. */
const WAITS_MS = 4000;

const locks = (): LockManager | undefined =>
  typeof navigator === "undefined" || !("locks" in navigator) ? undefined : navigator.locks;

/**
 * Does something while no other page does what has the same name. Without locks it is done all the same.
 *
 * @returns what it came to
 */
export const onePageAtATime = async <T>(name: string, job: () => Promise<T>): Promise<T> => {
  const free = locks();
  let doing: Promise<T> | undefined;
  const once = (): Promise<T> => {
    doing ??= job();
    return doing;
  };
  if (free === undefined) return once();
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), WAITS_MS);
  try {
    await free.request(name, { signal: stop.signal }, () => {
      clearTimeout(timer);
      return once();
    });
  } catch {
    // Refused altogether, as in a page without an origin, or waited for in vain.
  }
  return once();
};
