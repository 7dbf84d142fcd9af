import type { Catalogue } from "../catalogue.ts";
import { groundCoverOf } from "./line-counts.ts";
import type { ReadLine } from "./strip-cover.ts";

/** How far a line has come, in words: "38 of 100 marks read". */
export const progressOf = (words: Catalogue, { header, frame, reading }: ReadLine): string => {
  if (header.way === "misses-only" && reading.endedAt === null) return words.line.missed(reading.marks.size);
  const { read } = groundCoverOf(reading.tally, false);
  return header.way === "totals" ? words.common.marks(read) : words.line.read(read, frame.ropeMarks);
};
