/** The old-grass spot of a field: the farm's own yardstick, and never part of a strip. */
import { grassOf } from "../../record/ground.ts";
import type { RecordId } from "../../record/ids.ts";
import type { LineHeader, Observation } from "../../record/kinds/observation.ts";
import { groundName } from "./ground-name.ts";
import type { stripName } from "./names.ts";
import type { Listed, Reader } from "./reader.ts";

/** Marked spots by id. */
export type Spots = ReadonlyMap<RecordId<"spot">, Listed<"spot">>;

/** The lines of a visit on one ground: on one strip, or on old grass. */
export interface LinesOfGround {
  /** Oldest first. */
  readonly lines: readonly Listed<"observation">[];
  readonly oldGrass: boolean;
  /** What the ground is called. */
  readonly nameOf: typeof stripName;
}

type Test = Pick<Observation, "strip" | "spot">;

/** The marked spots where these tests were made, deleted ones too. */
export const spotsOf = async (
  records: Reader,
  tests: readonly { readonly body: Pick<Observation, "spot"> }[],
): Promise<Spots> => {
  const ids = new Set(tests.flatMap(({ body }) => body.spot ?? []));
  const found = ids.size === 0 ? [] : await records.many([...ids]);
  return new Map(found.map((spot) => [spot.id, spot]));
};

/** Whether a test was made on old grass. */
export const onGrass = (spots: Spots, test: Test): boolean =>
  grassOf((spot) => spots.get(spot)?.body.oldGrass, test) !== null;

/** `linesOfGround` of a visit on which a line was counted at a marked spot. */
export const linesAmong = async (
  records: Reader,
  all: readonly Listed<"observation">[],
  header: LineHeader,
): Promise<LinesOfGround> => {
  const spots = await spotsOf(records, all);
  const oldGrass = onGrass(spots, header);
  return {
    oldGrass,
    lines: all.filter(
      ({ body }) => onGrass(spots, body) === oldGrass && (oldGrass || body.strip === header.strip),
    ),
    nameOf: (words, strip) =>
      groundName(words, strip, header.spot === undefined ? undefined : spots.get(header.spot)),
  };
};

/** The names of old-grass spots, those that have one; empty when none has. */
export const grassNames = (spots: readonly Listed<"spot">[]): string =>
  spots.flatMap(({ body }) => (body.name === "" ? [] : [body.name])).join(", ");
