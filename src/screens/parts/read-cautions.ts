/** Reads from the records what the cautions of a set-out hang on. */
import { readClock } from "../../device/clock.ts";
import type { RecordId } from "../../record/ids.ts";
import { joined } from "../../record/joined.ts";
import { litresUsed } from "../../science/infiltration/water.ts";
import { readRings } from "../measure/rings/day.ts";
import { type CameFrom, type CautionFacts, fromOtherFarm, wasDug } from "./cautions-due.ts";
import type { House } from "./house.ts";
import { dayOf } from "./numbers.ts";
import type { Listed, Reader } from "./reader.ts";
import { sameField } from "./same-field.ts";

/** Where and for what a test is set out. */
export interface CautionsAt {
  readonly visit: RecordId<"visit">;
  readonly field: RecordId<"field">;
  readonly test: CautionFacts["test"];
  readonly person: RecordId<"person"> | null;
}

/** How far back is looked for the visit before, and for the rings of today. */
const LATEST = 100;

/**
 * The visit that this device began before. Visits that came in a file say nothing about these boots; only a
 * device that began none itself goes by all of them.
 */
const visitBefore = (
  visits: readonly Listed<"visit">[],
  now: RecordId<"visit">,
  device: string,
): Listed<"visit"> | undefined => {
  const others = visits.filter(({ id }) => id !== now);
  return others.find(({ revision }) => revision.stamp.device === device) ?? others[0];
};

const farmOf = async (records: Reader, field: RecordId<"field">): Promise<RecordId<"farm"> | null> => {
  const [found, joins] = await Promise.all([sameField(records, field), records.joins()]);
  const farm = found?.field.body.farm ?? null;
  return farm === null ? null : (joined(joins)(farm) as RecordId<"farm">);
};

/** Litres poured into the rings of today, on whatever field: the water was carried all the same. */
const litresOfDay = async (
  records: Reader,
  tests: readonly Listed<"observation">[],
  day: string,
): Promise<number> => {
  const rings = tests.filter(({ body }) => body.type === "ring" && dayOf(body.startedAtMs) === day);
  return rings.length === 0 ? 0 : litresUsed(await readRings(records, rings)).value;
};

/** What is read for one set-out: facts for the cautions, and the litres poured today. */
export const readCautionFacts = async (
  { records, device }: Pick<House, "records" | "device">,
  at: CautionsAt,
): Promise<{ readonly facts: CautionFacts; readonly litresToday: number }> => {
  const same = await sameField(records, at.field);
  const ids = same?.ids ?? [at.field];
  const digs = at.test !== "line";
  const [onField, events, visits, latest, farm] = await Promise.all([
    digs ? Promise.all(ids.map((field) => records.list({ field, kind: "observation" }))) : [],
    Promise.all(ids.map((field) => records.list({ field, kind: "event" }))),
    records.list({ kind: "visit" }, { newestFirst: true, limit: LATEST }),
    digs ? records.list({ kind: "observation" }, { newestFirst: true, limit: LATEST }) : [],
    farmOf(records, at.field),
  ]);
  const before = visitBefore(visits, at.visit, device);
  const cameFrom: CameFrom | null =
    before === undefined ? null : { visit: before.id, farm: await farmOf(records, before.body.field) };
  const { wallMs } = readClock();
  const day = dayOf(wallMs);
  return {
    facts: {
      test: at.test,
      field: ids[0] ?? at.field,
      person: at.person,
      dugBefore: wasDug(onField.flat(), at.visit),
      fromOtherFarm: fromOtherFarm(cameFrom, farm),
      events: events.flat(),
      day,
      nowMs: wallMs,
    },
    litresToday: await litresOfDay(records, latest, day),
  };
};
