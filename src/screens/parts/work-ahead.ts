import type { House } from "./house.ts";
import { ReadFailed } from "./reader.ts";
import { wantedBy } from "./results-desk.ts";
import { allFields } from "./same-field.ts";

/**
 * Has the worker work out what is not up to date, field after field: what a file brought would else be waited for
 * by whoever opens a field first. Nobody waits for this, so nobody is told when the store cannot answer.
 *
 * @returns whether all of them are worked out
 */
export const workAhead = async ({
  records,
  results,
  settings,
}: Pick<House, "records" | "results" | "settings">): Promise<boolean> => {
  try {
    for (const { ids } of await allFields(records)) await results.all(ids, wantedBy(settings.value));
    return true;
  } catch (error) {
    if (!(error instanceof ReadFailed)) throw error;
    return false;
  }
};
