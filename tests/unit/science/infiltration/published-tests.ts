/** Published infiltration tests, millimetres and minutes. */

type Points = readonly { readonly atMin: number; readonly mm: number }[];

const points = (minutes: readonly number[], mm: readonly number[]): Points => [
  { atMin: 0, mm: 0 },
  ...minutes.map((atMin, at) => ({ atMin, mm: mm[at] ?? Number.NaN })),
];

/**
 * K. Subramanya, Engineering Hydrology (third edition): the worked example, and problems on p. 98 (3.11 to
 * 3.15). Published, read in copies; centimetres there.
 */
export const EXAMPLE = points(
  [5, 10, 15, 25, 45, 60, 75, 90, 110, 130],
  [17.5, 30, 39.5, 55, 72.5, 83, 93, 102, 112.8, 123.6],
);
export const P3_11 = points(
  [5, 10, 15, 20, 30, 40, 60, 80, 100],
  [21.5, 37.7, 52.2, 65.8, 78.4, 89.5, 101.8, 112.6, 123.3],
);
export const P3_12 = points(
  [5, 10, 15, 20, 30, 40, 60, 120, 150],
  [1, 1.8, 2.5, 3.1, 4.2, 5.1, 6.6, 11, 12.9],
);
export const P3_13 = points(
  [5, 10, 15, 25, 40, 60, 75, 90, 110, 130],
  [21, 36, 47.6, 56.9, 63.8, 69.8, 74.8, 79.3, 87, 92],
);
export const P3_15 = points([2, 10, 30, 60, 90, 120, 240, 360], [70, 200, 335, 378, 395, 410, 430, 450]);

/** A worked question on the two-term curve (published at https://math.techqa.club/), centimetres there. */
export const TWO_TERM_QUESTION = points([5, 15, 45, 75, 110], [20, 45, 90, 130, 175]);
