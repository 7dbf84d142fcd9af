/** Figures of a run: percentiles, and the file that the command prints them from. */
import { appendFileSync, mkdirSync } from "node:fs";
import { join, resolve } from "node:path";

const folder = resolve(import.meta.dirname, "../../.cache");

/** One measured figure. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** What it must not exceed. */
  readonly bound?: number;
}

/** Writes a figure down, rounded to three significant digits. */
export const state = ({ value, ...rest }: Figure): void => {
  mkdirSync(folder, { recursive: true });
  const figure = { ...rest, value: Number(value.toPrecision(3)) };
  appendFileSync(join(folder, "bench.ndjson"), `${JSON.stringify(figure)}\n`);
  console.log(`${figure.name}: ${figure.value} ${figure.unit}`);
};

/**
 * The value that a share of all values does not exceed (nearest rank).
 *
 * @param share from 0 to 1
 * @returns NaN for no values
 * @example
 * percentile([4, 1, 3, 2], 0.5); // 2
 */
export const percentile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
};

/** How much slower the page's processor is made: about a phone of the middle class. */
export const slowdown = 4;
