import type { RecordId } from "../../../record/ids.ts";
import type { Reader } from "../../parts/reader.ts";

const DAY_MS = 86_400_000;
const dayMs = (day: string): number => Date.parse(`${day}T00:00:00Z`);

/**
 * Days since the soil of a strip was last worked, as far as the field's events tell.
 *
 * @param fields the field first, then all that are the same
 * @param day of the count
 * @returns null when no such event is known
 */
export const workedDaysAgo = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
  isStrip: (strip: RecordId<"strip">) => boolean,
  day: string,
): Promise<number | null> => {
  const lists = await Promise.all(fields.map((field) => records.list({ field, kind: "event" })));
  const days = lists
    .flat()
    .filter(
      ({ body }) => body.what === "tilled" && body.day <= day && (body.strip === null || isStrip(body.strip)),
    )
    .map(({ body }) => Math.round((dayMs(day) - dayMs(body.day)) / DAY_MS));
  return days.length === 0 ? null : Math.min(...days);
};
