/**
 * The area of a field on a sphere of mean radius 6 371 008.8 m, `R²/2·Σ(λ_{i+1} − λ_{i−1})·sin φ_i` (Chamberlain &
 * Duquette 2007, JPL Publication 07-03), as common map libraries reckon. It is written out here from its
 * definition, to state how far it is from the ellipsoid. Expected differences follow from geometry: a small area
 * on the ellipsoid is `M·N·cos φ·Δφ·Δλ` and on the sphere `R²·cos φ·Δφ·Δλ`, with M and N the radii of curvature
 * (NIMA TR8350.2).
 */
import { expect, it } from "vitest";
import { boundaryOf } from "../../src/science/position/boundary.ts";
import { fieldSize } from "../../src/science/position/field-size.ts";
import { reached } from "../unit/science/counts.ts";
import { placesOf } from "../unit/science/position/places.ts";

const RADIUS_M = 6_371_008.8;
const RADIANS = Math.PI / 180;

const onSphereM2 = (corners: readonly (readonly number[])[]): number => {
  const n = corners.length;
  const at = (index: number): readonly number[] => corners[(index + n) % n] ?? [];
  const sum = corners.reduce(
    (total, [latitude], index) =>
      total +
      ((at(index + 1)[1] ?? 0) - (at(index - 1)[1] ?? 0)) * RADIANS * Math.sin((latitude ?? 0) * RADIANS),
    0,
  );
  return (Math.abs(sum) * RADIUS_M ** 2) / 2;
};

// Sphere over ellipsoid less 1, from R²/(M·N): M·N = a²(1−e²)/(1−e²sin²φ)².
const expected = (latitude: number): number => {
  const [a, e2] = [6_378_137, 0.006_694_379_990_14];
  const w2 = 1 - e2 * Math.sin(latitude * RADIANS) ** 2;
  return (RADIUS_M ** 2 * w2 ** 2) / (a ** 2 * (1 - e2)) - 1;
};

it.each([
  [0, 0.0045],
  [20, 0.0029],
  [35.3, 0],
  [45, -0.0022],
  [52, -0.0038],
  [60, -0.0056],
  [70, -0.0074],
  [80, -0.0086],
])("at %d° the sphere is off by a share of %d", (latitude, stated) => {
  const [south, north] = [latitude - 0.005, latitude + 0.005];
  const corners = [
    [south, 10],
    [south, 10.01],
    [north, 10.01],
    [north, 10],
  ];
  const size = reached(fieldSize(reached(boundaryOf(placesOf(corners)))));
  const off = onSphereM2(corners) / size.areaM2 - 1;
  expect(Math.abs(off - expected(latitude))).toBeLessThan(1e-6);
  expect(Math.abs(off - stated)).toBeLessThan(0.000_1);
});
