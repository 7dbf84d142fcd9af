/** Share of a 24-hour storm that has fallen by an hour, straight between its points. */
import { STORM_SHAPES, type StormShape } from "../../src/science/storm/shapes.ts";

export const at = (shape: StormShape, hour: number): number => {
  const points = STORM_SHAPES[shape];
  const next = points.findIndex(([h]) => h >= hour - 1e-9);
  const [h2, s2] = points[next] ?? [0, 0];
  const [h1, s1] = points[next - 1] ?? [h2 - 1, s2];
  return s1 + ((s2 - s1) * (hour - h1)) / (h2 - h1);
};
