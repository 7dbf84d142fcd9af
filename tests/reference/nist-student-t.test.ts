/**
 * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper critical values of Student's t (from memory).
 * The handbook's column for 0.001 is left out: it prints 318.313 for one degree of freedom where the
 * distribution gives 318.309, and is off in the third decimal from 7 degrees of freedom on.
 */
import { describe, expect, it } from "vitest";
import {
  normalQuantile,
  studentProbability,
  studentQuantile,
} from "../../src/science/statistics/distributions.ts";
import { reached } from "../unit/science/counts.ts";

const TAILS = [0.1, 0.05, 0.025, 0.01, 0.005];
const TABLE: readonly [number, readonly number[]][] = [
  [1, [3.078, 6.314, 12.706, 31.821, 63.657]],
  [2, [1.886, 2.92, 4.303, 6.965, 9.925]],
  [3, [1.638, 2.353, 3.182, 4.541, 5.841]],
  [4, [1.533, 2.132, 2.776, 3.747, 4.604]],
  [5, [1.476, 2.015, 2.571, 3.365, 4.032]],
  [7, [1.415, 1.895, 2.365, 2.998, 3.499]],
  [10, [1.372, 1.812, 2.228, 2.764, 3.169]],
  [30, [1.31, 1.697, 2.042, 2.457, 2.75]],
  [100, [1.29, 1.66, 1.984, 2.364, 2.626]],
];

describe.each(TABLE)("%i degrees of freedom", (freedom, values) => {
  it.each(TAILS.map((tail, column) => [tail, values[column] ?? 0] as const))(
    "upper tail %d: %d",
    (tail, value) => {
      expect(reached(studentQuantile(1 - tail, freedom))).toBeCloseTo(value, 3);
      expect(reached(studentQuantile(tail, freedom))).toBeCloseTo(-value, 3);
      const back = reached(studentProbability(reached(studentQuantile(1 - tail, freedom)), freedom));
      expect(back).toBeCloseTo(1 - tail, 6);
    },
  );
});

describe("closed forms", () => {
  it.each([0.001, 0.025, 0.2, 0.6, 0.975, 0.9995])("one and two degrees of freedom at %d", (p) => {
    // One degree is the Cauchy distribution: tan(π(p − ½)); two: (2p−1)/√(2p(1−p)).
    const one = Math.tan(Math.PI * (p - 0.5));
    const two = (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
    expect(reached(studentQuantile(p, 1)) / one).toBeCloseTo(1, 6);
    expect(reached(studentQuantile(p, 2)) / two).toBeCloseTo(1, 6);
    expect(reached(studentProbability(two, 2))).toBeCloseTo(p, 7);
  });
});

it("has the normal distribution in its last row", () => {
  const values = [1.282, 1.645, 1.96, 2.326, 2.576];
  for (const [column, tail] of TAILS.entries())
    expect(reached(normalQuantile(1 - tail))).toBeCloseTo(values[column] ?? 0, 3);
});

it("gives 323 marks for give or take 5 points at 30 % cover (constructed: 1.96²·0.21/0.05²)", () => {
  expect(Math.ceil((reached(normalQuantile(0.975)) ** 2 * 0.3 * 0.7) / 0.05 ** 2)).toBe(323);
});
