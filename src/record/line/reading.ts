/** What the entries of a line say: the marks read, where the next touch goes, how the line ended. */
import {
  type Cover,
  type Entry,
  fatesOf,
  inOrder,
  type MarkEntry,
  type Stance,
  type ThicknessEntry,
  type TotalsEntry,
} from "../entry.ts";
import type { Way } from "../kinds/observation.ts";
import type { EndEntry } from "./entries.ts";

/** One mark of the rope. */
export interface MarkRead {
  readonly cover: Cover;
  readonly stance: Stance | null;
  /** It was read more than once and the later answer stands. */
  readonly corrected: boolean;
  /** Answers that contradict each other, from two phones; none counts until one is chosen. */
  readonly answers: readonly MarkEntry[];
}

/** Marks by what lay at them. `notRead` counts gaps up to the last mark that was looked at. */
export interface LineTally {
  readonly residueFlat: number;
  readonly residueStanding: number;
  readonly green: number;
  readonly bare: number;
  readonly stone: number;
  readonly own: number;
  readonly notRead: number;
  /** Marks with two answers, left out of every sum until they are settled; so are contradicting totals. */
  readonly unsettled: number;
}

/** A line as its entries tell it. */
export interface LineReading {
  /** Per mark number what was read there. */
  readonly marks: ReadonlyMap<number, MarkRead>;
  /** Mulch thickness per mark number, where there is one answer. */
  readonly thickness: ReadonlyMap<number, ThicknessEntry>;
  /** Thickness answers that contradict each other, per mark number; none counts until one is chosen. */
  readonly thicknessInDoubt: ReadonlyMap<number, readonly ThicknessEntry[]>;
  /** Sums, when the line was entered as totals; the last ones where two contradict each other. */
  readonly totals: TotalsEntry | null;
  /** Totals that contradict each other, else empty; none counts until one is chosen. */
  readonly totalsInDoubt: readonly TotalsEntry[];
  /** The mark that the next touch is for. */
  readonly next: number;
  /** The last mark looked at once the line has ended, else null; null while its end is in doubt. */
  readonly endedAt: number | null;
  /** Ends that contradict each other, else empty; the line has not ended until one is chosen. */
  readonly endsInDoubt: readonly EndEntry[];
  /** How what was not called lies, when only misses were called. */
  readonly rest: Stance | null;
  readonly tally: LineTally;
  /** The entry that Undo takes back, and the undo entry that Redo takes back. */
  readonly undoable: Entry | null;
  readonly redoable: Extract<Entry, { type: "undo" }> | null;
  /** How many entries count, undo entries left out. */
  readonly living: number;
}

/** How the line is counted and how many marks its rope has. */
export interface LineFrame {
  readonly way: Way;
  readonly ropeMarks: number;
}

/** The sum that a mark belongs to. Residue whose stance nobody gave lies flat. */
export const columnOf = (cover: Cover, stance: Stance | null | undefined): keyof LineTally => {
  if (cover !== "residue") return cover;
  return stance === "standing" ? "residueStanding" : "residueFlat";
};

/** How many marks of the line say what lay there. */
export const marksSaid = ({ notRead: _notRead, unsettled: _unsettled, ...said }: LineTally): number =>
  Object.values(said).reduce((sum, count) => sum + count, 0);

/** Sums before anything was counted. */
export const emptyTally = (): { -readonly [K in keyof LineTally]: number } => ({
  residueFlat: 0,
  residueStanding: 0,
  green: 0,
  bare: 0,
  stone: 0,
  own: 0,
  notRead: 0,
  unsettled: 0,
});

/** The sum that a mark belongs to when nothing was called there. */
export const uncalled = (way: Way, ended: boolean, rest: Stance | null): keyof LineTally =>
  way === "misses-only" && ended ? columnOf("residue", rest) : "notRead";

const tallyMarks = (
  marks: ReadonlyMap<number, MarkRead>,
  last: number,
  elsewhere: keyof LineTally,
): LineTally => {
  const tally = emptyTally();
  for (let number = 1; number <= last; number++) {
    const mark = marks.get(number);
    if (mark === undefined) tally[elsewhere]++;
    else if (mark.answers.length > 1) tally.unsettled++;
    else tally[columnOf(mark.cover, mark.stance)]++;
  }
  return tally;
};

const sumOf = ({ flat, standing, bare, green, stone, own }: TotalsEntry): number =>
  flat + standing + bare + green + stone + own;

const tallyTotals = (totals: TotalsEntry, inDoubt: readonly TotalsEntry[]): LineTally =>
  inDoubt.length > 0
    ? { ...emptyTally(), unsettled: Math.max(...inDoubt.map(sumOf)) }
    : {
        ...emptyTally(),
        residueFlat: totals.flat,
        residueStanding: totals.standing,
        green: totals.green,
        bare: totals.bare,
        stone: totals.stone,
        own: totals.own,
      };

const differ = <E>(answers: readonly E[], said: (answer: E) => string): boolean =>
  answers.length > 1 && new Set(answers.map(said)).size > 1;

const saidMark = ({ cover, stance }: MarkEntry): string => columnOf(cover, stance);
const saidThickness = ({ value, unit }: ThicknessEntry): string => `${value} ${unit}`;
const saidTotals = ({ flat, standing, bare, green, stone, own }: TotalsEntry): string =>
  [flat, standing, bare, green, stone, own].join(" ");

/** What an end says: two that say the same are one. The rest lies flat when nobody said how. */
export const saidEnd = (mark: number | undefined, rest: Stance | undefined): string =>
  `${mark} ${rest ?? "flat"}`;

