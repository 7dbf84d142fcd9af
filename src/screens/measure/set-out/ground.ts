/** Where a line, ring or hole is to be made: on a strip, at a marked spot of it, or on old grass, which lies in none. */
import { NO_STRIP } from "../../../record/ground.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import type { Position } from "../../../record/shapes.ts";
import { roughDistanceM } from "../../../science/position/distance.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { sameStrip } from "../../parts/same-field.ts";

/** A marked spot that can be chosen. */
export interface SpotToChoose {
  readonly id: RecordId<"spot">;
  readonly name: string;
  readonly oldGrass: boolean;
  /** The strip that it lies on, among those that can be chosen; null when nobody has said. */
  readonly strip: RecordId<"strip"> | null;
  readonly position: Position | null;
}

/** What is chosen; no strip on old grass, and before one was chosen. */
export interface Ground {
  readonly strip: RecordId<"strip"> | null;
  readonly spot: RecordId<"spot"> | null;
}

const byUse = (a: SpotToChoose, b: SpotToChoose): number =>
  Number(b.oldGrass) - Number(a.oldGrass) ||
  Number(a.name === "") - Number(b.name === "") ||
  a.name.localeCompare(b.name, "en", { numeric: true });

/**
 * The marked spots of a field where something can be measured, old grass first. Their order does not change with
 * the position: no key may slip away under the thumb. A visible edge is no place on a strip and is left out.
 */
export const readSpots = async (
  records: Reader,
  fields: readonly RecordId<"field">[],
  strips: readonly Listed<"strip">[],
): Promise<readonly SpotToChoose[]> => {
  const lists = await Promise.all(fields.map((field) => records.list({ field, kind: "spot" })));
  const spots = lists.flat().filter(({ body }) => body.edge === undefined);
  if (spots.length === 0) return [];
  const stripOf = sameStrip(await records.joins());
  return spots
    .map(({ id, body }) => {
      const { name, oldGrass, position, strip } = body;
      const found = strips.find((one) => strip !== null && stripOf(one.id) === stripOf(strip));
      return { id, name, oldGrass, position, strip: found?.id ?? null };
    })
    .sort(byUse);
};

/** Whether what is chosen is old grass. */
export const isOldGrass = (spots: readonly SpotToChoose[], { spot }: Pick<Ground, "spot">): boolean =>
  spots.some(({ id, oldGrass }) => id === spot && oldGrass);

/**
 * A marked spot was touched, or none. Its strip comes with it; old grass lies in none.
 *
 * @param usual the strip that stands there at first: it comes back when old grass is left
 */
export const goToSpot = (
  { strip }: Ground,
  spot: SpotToChoose | null,
  usual: RecordId<"strip"> | null,
): Ground => {
  if (spot === null) return { strip: strip ?? usual, spot: null };
  return { strip: spot.oldGrass ? null : (spot.strip ?? strip ?? usual), spot: spot.id };
};

/** A strip was touched: a marked spot that does not lie on it is left. */
export const goToStrip = (
  { spot }: Ground,
  strip: RecordId<"strip">,
  spots: readonly SpotToChoose[],
): Ground => {
  const at = spots.find(({ id }) => id === spot);
  const stays = at !== undefined && !at.oldGrass && (at.strip === null || at.strip === strip);
  return { strip, spot: stays ? at.id : null };
};

/** The strip that stands there at first is filled in once it is known, and never on old grass. */
export const withUsual = (
  ground: Ground,
  usual: RecordId<"strip"> | null,
  spots: readonly SpotToChoose[],
): Ground => (ground.strip !== null || isOldGrass(spots, ground) ? ground : { ...ground, strip: usual });

/** Whether the strip and the spot that were chosen are still there, or stand there at first anyway. */
export const isGround = (
  { strip, spot }: Ground,
  strips: readonly Pick<Listed<"strip">, "id">[],
  spots: readonly SpotToChoose[],
  first: Ground,
): boolean =>
  (strip === null || strip === first.strip || strips.some(({ id }) => id === strip)) &&
  (spot === null || spot === first.spot || spots.some(({ id }) => id === spot));

/** The ground of a test as it stands on record, to be corrected. */
export const groundNow = (
  { strip, spot }: Pick<LineHeader, "strip" | "spot">,
  spots: readonly SpotToChoose[],
): Ground => {
  const at = { spot: spot ?? null };
  return { ...at, strip: strip === NO_STRIP || isOldGrass(spots, at) ? null : strip };
};

/** The ground as a header keeps it; null as long as a strip is wanting. */
export const groundToKeep = (
  { strip, spot }: Ground,
  spots: readonly SpotToChoose[],
): Pick<LineHeader, "strip" | "spot"> | null => {
  const at = spots.find(({ id }) => id === spot);
  if (at?.oldGrass === true) return { strip: NO_STRIP, spot: at.id };
  if (strip === null) return null;
  return at === undefined ? { strip } : { strip, spot: at.id };
};

/**
 * The ground as a correction keeps it: nothing of it where it stays as it was, which it may also where its
 * old-grass spot was deleted; null as long as a strip is wanting.
 *
 * @param first how it stood before the correction
 */
export const groundCorrected = (
  ground: Ground,
  first: Ground,
  spots: readonly SpotToChoose[],
): Partial<Pick<LineHeader, "strip" | "spot">> | null =>
  ground.strip === first.strip && ground.spot === first.spot ? {} : groundToKeep(ground, spots);

/** What a correction takes away: a spot that was deleted and not asked about stays, it can be brought back. */
export const leftSpot = ({ spot }: Pick<Ground, "spot">): readonly "spot"[] =>
  spot === null ? ["spot"] : [];

/** Nearer than this one stands at a spot, whatever the position says of itself (own choice, no source). */
export const AT_SPOT_M = 15;

/** How far a marked spot lies, in metres, and whether that may well be here; null without both positions. */
export const farFrom = (
  { position }: Pick<SpotToChoose, "position">,
  here: Position | null,
): { readonly metres: number; readonly here: boolean } | null => {
  if (position === null || here === null) return null;
  const metres = roughDistanceM(position, here);
  return { metres, here: metres <= AT_SPOT_M + (here.accuracyM ?? 0) + (position.accuracyM ?? 0) };
};
