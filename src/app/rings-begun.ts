/** Rings that were set up lately: whether one runs is told by its entries. */
import type { RecordId } from "../record/ids.ts";
import type { RingHeader } from "../record/kinds/observation.ts";
import type { House } from "../screens/parts/house.ts";
import type { Listed } from "../screens/parts/reader.ts";

/** No test of a ring lasts two days: an older one was left without a stop. Own choice, no source. */
const LASTS_AT_MOST_MS = 2 * 86_400_000;
/** Headers read at once; each costs a way to the database and back, and most days need few. */
const PART = 12;

/** A ring with its header. */
export interface BegunRing {
  readonly id: RecordId<"observation">;
  readonly header: RingHeader;
}

/**
 * Rings whose headers say that they were begun less than two days ago, newest first.
 *
 * @throws ReadFailed when the records cannot be read
 */
export const ringsBegun = async (
  records: House["records"],
  wallMs: number,
): Promise<readonly BegunRing[]> => {
  const rings: BegunRing[] = [];
  let last: Listed<"observation"> | undefined;
  do {
    const part: readonly Listed<"observation">[] = await records.list(
      { kind: "observation" },
      { newestFirst: true, limit: PART, ...(last === undefined ? {} : { after: last.row }) },
    );
    for (const { id, body } of part) if (body.type === "ring") rings.push({ id, header: body });
    last = part.length === PART ? part.at(-1) : undefined;
  } while (last !== undefined && wallMs - last.row.keys.atMs < LASTS_AT_MOST_MS);
  return rings.filter(({ header }) => wallMs - header.startedAtMs < LASTS_AT_MOST_MS);
};
