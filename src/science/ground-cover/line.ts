/** The counts of one line, and what each kind of cover makes of them. */
import { failed, ok, type Result } from "../../record/result.ts";

/**
 * Marks of one line by what the raindrop meets first. Points on a photo are the same thing: the photo is
 * the line, its points are the marks.
 */
export interface LineCounts {
  readonly residueFlat: number;
  readonly residueStanding: number;
  readonly green: number;
  readonly bare: number;
  readonly stone: number;
  /** The person's own fifth key. It is reported, and belongs to no other kind. */
  readonly own: number;
  /** Marks nobody looked at; they leave hits and marks alike. */
  readonly notRead: number;
}

/** What was asked of the counts. */
export type CoverKind =
  | "ground-cover"
  | "residue"
  | "residue-flat"
  | "residue-standing"
  | "green"
  | "bare"
  | "stone"
  | "own";

/** How the person wants kinds added up. */
export interface Counting {
  /** Stone is reported, and part of ground cover only when the person says so. */
  readonly stoneCounts: boolean;
}

/** Hits of one kind and the marks read. */
export interface Hits {
  readonly hits: number;
  readonly marks: number;
  readonly notRead: number;
}

const FIELDS = ["residueFlat", "residueStanding", "green", "bare", "stone", "own", "notRead"] as const;

/**
 * Hits of one kind on one line.
 *
 * @returns `science/not-a-count` when a count is negative, not whole or not finite. A line without any mark
 * read gives 0 of 0.
 *
 * Source: University of Missouri G1570; a share is hits over marks, never over the length of the rope.
 *
 * @example
 * hitsOf({ residueFlat: 40, residueStanding: 4, green: 0, bare: 56, stone: 0, own: 0, notRead: 0 },
 *   "residue", { stoneCounts: false }); // 44 of 100
 */
export const hitsOf = (line: LineCounts, kind: CoverKind, counting: Counting): Result<Hits> => {
  for (const field of FIELDS) {
    const count = line[field];
    if (!(Number.isSafeInteger(count) && count >= 0))
      return failed("science/not-a-count", { field, count: String(count) });
  }
  const residue = line.residueFlat + line.residueStanding;
  const hits: Record<CoverKind, number> = {
    "ground-cover": residue + line.green + (counting.stoneCounts ? line.stone : 0),
    residue,
    "residue-flat": line.residueFlat,
    "residue-standing": line.residueStanding,
    green: line.green,
    bare: line.bare,
    stone: line.stone,
    own: line.own,
  };
  const marks = residue + line.green + line.bare + line.stone + line.own;
  return ok({ hits: hits[kind], marks, notRead: line.notRead });
};

/** What every mark is exactly one of; their shares sum to 1. */
export const KINDS_OF_A_MARK = [
  "residue-flat",
  "residue-standing",
  "green",
  "bare",
  "stone",
  "own",
] as const satisfies readonly CoverKind[];
export type KindOfAMark = (typeof KINDS_OF_A_MARK)[number];

/**
 * What lay at the marks of these lines together: hits of every kind, each mark in one of them.
 *
 * @param lines one line for its own sheet, all of a strip for the strip
 * @returns `science/no-marks-read` when no line has a mark, `science/not-a-count` as `hitsOf`
 *
 * @example
 * marksByKind([{ residueFlat: 30, residueStanding: 10, green: 5, bare: 55, stone: 0, own: 0, notRead: 0 }]);
 * // { "residue-flat": 30, "residue-standing": 10, green: 5, bare: 55, stone: 0, own: 0 }
 */
export const marksByKind = (lines: readonly LineCounts[]): Result<Readonly<Record<KindOfAMark, number>>> => {
  const sums: Record<KindOfAMark, number> = {
    "residue-flat": 0,
    "residue-standing": 0,
    green: 0,
    bare: 0,
    stone: 0,
    own: 0,
  };
  let marks = 0;
  for (const line of lines)
    for (const kind of KINDS_OF_A_MARK) {
      const hit = hitsOf(line, kind, { stoneCounts: false });
      if (!hit.ok) return hit;
      sums[kind] += hit.value.hits;
      marks += hit.value.hits;
    }
  return marks === 0 ? failed("science/no-marks-read") : ok(sums);
};
