/** Reads holes and rings of a field out of their stored entries. */

import type { Entry } from "../../record/entry.ts";
import { readHole } from "../../record/hole/reading.ts";
import type { RecordId } from "../../record/ids.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import type { HoleHeader, RingHeader } from "../../record/kinds/observation.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import { readRing } from "../../record/ring/reading.ts";
import { holeOf } from "../../science/earthworms/hole.ts";
import type { HoleCount } from "../../science/earthworms/hole-count.ts";
import { type RingSet, ringSetOf } from "../../science/infiltration/ring-set.ts";
import { type Soaking, soakingOf } from "../../science/infiltration/soaking.ts";

/** Kit by id. */
export type KitById = ReadonlyMap<RecordId, Kit | undefined>;

const thing = <T extends Kit["type"]>(
  kit: KitById,
  id: RecordId<"kit"> | null,
  type: T,
): Extract<Kit, { type: T }> | null => {
  const body = id === null ? undefined : kit.get(id);
  return body?.type === type ? (body as Extract<Kit, { type: T }>) : null;
};

/** The kit that a ring or a hole was made with. */
export const kitOf = (header: HoleHeader | RingHeader): readonly RecordId<"kit">[] =>
  (header.type === "hole" ? [header.template] : [header.ring, header.outer, header.ruler]).filter(
    (id) => id !== null,
  );

/** A hole from its entries; one without an entry is unfinished. */
export const countOfHole = (header: HoleHeader, entries: readonly Entry[], kit: KitById): HoleCount =>
  holeOf(readHole(entries), header, thing(kit, header.template, "hole-template"));

/**
 * The ring of a test with its kit.
 *
 * @returns `science/not-a-ring` when its ring is not on this device
 */
export const setOfRing = (header: RingHeader, kit: KitById): Result<RingSet> => {
  const ring = thing(kit, header.ring, "ring");
  if (ring === null) return failed("science/not-a-ring");
  const outer = thing(kit, header.outer, "ring");
  return ok(ringSetOf(header, { ring, outer, ruler: thing(kit, header.ruler, "ruler") }));
};

/** What soaked in at a ring; reasons as `setOfRing` and `soakingOf`. */
export const soakingOfRing = (
  header: RingHeader,
  entries: readonly Entry[],
  kit: KitById,
): Result<Soaking> => {
  const set = setOfRing(header, kit);
  return set.ok ? soakingOf(readRing(entries), set.value) : set;
};
