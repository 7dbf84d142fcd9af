/** Queries that run again whenever records change, here or in another window. */
import { useEffect, useState } from "preact/hooks";
import type { Changed } from "../../store/changes.ts";
import { useHouse } from "./house.ts";
import { ReadFailed } from "./reader.ts";

/** An answer that takes longer to change is said to be from before. Own choice, no source. */
const BRIEFLY_MS = 700;

/**
 * Runs a query now and after every change of records.
 *
 * @param query reads from the store; a newer run makes the answer of an older one void. It may hand over what was
 *   true before the last changes: that is shown where nothing stands yet, or when the new answer does not come soon
 * @param by what the query depends on besides records
 * @param concerns whether a change is worth running again for; every change when left out
 * @returns the latest answer, undefined before the first; while another one is on its way the old one stays
 */
export const useLive = <T>(
  query: (meanwhile: (before: T) => void) => Promise<T>,
  by: readonly unknown[],
  concerns: (changed: Changed) => boolean = () => true,
): T | undefined => {
  const { records, tell } = useHouse();
  const [answer, setAnswer] = useState<{ readonly value: T } | undefined>(undefined);
  useEffect(() => {
    let latest = 0;
    let over = false;
    const run = async () => {
      latest += 1;
      const mine = latest;
      let answered = false;
      const waits = () => !over && !answered && mine === latest;
      try {
        const value = await query((before) => {
          if (waits()) setAnswer((now) => (now?.value === undefined ? { value: before } : now));
          setTimeout(() => waits() && setAnswer({ value: before }), BRIEFLY_MS);
        });
        if (waits()) setAnswer({ value });
      } catch (error) {
        if (!(error instanceof ReadFailed)) throw error;
        if (!over) tell(error.problem);
      } finally {
        answered = true;
      }
    };
    void run();
    const unsubscribe = records.subscribe((changed) => {
      if (concerns(changed)) void run();
    });
    return () => {
      over = true;
      unsubscribe();
    };
  }, [records, tell, ...by]);
  return answer?.value;
};
