/** The holes that mustard water was poured into, in any field, until somebody looks for the worms. */
import type { DueReading } from "../device/alarm.ts";
import { type ClockReading, readClock } from "../device/clock.ts";
import type { Entry } from "../record/entry.ts";
import { readHole } from "../record/hole/reading.ts";
import { type MustardRead, mustardNow, type Timed } from "../record/hole/sorting.ts";
import { kindOf, type RecordId } from "../record/ids.ts";
import type { HoleHeader } from "../record/kinds/observation.ts";
import type { House } from "../screens/parts/house.ts";
import { ReadFailed } from "../screens/parts/reader.ts";
import type { Changed } from "../store/changes.ts";
import { begunLately } from "./rings-begun.ts";

const MINUTE_MS = 60_000;
/** A wait that is over stands in the bar for so long: worms that came up are gone by then. Own choice, no source. */
const STANDS_MS = 60 * MINUTE_MS;

/** A hole with mustard water in it. */
export interface MustardWait {
  readonly id: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
  readonly number: number;
  readonly waitMin: number;
  readonly latest: MustardRead;
  readonly reading: Timed;
}

/**
 * The wait of a hole for its latest mustard water; null when none was poured, when the hole is closed, and once
 * something was written down there after its end.
 */
export const waitOf = (
  id: RecordId<"observation">,
  { visit, number, mustardMin }: Pick<HoleHeader, "visit" | "number" | "mustardMin">,
  entries: readonly Entry[],
): MustardWait | null => {
  const reading = readHole(entries);
  const latest = reading.mustard.at(-1);
  if (mustardMin === null || latest === undefined || reading.closed !== null) return null;
  const endMs = latest.poured.lookedAtMs + mustardMin * MINUTE_MS;
  if (entries.some(({ lookedAtMs }) => lookedAtMs >= endMs)) return null;
  return { id, visit, number, waitMin: mustardMin, latest, reading };
};

/** The end of a wait, to come or not long ago, as the alarm takes it. */
export const waitToCome = (wait: MustardWait, now: ClockReading): readonly DueReading[] => {
  const { wallMs, monoMs, pageId } = now;
  const told = mustardNow(wait.reading, { wallMs, monoMs, page: pageId }).at(-1);
  if (told === undefined) return [];
  const inMs = Math.round(wait.waitMin * MINUTE_MS - told.agoMs);
  // A pouring whose moment is corrected is another one: its end is due anew.
  return inMs < -STANDS_MS
    ? []
    : [{ id: `${wait.id} ${wait.latest.poured.id} ${wait.waitMin}`, test: wait.id, inMs }];
};

/**
 * Follows the waits for worms.
 *
 * @param tell told of all of them whenever one may have changed
 * @param stop ends it
 */
export const watchMustardWaits = (
  house: Pick<House, "records" | "tell">,
  tell: (waits: readonly MustardWait[]) => void,
  stop: AbortSignal,
): void => {
  const { records } = house;
  /** Holes that may be waited at: only what changed is read again, since worms are touched in quickly. */
  const holes = new Map<RecordId<"observation">, MustardWait | null>();
  const others = new Set<RecordId>();
  const take = async (
    found: readonly { readonly id: RecordId<"observation">; readonly header: HoleHeader }[],
  ): Promise<void> => {
    const entries = await records.entries(found.map(({ id }) => id));
    for (const { id, header } of found) holes.set(id, waitOf(id, header, entries.get(id) ?? []));
    if (!stop.aborted) tell([...holes.values()].filter((wait) => wait !== null));
  };
  const hear = async (changed: Changed): Promise<void> => {
    if (changed === "everything") {
      holes.clear();
      const begun = await begunLately(records, readClock().wallMs);
      return take(begun.flatMap(({ id, header }) => (header.type === "hole" ? [{ id, header }] : [])));
    }
    const fresh = changed.filter((id) => kindOf(id) === "observation" && !others.has(id));
    if (fresh.length === 0) return;
    const found = await records.many(fresh as RecordId<"observation">[]);
    // What was deleted is no longer found, and nobody waits there.
    for (const id of fresh) holes.delete(id as RecordId<"observation">);
    for (const { id, body } of found) if (body.type !== "hole" || body.mustardMin === null) others.add(id);
    return take(
      found.flatMap(({ id, body, deleted }) =>
        body.type === "hole" && body.mustardMin !== null && !deleted ? [{ id, header: body }] : [],
      ),
    );
  };
  let last = Promise.resolve();
  const inTurn = (changed: Changed): void => {
    last = last
      .then(() => (stop.aborted ? undefined : hear(changed)))
      .catch((error: unknown) => {
        if (!(error instanceof ReadFailed)) throw error;
        if (!stop.aborted) house.tell(error.problem);
      });
  };
  const unsubscribe = records.subscribe(inTurn);
  stop.addEventListener("abort", unsubscribe, { once: true });
  inTurn("everything");
};
