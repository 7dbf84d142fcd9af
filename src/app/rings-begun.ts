/** Rings and holes that were begun lately: whether something is waited for there is told by their entries. */
import type { RecordId } from "../record/ids.ts";
import type { HoleHeader, Observation, RingHeader } from "../record/kinds/observation.ts";
import type { House } from "../screens/parts/house.ts";
import type { Listed } from "../screens/parts/reader.ts";

/** No test of a ring or hole lasts two days: an older one was left without an end. Own choice, no source. */
const LASTS_AT_MOST_MS = 2 * 86_400_000;
/** Headers read at once; each costs a way to the database and back, and most days need few. */
const PART = 12;

/** A ring or hole with its header. */
export interface Begun {
  readonly id: RecordId<"observation">;
  readonly header: RingHeader | HoleHeader;
}

/** What the alarm may ring for: a ring, and a hole whose method waits for worms in mustard water. */
export const mayRing = (body: Observation): body is RingHeader | HoleHeader =>
  body.type === "ring" || (body.type === "hole" && body.mustardMin !== null);

/**
 * What the alarm may ring for, of which the headers say that they were begun less than two days ago, newest first.
 *
 * @throws ReadFailed when the records cannot be read
 */
export const begunLately = async (records: House["records"], wallMs: number): Promise<readonly Begun[]> => {
  const begun: Begun[] = [];
  let last: Listed<"observation"> | undefined;
  do {
    const part: readonly Listed<"observation">[] = await records.list(
      { kind: "observation" },
      { newestFirst: true, limit: PART, ...(last === undefined ? {} : { after: last.row }) },
    );
    for (const { id, body } of part) if (mayRing(body)) begun.push({ id, header: body });
    last = part.length === PART ? part.at(-1) : undefined;
  } while (last !== undefined && wallMs - last.row.keys.atMs < LASTS_AT_MOST_MS);
  return begun.filter(({ header }) => wallMs - header.startedAtMs < LASTS_AT_MOST_MS);
};
