/** Counts what bringing a file in would do, while it is read. */

import type { Problem } from "../../record/result.ts";
import type { Comparison } from "../merge/compare.ts";
import type { Preview, Refused } from "./reports.ts";

/** Most refused records that are named one by one. */
const MOST_NAMED = 50;

/** The counts of a preview as they grow. */
export interface PreviewTally {
  readonly compared: (comparison: Comparison) => void;
  readonly photo: (is: "new" | "same") => void;
  readonly refuse: (what: string, problem: Problem) => void;
  readonly counts: () => Omit<Preview, "import" | "file">;
}

/** Begins to count. */
export const beginTally = (): PreviewTally => {
  const records = { new: 0, changed: 0, same: 0 };
  const photos = { new: 0, same: 0 };
  const twoAnswers = { marks: 0, lines: 0 };
  const refused: Refused[] = [];
  let sideBySide = 0;
  let refusedCount = 0;
  return {
    compared: (comparison) => {
      records[comparison.is] += 1;
      if (comparison.sideBySide) sideBySide += 1;
      twoAnswers.marks += comparison.twoAnswers.length;
      if (comparison.twoAnswers.length > 0) twoAnswers.lines += 1;
    },
    photo: (is) => {
      photos[is] += 1;
    },
    refuse: (what, problem) => {
      refusedCount += 1;
      if (refused.length < MOST_NAMED) refused.push({ what, problem });
    },
    counts: () => ({ records, photos, sideBySide, twoAnswers, refused, refusedCount }),
  };
};
