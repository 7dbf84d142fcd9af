import fc from "fast-check";
import { expect, test } from "vitest";
import { readRing } from "../../../src/record/ring/reading.ts";
import {
  fallingHeadKfsOfRing,
  steadyBeerkanOfRing,
  steadyKfsOfRing,
  transientBeerkanOfRing,
} from "../../../src/science/infiltration/kfs/of-ring.ts";
import { permeabilityClass } from "../../../src/science/infiltration/kfs/permeability-class.ts";
import { type Fit, MODELS } from "../../../src/science/infiltration/models/fit.ts";
import { capacityOf } from "../../../src/science/infiltration/models/line.ts";
import { type RingFits, ringFits } from "../../../src/science/infiltration/models/ring-fits.ts";
import { soakingOf } from "../../../src/science/infiltration/soaking.ts";
import { constantRain, shapedRain } from "../../../src/science/storm/rain.ts";
import { stripsInStorm } from "../../../src/science/storm/strips-in-storm.ts";
import { reached } from "../../unit/science/counts.ts";
import { entriesOfRing, sets } from "../ring-histories.ts";
import { curves } from "./curves.ts";

const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

const TYPE_II = reached(shapedRain(80, "II"));
const SOIL = { alphaPerMm: 0.012, waterC: 12 } as const;

test("whatever was written down, models, conductivities and storms are numbers or reasons", () => {
  fc.assert(
    fc.property(entriesOfRing, sets, (entries, set) => {
      const soaking = soakingOf(readRing(entries), set);
      if (!soaking.ok) return;
      const fits = ringFits(soaking.value.curve);
      const said: unknown[] = [
        soaking.value.heads,
        fits,
        steadyKfsOfRing(soaking.value, set, SOIL),
        steadyBeerkanOfRing(soaking.value, set, SOIL),
        transientBeerkanOfRing(soaking.value, set, SOIL),
        fallingHeadKfsOfRing(soaking.value, set, 0.3, SOIL),
      ];
      if (fits.ok) said.push(stripsInStorm([{ id: "1", strip: "a", fits: fits.value }], TYPE_II));
      expect(numbersIn(said).filter((one) => !Number.isFinite(one))).toEqual([]);
    }),
    { numRuns: 200 },
  );
});

test("any depths at any times: numbers or reasons, within what nature allows", () => {
  const depth = fc.oneof(
    fc.double({ min: 0, max: 2000, noNaN: true }),
    fc.constantFrom(0, 5e-324, 1e-9, 1e200),
  );
  const points = fc.array(fc.record({ atMin: fc.double({ min: 0, max: 1500, noNaN: true }), mm: depth }), {
    maxLength: 15,
  });
  fc.assert(
    fc.property(points, (readings) => {
      const fits = ringFits(readings);
      expect(numbersIn(fits).filter((one) => !Number.isFinite(one))).toEqual([]);
      if (!fits.ok) return;
      for (const fit of Object.values(fits.value.fits)) {
        if (!fit.ok) continue;
        for (const { value } of fit.value.parameters) expect(value).toBeGreaterThanOrEqual(0);
      }
      const storm = stripsInStorm([{ id: "1", strip: "a", fits: fits.value }], TYPE_II);
      expect(numbersIn(storm).filter((one) => !Number.isFinite(one))).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

const fitsIn = ({ fits }: RingFits): readonly Fit[] =>
  MODELS.flatMap((model) => (fits[model].ok ? [fits[model].value] : []));

test("another unit of depth or time gives the same curves", () => {
  fc.assert(
    fc.property(curves, fc.constantFrom(25.4, 0.1, 1000), (points, times) => {
      const plain = reached(ringFits(points));
      const deeper = reached(ringFits(points.map(({ atMin, mm }) => ({ atMin, mm: mm * times }))));
      const longer = reached(ringFits(points.map(({ atMin, mm }) => ({ atMin: atMin * times, mm }))));
      for (const [at, fit] of fitsIn(plain).entries()) {
        const wide = fitsIn(deeper)[at];
        const slow = fitsIn(longer)[at];
        expect([wide?.collapsesTo, slow?.collapsesTo]).toEqual([fit.collapsesTo, fit.collapsesTo]);
        expect((wide?.sseMm2 ?? 0) / times ** 2 / fit.sseMm2).toBeCloseTo(1, 5);
        expect((slow?.sseMm2 ?? 0) / fit.sseMm2).toBeCloseTo(1, 5);
        expect((wide?.parameters[0]?.value ?? 0) > 0).toBe((fit.parameters[0]?.value ?? 0) > 0);
      }
    }),
    { numRuns: 60 },
  );
});

test("the order of the readings does not matter", () => {
  fc.assert(
    fc.property(
      curves.chain((points) =>
        fc.tuple(fc.constant(points), fc.shuffledSubarray(points, { minLength: points.length })),
      ),
      ([points, shuffled]) => {
        expect(ringFits(shuffled)).toEqual(ringFits(points));
      },
    ),
    { numRuns: 60 },
  );
});

test("no other unknowns of the model leave less over", () => {
  fc.assert(
    fc.property(
      curves,
      fc.tuple(fc.double({ min: 0.5, max: 2, noNaN: true }), fc.double({ min: 0.5, max: 2, noNaN: true })),
      (points, [first, second]) => {
        const fit = reached(reached(ringFits(points)).fits["green-ampt"]);
        if (fit.line.kind !== "green-ampt") return;
        const { k, m } = fit.line;
        const { depthAt } = capacityOf({ kind: "green-ampt", k: k * first, m: m * second });
        const sse = points.reduce((sum, { atMin, mm }) => sum + (mm - depthAt(atMin / 60)) ** 2, 0);
        expect(sse).toBeGreaterThanOrEqual(fit.sseMm2 * (1 - 1e-6));
      },
    ),
    { numRuns: 100 },
  );
});

test("a faster rate is never in a slower class", () => {
  const rate = fc.double({ min: 0, max: 1000, noNaN: true });
  fc.assert(
    fc.property(rate, rate, (one, other) => {
      const [slow, fast] = one < other ? [one, other] : [other, one];
      expect(reached(permeabilityClass(fast)).fromMmPerH).toBeGreaterThanOrEqual(
        reached(permeabilityClass(slow)).fromMmPerH,
      );
    }),
  );
});

test("more rain never soaks in less, and never leaves less to run off", () => {
  fc.assert(
    fc.property(
      curves,
      fc.double({ min: 5, max: 200, noNaN: true }),
      fc.double({ min: 1, max: 2, noNaN: true }),
      (points, mm, more) => {
        const fits = reached(ringFits(points));
        const run = (depth: number) =>
          reached(stripsInStorm([{ id: "1", strip: "a", fits }], reached(constantRain(depth, 90)))).order[0];
        const less = run(mm);
        const greater = run(mm * more);
        expect(greater?.soaked.value ?? 0).toBeGreaterThanOrEqual((less?.soaked.value ?? 0) - 1e-9);
        expect(greater?.ranOff.value ?? 0).toBeGreaterThanOrEqual((less?.ranOff.value ?? 0) - 1e-9);
      },
    ),
    { numRuns: 100 },
  );
});
