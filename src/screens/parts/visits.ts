/** Visits: one field on one day. */
import { readClock } from "../../device/clock.ts";
import type { RecordId } from "../../record/ids.ts";
import type { House } from "./house.ts";
import { dayOf } from "./numbers.ts";
import type { Listed, Reader } from "./reader.ts";

/** Today on this device's own calendar. */
export const today = (): string => dayOf(readClock().wallMs);

/** Living visits of these fields, oldest first. */
export const visitsOf = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
): Promise<readonly Listed<"visit">[]> => {
  const lists = await Promise.all(fields.map((field) => records.list({ field, kind: "visit" })));
  return lists.flat().sort((a, b) => (a.body.day < b.body.day ? -1 : a.body.day > b.body.day ? 1 : 0));
};

/**
 * Today's visit of a field, begun if there is none yet.
 *
 * @param fields the field first, then all that are the same
 * @returns null when it could not be written; the reason is shown
 */
export const todaysVisit = async (
  house: House,
  fields: readonly RecordId<"field">[],
): Promise<RecordId<"visit"> | null> => {
  const [field] = fields;
  if (field === undefined) return null;
  const now = today();
  const there = (await visitsOf(house.records, fields)).find(({ body }) => body.day === now);
  if (there !== undefined) return there.id;
  const command = house.pen.write("visit", { field, day: now, harvestYear: null });
  const written = await house.write(command);
  if (written.ok) return command.id;
  house.tell(written.problem);
  return null;
};
