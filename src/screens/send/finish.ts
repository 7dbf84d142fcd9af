/** Finishes a bringing-in that was broken off, and says so. */
import { listImports } from "../../store/staging.ts";
import type { House } from "../parts/house.ts";
import { workAhead } from "../parts/work-ahead.ts";

/**
 * Finishes what was being brought in when the app was closed. Asked at every start; the worker is only
 * started when something waits. What was finished is said in the bar above the screens.
 */
export const finishInterrupted = async (
  house: Pick<House, "records" | "files" | "results" | "settings" | "tell">,
): Promise<void> => {
  const imports = await listImports(house.records.connection);
  if (!imports.ok || imports.value.length === 0) return;
  const finished = await house.files.finish(() => undefined);
  if (!finished.ok) {
    house.tell(finished.problem);
    return;
  }
  for (const { name, new: added, changed } of finished.value)
    house.tell({ code: "exchange/finished", facts: { name, new: added, changed } });
  if (finished.value.length > 0) await workAhead(house);
};
