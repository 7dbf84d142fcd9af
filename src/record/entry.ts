/**
 * Entries: what was read at one moment. A measurement's entries are a set by id that is only ever
 * added to. A correction is a new entry that replaces others, an undo one that takes another back,
 * a redo one that takes the undo back.
 */

import { finite, idOf, name, shortId, wallMs, whole, within } from "./shapes.ts";
import { compareText } from "./stamp.ts";
import * as z from "./zod.ts";

/** Current version of the entries. */
export const ENTRY_VERSION = 1;

/** What the raindrop meets first at a mark. */
export const COVERS = ["residue", "bare", "green", "stone", "own"] as const;
export type Cover = (typeof COVERS)[number];

/** Highest place in the order of entries; a file that claims more is refused. */
export const MAX_ORDER = 2 ** 40;

const moment = {
  v: z.literal(ENTRY_VERSION),
  id: shortId,
  /** Place in the order of entries: one more than the highest that stood there when it was made. */
  n: whole(1, MAX_ORDER),
  /** When it was looked at, by the wall clock. */
  lookedAtMs: wallMs,
  /** When it was entered, by the wall clock. */
  enteredAtMs: wallMs,
  /** When it was entered, by the clock that nobody can set: milliseconds since the page began. */
  monoMs: within(0, 1e12),
  /** The page whose monotonic clock that was. */
  page: shortId,
  device: shortId,
  by: z.nullable(idOf("person")),
} as const;

const replaces = z.exactOptional(z.array(shortId).check(z.minLength(1), z.maxLength(1000)));
const markNumber = whole(1, 10_000);
const stance = z.oneOf(["flat", "standing"]);
const tally = whole(0, 10_000);

const mark = z.strictObject({
  ...moment,
  type: z.literal("mark"),
  mark: markNumber,
  cover: z.oneOf(COVERS),
  /** Residue only: lying flat or standing. */
  stance: z.exactOptional(stance),
  replaces,
});
/** The rope says another number: the next mark read is this one, what lies between was not read. */
const setMark = z.strictObject({ ...moment, type: z.literal("set-mark"), mark: markNumber });
const thickness = z.strictObject({
  ...moment,
  type: z.literal("thickness"),
  mark: markNumber,
  value: finite,
  unit: z.oneOf(["mm", "in"]),
  /** As it was typed. */
  typed: name,
  /** Looked impossible, and was kept after "yes, I read that". */
  unusual: z.exactOptional(z.literal(true)),
  replaces,
});
/** Marks counted on paper or aloud, entered as sums. */
const totals = z.strictObject({
  ...moment,
  type: z.literal("totals"),
  flat: tally,
  standing: tally,
  bare: tally,
  green: tally,
  stone: tally,
  own: tally,
  replaces,
});
/** The line ends here: the last mark that was looked at. When only misses were called, the rest is residue. */
const end = z.strictObject({
  ...moment,
  type: z.literal("end"),
  mark: whole(0, 10_000),
  rest: z.exactOptional(stance),
});
const undo = z.strictObject({ ...moment, type: z.literal("undo"), takesBack: shortId });

export const entry = z.discriminatedUnion("type", [mark, setMark, thickness, totals, end, undo]);
export type Entry = z.Infer<typeof entry>;
export type MarkEntry = z.Infer<typeof mark>;
export type ThicknessEntry = z.Infer<typeof thickness>;
export type TotalsEntry = z.Infer<typeof totals>;
export type Stance = z.Infer<typeof stance>;

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
