/** Says what was measured, so that the run can be read afterwards. Times are of this machine, just now. */
export function sayFigures(what: string, figures: Readonly<Record<string, number | string>>): void {
  const said = Object.entries(figures).map(([name, value]) => `${name} ${value}`);
  process.stdout.write(`${what}: ${said.join(", ")}\n`);
}

/**
 * The value that this share of the sorted values does not exceed.
 *
 * @param share between 0 and 1
 * @returns NaN of no values
 * @example
 * quantile([3, 1, 2], 0.5); // 2
 */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/** A series of numbers between 0 and 1 from a seed that can be given again: Marsaglia's xorshift (2003). */
export function seededChance(seed: number): () => number {
  let state = seed | 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
