import { expect, it } from "vitest";
import { ringsTogether } from "../../../src/screens/measure/visit/rings-together.ts";
import { ringWith } from "./ring-samples.ts";

type Written = Parameters<typeof ringWith>[0][number];
/** A ring whose water has fallen by so many millimetres after 30, 60 and 180 minutes. */
const fallen = (depths: readonly number[], number: number, more: readonly Written[] = []) =>
  ringWith(
    [
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 150 },
      ...depths.map((mm, at): Written => ({ type: "level", atMin: [30, 60, 180][at] ?? 0, mm: 150 - mm })),
      ...more,
    ],
    { number },
  );

const after = (together: ReturnType<typeof ringsTogether>, minutes: number) => {
  const found = together.after.find((one) => one.minutes === minutes);
  if (found === undefined) throw new Error("no such minutes");
  return found;
};

it("takes the geometric mean of the rings, and a range from three rings on", () => {
  const together = ringsTogether([fallen([40, 90], 1), fallen([10, 40], 2), fallen([20], 3)]);
  const half = after(together, 30).mean;
  // (40 · 10 · 20)^(1/3) = 8000^(1/3) = 20 by hand.
  expect(half.ok && half.value.value).toBeCloseTo(20, 9);
  expect(half.ok && half.value.n).toBe(3);
  expect(half.ok && half.value.range.ok).toBe(true);
  const hour = after(together, 60);
  // √(90 · 40) = 60 by hand.
  expect(hour.mean.ok && hour.mean.value.value).toBeCloseTo(60, 9);
  expect(hour.mean.ok && hour.mean.value.range.ok).toBe(false);
  expect(hour.without.map(({ id }) => id)).toEqual([fallen([], 3).id]);
});

it("says nothing of a time that no ring was read for", () => {
  const together = ringsTogether([fallen([40], 1)]);
  expect(after(together, 180).mean).toMatchObject({ ok: false, problem: { code: "science/nothing-read" } });
});

it("does not say that burrows may have been missed where the ring over one ran dry before", () => {
  const said = (rings: readonly ReturnType<typeof fallen>[]) => {
    const { mean } = after(ringsTogether(rings), 60);
    return mean.ok ? mean.value.cautions.map(({ code }) => code) : null;
  };
  const four = [fallen([10, 20], 1), fallen([12, 25], 2), fallen([15, 30], 3), fallen([20, 40], 4)];
  expect(said(four)).toEqual(["science/few-rings-may-miss-burrows"]);
  const dry = fallen([140], 5, [{ type: "happened", what: "burrow", atMin: 20 }]);
  expect(said([...four, dry])).toEqual([]);
});

it("counts a ring and the one that goes on from it after a leak as one place", () => {
  const leaked = fallen([40], 1, [{ type: "happened", what: "leaked", atMin: 40 }]);
  const goesOn = ringWith(
    [
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 150 },
      { type: "level", atMin: 30, mm: 120 },
      { type: "level", atMin: 60, mm: 100 },
    ],
    { number: 2, follows: leaked.id },
  );
  const together = ringsTogether([leaked, goesOn]);
  const half = after(together, 30);
  expect(half.points.map(({ id, value }) => [id, value])).toEqual([[goesOn.id, 30]]);
  expect(after(together, 60).points).toHaveLength(1);
  expect(together.leaked).toEqual([leaked]);
});

it("keeps what the first ring had said before its leak, while the one behind it has not been read so long", () => {
  const leaked = fallen([40], 1, [{ type: "happened", what: "leaked", atMin: 40 }]);
  const young = ringWith(
    [
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 150 },
      { type: "level", atMin: 5, mm: 140 },
    ],
    { number: 2, follows: leaked.id },
  );
  expect(after(ringsTogether([leaked, young]), 30).points.map(({ value }) => value)).toEqual([40]);
});

it("names burrows, which count", () => {
  const together = ringsTogether([
    fallen([40], 1, [{ type: "happened", what: "burrow", atMin: 10 }]),
    fallen([20], 2),
  ]);
  expect(together.withBurrow).toHaveLength(1);
  expect(after(together, 30).points).toHaveLength(2);
});
