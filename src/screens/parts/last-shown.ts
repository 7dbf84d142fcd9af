import { useRef } from "preact/hooks";

/**
 * The latest answer, or the one before it while a new one is read: a list that is empty for a moment would
 * throw the reader to its top.
 */
export const useLastShown = <T>(latest: T | undefined): T | undefined => {
  const before = useRef<T | undefined>(undefined);
  // "Not on this device" is an answer too.
  const now = latest === undefined ? before.current : latest;
  before.current = now;
  return now;
};
