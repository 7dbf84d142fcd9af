/**
 * Entries: what was read at one moment. A measurement's entries are a set by id that is only ever
 * added to. A correction is a new entry that replaces others, an undo one that takes another back,
 * a redo one that takes the undo back.
 */

import { conditionEntries } from "./conditions.ts";
import { holeEntries } from "./hole/entries.ts";
import { lineEntries } from "./line/entries.ts";
import { moment } from "./moment.ts";
import { ringEntries } from "./ring/entries.ts";
import { shortId } from "./shapes.ts";
import { compareText } from "./stamp.ts";
import * as z from "./zod.ts";

const undo = z.strictObject({ ...moment, type: z.literal("undo"), takesBack: shortId });

export const entry = z.discriminatedUnion("type", [
  ...lineEntries,
  ...ringEntries,
  ...holeEntries,
  ...conditionEntries,
  undo,
]);
export type Entry = z.Infer<typeof entry>;
export type UndoEntry = z.Infer<typeof undo>;
export {
  COVERS,
  type Cover,
  type MarkEntry,
  type Stance,
  type ThicknessEntry,
  type TotalsEntry,
} from "./line/entries.ts";
export { ENTRY_VERSION, MAX_ORDER } from "./moment.ts";

/** Order in which entries were made; the same on every device, whatever the clocks say. */
export const compareEntries = (a: Entry, b: Entry): number => Math.sign(a.n - b.n) || compareText(a.id, b.id);

/** The entries in the order in which they were made. */
export const inOrder = (entries: readonly Entry[]): Entry[] => [...entries].sort(compareEntries);

/** What ties an entry to earlier ones. Every entry has this form; so does a row read from columns. */
export interface Links {
  readonly id: string;
  readonly takesBack?: string | undefined;
  readonly replaces?: readonly string[] | undefined;
}

/** What became of an entry. A replaced one may have been right when it was made; one taken back was not. */
export type Fate = "counts" | "replaced" | "taken-back";

/**
 * What became of each entry. Only a later entry can take back or replace an earlier one, so a file with
 * entries that point at each other in a circle cannot hang this.
 *
 * A correction that was corrected again still replaces what it replaced: otherwise the first answer
 * would come back beside the last. A correction that was taken back replaces nothing.
 *
 * @param ordered entries in their order
 * @returns one fate per entry, in the same order
 */
export const fatesOf = (ordered: readonly Links[]): Fate[] => {
  const takenBack = new Set<string>();
  const replaced = new Set<string>();
  const fates = new Array<Fate>(ordered.length).fill("counts");
  for (let at = ordered.length - 1; at >= 0; at--) {
    const one = ordered[at];
    if (one === undefined) continue;
    if (takenBack.size > 0 && takenBack.has(one.id)) {
      fates[at] = "taken-back";
      continue;
    }
    if (replaced.size > 0 && replaced.has(one.id)) fates[at] = "replaced";
    if (one.takesBack !== undefined) takenBack.add(one.takesBack);
    if (one.replaces !== undefined) for (const id of one.replaces) replaced.add(id);
  }
  return fates;
};

/**
 * The entries that count: not taken back and not replaced.
 *
 * @param ordered entries in their order
 * @returns ids of the entries that count, undo entries included
 */
export const livingIds = (ordered: readonly Entry[]): Set<string> => {
  const fates = fatesOf(ordered);
  return new Set(ordered.filter((_, at) => fates[at] === "counts").map(({ id }) => id));
};
