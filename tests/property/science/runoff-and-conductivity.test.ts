/** Laws of curve numbers, of more rain and more mulch, of conductivities and of belts. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { steadyBeerkanKfs } from "../../../src/science/infiltration/kfs/beerkan.ts";
import { fallingHeadKfs } from "../../../src/science/infiltration/kfs/falling-head.ts";
import { steadyRingKfs } from "../../../src/science/infiltration/kfs/steady-ring.ts";
import { capacityOf } from "../../../src/science/infiltration/models/line.ts";
import { type Belt, beltNet } from "../../../src/science/shelter/net.ts";
import { windReduction } from "../../../src/science/shelter/wind-reduction.ts";
import {
  compositeCurveNumber,
  curveNumberRunoff,
  curveNumberWhen,
} from "../../../src/science/storm/curve-number.ts";
import { constantRain, triangularRain } from "../../../src/science/storm/rain.ts";
import { absorb } from "../../../src/science/storm/time-compression.ts";
import { waterThatCounts } from "../../../src/science/water/extra-water.ts";
import { keptByMulch } from "../../../src/science/water/kept-by-mulch.ts";
import { evaporationCut, fullCoverCut } from "../../../src/science/water/mulch-cut.ts";
import {
  readilyAvailableWater,
  totalAvailableWater,
  waterStress,
} from "../../../src/science/water/root-zone.ts";
import { reached } from "../../unit/science/counts.ts";
import { figure } from "../../unit/science/figures.ts";
import { lines } from "./curves.ts";

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-7 * (1 + Math.abs(b)));

describe("curve numbers", () => {
  const number = real(1, 100);

  it("more rain never runs off less, a higher number never less, and never more than fell", () => {
    fc.assert(
      fc.property(real(0, 300), real(0, 100), number, number, (rain, more, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const runoff = (mm: number, curveNumber: number) => reached(curveNumberRunoff(mm, curveNumber)).value;
        expect(runoff(rain + more, low)).toBeGreaterThanOrEqual(runoff(rain, low) - 1e-9);
        expect(runoff(rain, high)).toBeGreaterThanOrEqual(runoff(rain, low) - 1e-9);
        expect(runoff(rain, high)).toBeLessThanOrEqual(rain + 1e-9);
        // Nor does more rain leave less in the ground.
        expect(rain + more - runoff(rain + more, low)).toBeGreaterThanOrEqual(
          rain - runoff(rain, low) - 1e-9,
        );
      }),
    );
  });

  it("say the same of inches by the formula of inches", () => {
    fc.assert(
      fc.property(real(0, 12), number, (inches, curveNumber) => {
        const retention = 1000 / curveNumber - 10;
        const over = inches - 0.2 * retention;
        const byInches = over > 0 ? over ** 2 / (inches + 0.8 * retention) : 0;
        near(reached(curveNumberRunoff(25.4 * inches, curveNumber)).value / 25.4, byInches);
      }),
    );
  });

  it("of parts lie between them, in any order and unit of area; dry ground never has a higher one than wet", () => {
    const parts = fc.array(fc.record({ area: real(0.1, 100), curveNumber: number }), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(parts, (some) => {
        const whole = reached(compositeCurveNumber(some)).value;
        const numbers = some.map(({ curveNumber }) => curveNumber);
        expect(whole).toBeGreaterThanOrEqual(Math.min(...numbers) - 0.5);
        expect(whole).toBeLessThanOrEqual(Math.max(...numbers) + 0.5);
        const acres = some.toReversed().map(({ area, curveNumber }) => ({ area: area * 2.471, curveNumber }));
        // A mean on the half may round to either side with another order of adding.
        expect(Math.abs(reached(compositeCurveNumber(acres)).value - whole)).toBeLessThanOrEqual(1);
        const first = numbers[0] ?? 1;
        const [dry, average, wet] = (["dry", "average", "wet"] as const).map(
          (when) => reached(curveNumberWhen(first, when)).value,
        );
        expect(dry).toBeLessThanOrEqual((average ?? 0) + 1e-9);
        expect(average).toBeLessThanOrEqual((wet ?? 0) + 1e-9);
      }),
    );
  });
});

it("more rain in the same time never runs off less and never soaks in less", () => {
  fc.assert(
    fc.property(
      lines,
      real(1, 200),
      real(1, 3),
      real(10, 600),
      real(0, 1),
      (line, mm, times, minutes, peak) => {
        for (const rain of [
          (depth: number) => reached(constantRain(depth, minutes)),
          (depth: number) => reached(triangularRain(depth, minutes, peak)),
        ]) {
          const [some, more] = [mm, mm * times].map((depth) => absorb(rain(depth), capacityOf(line), []));
          expect(more?.ranOffMm).toBeGreaterThanOrEqual((some?.ranOffMm ?? 0) - 1e-6);
          expect(more?.soakedMm).toBeGreaterThanOrEqual((some?.soakedMm ?? 0) - 1e-6);
        }
      },
    ),
    { numRuns: 200 },
  );
});

describe("water", () => {
  it("more cover never keeps less, and never more than bare ground would lose", () => {
    fc.assert(
      fc.property(real(0, 1), real(0, 1), real(0, 50), (one, other, bareMm) => {
        const kept = (cover: number) =>
          reached(
            keptByMulch(
              figure("surface-water", bareMm, "mm"),
              reached(
                evaporationCut({
                  cover: figure("cover", cover),
                  fullCut: fullCoverCut(),
                  thickness: null,
                  mass: null,
                  crop: null,
                }),
              ),
            ),
          );
        const [less, more] = [kept(Math.min(one, other)), kept(Math.max(one, other))];
        for (const end of ["low", "middle", "high"] as const)
          expect(more[end]).toBeGreaterThanOrEqual(less[end] - 1e-9);
        expect(more.high).toBeLessThanOrEqual(bareMm + 1e-9);
      }),
    );
  });

  it("counts no more than there is, nor than the ground has room for; a drier root zone never grows better", () => {
    fc.assert(
      fc.property(
        real(0, 100),
        real(0, 100),
        real(0.1, 0.3),
        real(0.05, 0.09),
        real(0.2, 2),
        (extra, room, fc1, wp, roots) => {
          const counts = reached(
            waterThatCounts(figure("extra-water", extra, "mm"), figure("deficit", room, "mm")),
          );
          expect(counts.middle).toBe(Math.min(extra, room));
          const total = reached(totalAvailableWater(fc1, wp, roots));
          expect(reached(totalAvailableWater(fc1, wp, roots * 1.1))).toBeGreaterThan(total);
          expect(reached(readilyAvailableWater(total, 0.5))).toBeCloseTo(total / 2, 9);
          const [wetter, drier] = [0.6 * total, 0.8 * total].map((gone) =>
            reached(waterStress(gone, total, 0.5)),
          );
          expect(drier).toBeLessThanOrEqual(wetter ?? 0);
        },
      ),
    );
  });
});

describe("conductivities", () => {
  const ring = fc.record({ radiusMm: real(40, 200), insertionMm: real(10, 150) });
  const alpha = real(0.001, 0.036);

  it("go with the rate, whatever its unit, and never rise with the head that drives it", () => {
    fc.assert(
      fc.property(
        ring,
        alpha,
        real(1, 500),
        real(5, 150),
        real(1, 10),
        (set, perMm, mmPerH, headMm, times) => {
          const steady = (rate: number, head: number) =>
            reached(steadyRingKfs({ mmPerH: rate, headMm: head }, set, perMm, null)).value;
          near(steady(times * mmPerH, headMm), times * steady(mmPerH, headMm));
          expect(steady(mmPerH, headMm * times)).toBeLessThanOrEqual(steady(mmPerH, headMm) + 1e-9);
          expect(steady(mmPerH, headMm)).toBeLessThan(mmPerH);
          const beerkan = (rate: number) => reached(steadyBeerkanKfs(rate, set, perMm, null)).value;
          near(beerkan(times * mmPerH), times * beerkan(mmPerH));
        },
      ),
    );
  });

  it("of a pour go with one over its time, and a longer time is never faster", () => {
    fc.assert(
      fc.property(
        real(5, 100),
        real(1, 120),
        real(0.05, 0.5),
        alpha,
        real(1, 10),
        (pouredMm, minutes, moistureGap, alphaPerMm, times) => {
          const of = (min: number) =>
            reached(
              fallingHeadKfs({ pouredMm, minutes: min, moistureGap, alphaPerMm, insertionMm: 3000 }, null),
            ).value;
          near(of(minutes * times) * times, of(minutes));
          expect(of(minutes * times)).toBeLessThanOrEqual(of(minutes) + 1e-9);
        },
      ),
    );
  });
});

describe("belts", () => {
  const belt = (scale: number, unit: "m"): Belt => ({
    height: figure("tree-height", 12 * scale, unit),
    width: figure("belt-width", 10 * scale, unit),
    field: figure("field-width", 300 * scale, unit),
    competition: figure("competition-zone", 1),
    shelter: figure("shelter-zone", 12),
    loss: figure("shelter-loss", 0.5),
    gain: figure("shelter-gain", 0.12),
  });

  it("all lengths so many times as long give the same share of the field", () => {
    const plain = reached(beltNet(belt(1, "m"))).net.middle;
    fc.assert(
      fc.property(real(0.3, 3), (scale) => {
        near(reached(beltNet(belt(scale, "m"))).net.middle, plain);
      }),
    );
  });

  it("farther away they never take more of the wind", () => {
    fc.assert(
      fc.property(real(5, 30), real(5, 30), (one, other) => {
        const [close, far] = [Math.min(one, other), Math.max(one, other)].map((at) =>
          reached(windReduction(at)),
        );
        for (const end of ["low", "middle", "high"] as const)
          expect(far?.[end]).toBeLessThanOrEqual((close?.[end] ?? 0) + 1e-9);
      }),
    );
  });
});
