/** What one line says by itself, for its own sheet. */
import type { RecordId } from "../../../record/ids.ts";
import type { Result } from "../../../record/result.ts";
import { toSi } from "../../../record/units.ts";
import type { Estimate } from "../../../science/estimate.ts";
import { KINDS_OF_A_MARK, type KindOfAMark, marksByKind } from "../../../science/ground-cover/line.ts";
import { percentagesThatSum } from "../../../science/ground-cover/percentages.ts";
import { coverOfLine } from "../../../science/ground-cover/strip.ts";
import { distanceM } from "../../../science/position/distance.ts";
import { meanOfReadings } from "../../../science/statistics/mean.ts";
import type { House } from "../../parts/house.ts";
import type { Settings } from "../../parts/settings.ts";
import { type ReadLine, readLines } from "../../parts/strip-cover.ts";

/** One kind of cover on the line, in whole percent that sum to 100. */
export interface KindShare {
  readonly kind: KindOfAMark;
  readonly marks: number;
  readonly percent: number;
}

export interface LineSheet {
  readonly line: ReadLine;
  readonly deleted: boolean;
  readonly cover: Result<Estimate>;
  readonly kinds: readonly KindShare[];
  /** Mulch thickness in millimetres; null when none was taken. */
  readonly thicknessMm: Result<Estimate> | null;
  /** From the start to the end position; null when one of them is missing. */
  readonly lengthM: number | null;
}

/** Reads the sheet of a line; null when the line is not on this device. */
export const readSheet = async (
  { records }: House,
  id: RecordId<"observation">,
  settings: Settings,
): Promise<LineSheet | null> => {
  const row = await records.one(id);
  if (row === undefined) return null;
  const [line] = await readLines(records, [row]);
  if (line === undefined) return null;
  const marks = marksByKind([line.counts]);
  const percents = marks.ok ? percentagesThatSum(marks.value) : marks;
  const { start, end } = line.header;
  const distance =
    start.position === null || end.position === null ? null : distanceM(start.position, end.position);
  const thicknessesMm = [...line.reading.thickness.values()].map(
    ({ value, unit }) => toSi(value, unit) * 1000,
  );
  return {
    line,
    deleted: row.deleted,
    cover: coverOfLine(line.counts, "ground-cover", { stoneCounts: settings.stonesCount }),
    kinds:
      marks.ok && percents.ok
        ? KINDS_OF_A_MARK.filter((kind) => marks.value[kind] > 0).map((kind) => ({
            kind,
            marks: marks.value[kind],
            percent: percents.value.percent[kind],
          }))
        : [],
    thicknessMm: thicknessesMm.length === 0 ? null : meanOfReadings(thicknessesMm, "mm"),
    lengthM: distance?.ok === true ? distance.value : null,
  };
};
