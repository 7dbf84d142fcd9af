/** Where the example farm lies: far out at sea, so that it is nobody's land and no phone ever stands on it. */
import type { Position, Stood } from "../../record/shapes.ts";

const ORIGIN = { latitudeDeg: 47.2, longitudeDeg: -27.4 };
const METRES_PER_DEGREE = 111_320;

/** A place on the farm in metres: across the rows, and along them. */
export interface Place {
  readonly acrossM: number;
  readonly alongM: number;
}

/** How a field lies: its corner where both are 0, in metres from the origin, and which way its rows run. */
export interface Lie {
  readonly eastM: number;
  readonly northM: number;
  readonly rowsDeg: number;
}

/** Latitude and longitude, to about a centimetre. */
export const onEarth = ({ eastM, northM, rowsDeg }: Lie, { acrossM, alongM }: Place) => {
  const rows = (rowsDeg * Math.PI) / 180;
  const east = eastM + alongM * Math.sin(rows) + acrossM * Math.cos(rows);
  const north = northM + alongM * Math.cos(rows) - acrossM * Math.sin(rows);
  const round = (degrees: number): number => Math.round(degrees * 1e7) / 1e7;
  return {
    latitudeDeg: round(ORIGIN.latitudeDeg + north / METRES_PER_DEGREE),
    longitudeDeg: round(
      ORIGIN.longitudeDeg + east / (METRES_PER_DEGREE * Math.cos((ORIGIN.latitudeDeg * Math.PI) / 180)),
    ),
  };
};

/** A position as a phone takes it standing still. */
export const positionAt = (lie: Lie, place: Place, atMs: number): Position => ({
  ...onEarth(lie, place),
  accuracyM: 4,
  accuracyMeans: "68-percent",
  spreadM: 1.2,
  fixes: 12,
  how: "standing-still",
  atMs,
});

/** The same, as a test keeps it. */
export const stoodAt = (lie: Lie, place: Place, atMs: number): Stood => ({
  position: positionAt(lie, place, atMs),
  why: null,
});
