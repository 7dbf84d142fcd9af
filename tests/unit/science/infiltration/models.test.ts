import { describe, expect, it } from "vitest";
import { boundedMinimum } from "../../../../src/science/infiltration/models/bounded-search.ts";
import type { Fit, ModelId } from "../../../../src/science/infiltration/models/fit.ts";
import { capacityOf, type Line } from "../../../../src/science/infiltration/models/line.ts";
import { type RingFits, ringFits } from "../../../../src/science/infiltration/models/ring-fits.ts";
import { reached, reasonOf } from "../counts.ts";
import { EXAMPLE, P3_12 } from "./published-tests.ts";

const MINUTES = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180];
const drawnFrom = (line: Line, minutes: readonly number[] = MINUTES) => {
  const { depthAt } = capacityOf(line);
  return minutes.map((atMin) => ({ atMin, mm: depthAt(atMin / 60) }));
};
const fitted = (points: Parameters<typeof ringFits>[0]): RingFits => reached(ringFits(points));
const fitOf = (points: Parameters<typeof ringFits>[0], model: ModelId): Fit =>
  reached(fitted(points).fits[model]);
const valuesOf = (fit: Fit): number[] => fit.parameters.map(({ value }) => value);

describe("readings drawn from a curve give its unknowns back without a start value", () => {
  it.each([
    ["kostiakov", { kind: "power", a: 40, b: 0.3, c: 0 }, [40, 0.3]],
    ["kostiakov", { kind: "power", a: 0.5, b: 0.95, c: 0 }, [0.5, 0.95]],
    ["kostiakov-lewis", { kind: "power", a: 30, b: 0.4, c: 12 }, [30, 0.4, 12]],
    ["philip", { kind: "two-term", s: 25, a: 8 }, [25, 8]],
    ["horton", { kind: "horton", f0: 400, fc: 20, k: 15 }, [400, 20, 15]],
    ["horton", { kind: "horton", f0: 30, fc: 5, k: 0.3 }, [30, 5, 0.3]],
    ["green-ampt", { kind: "green-ampt", k: 2, m: 60 }, [2, 60]],
    ["green-ampt", { kind: "green-ampt", k: 80, m: 4 }, [80, 4]],
  ] as const)("%s %o", (model, line, expected) => {
    const points = drawnFrom(line);
    const fit = fitOf(points, model);
    expect(fit.collapsesTo).toBeNull();
    for (const [at, value] of valuesOf(fit).entries())
      expect(Math.abs(value / (expected[at] ?? 0) - 1)).toBeLessThan(1e-4);
    expect(fit.sseMm2).toBeLessThan(1e-8 * points.reduce((sum, { mm }) => sum + mm * mm, 0));
  });

  it("chooses the curve that leaves nothing over, with the fewest unknowns", () => {
    expect(fitted(drawnFrom({ kind: "two-term", s: 25, a: 8 })).chosen.model).toBe("philip");
    expect(fitted(EXAMPLE).chosen.model).toBe("horton");
    expect(fitted(P3_12).chosen.model).toBe("horton");
  });
});

