/** The rings that run just now, in any field, with what was read at them. */
import { type ReadonlySignal, signal } from "@preact/signals";
import { readClock } from "../device/clock.ts";
import { kindOf, type RecordId } from "../record/ids.ts";
import type { RingReading } from "../record/ring/events.ts";
import { readRing } from "../record/ring/reading.ts";
import type { House } from "../screens/parts/house.ts";
import { ReadFailed } from "../screens/parts/reader.ts";
import type { Changed } from "../store/changes.ts";
import { begunLately } from "./rings-begun.ts";

/** A ring that was started and not stopped. */
export interface RunningRing {
  readonly id: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
  readonly letter: string;
  /** When it is to be read, in minutes after the start. */
  readonly planMin: readonly number[];
  readonly reading: RingReading;
}

type Records = House["records"];

const runningNow = async (records: Records): Promise<readonly RunningRing[]> => {
  const begun = await begunLately(records, readClock().wallMs);
  const rings = begun.flatMap(({ id, header }) => (header.type === "ring" ? [{ id, header }] : []));
  const [entries, kit] = await Promise.all([
    records.entries(rings.map(({ id }) => id)),
    records.many(rings.map(({ header }) => header.ring)),
  ]);
  return rings.flatMap(({ id, header }) => {
    const reading = readRing(entries.get(id) ?? []);
    if (reading.start === null || reading.stop !== null) return [];
    const letter = kit.find((one) => one.id === header.ring)?.body.name ?? "";
    return [{ id, visit: header.visit, letter, planMin: header.planMin, reading }];
  });
};

/**
 * Follows the rings that run.
 *
 * @param signal ends it
 * @returns undefined until they are known for the first time
 */
export const watchRunningRings = (
  house: Pick<House, "records" | "tell">,
  stop: AbortSignal,
): ReadonlySignal<readonly RunningRing[] | undefined> => {
  const rings = signal<readonly RunningRing[] | undefined>(undefined);
  /** Lines and holes: a line is touched four times a second, and no ring changes by it. */
  const others = new Set<RecordId>();
  let looking = false;
  let again = false;
  // Changes that come while it is looking are answered by one more look: hundreds at once would each read all.
  const look = async (): Promise<void> => {
    again = true;
    if (looking) return;
    looking = true;
    try {
      while (again && !stop.aborted) {
        again = false;
        const found = await runningNow(house.records);
        if (!stop.aborted) rings.value = found;
      }
    } catch (error) {
      if (!(error instanceof ReadFailed)) throw error;
      if (!stop.aborted) house.tell(error.problem);
    } finally {
      looking = false;
    }
  };
  const hear = async (changed: Changed): Promise<void> => {
    if (changed === "everything") return look();
    const fresh = changed.filter((id) => kindOf(id) === "observation" && !others.has(id));
    // Asked for together: one by one they would each wait for the database.
    const found =
      fresh.length === 0 ? [] : await house.records.many(fresh as RecordId<"observation">[]).catch(() => []);
    for (const { id, body } of found) if (body.type !== "ring") others.add(id);
    if (changed.some((id) => kindOf(id) === "kit") || fresh.some((id) => !others.has(id))) return look();
  };
  const unsubscribe = house.records.subscribe((changed) => void hear(changed));
  stop.addEventListener("abort", unsubscribe, { once: true });
  void look();
  return rings;
};
