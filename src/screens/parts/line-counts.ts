import type { LineTally } from "../../record/line/reading.ts";
import { hitsOf, type LineCounts } from "../../science/ground-cover/line.ts";

/** The counts that science works with. */
export const countsOf = ({ unsettled, notRead, ...counts }: LineTally): LineCounts => ({
  ...counts,
  // A mark with two answers is as good as not read until one is chosen.
  notRead: notRead + unsettled,
});

/** Ground cover of the marks read so far; null before the first. */
export const groundCoverOf = (
  tally: LineTally,
  stoneCounts: boolean,
): { readonly share: number | null; readonly read: number } => {
  const seen = hitsOf(countsOf(tally), "ground-cover", { stoneCounts });
  if (!seen.ok || seen.value.marks === 0) return { share: null, read: 0 };
  return { share: seen.value.hits / seen.value.marks, read: seen.value.marks };
};

/** How many marks were called without residue while only misses are called. */
export const missesIn = ({ bare, green, stone, own, unsettled }: LineTally): number =>
  bare + green + stone + own + unsettled;
