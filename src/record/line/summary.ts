/**
 * A line in a list or in a strip's result: its sums, straight from the columns in which it is stored.
 * A field holds thousands of lines, and making an object of every mark only to add it up takes several
 * times longer. Says the same as `readLine`.
 */
import { type EntryColumns, unpackEntries, valuesOf } from "../columns.ts";
import { type Cover, type Fate, fatesOf, type Links, type Stance, type ThicknessEntry } from "../entry.ts";
import { compareText } from "../stamp.ts";
import {
  columnOf,
  type LineFrame,
  type LineReading,
  type LineTally,
  readLine,
  saidEnd,
  uncalled,
} from "./reading.ts";

/** What a strip needs to know of one of its lines. */
export interface LineSummary {
  readonly tally: LineTally;
  /** The last mark looked at once the line has ended, else null. */
  readonly endedAt: number | null;
  /** Two phones ended it differently, and nobody has chosen yet. */
  readonly endInDoubt: boolean;
  /** How many entries count, undo entries left out. */
  readonly living: number;
  /** Mulch thickness as read, in the order of marks. */
  readonly thickness: readonly Thickness[];
}

/** Mulch thickness as read. */
export type Thickness = Pick<ThicknessEntry, "mark" | "value" | "unit">;

const byMark = (a: { mark: number }, b: { mark: number }): number => a.mark - b.mark;

/** The part of a reading that a strip needs. */
export const summaryOf = (reading: LineReading): LineSummary => ({
  tally: reading.tally,
  endedAt: reading.endedAt,
  endInDoubt: reading.endsInDoubt.length > 0,
  living: reading.living,
  thickness: [...reading.thickness.values()]
    .map(({ mark, value, unit }) => ({ mark, value, unit }))
    .sort(byMark),
});

const isInOrder = (places: readonly unknown[], ids: readonly unknown[]): boolean => {
  for (let at = 1; at < places.length; at++) {
    const step = Number(places[at]) - Number(places[at - 1]);
    if (step < 0 || (step === 0 && compareText(String(ids[at - 1]), String(ids[at])) > 0)) return false;
  }
  return true;
};

/** What became of each packed entry; null when all of them count. */
const fatesIn = (packed: EntryColumns, ids: readonly unknown[]): readonly Fate[] | null => {
  if (!("takesBack" in packed.columns) && !("replaces" in packed.columns)) return null;
  const takesBack = valuesOf(packed, "takesBack") as readonly Links["takesBack"][];
  const replaces = valuesOf(packed, "replaces") as readonly Links["replaces"][];
  return fatesOf(ids.map((id, at) => ({ id: String(id), takesBack: takesBack[at], replaces: replaces[at] })));
};

const SUMS = [
  "residueFlat",
  "residueStanding",
  "green",
  "bare",
  "stone",
  "own",
  "notRead",
  "unsettled",
] as const;
const PLACE_OF_SUM = new Map<string, number>(SUMS.map((sum, at) => [sum, at]));
const placeOf = (sum: keyof LineTally): number => PLACE_OF_SUM.get(sum) ?? 0;
const UNSETTLED = placeOf("unsettled");

/** The same for a thickness: null once two differ. */
const oneOf = (before: Thickness | null | undefined, now: Thickness): Thickness | null =>
  before === undefined || (before?.value === now.value && before.unit === now.unit) ? now : null;

const thicknessIn = (packed: EntryColumns, fates: readonly Fate[] | null): Thickness[] => {
  const marks = valuesOf(packed, "mark") as readonly (number | undefined)[];
  const units = valuesOf(packed, "unit") as readonly (Thickness["unit"] | undefined)[];
  const found = new Map<number, Thickness | null>();
  for (const [at, value] of valuesOf(packed, "value").entries()) {
    const mark = marks[at];
    const unit = units[at];
    if (typeof value !== "number" || mark === undefined || unit === undefined || isGone(fates, at)) continue;
    found.set(mark, oneOf(found.get(mark), { mark, value, unit }));
  }
  return [...found.values()].filter((one) => one !== null).sort(byMark);
};

const isGone = (fates: readonly Fate[] | null, at: number): boolean =>
  fates !== null && fates[at] !== "counts";

/** Places of sums instead of names: a property whose name differs from mark to mark is slow to add to. */
const tallySaid = (said: readonly (number | undefined)[], last: number, elsewhere: number): LineTally => {
  const sums = SUMS.map(() => 0);
  for (let number = 1; number <= last; number++) {
    const at = said[number] ?? elsewhere;
    sums[at] = (sums[at] ?? 0) + 1;
  }
  const [residueFlat = 0, residueStanding = 0, green = 0, bare = 0, stone = 0, own = 0, notRead = 0] = sums;
  return { residueFlat, residueStanding, green, bare, stone, own, notRead, unsettled: sums[UNSETTLED] ?? 0 };
};

/** What was said at each mark, how many entries count, and which one ends the line. */
const gather = (packed: EntryColumns, types: readonly unknown[], fates: readonly Fate[] | null) => {
  const marks = valuesOf(packed, "mark") as readonly (number | undefined)[];
  const covers = valuesOf(packed, "cover") as readonly (Cover | undefined)[];
  const stances = valuesOf(packed, "stance") as readonly (Stance | undefined)[];
  const said: (number | undefined)[] = [];
  let living = 0;
  const ends: number[] = [];
  for (let at = 0; at < packed.count; at++) {
    if (isGone(fates, at)) continue;
    const mark = marks[at];
    const cover = covers[at];
    if (mark !== undefined && cover !== undefined) {
      const now = placeOf(columnOf(cover, stances[at]));
      const before = said[mark];
      // Two phones that agree are one answer; those that differ count nowhere.
      said[mark] = before === undefined || before === now ? now : UNSETTLED;
      living++;
    } else if (types[at] !== "undo") {
      living++;
      if (types[at] === "end") ends.push(at);
    }
  }
  const rests = ends.length === 0 ? [] : (valuesOf(packed, "rest") as readonly (Stance | undefined)[]);
  const inDoubt = ends.some(
    (at) => saidEnd(marks[at], rests[at]) !== saidEnd(marks[ends[0] ?? at], rests[ends[0] ?? at]),
  );
  const endAt = inDoubt ? -1 : (ends.at(-1) ?? -1);
  return { said, living, endedAt: marks[endAt] ?? null, endInDoubt: inDoubt, rest: rests[endAt] ?? null };
};

/**
 * Sums up a line as it is stored.
 *
 * @param packed the line's entries as stored
 * @param frame how it is counted, and how many marks the rope has
 * @returns what `readLine` says of the same entries
 */
export const summariseLine = (packed: EntryColumns, frame: LineFrame): LineSummary => {
  const ids = valuesOf(packed, "id");
  const types = valuesOf(packed, "type");
  // Lines of totals have few entries, and rows out of order are rare: not worth saying a second time.
  if (types.includes("totals") || !isInOrder(valuesOf(packed, "n"), ids))
    return summaryOf(readLine(unpackEntries(packed), frame));
  const fates = fatesIn(packed, ids);
  const { said, living, endedAt, endInDoubt, rest } = gather(packed, types, fates);
  const last = Math.min(endedAt ?? Math.max(0, said.length - 1), frame.ropeMarks);
  return {
    tally: tallySaid(said, last, placeOf(uncalled(frame.way, endedAt !== null, rest))),
    endedAt,
    endInDoubt,
    living,
    thickness: "value" in packed.columns ? thicknessIn(packed, fates) : [],
  };
};
