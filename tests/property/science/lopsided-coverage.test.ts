/**
 * How often a range by Student's t holds the mean of values that are lopsided, and whether that is said. Fixed seeds; the
 * figures stand in the docstrings of `lopsidedCautions`, `comparePairs` and `compareGroups`.
 */
import { describe, expect, it } from "vitest";
import { compareGroups } from "../../../src/science/side-by-side/groups.ts";
import { comparePairs } from "../../../src/science/side-by-side/pairs.ts";
import { lopsidedCautions, studentRange } from "../../../src/science/statistics/student-range.ts";
import { pairedStudent } from "../../../src/science/statistics/two-means.ts";
import { reached } from "../../unit/science/counts.ts";
import { gamma, normal, seeded } from "./seeded.ts";

type Random = () => number;
const many = <T>(n: number, one: (at: number) => T): readonly T[] =>
  Array.from({ length: n }, (_, at) => one(at));
const shareOf = (tries: number, one: () => boolean): number =>
  many(tries, one).filter(Boolean).length / tries;
const seen = (values: readonly number[]) => values.map((value) => ({ value, least: null }));

const holdsNone = (values: readonly number[]): boolean => {
  const { difference, standardError, degreesOfFreedom } = reached(pairedStudent(values));
  const { lower, upper } = reached(studentRange(difference, standardError, degreesOfFreedom, 0.95));
  return lower <= 0 && upper >= 0;
};

describe("strongly skewed differences", () => {
  it.each([
    [3, 0.88],
    [6, 0.866],
    [10, 0.87],
    [20, 0.89],
    [30, 0.91],
  ])("%i of them hold none %d of the time, and that is said", (n, expected) => {
    const random = seeded(n);
    const skewed = () => Math.exp(0.8 * normal(random)) - Math.exp(0.32);
    const share = shareOf(2000, () => holdsNone(many(n, skewed)));
    expect(Math.abs(share - expected)).toBeLessThan(0.025);
    const asked = { scale: "difference", unit: "mm", worthwhile: 1, seed: 1 } as const;
    const [a, b] = [many(n, skewed), many(n, skewed)];
    const sides = seen(a).map((one, at) => ({
      label: `${at}`,
      a: one,
      b: { value: b[at] ?? 0, least: null },
    }));
    for (const { cautions } of [
      reached(comparePairs(sides, "blocks", asked)),
      reached(compareGroups(seen(a), seen(b), "strips", asked)),
    ])
      expect(cautions.some(({ code }) => code === "science/range-if-lopsided")).toBe(true);
  });

  const kinds: readonly (readonly [string, (random: Random) => number, number, number, number])[] = [
    ["even", normal, 0, 0.935, 0.965],
    ["a little skewed (gamma, shape 4)", (random) => gamma(4, random), 4, 0.93, 0.965],
    ["skewed (gamma, shape 2)", (random) => gamma(2, random), 2, 0.925, 0.965],
    ["lognormal, spread 0.8", (random) => Math.exp(0.8 * normal(random)), Math.exp(0.32), 0.9, 0.955],
    ["lognormal, spread 1.2", (random) => Math.exp(1.2 * normal(random)), Math.exp(0.72), 0.84, 0.91],
  ];

  it.each(kinds)(
    "thirty and more, %s: where the range misses, their skewness shows it",
    (kind, one, truth, least, most) => {
      for (const n of [30, 60, 100]) {
        const random = seeded(n);
        const samples = many(2000, () => {
          const values = many(n, () => one(random));
          return {
            held: holdsNone(values.map((value) => value - truth)),
            said: lopsidedCautions([values]).length > 0,
          };
        });
        const missed = samples.filter(({ held }) => !held);
        const held = 1 - missed.length / samples.length;
        expect(held).toBeGreaterThan(least);
        expect(held).toBeLessThan(most);
        const saidOf = (some: typeof samples): number => some.filter(({ said }) => said).length / some.length;
        if (held < 0.92) expect(saidOf(missed)).toBeGreaterThan(0.8);
        if (kind === "even") expect(saidOf(samples)).toBeLessThan(n === 30 ? 0.08 : 0.025);
      }
    },
  );
});
