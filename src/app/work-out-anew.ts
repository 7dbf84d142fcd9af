/** Results that an update, or another way of counting, has made useless are worked out before anybody asks. */
import { FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION } from "../science/constants.ts";
import type { House } from "../screens/parts/house.ts";
import { wantedBy } from "../screens/parts/results-desk.ts";
import { workAhead } from "../screens/parts/work-ahead.ts";
import { getMeta, setMeta } from "../store/meta.ts";
import { WORKED_OUT_BY } from "./meta-keys.ts";

/**
 * Works out all fields if the science, or what is asked of it, is not what it was at the last start. To be called
 * once, behind the first screen. At the very first start nothing can be out of date: it is only noted.
 */
export const workOutAnew = async (house: Pick<House, "records" | "results" | "settings">): Promise<void> => {
  const { connection } = house.records;
  const now = JSON.stringify([FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION, wantedBy(house.settings.value)]);
  const before = await getMeta(connection, WORKED_OUT_BY);
  if (!before.ok || before.value === now) return;
  const done = before.value === undefined || (await workAhead(house));
  // Broken off before this, the next start does it again: what was kept meanwhile is not worked out twice.
  if (done) await setMeta(connection, WORKED_OUT_BY, now);
};
