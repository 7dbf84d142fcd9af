/** One ring for the specialist: its header, its kit and its entries read, and its curves laid, off the page. */
import type { RecordId } from "../../record/ids.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import { shown } from "../../record/record.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { readRing } from "../../record/ring/reading.ts";
import {
  type GroundStated,
  type RingForSpecialist,
  ringForSpecialist,
} from "../../science/infiltration/ring-for-specialist.ts";
import { soakingOf } from "../../science/infiltration/soaking.ts";
import type { Connection } from "../../store/connection.ts";
import { readEntries, readHeaders } from "../../store/read.ts";
import { kitOf, setOfRing } from "./holes-rings.ts";

/**
 * Works out the curves and conductivities of a ring.
 *
 * @returns `science/not-a-ring` when the test or its ring is not on this device, reasons as `soakingOf`
 */
export const curvesOfRing = async (
  connection: Connection,
  id: RecordId<"observation">,
  ground: GroundStated,
): Promise<Result<RingForSpecialist>> => {
  const [tests, entries] = await Promise.all([readHeaders(connection, [id]), readEntries(connection, [id])]);
  if (!tests.ok) return tests;
  if (!entries.ok) return entries;
  const [row] = tests.value;
  const header = row === undefined ? undefined : shown(row)?.body;
  if (header?.type !== "ring") return failed("science/not-a-ring");
  const things = await readHeaders(connection, kitOf(header));
  if (!things.ok) return things;
  const kit = new Map<RecordId, Kit | undefined>(things.value.map((one) => [one.id, shown(one)?.body]));
  const set = setOfRing(header, kit);
  if (!set.ok) return set;
  const soaking = soakingOf(readRing(entries.value.get(id) ?? []), set.value);
  return soaking.ok ? ok(ringForSpecialist(soaking.value, set.value, ground)) : soaking;
};
