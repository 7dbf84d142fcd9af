/** Curve numbers of cultivated land, for ground of average wetness. */

/** Soil groups, from the one that takes in most to the one that takes in least. */
export const SOIL_GROUPS = ["A", "B", "C", "D"] as const;
export type SoilGroup = (typeof SOIL_GROUPS)[number];

export type CultivatedCover = "fallow" | "row" | "grain" | "legume";

/** Straight rows, on the contour, with terraces, each with crop residue or without; fallow bare or with residue. */
export type Treatment =
  | "bare"
  | "residue"
  | "straight"
  | "straight-residue"
  | "contour"
  | "contour-residue"
  | "terraced"
  | "terraced-residue";

/** For the groups A to D. */
type Four = readonly [number, number, number, number];

/** One row; bare fallow knows no condition and stands under both. */
export interface CurveNumberRow {
  readonly cover: CultivatedCover;
  readonly treatment: Treatment;
  /** Little residue, thin canopy. */
  readonly poor: Four;
  /** Residue on a fifth of the ground or more, dense canopy, grass or legumes in the rotation. */
  readonly good: Four;
}

const row = (cover: CultivatedCover, treatment: Treatment, poor: Four, good: Four): CurveNumberRow => ({
  cover,
  treatment,
  poor,
  good,
});

/**
 * Curve numbers of cultivated land. Rows with residue are for residue on at least 5 % of the ground **throughout
 * the year**.
 *
 * Source: TR-55 (1986), table 2-2b.
 */
export const CURVE_NUMBERS: readonly CurveNumberRow[] = [
  row("fallow", "bare", [77, 86, 91, 94], [77, 86, 91, 94]),
  row("fallow", "residue", [76, 85, 90, 93], [74, 83, 88, 90]),
  row("row", "straight", [72, 81, 88, 91], [67, 78, 85, 89]),
  row("row", "straight-residue", [71, 80, 87, 90], [64, 75, 82, 85]),
  row("row", "contour", [70, 79, 84, 88], [65, 75, 82, 86]),
  row("row", "contour-residue", [69, 78, 83, 87], [64, 74, 81, 85]),
  row("row", "terraced", [66, 74, 80, 82], [62, 71, 78, 81]),
  row("row", "terraced-residue", [65, 73, 79, 81], [61, 70, 77, 80]),
  row("grain", "straight", [65, 76, 84, 88], [63, 75, 83, 87]),
  row("grain", "straight-residue", [64, 75, 83, 86], [60, 72, 80, 84]),
  row("grain", "contour", [63, 74, 82, 85], [61, 73, 81, 84]),
  row("grain", "contour-residue", [62, 73, 81, 84], [60, 72, 80, 83]),
  row("grain", "terraced", [61, 72, 79, 82], [59, 70, 78, 81]),
  row("grain", "terraced-residue", [60, 71, 78, 81], [58, 69, 77, 80]),
  row("legume", "straight", [66, 77, 85, 89], [58, 72, 81, 85]),
  row("legume", "contour", [64, 75, 83, 85], [55, 69, 78, 83]),
  row("legume", "terraced", [63, 73, 80, 83], [51, 67, 76, 80]),
];
