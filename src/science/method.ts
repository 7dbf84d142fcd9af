/** What is said of a method: its formulas in symbols, its constants and where they come from. */
import type { SourceId } from "./sources.ts";

/** A number that a formula holds, or a table that it reads. */
export interface Constant {
  readonly symbol: string;
  readonly value: number;
  /** UCUM; "1" where the number has no dimension; "values" for a table, and `value` says how many it holds. */
  readonly unit: string;
  readonly source: SourceId;
}

/** What is looked at where a caution has its limit. */
export type LookedAt =
  | "chance"
  | "cover"
  | "days-since-worked"
  | "efforts-apart"
  | "head"
  | "hits"
  | "holes"
  | "metres-apart"
  | "misses"
  | "other-spread-share"
  | "plants"
  | "quadrats"
  | "ring-depth"
  | "rings"
  | "share-apart"
  | "sizes-apart"
  | "skewness"
  | "soil-temperature"
  | "spread"
  | "spread-beyond-chance"
  | "values"
  | "worms"
  | "years";

/** Where a caution stands beside a result: the code reads the same constant. */
export interface CautionLimit {
  /** The caution, by its code, which has its sentence in the message catalogue. */
  readonly caution: `science/${string}`;
  readonly of: LookedAt;
  /** It is said for what lies below the value, up to it, from it on, or above it. */
  readonly said: "below" | "up-to" | "from" | "above";
  readonly value: number;
  /** UCUM; "1" where the number has no dimension. */
  readonly unit: string;
  readonly source: SourceId;
}

export interface Method {
  /** In symbols; each symbol has its words in the message catalogue. */
  readonly formulas: readonly string[];
  readonly constants: readonly Constant[];
  /** Where the cautions that this method brings have their limits. */
  readonly limits?: readonly CautionLimit[];
  readonly sources: readonly SourceId[];
}

/** A table that a method reads, by the symbol of what stands in it: its source, and how many numbers it holds. */
export const table = <const Symbol extends string, const Id extends SourceId>(
  symbol: Symbol,
  values: number,
  source: Id,
) => ({ symbol, value: values, unit: "values", source }) as const;

/** Where a caution stands, by an own rule without a dimension unless another unit and source are given. */
export const limit = (
  caution: CautionLimit["caution"],
  of: LookedAt,
  said: CautionLimit["said"],
  value: number,
  { unit = "1", source = "own-rule" }: { readonly unit?: string; readonly source?: SourceId } = {},
): CautionLimit => ({ caution, of, said, value, unit, source });