describe("not identifiable, and what it collapses to", () => {
  it("one steady rate: every model is that rate", () => {
    const { fits } = fitted(drawnFrom({ kind: "two-term", s: 0, a: 33 }));
    for (const fit of Object.values(fits)) {
      expect(reached(fit).collapsesTo).toBe("steady");
      const rate = reached(fit).parameters.find(({ symbol }) => symbol === "A");
      expect(rate?.value).toBeCloseTo(33, 6);
    }
  });

  it("root of time: Green and Ampt gives S alone, Philip holds A", () => {
    const points = drawnFrom({ kind: "two-term", s: 40, a: 0 });
    const greenAmpt = fitOf(points, "green-ampt");
    expect([greenAmpt.collapsesTo, valuesOf(greenAmpt)[0]]).toEqual(["root-time", expect.closeTo(40, 6)]);
    const philip = fitOf(points, "philip");
    expect(philip.parameters.map(({ held }) => held)).toEqual([false, true]);
    expect(reasonOf(philip.parameters[1]?.standardError ?? greenAmpt.aicc)).toBe("science/held-at-its-bound");
  });

  it("slowing that lies before the first reading: Horton gives a depth at once and a rate", () => {
    const points = drawnFrom({ kind: "step", atOnceMm: 18, mmPerH: 25 });
    const fit = fitOf(points, "horton");
    expect(fit.collapsesTo).toBe("at-once-then-steady");
    expect(fit.parameters.map(({ symbol, value }) => [symbol, Math.round(value * 1e6) / 1e6])).toEqual([
      ["F1", 18],
      ["A", 25],
    ]);
    expect(fit.cautions.map(({ code }) => code)).toContain("science/collapses-to-at-once-then-steady");
  });

  it("all of it before the first reading: a depth at once", () => {
    for (const model of ["kostiakov", "horton"] as const)
      expect(fitOf(drawnFrom({ kind: "step", atOnceMm: 18, mmPerH: 0 }), model).collapsesTo).toBe("at-once");
  });

  it("soil that fills up: Horton's end rate is held at 0 and said", () => {
    // Slightly beyond: the last readings fall below what any end rate of 0 or more allows.
    const points = drawnFrom({ kind: "horton", f0: 60, fc: 0, k: 1.5 }).map(({ atMin, mm }) => ({
      atMin,
      mm: mm - 0.004 * (atMin / 60) ** 2,
    }));
    const fit = fitOf(points, "horton");
    expect(fit.parameters.find(({ symbol }) => symbol === "fc")).toMatchObject({ value: 0, held: true });
    expect(fit.cautions).toContainEqual({ code: "science/held-at-its-bound", facts: { symbol: "fc" } });
  });
});

describe("what cannot be laid", () => {
  const line = drawnFrom({ kind: "two-term", s: 25, a: 8 });

  it("nothing, one value, and readings at 0 min alone", () => {
    for (const points of [[], line.slice(0, 1), [{ atMin: 0, mm: 0 }]])
      expect(reasonOf(ringFits(points))).toBe("science/too-few-readings-for-a-curve");
  });

  it("counts different times, not readings", () => {
    const twice = [...line.slice(0, 2), ...line.slice(0, 2)];
    expect(reasonOf(ringFits(twice))).toBe("science/too-few-readings-for-a-curve");
    const { fits } = fitted(line.slice(0, 3));
    expect(fits.philip.ok).toBe(true);
    expect(reasonOf(fits.horton)).toBe("science/too-few-readings-for-a-curve");
    expect(reasonOf(reached(fits.philip).aicc)).toBe("science/too-few-readings-for-a-curve");
  });

  it("a dry ring, negative and not finite numbers", () => {
    expect(reasonOf(ringFits(line.map(({ atMin }) => ({ atMin, mm: 0 }))))).toBe(
      "science/nothing-soaked-yet",
    );
    expect(reasonOf(ringFits([...line, { atMin: -1, mm: 3 }]))).toBe("science/not-a-time");
    expect(reasonOf(ringFits([...line, { atMin: Number.NaN, mm: 3 }]))).toBe("science/not-a-time");
    expect(reasonOf(ringFits([...line, { atMin: 200, mm: -3 }]))).toBe("science/not-a-depth");
    expect(reasonOf(ringFits([...line, { atMin: 200, mm: Number.POSITIVE_INFINITY }]))).toBe(
      "science/not-a-depth",
    );
  });

  it("all readings alike are a depth at once", () => {
    const { chosen } = fitted(MINUTES.map((atMin) => ({ atMin, mm: 7 })));
    expect(valuesOf(chosen)).toEqual([expect.closeTo(7, 9)]);
  });

  it("leaves readings in the order they were taken out of it, and says residuals by time", () => {
    const fit = fitOf([...EXAMPLE].reverse(), "philip");
    expect(fit.residuals.map(({ atMin }) => Math.round(atMin))).toEqual(
      EXAMPLE.slice(1).map(({ atMin }) => atMin),
    );
    expect(valuesOf(fit)).toEqual(valuesOf(fitOf(EXAMPLE, "philip")));
    expect(fit.residuals.reduce((sum, { mm }) => sum + mm * mm, 0)).toBeCloseTo(fit.sseMm2, 9);
  });
});

