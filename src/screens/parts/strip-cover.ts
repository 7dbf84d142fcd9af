/** Ground cover of a strip on one visit, from its finished lines. */
import type { RecordId } from "../../record/ids.ts";
import type { LineHeader } from "../../record/kinds/observation.ts";
import { lineFinished } from "../../record/line/finished.ts";
import { type LineFrame, type LineReading, readLine } from "../../record/line/reading.ts";
import type { Result } from "../../record/result.ts";
import type { Estimate } from "../../science/estimate.ts";
import type { LineCounts } from "../../science/ground-cover/line.ts";
import { type LinesNeeded, linesNeeded } from "../../science/ground-cover/lines-needed.ts";
import { coverOfStrip } from "../../science/ground-cover/strip.ts";
import { countsOf } from "./line-counts.ts";
import { linesOfGround } from "./lines-of-ground.ts";
import type { Listed, Reader } from "./reader.ts";
import type { Settings } from "./settings.ts";

/** A line with what its entries say. */
export interface ReadLine {
  readonly id: RecordId<"observation">;
  readonly header: LineHeader;
  readonly frame: LineFrame;
  readonly reading: LineReading;
  readonly finished: boolean;
  readonly counts: LineCounts;
}

/** A line with its sums alone: a visit may hold hundreds of lines, and their marks are not needed to list them. */
export type SummedLine = Omit<ReadLine, "reading"> & {
  readonly reading: Pick<LineReading, "tally" | "endedAt">;
};

/** A strip's cover with the lines behind it. */
export interface StripCover<L extends SummedLine = ReadLine> {
  readonly lines: readonly L[];
  readonly finished: readonly L[];
  readonly cover: Result<Estimate>;
  readonly more: Result<LinesNeeded>;
}

/** The cover of a strip, or of the old grass, which lies in none. */
export type GroundCover = StripCover & { readonly oldGrass: boolean };

/** Reads the lines among these observations. */
export const readLines = async (
  records: Reader,
  observations: readonly Listed<"observation">[],
): Promise<readonly ReadLine[]> => {
  const headers = observations.flatMap(({ id, body }) =>
    body.type === "line" ? [{ id, header: body }] : [],
  );
  const [ropes, entries] = await Promise.all([
    records.many([...new Set(headers.map(({ header }) => header.rope))]),
    records.entries(headers.map(({ id }) => id)),
  ]);
  const marksOf = new Map(
    ropes.flatMap(({ id, body }) => (body.type === "rope" ? [[id as string, body.marks] as const] : [])),
  );
  return headers.map(({ id, header }) => {
    const frame = { way: header.way, ropeMarks: marksOf.get(header.rope) ?? 0 };
    const reading = readLine(entries.get(id) ?? [], frame);
    return {
      id,
      header,
      frame,
      reading,
      finished: lineFinished(reading, frame),
      counts: countsOf(reading.tally),
    };
  });
};

/** Puts a strip's lines together. */
export const coverOfLines = <L extends SummedLine>(
  lines: readonly L[],
  settings: Settings,
): StripCover<L> => {
  const finished = lines.filter((line) => line.finished);
  const counting = { stoneCounts: settings.stonesCount };
  const counts = finished.map((line) => line.counts);
  return {
    lines,
    finished,
    cover: coverOfStrip(counts, "ground-cover", counting),
    more: linesNeeded(counts, "ground-cover", counting, {
      giveOrTake: settings.marginPoints / 100,
      marksPerLine: lines[0]?.frame.ropeMarks ?? 0,
    }),
  };
};

/** Ground cover of the strip of a line on its visit; of the old grass when the line lies there. */
export const stripCover = async (
  records: Reader,
  settings: Settings,
  header: LineHeader,
): Promise<GroundCover> => {
  const { lines, oldGrass } = await linesOfGround(records, header);
  return { ...coverOfLines(await readLines(records, lines), settings), oldGrass };
};
