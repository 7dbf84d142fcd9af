/** Remembers that a reading is to come, so that the next start keeps its place free from the first frame. */

const KEY = "mulchmark-reading-to-come";

/** Notes whether a reading is to come. */
export const noteToCome = (toCome: boolean): void => {
  try {
    if (toCome) localStorage.setItem(KEY, "1");
    else localStorage.removeItem(KEY);
  } catch {
    // Refused or full: the bar then pushes the first screen down by its height once.
  }
};

/** Whether one was to come when the page was last open. */
export const wasToCome = (): boolean => {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
};
