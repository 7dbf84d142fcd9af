/** Area and perimeter of a field on the ellipsoid. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import type { Boundary } from "./boundary.ts";
import { geodesicBetween } from "./geodesic.ts";
import { edgesOf, signedAreaM2 } from "./plane-geometry.ts";

/** The size of a field. */
export interface FieldSize extends Worked {
  readonly areaM2: number;
  readonly perimeterM: number;
}

/**
 * Area and perimeter inside a boundary. The area is that of the ring on an equal-area map of WGS 84; against the
 * area within geodesics it is right to 2 parts in 10 million for a field of 1 km and 2 in a million for one of
 * 10 km (tests/reference). Reckoned on a sphere of 6 371 008.8 m, as map libraries do, the same fields come out
 * 0.45 % too large at the equator, right at 35°, 0.38 % too small at 52° and 0.89 % too small near the poles: of
 * 100 ha at 60° that is 0.56 ha (tests/reference/turf).
 * How well the corners were walked matters far more, and is not in this number.
 *
 * @returns square metres and metres; a size that is no number is `science/no-number`
 *
 * Source: Snyder 1987 for the map, Vincenty 1975 for the lengths.
 *
 * @example
 * import { boundaryOf } from "./boundary.ts";
 * const corners = [[0, 0], [0, 0.01], [0.01, 0.01], [0.01, 0]];
 * const field = boundaryOf(corners.map(([latitudeDeg, longitudeDeg]) => ({ latitudeDeg, longitudeDeg })));
 * const size = fieldSize(field.value);
 * size.value.areaM2 // => ≈ 1230907.2
 */
export const fieldSize = ({ places, ring }: Boundary): Result<FieldSize> => {
  let perimeterM = 0;
  let from = places.at(-1);
  for (const to of places) {
    const way = from === undefined ? failed("science/no-position", { fixes: 0 }) : geodesicBetween(from, to);
    if (!way.ok) return way;
    perimeterM += way.value.distanceM;
    from = to;
  }
  const areaM2 = signedAreaM2(ring);
  if (!(Number.isFinite(areaM2 + perimeterM) && areaM2 > 0)) return failed("science/no-number");
  return ok({
    areaM2,
    perimeterM,
    n: edgesOf(ring).length,
    sampledBy: "corners",
    cautions: [],
    methods: ["field-area", "geodesic"],
    sources: sourcesOf(["field-area", "geodesic"]),
  });
};