const push = <E>(lists: Map<number, E[]>, key: number, item: E): void => {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [item]);
  else list.push(item);
};

/** Marks from their answers: phones that agree are one answer, those that differ stay until one is chosen. */
const marksFrom = (answers: ReadonlyMap<number, readonly MarkEntry[]>): Map<number, MarkRead> => {
  const marks = new Map<number, MarkRead>();
  for (const [number, all] of answers) {
    const last = all.at(-1);
    if (last === undefined) continue;
    marks.set(number, {
      cover: last.cover,
      stance: last.stance ?? null,
      corrected: all.some(({ replaces }) => replaces !== undefined),
      answers: differ(all, saidMark) ? all : [last],
    });
  }
  return marks;
};

/**
 * The mark that the next touch is for. Reading a mark moves it on, never back: a gap that is filled in
 * later, or a corrected mark, must not send the next touch back to marks that were read. What was
 * replaced since moved it too, so that correcting the last two marks leaves it where it stood.
 */
const nextAfter = (next: number, entry: Entry): number => {
  if (entry.type === "set-mark") return entry.mark;
  if (entry.type !== "mark") return next;
  const onwards = entry.mark === next || (entry.mark > next && entry.replaces === undefined);
  return onwards ? entry.mark + 1 : next;
};

/** Entries sorted by what they are, those that count only; and where they leave the next touch. */
const gather = (ordered: readonly Entry[]) => {
  const fates = fatesOf(ordered);
  const marks = new Map<number, MarkEntry[]>();
  const thickness = new Map<number, ThicknessEntry[]>();
  const totals: TotalsEntry[] = [];
  const ends: EndEntry[] = [];
  let undoable: Entry | null = null;
  let living = 0;
  let next = 1;
  for (const [at, entry] of ordered.entries()) {
    if (fates[at] === "taken-back" || entry.type === "undo") continue;
    next = nextAfter(next, entry);
    if (fates[at] === "replaced") continue;
    living++;
    undoable = entry;
    if (entry.type === "mark") push(marks, entry.mark, entry);
    else if (entry.type === "thickness") push(thickness, entry.mark, entry);
    else if (entry.type === "totals") totals.push(entry);
    else if (entry.type === "end") ends.push(entry);
  }
  return { marks: marksFrom(marks), thickness, totals, ends, undoable, living, next, fates };
};

/** The undo that Redo takes back. A reading made since, even one taken back, ends what could be redone. */
const redoableIn = (ordered: readonly Entry[], fates: readonly string[]): LineReading["redoable"] => {
  const types = new Map(ordered.map(({ id, type }) => [id, type]));
  for (let at = ordered.length - 1; at >= 0; at--) {
    const entry = ordered[at];
    if (entry === undefined || entry.type !== "undo") return null;
    const target = types.get(entry.takesBack);
    if (fates[at] === "counts" && target !== undefined && target !== "undo") return entry;
  }
  return null;
};

/**
 * Reads a line from its entries.
 *
 * Marks beyond the last one looked at belong to no sum. In *misses only* a mark that was not called
 * counts as residue once the line has ended, and as nothing before. Two phones that ended it differently
 * have not ended it: which marks were looked at is not known until one end is chosen.
 *
 * What was read from a list of entries is kept as long as the list is, because a touch asks twice: once to
 * apply it and once to show the line. A list of entries is never changed.
 *
 * @param entries the line's entries, in any order
 * @param frame how it is counted, and how many marks the rope has
 */
export const readLine = (entries: readonly Entry[], frame: LineFrame): LineReading => {
  const kept = readBefore.get(entries);
  if (kept?.frame.way === frame.way && kept.frame.ropeMarks === frame.ropeMarks) return kept.reading;
  const reading = readEntries(entries, frame);
  readBefore.set(entries, { frame, reading });
  return reading;
};

const readBefore = new WeakMap<
  readonly Entry[],
  { readonly frame: LineFrame; readonly reading: LineReading }
>();

const readEntries = (entries: readonly Entry[], frame: LineFrame): LineReading => {
  const ordered = inOrder(entries);
  const { marks, thickness, totals, ends, undoable, living, next, fates } = gather(ordered);
  const single = new Map<number, ThicknessEntry>();
  const thicknessInDoubt = new Map<number, readonly ThicknessEntry[]>();
  for (const [number, all] of thickness) {
    const last = all.at(-1);
    if (differ(all, saidThickness)) thicknessInDoubt.set(number, all);
    else if (last !== undefined) single.set(number, last);
  }
  const endsInDoubt = differ(ends, ({ mark, rest }) => saidEnd(mark, rest)) ? ends : [];
  const end = endsInDoubt.length > 0 ? undefined : ends.at(-1);
  const endedAt = end?.mark ?? null;
  const rest = end?.rest ?? null;
  const highest = Math.max(0, ...marks.keys());
  const last = Math.min(endedAt ?? highest, frame.ropeMarks);
  const lastTotals = totals.at(-1) ?? null;
  const totalsInDoubt = differ(totals, saidTotals) ? totals : [];
  return {
    marks,
    thickness: single,
    thicknessInDoubt,
    totals: lastTotals,
    totalsInDoubt,
    next,
    endedAt,
    endsInDoubt,
    rest,
    tally:
      lastTotals === null
        ? tallyMarks(marks, last, uncalled(frame.way, endedAt !== null, rest))
        : tallyTotals(lastTotals, totalsInDoubt),
    undoable,
    redoable: redoableIn(ordered, fates),
    living,
  };
};