it("an unknown whose error is as large as its value is said to be hardly known", () => {
  const noisy = drawnFrom({ kind: "green-ampt", k: 1, m: 60 }).map(({ atMin, mm }, at) => ({
    atMin,
    mm: mm + (at % 2 === 0 ? 2.5 : -2.5),
  }));
  // K 2.24 with an error of 2.79 and M 22.7 with one of 40.2, by another least-squares library.
  const { parameters, cautions, collapsesTo } = fitOf(noisy, "green-ampt");
  expect(collapsesTo).toBeNull();
  const errors = parameters.map(({ standardError }) => reached(standardError));
  for (const [at, value] of [2.24425, 22.7377].entries())
    expect(Math.abs((parameters[at]?.value ?? 0) / value - 1)).toBeLessThan(1e-3);
  for (const [at, error] of [2.78913, 40.2001].entries())
    expect(Math.abs((errors[at] ?? 0) / error - 1)).toBeLessThan(1e-2);
  expect(cautions).toEqual(
    ["K", "M"].map((symbol) => ({ code: "science/parameter-hardly-known", facts: { symbol } })),
  );
});

it("the search finds the lowest of several valleys, and a place at a bound", () => {
  const valleys = (x: number): number => Math.sin(3 * x) + 0.1 * (x - 6) ** 2;
  // Of the valleys near 1.57, 3.67, 5.76 and 7.85 the third lies nearest to 6: 3·cos 3x + 0.2·(x − 6) = 0 at 5.7648.
  expect(boundedMinimum(valleys, 0, 10, 60)).toBeCloseTo(5.7648, 3);
  expect(boundedMinimum((x) => x, 2, 5, 20)).toBe(2);
  expect(boundedMinimum((x) => -x, 2, 5, 20)).toBe(5);
});

describe("capacities", () => {
  const LINES: readonly Line[] = [
    { kind: "power", a: 40, b: 0.3, c: 0 },
    { kind: "power", a: 30, b: 0.4, c: 12 },
    { kind: "two-term", s: 25, a: 8 },
    { kind: "two-term", s: 25, a: 0 },
    { kind: "horton", f0: 400, fc: 20, k: 4 },
    { kind: "horton", f0: 60, fc: 0, k: 1.5 },
    { kind: "green-ampt", k: 2, m: 60 },
  ];

  it.each(LINES)("%o: time and depth undo each other, and the rate is the slope", (line) => {
    const { depthAt, hoursAt, rateAt, depthAtRate } = capacityOf(line);
    for (const hours of [1e-4, 0.01, 0.3, 1, 4]) {
      expect(hoursAt(depthAt(hours)) / hours).toBeCloseTo(1, 6);
      const step = 1e-5 * hours;
      const slope = (depthAt(hours + step) - depthAt(hours - step)) / (2 * step);
      expect(rateAt(hours) / slope).toBeCloseTo(1, 4);
      expect(depthAtRate(rateAt(hours)) / depthAt(hours)).toBeCloseTo(1, 5);
    }
    expect(depthAt(0)).toBe(0);
    expect(hoursAt(0)).toBe(0);
    expect(depthAtRate(0)).toBe(Number.POSITIVE_INFINITY);
  });

  it("soil that fills up never reaches more than it holds", () => {
    expect(capacityOf({ kind: "horton", f0: 60, fc: 0, k: 1.5 }).hoursAt(40)).toBe(Number.POSITIVE_INFINITY);
    expect(capacityOf({ kind: "step", atOnceMm: 5, mmPerH: 0 }).hoursAt(6)).toBe(Number.POSITIVE_INFINITY);
  });
});
