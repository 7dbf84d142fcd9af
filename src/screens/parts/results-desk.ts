/**
 * Results of whole fields, as the screens ask for them. A field holds thousands of lines: they are read and
 * worked out off the page, and what came of them is kept until something of the field changes.
 */
import type { RecordId } from "../../record/ids.ts";
import type { LineAsked, LineSums } from "../../record/line/sums.ts";
import type { Result } from "../../record/result.ts";
import type { FieldResults } from "../../science/field-results.ts";
import type { CoverWanted, FieldCover } from "../../science/ground-cover/field-cover.ts";
import type { GroundStated, RingForSpecialist } from "../../science/infiltration/ring-for-specialist.ts";
import type { Settings } from "./settings.ts";

export interface ResultsDesk {
  /**
   * Ground cover of a field. Rejects with `ReadFailed` when the store cannot answer.
   *
   * @param fields the field first, then all that are the same
   * @param meanwhile gets the results from before the last changes, if any were kept, while new ones are worked out
   */
  readonly field: (
    fields: readonly RecordId<"field">[],
    wanted: CoverWanted,
    meanwhile?: (before: FieldCover) => void,
  ) => Promise<FieldCover>;
  /** The same with worms and soak-in. */
  readonly all: (
    fields: readonly RecordId<"field">[],
    wanted: CoverWanted,
    meanwhile?: (before: FieldResults) => void,
  ) => Promise<FieldResults>;
  /** Sums of these lines, in the order asked for. Rejects with `ReadFailed` when the store cannot answer. */
  readonly lines: (asked: readonly LineAsked[]) => Promise<readonly LineSums[]>;
  /** Curves and conductivities of one ring, under what was stated of its ground. */
  readonly ring: (ring: RecordId<"observation">, ground: GroundStated) => Promise<Result<RingForSpecialist>>;
}

/** What these settings want to know of a field. */
export const wantedBy = ({ stonesCount, targetPercent }: Settings): CoverWanted => ({
  stoneCounts: stonesCount,
  target: targetPercent === null ? null : targetPercent / 100,
});

/**
 * Hands results from before the last changes on, with what a page reads beside them. What cannot be read is told by
 * whoever waits for the new ones.
 */
export const whileItLasts =
  <Results, Now>(read: (before: Results) => Promise<Now>, meanwhile: (before: Now) => void) =>
  (before: Results): void =>
    void read(before).then(meanwhile, () => undefined);
