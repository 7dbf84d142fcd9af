import { describe, expect, it } from "vitest";
import { RADIUS_95_PER_68 } from "../../../src/science/constants.ts";
import { distanceM, turnedDeg } from "../../../src/science/position/distance.ts";
import { type Fix, standingStill } from "../../../src/science/position/standing-still.ts";
import { reached, reasonOf } from "./counts.ts";

/** Metres north and east of 52° N 5° E; a degree is 111.27 km and 68.68 km there (rounded, for placing only). */
const fix = (
  northM: number,
  eastM: number,
  atMs: number,
  accuracyM: number | null = 5,
  accuracyMeans: Fix["accuracyMeans"] = "68-percent",
): Fix => ({
  latitudeDeg: 52 + northM / 111_270,
  longitudeDeg: 5 + eastM / 68_680,
  accuracyM,
  accuracyMeans,
  atMs,
});
const codes = (fixes: readonly Fix[]) => reached(standingStill(fixes)).cautions.map(({ code }) => code);

describe("standing still", () => {
  it("takes one fix as it is, and says that it is one", () => {
    const position = reached(standingStill([fix(0, 0, 7, 4)]));
    expect(position).toMatchObject({ latitudeDeg: 52, longitudeDeg: 5, accuracyM: 4, spreadM: null, n: 1 });
    expect(position.lastAtMs).toBe(7);
    expect(codes([fix(0, 0, 7)])).toEqual(["science/too-few-fixes"]);
  });

  it("is not pulled away by a wild fix", () => {
    const steady = [0, 1, 2, 3, 4, 5, 6].map((second) => fix((second % 3) - 1, (second % 2) - 0.5, second));
    const still = reached(standingStill(steady));
    const withWild = reached(standingStill([...steady, fix(400, -300, 2.5)]));
    expect(reached(distanceM(still, withWild))).toBeLessThan(1.5);
  });

  it("trusts the accurate fixes more, and states their accuracy", () => {
    const rough = [1, 2, 3, 4, 5].map((second) => fix(60, 60, second, 50));
    const sharp = [6, 7, 8, 9].map((second) => fix(0, 0, second, 4));
    const position = reached(standingStill([...rough, ...sharp]));
    expect(reached(distanceM(position, fix(0, 0, 0)))).toBeLessThan(0.01);
    expect(position.accuracyM).toBe(4);
  });

  it("does not make the accuracy better by repeating fixes", () => {
    const many = Array.from({ length: 60 }, (_, second) => fix(0, second % 2, second, 5));
    expect(reached(standingStill(many)).accuracyM).toBe(5);
  });

  it("gives the 95 % radius of the scatter", () => {
    // Eight fixes on a circle of 3 m: the middle distance is 3 m; 3·√(ln 20/ln 2) = 6.24 m.
    const circle = Array.from({ length: 8 }, (_, k) =>
      fix(3 * Math.cos((k * Math.PI) / 4), 3 * Math.sin((k * Math.PI) / 4), (k * 5) % 8),
    );
    expect(reached(standingStill(circle)).spreadM).toBeCloseTo(3 * Math.sqrt(Math.log(20) / Math.log(2)), 1);
    // All fixes on one place: no scatter, no complaint.
    const same = [1, 2, 3, 4].map((second) => fix(0, 0, second));
    expect(reached(standingStill(same))).toMatchObject({ spreadM: 0, cautions: [] });
  });

  it("takes a 95 % radius for 1.62 times one of 68 %: χ² of 2 degrees, 5.9915 over 2.2789", () => {
    expect(RADIUS_95_PER_68).toBeCloseTo(Math.sqrt(5.9915 / 2.2789), 3);
    // One standard deviation on a line holds 68.27 %, χ² of 2.2958 on the plane: 1.615, not taken here.
    expect(RADIUS_95_PER_68).toBeGreaterThan(Math.sqrt(5.9915 / 2.2958) + 0.005);
  });

  it("notices somebody who walks on", () => {
    // 1.4 m a second for ten seconds, at 5 m accuracy.
    expect(codes(Array.from({ length: 11 }, (_, second) => fix(1.4 * second, 0, 1000 * second)))).toEqual([
      "science/moving",
    ]);
    // Jumping about by tens of metres.
    expect(codes([0, 1, 2, 3, 4, 5].map((k) => fix(k % 2 ? 30 : -30, k % 3 ? 30 : -30, k)))).toEqual([
      "science/moving",
    ]);
  });

  it("holds the scatter against the radius as it was meant", () => {
    // Eight fixes on a circle of 3 m: a 95 % radius of 6.24 m. A promise of 4 m at 68 % is one of 6.49 m at 95 %
    // (χ² of 2 degrees) and is kept; the same 4 m promised at 95 % is not.
    const circle = (means: Fix["accuracyMeans"]) =>
      Array.from({ length: 8 }, (_, k) =>
        fix(3 * Math.cos((k * Math.PI) / 4), 3 * Math.sin((k * Math.PI) / 4), (k * 5) % 8, 4, means),
      );
    expect(codes(circle("68-percent"))).toEqual([]);
    expect(codes(circle("95-percent"))).toEqual(["science/moving"]);
    expect(codes(circle("not-known"))).toEqual([]);
  });

  it("says what its accuracy stands for, and nothing where fixes disagree or state none", () => {
    const meant = (fixes: readonly Fix[]) => reached(standingStill(fixes)).accuracyMeans;
    expect(meant([fix(0, 0, 1), fix(0, 0, 2)])).toBe("68-percent");
    expect(meant([fix(0, 0, 1, 5, "95-percent"), fix(0, 0, 2, null, null)])).toBe("95-percent");
    expect(meant([fix(0, 0, 1, 5, "95-percent"), fix(0, 0, 2)])).toBe("not-known");
    expect(meant([fix(0, 0, 1, null, null)])).toBeNull();
  });

  it("counts a cached fix once", () => {
    expect(reached(standingStill([fix(0, 0, 1), fix(0, 0, 1), fix(0, 0, 1)])).n).toBe(1);
  });

  it("stays a place on earth a hair from the date line", () => {
    const west: Fix = {
      latitudeDeg: 51.999,
      longitudeDeg: 179.99900000000017,
      accuracyM: null,
      accuracyMeans: null,
      atMs: 0,
    };
    const east: Fix = { ...west, longitudeDeg: -179.99900000000025, atMs: 1 };
    // 0.001° of longitude is 68.7 m there.
    expect(reached(distanceM(west, reached(standingStill([west, east]))))).toBeLessThan(140);
    expect(turnedDeg(180 - 2 ** -45)).toBeGreaterThanOrEqual(-180);
  });

  it("holds together on the date line", () => {
    const east: Fix = {
      latitudeDeg: -17,
      longitudeDeg: 179.99999,
      accuracyM: 5,
      accuracyMeans: "68-percent",
      atMs: 1,
    };
    const west: Fix = { ...east, longitudeDeg: -179.99999, atMs: 2 };
    const position = reached(standingStill([east, west, { ...east, longitudeDeg: 180, atMs: 3 }]));
    expect(Math.abs(position.longitudeDeg)).toBeCloseTo(180, 5);
    expect(position.spreadM).toBeLessThan(5);
  });

  it("says what it left out and why it has none", () => {
    const bad = { ...fix(0, 0, 1), latitudeDeg: Number.NaN };
    expect(codes([bad, fix(0, 0, 2), fix(0, 0, 3), fix(0, 0, 4)])).toEqual(["science/fixes-left-out"]);
    expect(codes([1, 2, 3].map((second) => fix(0, 0, second, null)))).toEqual([
      "science/accuracy-not-stated",
    ]);
    for (const accuracyM of [0, -1, Number.NaN])
      expect(reached(standingStill([fix(0, 0, 1, accuracyM)])).accuracyM).toBeNull();
    expect(reasonOf(standingStill([]))).toBe("science/no-position");
    expect(reasonOf(standingStill([bad]))).toBe("science/no-position");
  });
});

describe("distance", () => {
  it("is 0 for one place and short across the date line", () => {
    const here = { latitudeDeg: 52, longitudeDeg: 5 };
    expect(reached(distanceM(here, here))).toBe(0);
    const across = distanceM(
      { latitudeDeg: 0, longitudeDeg: 179.9995 },
      { latitudeDeg: 0, longitudeDeg: -179.9995 },
    );
    expect(reached(across)).toBeCloseTo(111.32, 2);
  });

  it("says why it cannot tell", () => {
    const here = { latitudeDeg: 52, longitudeDeg: 5 };
    expect(reasonOf(distanceM(here, { latitudeDeg: 53, longitudeDeg: 5 }))).toBe("science/too-far-apart");
    for (const latitudeDeg of [91, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(distanceM(here, { latitudeDeg, longitudeDeg: 5 }))).toBe("science/not-a-place");
    expect(reasonOf(distanceM(here, { latitudeDeg: 52, longitudeDeg: 181 }))).toBe("science/not-a-place");
  });
});
