/** Random readings of rings that slow down, with a little scatter. */
import fc from "fast-check";
import type { Line } from "../../../src/science/infiltration/models/line.ts";
import { capacityOf } from "../../../src/science/infiltration/models/line.ts";
import { seeded } from "./seeded.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any curve, within what fields show. */
export const lines: fc.Arbitrary<Line> = fc.oneof(
  fc.record({
    kind: fc.constant("power" as const),
    a: between(1, 200),
    b: between(0.1, 0.95),
    c: between(0, 50),
  }),
  fc.record({
    kind: fc.constant("power" as const),
    a: between(1, 200),
    b: between(0.1, 0.95),
    c: fc.constant(0),
  }),
  fc.record({ kind: fc.constant("two-term" as const), s: between(1, 150), a: between(0, 60) }),
  fc
    .record({ fc: between(0, 60), above: between(1, 400), k: between(0.2, 12) })
    .map(({ fc: end, above, k }): Line => ({ kind: "horton", f0: end + above, fc: end, k })),
  fc.record({ kind: fc.constant("green-ampt" as const), k: between(0.5, 80), m: between(1, 200) }),
  fc.record({ kind: fc.constant("step" as const), atOnceMm: between(1, 40), mmPerH: between(0, 60) }),
);

const MINUTES = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120];

/** Readings on such a curve, each off by up to 3 %. */
export const curves = fc.tuple(lines, fc.integer({ min: 1, max: 1e6 })).map(([line, seed]) => {
  const random = seeded(seed);
  const { depthAt } = capacityOf(line);
  return MINUTES.map((atMin) => ({ atMin, mm: depthAt(atMin / 60) * (1 + 0.06 * (random() - 0.5)) }));
});
