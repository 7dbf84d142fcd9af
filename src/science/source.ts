/** What is said of a source. */

/**
 * How well a source stands: read as published · what people in the trade do, without a text to point at ·
 * from memory, not yet checked against the text · derived in this product from what is stated beside it.
 */
export type Mark = "published" | "common-practice" | "not-checked" | "derived";

/** One source as it is shown. */
export interface Source {
  readonly citation: string;
  readonly mark: Mark;
  readonly address?: string;
}
