/** When the rings that wait may start, so that no two readings come within a minute. */
import type { RecordId } from "../../../record/ids.ts";
import type { RingNow } from "../../../record/ring/clock.ts";
import { elapsedNow } from "../../../record/ring/due.ts";
import { type PlannedRing, startGaps } from "../../../science/infiltration/start-gaps.ts";
import type { DayRing } from "./day.ts";
import { stageOf } from "./status.ts";

/** A ring that is still to be set out. */
export const STILL_TO_COME = "still to come";

/**
 * The proposed starts by ring, in wall milliseconds; empty when nothing can be proposed.
 *
 * @param more a ring that is being set out and is not on record yet
 */
export const proposedStarts = (
  rings: readonly DayRing[],
  now: RingNow,
  more: Omit<PlannedRing, "id"> | null = null,
): ReadonlyMap<string, number> => {
  const running = rings.flatMap((ring) => {
    const runsMs = stageOf(ring) === "running" ? elapsedNow(ring.reading, now) : null;
    return runsMs === null
      ? []
      : [{ id: ring.id, planMin: ring.header.planMin, startedAtMs: now.wallMs - runsMs }];
  });
  const waiting: PlannedRing[] = rings
    .filter((ring) => stageOf(ring) === "waiting")
    .map(({ id, header }) => ({ id, planMin: header.planMin }));
  if (more !== null) waiting.push({ id: STILL_TO_COME, ...more });
  const gaps = startGaps({ nowMs: now.wallMs, running, waiting });
  return new Map(gaps.ok ? gaps.value.map(({ id, startAtMs }) => [id, startAtMs]) : []);
};

/** Rings in the ground: their letters cannot be set out again before they are stopped. */
export const inTheGround = (rings: readonly DayRing[]): ReadonlySet<RecordId<"kit">> =>
  new Set(
    rings
      .filter((ring) => !ring.deleted && stageOf(ring) !== "stopped")
      .flatMap(({ header }) => [header.ring, ...(header.outer === null ? [] : [header.outer])]),
  );
