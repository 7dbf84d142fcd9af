/** The full analysis of one ring: five models with standard errors, conductivities, and a storm. */

import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { expect, it } from "vitest";
import { ALPHA_PER_MM } from "../../src/science/infiltration/kfs/alpha.ts";
import { steadyBeerkanKfs, transientBeerkanKfs } from "../../src/science/infiltration/kfs/beerkan.ts";
import { fallingHeadKfs } from "../../src/science/infiltration/kfs/falling-head.ts";
import { permeabilityClass } from "../../src/science/infiltration/kfs/permeability-class.ts";
import { steadyRingKfs } from "../../src/science/infiltration/kfs/steady-ring.ts";
import { capacityOf, type Line } from "../../src/science/infiltration/models/line.ts";
import { ringFits } from "../../src/science/infiltration/models/ring-fits.ts";
import { shapedRain } from "../../src/science/storm/rain.ts";
import { ringInStorm } from "../../src/science/storm/ring-in-storm.ts";
import { reached } from "../unit/science/counts.ts";
import { EXAMPLE, P3_11, P3_12, P3_13, P3_15 } from "../unit/science/infiltration/published-tests.ts";
import { percentile, state } from "./figures.ts";

const TESTS = [EXAMPLE, P3_11, P3_12, P3_13, P3_15];
const WANTED = Array.from({ length: 96 }, (_, at) => 15 * (at + 1));
const rounds = 60;

const analysis = (points: (typeof TESTS)[number]): number => {
  const alpha = ALPHA_PER_MM["structured-or-medium-sand"];
  const fits = reached(ringFits(points));
  const ring = { radiusMm: 75, insertionMm: 75 };
  const pour = { pouredMm: 25.4, minutes: 10, moistureGap: 0.25, alphaPerMm: alpha, insertionMm: 75 };
  const kfs = [
    steadyRingKfs({ mmPerH: 33.4, headMm: 50 }, ring, alpha, 12),
    steadyBeerkanKfs(33.4, ring, alpha, 12),
    transientBeerkanKfs(points, ring, alpha, 12),
    fallingHeadKfs(pour, 12),
  ];
  const storm = ringInStorm(fits, reached(shapedRain(100, "II")), WANTED);
  const permeability = reached(permeabilityClass(33.4));
  return storm.ranOffMm + kfs.length + permeability.fromMmPerH;
};

const timed = (work: () => void): number => {
  const begunMs = performance.now();
  work();
  return performance.now() - begunMs;
};

it("analyses one ring within 10 ms", () => {
  const times: number[] = [];
  const fits: number[] = [];
  for (let round = 0; round < rounds; round++)
    for (const points of TESTS) {
      times.push(timed(() => analysis(points)));
      fits.push(timed(() => ringFits(points)));
    }
  const medianMs = percentile(times, 0.5);
  state({ name: "one ring: five models, conductivities, storm", value: medianMs, unit: "ms", bound: 10 });
  state({ name: "one ring: the five models with standard errors", value: percentile(fits, 0.5), unit: "ms" });
  expect(medianMs).toBeLessThanOrEqual(10);
});

/** A model as a general-purpose library wants it: a function, where to start, and bounds. */
interface Model {
  readonly line: (unknowns: readonly number[]) => Line;
  readonly initialValues: number[];
  readonly minValues: number[];
  readonly maxValues: number[];
}

const MODELS: readonly Model[] = [
  {
    line: ([a = 0, b = 0]) => ({ kind: "power", a, b, c: 0 }),
    initialValues: [50, 0.5],
    minValues: [0, 0.001],
    maxValues: [1e4, 0.999],
  },
  {
    line: ([a = 0, b = 0, c = 0]) => ({ kind: "power", a, b, c }),
    initialValues: [50, 0.5, 5],
    minValues: [0, 0.001, 0],
    maxValues: [1e4, 0.999, 1e4],
  },
  {
    line: ([s = 0, a = 0]) => ({ kind: "two-term", s, a }),
    initialValues: [50, 5],
    minValues: [0, 0],
    maxValues: [1e4, 1e4],
  },
  {
    line: ([f0 = 0, fc = 0, k = 1]) => ({ kind: "horton", f0, fc, k }),
    initialValues: [200, 20, 3],
    minValues: [0, 0, 0.001],
    maxValues: [1e5, 1e4, 100],
  },
  {
    line: ([k = 1, m = 1]) => ({ kind: "green-ampt", k, m }),
    initialValues: [10, 50],
    minValues: [0.001, 0.001],
    maxValues: [1e4, 1e6],
  },
];

const byLibrary = (points: (typeof TESTS)[number]): void => {
  const read = points.slice(1);
  const data = { x: read.map(({ atMin }) => atMin / 60), y: read.map(({ mm }) => mm) };
  for (const { line, ...rest } of MODELS)
    levenbergMarquardt(data, (unknowns: number[]) => capacityOf(line(unknowns)).depthAt, {
      ...rest,
      damping: 1e-2,
      maxIterations: 200,
      gradientDifference: 1e-6,
      centralDifference: true,
    });
};

it("lays the five curves in no more time than a general-purpose library", () => {
  const ratios: number[] = [];
  for (let round = 0; round < 20; round++)
    for (const points of TESTS) ratios.push(timed(() => byLibrary(points)) / timed(() => ringFits(points)));
  const ratio = percentile(ratios, 0.5);
  state({ name: "five curves by a general-purpose library, times as long", value: ratio, unit: "times" });
  expect(ratio).toBeGreaterThan(1);
});
