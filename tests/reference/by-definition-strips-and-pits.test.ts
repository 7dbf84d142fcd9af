/**
 * Source: the definition of a replicate: pits inside strips are none.
 * Mark: computed here with R on two made-up trials of six and eight strips with three pits each.
 */
import { expect, it } from "vitest";
import { comparePairs } from "../../src/science/side-by-side/pairs.ts";
import { meansOfStrips } from "../../src/science/side-by-side/strip-means.ts";
import { intraclass } from "../../src/science/statistics/intraclass.ts";
import { pairedStudent, welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const A = [
  [12, 13, 11],
  [9, 8, 10],
  [15, 14, 16],
];
const B = [
  [8, 9, 7],
  [12, 11, 13],
  [7, 6, 8],
];
const STEADY_A = [
  [9, 12, 7],
  [14, 10, 11],
  [8, 6, 9],
  [12, 13, 15],
];
const STEADY_B = [
  [6, 7, 5],
  [10, 8, 9],
  [7, 5, 4],
  [9, 9, 11],
];

const compared = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]) => {
  const means = (strips: readonly (readonly number[])[]) =>
    reached(
      meansOfStrips(
        strips.map((pits, at) => ({ label: `${at}`, spots: pits.map((value) => ({ value, least: null })) })),
        "difference",
      ),
    ).strips.map(({ value }) => ({ value, least: null }));
  const [first, second] = [means(a), means(b)];
  return reached(
    comparePairs(
      first.flatMap((one, at) => {
        const other = second[at];
        return other === undefined ? [] : [{ label: `${at}`, a: one, b: other }];
      }),
      "blocks",
      { scale: "difference", unit: "/{hole}", worthwhile: 3, seed: 1 },
    ),
  );
};

it("18 pits put together would say p = 0.026199; three pairs say 0.449209", () => {
  const pooled = reached(welch(A.flat(), B.flat()));
  expect(pooled.t).toBeCloseTo(2.44949, 5);
  // The pooled test has 16 degrees of freedom, Welch's nearly so.
  expect(pooled.chance).toBeCloseTo(0.0262, 3);
  const test = reached(pairedStudent([4, -3, 8]));
  expect(test.t).toBeCloseTo(0.933257, 6);
  const seen = compared(A, B);
  expect(seen.value).toBeCloseTo(3, 12);
  expect(reached(seen.chance)).toBeCloseTo(0.449209, 6);
  expect(reached(seen.range).lower).toBeCloseTo(-10.8311, 4);
  expect(reached(seen.range).upper).toBeCloseTo(16.8311, 4);
  expect(seen.word).toBe("cannot-tell-yet");
});

it("correlation 0.896552 of pits in a strip, design effect 2.793103", () => {
  const seen = reached(intraclass(A));
  expect(seen.correlation).toBeCloseTo(0.896552, 6);
  expect(seen.designEffect).toBeCloseTo(2.793103, 6);
});

it("steady pairs: 3.0, t 9.859006 on 3, p = 0.0022188, 2.031612 to 3.968388, sign flip 0.125", () => {
  const seen = compared(STEADY_A, STEADY_B);
  expect(seen.value).toBeCloseTo(3, 12);
  expect(reached(seen.chance)).toBeCloseTo(0.0022188, 6);
  expect(reached(seen.range).lower).toBeCloseTo(2.031612, 5);
  expect(reached(seen.range).upper).toBeCloseTo(3.968388, 5);
  expect(reached(seen.signFlip)).toMatchObject({ chance: 0.125, smallest: 0.125 });
  expect(seen.word).toBe("clearly-different");
});
