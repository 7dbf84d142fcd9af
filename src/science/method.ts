/** What is said of a method: its formulas in symbols, its constants and where they come from. */
import type { SourceId } from "./sources.ts";

/** A number that a formula holds. */
export interface Constant {
  readonly symbol: string;
  readonly value: number;
  /** UCUM; "1" where the number has no dimension. */
  readonly unit: string;
  readonly source: SourceId;
}

export interface Method {
  /** In symbols; each symbol has its words in the message catalogue. */
  readonly formulas: readonly string[];
  readonly constants: readonly Constant[];
  readonly sources: readonly SourceId[];
}
