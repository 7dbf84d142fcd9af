/** Visits: one field on one day. */
import { useEffect, useState } from "preact/hooks";
import { readClock } from "../../device/clock.ts";
import { BEHIND_MS } from "../../device/ticker.ts";
import type { RecordId } from "../../record/ids.ts";
import type { House } from "./house.ts";
import { dayOf } from "./numbers.ts";
import type { Listed, Reader } from "./reader.ts";

/** Today on this device's own calendar. */
export const today = (): string => dayOf(readClock().wallMs);

/** The calendar is looked at every minute, at a full one: a clock that shows seconds is awake then anyway. */
const LOOK_EVERY_MS = 60_000;

/** Today, also when midnight or a border between time zones is crossed while the screen is open. */
export const useToday = (): string => {
  const [day, setDay] = useState(today);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    const look = () => {
      setDay(today());
      clearTimeout(timer);
      timer = setTimeout(look, LOOK_EVERY_MS - (readClock().wallMs % LOOK_EVERY_MS) + BEHIND_MS);
    };
    look();
    document.addEventListener("visibilitychange", look);
    return () => {
      clearTimeout(timer);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return day;
};

/** Living visits of these fields, oldest first. */
export const visitsOf = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
): Promise<readonly Listed<"visit">[]> => {
  const lists = await Promise.all(fields.map((field) => records.list({ field, kind: "visit" })));
  return lists.flat().sort((a, b) => (a.body.day < b.body.day ? -1 : a.body.day > b.body.day ? 1 : 0));
};

/** A visit goes on past midnight while its last line is not older than this (own choice, no source). */
export const GOES_ON_MS = 4 * 3_600_000;
const DAY_MS = 86_400_000;

const daysApart = (a: string, b: string): number =>
  Math.abs(Date.parse(`${a}T00:00:00Z`) - Date.parse(`${b}T00:00:00Z`)) / DAY_MS;

/**
 * Whether somebody is still measuring on a visit of the day before or after: midnight went by, or a border
 * between time zones. Begun anew in silence, a strip would fall apart into two days.
 */
export const goesOn = async (
  records: Reader,
  { id, body, row }: Pick<Listed<"visit">, "id" | "body" | "row">,
  now: string,
): Promise<boolean> => {
  if (daysApart(body.day, now) !== 1) return false;
  const [line] = await records.list({ visit: id, kind: "observation" }, { newestFirst: true, limit: 1 });
  const lastMs = line?.row.keys.atMs ?? row.keys.atMs;
  return Math.abs(readClock().wallMs - lastMs) <= GOES_ON_MS;
};

/** Begins a visit of today. Null when it could not be written; the reason is shown. */
export const beginVisit = async (
  house: House,
  field: RecordId<"field">,
): Promise<RecordId<"visit"> | null> => {
  const command = house.pen.write("visit", { field, day: today(), harvestYear: null });
  const written = await house.write(command);
  if (written.ok) return command.id;
  house.tell(written.problem);
  return null;
};

/**
 * The visit that is measured on now: today's, or one that goes on past midnight; begun if there is none.
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
  const visits = await visitsOf(house.records, fields);
  const there = visits.find(({ body }) => body.day === now);
  if (there !== undefined) return there.id;
  for (const visit of visits) if (await goesOn(house.records, visit, now)) return visit.id;
  return beginVisit(house, field);
};
