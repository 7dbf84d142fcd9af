/**
 * Source: Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, table A18 and p. 209.
 * Mark: from memory (three digits); computed here by counting out all orders (the fourth and further ones, and the
 * floors).
 *
 * Chance of a Kendall sum of S or more when there is no trend, for 3 to 10 times; for 8 times 0.452431 and 0.137550.
 */
import { describe, expect, it } from "vitest";
import {
  exactKendall,
  kendallSum,
  mannKendall,
  smallestTrendChance,
} from "../../src/science/statistics/kendall.ts";
import { reached } from "../unit/science/counts.ts";

const TABLE: readonly (readonly [number, readonly (readonly [number, number])[]])[] = [
  [
    3,
    [
      [1, 0.5],
      [3, 0.1667],
    ],
  ],
  [
    4,
    [
      [0, 0.625],
      [2, 0.375],
      [4, 0.1667],
      [6, 0.0417],
    ],
  ],
  [
    5,
    [
      [0, 0.5917],
      [2, 0.4083],
      [4, 0.2417],
      [6, 0.1167],
      [8, 0.0417],
      [10, 0.00833],
    ],
  ],
  [
    6,
    [
      [1, 0.5],
      [3, 0.3597],
      [5, 0.2347],
      [7, 0.1361],
      [9, 0.0681],
      [11, 0.0278],
      [13, 0.00833],
      [15, 0.00139],
    ],
  ],
  [
    7,
    [
      [1, 0.5],
      [3, 0.3863],
      [5, 0.281],
      [7, 0.1907],
      [9, 0.1194],
      [11, 0.0681],
      [13, 0.0345],
      [15, 0.0151],
      [17, 0.00536],
      [19, 0.00139],
      [21, 0.000198],
    ],
  ],
  [
    8,
    [
      [0, 0.5476],
      [2, 0.4524],
      [4, 0.3598],
      [6, 0.2742],
      [8, 0.1994],
      [10, 0.1375],
      [12, 0.0894],
      [14, 0.0543],
      [16, 0.0305],
      [18, 0.0156],
      [20, 0.00707],
      [22, 0.00275],
      [24, 0.000868],
      [26, 0.000198],
      [28, 0.000025],
    ],
  ],
  [
    9,
    [
      [0, 0.5403],
      [2, 0.4597],
      [4, 0.3807],
      [6, 0.3061],
      [8, 0.2384],
      [10, 0.1792],
      [12, 0.1298],
      [14, 0.0901],
      [16, 0.0597],
      [18, 0.0376],
      [20, 0.0223],
      [22, 0.0124],
      [24, 0.00633],
      [26, 0.00294],
      [28, 0.00121],
      [30, 0.000427],
      [32, 0.000121],
      [34, 0.000025],
      [36, 0.000003],
    ],
  ],
  [
    10,
    [
      [1, 0.5],
      [3, 0.4309],
      [5, 0.3637],
      [7, 0.3003],
      [9, 0.2422],
      [11, 0.1904],
      [13, 0.1456],
      [15, 0.1082],
      [17, 0.0779],
      [19, 0.0542],
      [21, 0.0363],
      [23, 0.0233],
      [25, 0.0143],
      [27, 0.00833],
      [29, 0.00457],
      [31, 0.00234],
      [33, 0.00111],
      [35, 0.000473],
      [37, 0.000179],
      [39, 0.000058],
      [41, 0.000015],
    ],
  ],
];

describe.each(TABLE)("%d times", (n, rows) => {
  const sum = reached(kendallSum(Array.from({ length: n }, (_, time) => ({ time, value: time }))));
  const counted = exactKendall(sum);

  it.each(rows)("S of %d or more: %d", (s, tail) => {
    const { lowest, shares } = counted ?? { lowest: 0, shares: [] };
    const seen = shares.reduce((total, share, at) => (lowest + 2 * at >= s ? total + share : total), 0);
    // To the digits printed.
    const digits = tail < 1e-3 ? 6 : tail < 0.01 ? 5 : 4;
    expect(Math.abs(seen - tail)).toBeLessThanOrEqual(0.5000001 * 10 ** -digits);
  });
});

it.each([
  [3, 1 / 3],
  [4, 0.0833],
  [5, 0.0167],
  [6, 0.00278],
])("floor of %d times: %d on both sides (computed independently)", (n, floor) => {
  expect(smallestTrendChance(n)).toBeCloseTo(floor, 4);
  const rising = Array.from({ length: n }, (_, time) => ({ time, value: time ** 2 }));
  expect(reached(mannKendall(rising)).chance).toBeCloseTo(floor, 4);
});

it("four values 10, 15, 14, 20 (p. 209, from memory): S 4, one-sided 0.1667, two-sided 0.333", () => {
  const test = reached(mannKendall([10, 15, 14, 20].map((value, time) => ({ time, value }))));
  expect(test).toMatchObject({ s: 4, exact: true });
  expect(test.chance).toBeCloseTo(2 * 0.1667, 3);
});
