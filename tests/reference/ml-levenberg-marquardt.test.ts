/**
 * Source: ml-levenberg-marquardt 5.1.0 (npm), a general library of least squares.
 * Mark: computed here with it, in the test, on readings drawn by a seed around curves of every kind.
 *
 * It is given the curve that the readings were drawn around to begin with. A fit that left more over than it does would
 * have stopped short.
 */
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { expect, it } from "vitest";
import { capacityOf, type Line } from "../../src/science/infiltration/models/line.ts";
import { ringFits } from "../../src/science/infiltration/models/ring-fits.ts";
import { seeded } from "../property/science/seeded.ts";
import { reached } from "../unit/science/counts.ts";

const MINUTES = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120];

interface Kind {
  readonly draw: (random: () => number) => readonly number[];
  readonly line: (unknowns: readonly number[]) => Line;
}
const KINDS = {
  kostiakov: {
    draw: (random) => [10 + 120 * random(), 0.3 + 0.5 * random()],
    line: ([a = 0, b = 0]) => ({ kind: "power", a, b, c: 0 }),
  },
  philip: {
    draw: (random) => [10 + 100 * random(), 10 + 40 * random()],
    line: ([s = 0, a = 0]) => ({ kind: "two-term", s, a }),
  },
  horton: {
    draw: (random) => [80 + 300 * random(), 10 + 40 * random(), 1.5 + 4 * random()],
    line: ([f0 = 0, fc = 0, k = 0]) => ({ kind: "horton", f0, fc, k }),
  },
  "green-ampt": {
    draw: (random) => [5 + 30 * random(), 20 + 80 * random()],
    line: ([k = 0, m = 0]) => ({ kind: "green-ampt", k, m }),
  },
} as const satisfies Readonly<Record<string, Kind>>;

it.each(Object.entries(KINDS))("%s leaves no more over than the library does", (model, kind: Kind) => {
  const random = seeded(model.length);
  let [judged, near] = [0, 0];
  for (let draw = 0; draw < 40; draw++) {
    const truth = kind.draw(random);
    const { depthAt } = capacityOf(kind.line(truth));
    const points = MINUTES.map((atMin) => ({
      atMin,
      mm: depthAt(atMin / 60) * (1 + 0.03 * (random() - 0.5)),
    }));
    const fit = reached(
      reached(ringFits([{ atMin: 0, mm: 0 }, ...points])).fits[model as keyof typeof KINDS],
    );
    const data = { x: points.map(({ atMin }) => atMin / 60), y: points.map(({ mm }) => mm) };
    const theirs = levenbergMarquardt(data, (unknowns: number[]) => capacityOf(kind.line(unknowns)).depthAt, {
      initialValues: [...truth],
      minValues: truth.map(() => 1e-6),
      damping: 1e-2,
      maxIterations: 300,
      gradientDifference: 1e-6,
      centralDifference: true,
    });
    // Where ours is held at what can be, the library's may lie beyond.
    if (fit.collapsesTo !== null) continue;
    judged++;
    expect(fit.sseMm2).toBeLessThanOrEqual(theirs.parameterError * (1 + 1e-6) + 1e-9);
    const apart = fit.parameters.map(({ value }, at) =>
      Math.abs(value / (theirs.parameterValues[at] ?? Number.NaN) - 1),
    );
    if (Math.max(...apart) < 0.02) near++;
  }
  expect(judged).toBeGreaterThan(25);
  if (model !== "horton") expect(near / judged).toBeGreaterThan(0.9);
});
