/** The one order of records in a file. */
import { KINDS, type Kind, kindOf, type RecordId } from "../../record/ids.ts";
import { compareText } from "../../record/stamp.ts";

const PLACE: ReadonlyMap<Kind, number> = new Map(KINDS.map((kind, at) => [kind, at]));

/**
 * Order of two records in `records.ndjson`: by kind in the order of `KINDS`, then by id.
 *
 * @example
 * compareRecordIds("person-00000000000000000000000000000002", "farm-00000000000000000000000000000001") // => -1
 */
export const compareRecordIds = (a: RecordId, b: RecordId): number =>
  Math.sign((PLACE.get(kindOf(a)) ?? 0) - (PLACE.get(kindOf(b)) ?? 0)) || compareText(a, b);
