/** Which ground a line, ring or hole belongs to: a strip, or old grass, which lies in none. */
import type { RecordId } from "./ids.ts";
import type { LineHeader } from "./kinds/observation.ts";

/**
 * Stands where a header names its strip and the test lies in none, at an old-grass spot. No record has this id:
 * it names nothing, as the nil UUID does (RFC 9562, 5.9).
 */
export const NO_STRIP: RecordId<"strip"> = `strip-${"0".repeat(32)}`;

/**
 * The old-grass spot where a test was made; null when it belongs to a strip.
 *
 * @param isGrass whether a marked spot is one of old grass, deleted ones too: deleting a spot does not turn what
 * was measured there into part of a strip. Undefined of a spot that is not on this device: the missing strip then
 * says that it is old grass
 *
 * @example
 * const spot = `spot-${"1".repeat(32)}`;
 * grassOf(() => true, { strip: NO_STRIP, spot }) === spot // => true
 */
export const grassOf = (
  isGrass: (spot: RecordId<"spot">) => boolean | undefined,
  { strip, spot }: { readonly strip: RecordId<"strip"> | null } & Pick<LineHeader, "spot">,
): RecordId<"spot"> | null => {
  if (spot === undefined) return null;
  return (isGrass(spot) ?? strip === NO_STRIP) ? spot : null;
};
