/** One job at a time: a second touch before the first is written down would write everything twice. */
import { useRef, useState } from "preact/hooks";

/**
 * Keeps a key from doing its job again while it is still at it.
 *
 * @returns whether a job is running, for the look of the key; and what runs a job unless one is running.
 * The second touch is held back even when the key has not been drawn again since the first.
 */
export const useOnce = (): [boolean, (job: () => Promise<void>) => void] => {
  const running = useRef(false);
  const [busy, setBusy] = useState(false);
  return [
    busy,
    (job) => {
      if (running.current) return;
      running.current = true;
      setBusy(true);
      void job().finally(() => {
        running.current = false;
        setBusy(false);
      });
    },
  ];
};
