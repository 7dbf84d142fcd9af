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

export interface Method {
  /** In symbols; each symbol has its words in the message catalogue. */
  readonly formulas: readonly string[];
  readonly constants: readonly Constant[];
  readonly sources: readonly SourceId[];
}

/** A table that a method reads, by the symbol of what stands in it: its source, and how many numbers it holds. */
export const table = <const Symbol extends string, const Id extends SourceId>(
  symbol: Symbol,
  values: number,
  source: Id,
) => ({ symbol, value: values, unit: "values", source }) as const;
