/**
 * Source: Helsel & Hirsch 2002, Statistical Methods in Water Resources, pp. 139-140: mayflies above and below an
 * outfall in 12 streams.
 * Mark: published (data); computed here with R (sign test, signed rank with tied ranks, Hodges & Lehmann, paired t;
 * normal curve as R prints it).
 */
import { expect, it } from "vitest";
import { comparePairs } from "../../src/science/side-by-side/pairs.ts";
import { medianOf } from "../../src/science/statistics/quantile.ts";
import { signFlip } from "../../src/science/statistics/sign-flip.ts";
import { normalSignedRank, signedRank } from "../../src/science/statistics/signed-rank.ts";
import { pairedStudent } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const ABOVE = [12, 15, 11, 41, 106, 63, 296, 53, 20, 110, 429, 185];
const BELOW = [9, 9, 38, 24, 48, 17, 11, 41, 14, 60, 53, 124];
const DIFFERENCES = [3, 6, -27, 17, 58, 46, 285, 12, 6, 50, 376, 61];

it("signed ranks 72 and 6, two-sided 0.0063477 with the ranks as tied; Hodges & Lehmann 33.5", () => {
  expect(ABOVE.map((above, at) => above - (BELOW[at] ?? 0))).toEqual(DIFFERENCES);
  const seen = reached(signedRank(DIFFERENCES));
  expect(seen).toMatchObject({ positive: 72, negative: 6, middle: 33.5, exact: true });
  expect(seen.chance).toBeCloseTo(2 * 0.0031738, 6);
  // The table for ranks without ties would give 2 · 0.0034180.
  expect(Math.abs(seen.chance - 2 * 0.003418)).toBeGreaterThan(4e-4);
});

it("normal curve with continuity 0.01076", () => {
  expect(reached(normalSignedRank(DIFFERENCES))).toBeCloseTo(0.01076, 5);
});

it("median 31.5, mean 74.4167, paired t 2.07920 with p = 0.06178", () => {
  expect(reached(medianOf(DIFFERENCES))).toBe(31.5);
  const test = reached(pairedStudent(DIFFERENCES));
  expect(test.difference).toBeCloseTo(74.4167, 4);
  expect(test.t).toBeCloseTo(2.0792, 5);
  expect(test.chance).toBeCloseTo(0.06178, 5);
});

it("on logs t 2.40692 with p = 0.03480, ratio 2.15253 (1.06779 to 4.33922): clearly different", () => {
  const logs = ABOVE.map((above, at) => Math.log(above / (BELOW[at] ?? 1)));
  expect(reached(pairedStudent(logs)).t).toBeCloseTo(2.40692, 5);
  const seen = reached(
    comparePairs(
      ABOVE.map((above, at) => ({
        label: `stream ${at}`,
        a: { value: above, least: null },
        b: { value: BELOW[at] ?? 0, least: null },
      })),
      "blocks",
      { scale: "ratio", unit: "/m2", worthwhile: 2, seed: 1 },
    ),
  );
  expect(seen.value).toBeCloseTo(2.15253, 5);
  expect(reached(seen.chance)).toBeCloseTo(0.0348, 5);
  expect(reached(seen.range).lower).toBeCloseTo(1.06779, 5);
  expect(reached(seen.range).upper).toBeCloseTo(4.33922, 4);
  expect(seen.word).toBe("clearly-different");
});

it("eleven of twelve positive: sign test 0.0063477, which is the sign flip of equal sizes", () => {
  const signs = DIFFERENCES.map(Math.sign);
  expect(signs.filter((sign) => sign > 0)).toHaveLength(11);
  expect(reached(signFlip(signs, 1)).chance).toBeCloseTo(0.0063477, 6);
});
