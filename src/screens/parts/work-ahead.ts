import type { House } from "./house.ts";
import { ReadFailed } from "./reader.ts";
import { wantedBy } from "./results-desk.ts";
import { allFields } from "./same-field.ts";

/**
 * Has the worker work out what is not up to date, field after field: what a file brought would else be waited for
 * by whoever opens a field first. Nobody waits for this, so nobody is told when the store cannot answer.
 */
export const workAhead = async ({
  records,
  results,
  settings,
}: Pick<House, "records" | "results" | "settings">): Promise<void> => {
  try {
    for (const { ids } of await allFields(records)) await results.all(ids, wantedBy(settings.value));
  } catch (error) {
    if (!(error instanceof ReadFailed)) throw error;
  }
};
