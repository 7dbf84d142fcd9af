import { endedUnread } from "../../record/line/finished.ts";
import type { Catalogue } from "../catalogue.ts";
import { groundCoverOf, missesIn } from "./line-counts.ts";
import type { SummedLine } from "./strip-cover.ts";

/** How far a line has come, in words: "38 of 100 marks read". */
export const progressOf = (words: Catalogue, { header, frame, reading }: SummedLine): string => {
  if (endedUnread(reading)) return words.line.nothingRead;
  if (header.way === "misses-only" && reading.endedAt === null)
    return words.line.missed(missesIn(reading.tally));
  const { read } = groundCoverOf(reading.tally, false);
  if (header.way === "totals" && read === 0) return words.home.noTotals;
  return header.way === "totals" ? words.common.marks(read) : words.line.read(read, frame.ropeMarks);
};
