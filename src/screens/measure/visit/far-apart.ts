/** A line that lies far from all others of its field: the wrong field was chosen, or the position was wrong. */
import type { RecordId } from "../../../record/ids.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import { type LatitudeLongitude, roughDistanceM } from "../../../science/position/distance.ts";
import { newestOf } from "../../parts/newest-of.ts";
import type { Reader } from "../../parts/reader.ts";

/** Farther than a field is long, as a rule (own choice, no source). */
export const FAR_M = 1000;
/** How many of the newest lines of the field are compared with. */
const AMONG = 40;
/** Headers that are looked through for them: rings and holes may lie between. */
const HEADERS = 400;

interface Line {
  readonly id: RecordId<"observation">;
  readonly header: LineHeader;
}

const startOf = ({ header }: Line): (LatitudeLongitude & { readonly accuracyM: number | null }) | null =>
  header.start.position ?? header.end.position;

/**
 * The greatest distance of a line to the nearest other one.
 *
 * @param lines the lines that are looked at
 * @param others lines to compare with; a line is never compared with itself
 * @returns metres; null when no line lies farther than a kilometre and what both positions may be wrong by
 */
export const farthestM = (lines: readonly Line[], others: readonly Line[]): number | null => {
  let farthest: number | null = null;
  const placed = others.flatMap((other) => {
    const at = startOf(other);
    return at === null ? [] : [{ id: other.id, at }];
  });
  for (const line of lines) {
    const here = startOf(line);
    if (here === null) continue;
    const distances = placed
      .filter(({ id }) => id !== line.id)
      .map(({ at }) => ({
        metres: roughDistanceM(here, at),
        unsureM: (here.accuracyM ?? 0) + (at.accuracyM ?? 0),
      }));
    const nearest = distances.sort((a, b) => a.metres - a.unsureM - (b.metres - b.unsureM))[0];
    if (nearest !== undefined && nearest.metres - nearest.unsureM > FAR_M)
      farthest = Math.max(farthest ?? 0, nearest.metres);
  }
  return farthest;
};

/** How far a line of a day lies from every other line of the field; null when none lies far. */
export const farApartM = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
  lines: readonly Line[],
): Promise<number | null> => {
  const placed = lines.filter((line) => startOf(line) !== null).slice(-AMONG);
  if (placed.length === 0) return null;
  const lists = await Promise.all(
    fields.map((field) => newestOf(records, field, "line", { most: AMONG, among: HEADERS })),
  );
  const others = lists.flatMap(({ tests }) => tests.map(({ id, body }) => ({ id, header: body })));
  return farthestM(placed, [...others, ...placed]);
};
