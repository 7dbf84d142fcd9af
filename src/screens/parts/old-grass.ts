/** The old-grass spot of a field: the farm's own yardstick, and never part of a strip. */
import type { RecordId } from "../../record/ids.ts";
import type { Observation } from "../../record/kinds/observation.ts";
import type { Listed, Reader } from "./reader.ts";

/** The marked spots under old grass of a field and of all that are the same. */
export const oldGrassSpots = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
): Promise<ReadonlyMap<RecordId<"spot">, Listed<"spot">>> => {
  const lists = await Promise.all(fields.map((field) => records.list({ field, kind: "spot" })));
  return new Map(lists.flat().flatMap((spot) => (spot.body.oldGrass ? [[spot.id, spot] as const] : [])));
};

/** Whether a measurement was made at one of these spots. */
export const isAtSpot = (
  spots: ReadonlyMap<RecordId<"spot">, unknown>,
  body: Pick<Observation, "spot">,
): boolean => body.spot !== undefined && spots.has(body.spot);
