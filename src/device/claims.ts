/**
 * Which of several open pages sounds a reading. Each page asks when the time has come, and the browser gives
 * a lock to one: no page holds a lock before, so one that was stopped or frozen cannot silence the others.
 * The lock is kept for as long as its page lives: a page that wakes up late finds it taken.
 */

/** After this time, in milliseconds, a page that had the lock has sounded, or was stopped between. */
const SOUNDED_WITHIN_MS = 700;
/** A lock that took this long came to a page that was stopped while it asked. */
const STOPPED_MS = 500;
/** A page that nobody sees or that may not sound yet lets the others go first. */
const LET_PASS_MS = 300;
/** How often a reading is taken over from a page that was stopped with the lock in its hand. */
const ROUNDS = 3;

const PREFIX = "mulchmark-sounded:";
const KEPT_MS = 3 * 86_400_000;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** The page's small store, shared by all pages; null where the browser refuses it. */
const smallStore = (): Storage | null => {
  try {
    return localStorage;
  } catch {
    return null;
  }
};

const wasSounded = (id: string): boolean => {
  try {
    return smallStore()?.getItem(PREFIX + id) != null;
  } catch {
    return false;
  }
};

const noteSounded = (id: string, wallMs: number): void => {
  try {
    smallStore()?.setItem(PREFIX + id, String(wallMs));
  } catch {
    // Full or refused: the lock alone decides until the page ends.
  }
};

/** Takes away what was noted days ago. */
const clearOld = (wallMs: number): void => {
  const store = smallStore();
  if (store === null) return;
  const keys = Array.from({ length: store.length }, (_, index) => store.key(index) ?? "");
  for (const key of keys) {
    if (key.startsWith(PREFIX) && !(Math.abs(wallMs - Number(store.getItem(key))) < KEPT_MS))
      store.removeItem(key);
  }
};

/** Asks the browser for a lock without waiting for it. True where there are no locks: then each sounds. */
const takeLock = (name: string): Promise<boolean> => {
  if (typeof navigator === "undefined" || !("locks" in navigator)) return Promise.resolve(true);
  const askedMs = performance.now();
  return new Promise((resolve) => {
    navigator.locks
      .request(name, { ifAvailable: true }, (lock) => {
        resolve(lock !== null && performance.now() - askedMs < STOPPED_MS);
        // Never given back: its page has sounded this reading, and nobody shall again.
        return lock === null ? undefined : new Promise<never>(() => undefined);
      })
      .catch(() => resolve(true)); // refused altogether, as in a page without an origin
  });
};

/**
 * What decides whether this page sounds a reading.
 *
 * @param mayGoFirst whether this page would be heard now; one that would not lets others go first
 * @returns for the name of a reading that is due: true when this page is the one to sound it, and that is
 *   noted; false when it was sounded, by any page, also by one that is gone
 */
export const openClaims = (mayGoFirst: () => boolean): ((id: string) => Promise<boolean>) => {
  clearOld(Date.now());
  return async (id) => {
    if (wasSounded(id)) return false;
    if (!mayGoFirst()) await wait(LET_PASS_MS);
    for (let round = 0; round < ROUNDS; round++) {
      const taken = await takeLock(`${PREFIX}${id} ${round}`);
      // Looked at behind the lock: a page that was stopped has heard by now what happened meanwhile.
      if (wasSounded(id)) return false;
      if (taken) {
        noteSounded(id, Date.now());
        return true;
      }
      await wait(SOUNDED_WITHIN_MS);
      if (wasSounded(id)) return false;
    }
    return false;
  };
};
