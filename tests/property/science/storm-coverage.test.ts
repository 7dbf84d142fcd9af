/**
 * How often the range of a strip in a storm holds the true mean, by simulation with a fixed seed: rings whose
 * Green and Ampt conductivities are lognormal with a CV of 0.8, under one hour of rain. The truth is the mean of
 * 4,000 rings.
 */
import { describe, expect, it } from "vitest";
import type { Fit } from "../../../src/science/infiltration/models/fit.ts";
import { type RingFits, ringFits } from "../../../src/science/infiltration/models/ring-fits.ts";
import { constantRain, type Rain } from "../../../src/science/storm/rain.ts";
import { stripsInStorm } from "../../../src/science/storm/strips-in-storm.ts";
import { reached } from "../../unit/science/counts.ts";
import { P3_12 } from "../../unit/science/infiltration/published-tests.ts";
import { seeded } from "./seeded.ts";

const TRUTH_RINGS = 4000;
const STRIPS = 600;
const SPREAD = Math.sqrt(Math.log(1 + 0.8 ** 2));
const TEMPLATE: RingFits = reached(ringFits(P3_12));

const ringWith = (k: number): RingFits => {
  const chosen: Fit = { ...TEMPLATE.chosen, line: { kind: "green-ampt", k, m: 20 } };
  const none = { ok: false, problem: { code: "science/nothing-read", facts: {} } } as const;
  return {
    ...TEMPLATE,
    chosen,
    fits: { kostiakov: none, "kostiakov-lewis": none, philip: none, horton: none, "green-ampt": none },
  };
};

const drawn = (random: () => number, count: number): RingFits[] =>
  Array.from({ length: count }, () => {
    const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    return ringWith(15 * Math.exp(SPREAD * normal));
  });

const strip = (fits: readonly RingFits[], rain: Rain) =>
  reached(
    stripsInStorm(
      fits.map((one, at) => ({ id: String(at), strip: "a", fits: one })),
      rain,
    ),
  ).order[0];

// Of 20 mm nearly all soaks in at most rings: values pile up at the whole storm, and a t range misses more often.
describe.each([
  [20, 0.72],
  [40, 0.88],
  [60, 0.9],
  [120, 0.88],
])("the t range over rings, %d mm", (mm, least) => {
  const rain = reached(constantRain(mm, 60));
  const truth = strip(drawn(seeded(5), TRUTH_RINGS), rain)?.soaked.value ?? Number.NaN;

  it.each([3, 5, 10])("%i rings", (rings) => {
    const random = seeded(100 + rings);
    let inside = 0;
    let given = 0;
    for (let at = 0; at < STRIPS; at++) {
      const range = strip(drawn(random, rings), rain)?.soaked.range;
      // Rings that all take the whole storm have no range.
      if (!range?.ok) continue;
      given++;
      if (range.value.lower <= truth && truth <= range.value.upper) inside++;
    }
    expect(inside / given).toBeGreaterThan(least);
    expect(inside / given).toBeLessThan(0.98);
  });
});
