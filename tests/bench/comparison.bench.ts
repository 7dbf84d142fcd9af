/** What a range by samples drawn anew costs, beside the same resampling with a general-purpose library. */
import { createRequire } from "node:module";
import { expect, it } from "vitest";
import { comparePairs } from "../../src/science/side-by-side/pairs.ts";
import {
  bcaRange,
  differenceOfMeans,
  percentileRange,
  resample,
} from "../../src/science/statistics/bootstrap.ts";
import { reached } from "../unit/science/counts.ts";
import { percentile, state } from "./figures.ts";

/** It ships no types of its own. */
const general = createRequire(import.meta.url)("jstat") as {
  readonly mean: (values: readonly number[]) => number;
};
const DRAWS = 10_000;
const groups = [0, 1].map((of) =>
  Array.from({ length: 50 }, (_, at) => 40 + 15 * Math.sin(at * (1.7 + of)) + 5 * of),
);

const timesOf = (runs: number, work: () => void): readonly number[] => {
  for (let warm = 0; warm < 3; warm++) work();
  return Array.from({ length: runs }, () => {
    const began = performance.now();
    work();
    return performance.now() - began;
  });
};

/** The same by the book, with a general-purpose mean over plain arrays. */
const byTheLibrary = (): void => {
  const values = Array.from({ length: DRAWS }, () => {
    const [a, b] = groups.map((group) =>
      general.mean(
        Array.from({ length: group.length }, () => group[Math.floor(Math.random() * group.length)] ?? 0),
      ),
    );
    return (a ?? 0) - (b ?? 0);
  }).sort((x, y) => x - y);
  expect(values).toHaveLength(DRAWS);
};

it("draws 10,000 samples of 2 × 50 values and makes their range in 100 ms", () => {
  const ours = timesOf(15, () => {
    const drawn = reached(resample(groups, differenceOfMeans, { draws: DRAWS, seed: 1 }));
    expect(reached(percentileRange(drawn, 0.95)).lower).toBeLessThan(reached(bcaRange(drawn, 0.95)).upper);
  });
  const median = percentile(ours, 0.5);
  state({
    name: "10,000 samples of 2 × 50 drawn anew, percentile and BCa, median",
    value: median,
    unit: "ms",
    bound: 100,
  });
  state({
    name: "the same draws with the means of a general-purpose library, over ours",
    value: percentile(timesOf(7, byTheLibrary), 0.5) / median,
    unit: "times",
  });
  expect(median).toBeLessThanOrEqual(100);
});

it("compares ten pairs with all that stands beside them", () => {
  const pairs = Array.from({ length: 10 }, (_, at) => ({
    label: `${at}`,
    a: { value: 60 + 7 * Math.sin(at), least: null },
    b: { value: 50 + 7 * Math.cos(3 * at), least: null },
  }));
  const asked = { scale: "difference", unit: "1", worthwhile: 10, seed: 1 } as const;
  const median = percentile(
    timesOf(9, () => void reached(comparePairs(pairs, "blocks", asked))),
    0.5,
  );
  state({ name: "ten pairs with plan, sign flip and ranks, median", value: median, unit: "ms" });
});
