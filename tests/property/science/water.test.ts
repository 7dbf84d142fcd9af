import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverCropMass, plantsPerM2 } from "../../../src/science/cover-crop/quadrats.ts";
import { type MixedPart, mixtureCarbonToNitrogen } from "../../../src/science/nitrogen/mixture.ts";
import { tieUpOrRelease } from "../../../src/science/nitrogen/tie-up.ts";
import { beltNet } from "../../../src/science/shelter/net.ts";
import { bareSoilEvaporation, wetGround } from "../../../src/science/water/kept-by-mulch.ts";
import { evaporationCut, fullCoverCut } from "../../../src/science/water/mulch-cut.ts";
import {
  referenceEvapotranspiration,
  usualStandIns,
} from "../../../src/science/water/reference-evapotranspiration.ts";
import { SOIL_TEXTURES, soilWaterOf } from "../../../src/science/water/soils.ts";
import { reached } from "../../unit/science/counts.ts";
import { figure, numbersIn } from "../../unit/science/figures.ts";
import { chanceCount, seeded } from "./seeded.ts";

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const BROADCAST = { widthM: 0.5, rowSpacingM: null };

describe("evapotranspiration", () => {
  const day = fc.record({
    minC: real(-30, 30),
    spread: real(0, 25),
    humidity: fc.option(real(0, 1).map((mean) => ({ by: "mean" as const, mean }))),
    wind: fc.option(real(0, 20).map((metresPerSecond) => ({ metresPerSecond, heightM: 2 }))),
    sun: fc.option(real(0, 1)),
  });
  const place = fc.record({
    latitudeDeg: real(-90, 90),
    elevationM: real(-400, 4000),
    dayOfYear: fc.integer({ min: 1, max: 366 }),
  });

  it("is finite, not negative and in order for any weather anywhere", () => {
    fc.assert(
      fc.property(day, place, ({ minC, spread, humidity, wind, sun }, at) => {
        const weather = {
          minC,
          maxC: minC + spread,
          humidity,
          wind,
          sun: sun === null ? null : { megajoules: 40 * sun },
        };
        const et = reached(referenceEvapotranspiration(weather, at, usualStandIns()));
        expect(numbersIn(et).every(Number.isFinite)).toBe(true);
        expect(et.low).toBeGreaterThanOrEqual(0);
        expect(et.low).toBeLessThanOrEqual(et.middle);
        expect(et.middle).toBeLessThanOrEqual(et.high);
      }),
    );
  });

  it("rises with sun and with dry air", () => {
    fc.assert(
      fc.property(real(0, 25), real(5, 30), real(0.2, 0.9), real(0, 10), (minC, sun, mean, speed) => {
        const et = (megajoules: number, humidity: number): number =>
          reached(
            referenceEvapotranspiration(
              {
                minC,
                maxC: minC + 8,
                humidity: { by: "mean", mean: humidity },
                wind: { metresPerSecond: speed, heightM: 2 },
                sun: { megajoules },
              },
              { latitudeDeg: 50, elevationM: 100, dayOfYear: 170 },
              usualStandIns(),
            ),
          ).middle;
        expect(et(sun + 1, mean)).toBeGreaterThanOrEqual(et(sun, mean) - 1e-12);
        // Dry air also lets more warmth out; with wind, and on a warm day, that never outweighs its thirst.
        if (speed >= 1) expect(et(sun, mean - 0.1)).toBeGreaterThan(et(sun, mean));
      }),
    );
  });
});

describe("mulch and bare soil", () => {
  it("never cuts less with more cover, and never all", () => {
    fc.assert(
      fc.property(real(0, 1), real(0, 1), (a, b) => {
        const cut = (cover: number) =>
          reached(
            evaporationCut({
              cover: figure("cover", cover),
              fullCut: fullCoverCut(),
              thickness: null,
              mass: null,
              crop: null,
            }),
          );
        const less = cut(Math.min(a, b));
        const more = cut(Math.max(a, b));
        for (const end of ["low", "middle", "high"] as const)
          expect(more[end]).toBeGreaterThanOrEqual(less[end] - 1e-12);
        expect(more.high).toBeLessThanOrEqual(0.65 + 1e-12);
      }),
    );
  });

  it("loses no more than fell, nor than the air asked for, in any order of rains", () => {
    const rain = fc.record({ day: fc.integer({ min: 1, max: 30 }), mm: real(0.1, 60) });
    fc.assert(
      fc.property(
        fc.array(rain, { minLength: 1, maxLength: 8 }),
        fc.constantFrom(...SOIL_TEXTURES),
        real(0.1, 9),
        (rains, texture, etMm) => {
          const { quickWater, surfaceWater } = soilWaterOf(texture);
          const ground = { quickWater, surfaceWater, wetSoil: wetGround() };
          const reference = [figure("reference-evapotranspiration", etMm, "mm/d")];
          const lost = (some: typeof rains) =>
            reached(bareSoilEvaporation({ firstDay: 1, lastDay: 30, rains: some, reference }, ground));
          const all = lost(rains);
          expect(all.high).toBeLessThanOrEqual(rains.reduce((sum, { mm }) => sum + mm, 0) + 1e-9);
          expect(all.high).toBeLessThanOrEqual(30 * etMm * 1.3 + 1e-9);
          expect(all.low).toBeGreaterThanOrEqual(0);
          expect(lost([...rains].reverse()).middle).toBeCloseTo(all.middle, 9);
        },
      ),
    );
  });
});

describe("nitrogen", () => {
  const part = fc.record({ kg: real(1, 9000), ratio: real(8, 90), width: real(0, 0.5) }).map(
    ({ kg, ratio, width }): MixedPart => ({
      mass: figure("mass", [kg * (1 - width), kg, kg * (1 + width)], "kg/har"),
      carbon: figure("carbon-share", [0.4, 0.42, 0.45]),
      ratio: figure("carbon-to-nitrogen", [ratio * (1 - width / 2), ratio, ratio * (1 + width)]),
    }),
  );
  const parts = fc.array(part, { minLength: 1, maxLength: 5 });

  it("lies between the least and the most of the parts, in any order and any unit of mass", () => {
    fc.assert(
      fc.property(parts, real(0.1, 5), (some, unit) => {
        const mixed = reached(mixtureCarbonToNitrogen(some));
        expect(mixed.low).toBeGreaterThanOrEqual(Math.min(...some.map(({ ratio }) => ratio.low)) - 1e-9);
        expect(mixed.high).toBeLessThanOrEqual(Math.max(...some.map(({ ratio }) => ratio.high)) + 1e-9);
        expect(reached(mixtureCarbonToNitrogen([...some].reverse())).high).toBeCloseTo(mixed.high, 9);
        const scaled = some.map((one): MixedPart => {
          const { low, middle, high } = one.mass;
          return { ...one, mass: figure("mass", [low * unit, middle * unit, high * unit], "kg/har") };
        });
        expect(reached(mixtureCarbonToNitrogen(scaled)).middle).toBeCloseTo(mixed.middle, 9);
      }),
    );
  });

  it("has ends that no mixture within the figures goes beyond", () => {
    fc.assert(
      fc.property(parts, fc.infiniteStream(real(0, 1)), (some, picks) => {
        const within = ({ low, high }: { low: number; high: number }): number =>
          low + (high - low) * (picks.next().value ?? 0);
        const mixed = reached(mixtureCarbonToNitrogen(some));
        const { nitrogen } = reached(tieUpOrRelease(some));
        let carbon = 0;
        let n = 0;
        for (const { mass, carbon: share, ratio } of some) {
          const kg = within(mass) * within(share);
          carbon += kg;
          n += kg / within(ratio);
        }
        expect(carbon / n).toBeGreaterThanOrEqual(mixed.low - 1e-9);
        expect(carbon / n).toBeLessThanOrEqual(mixed.high + 1e-9);
        expect(n - carbon / 24).toBeGreaterThanOrEqual(nitrogen.low - 1e-9);
        expect(n - carbon / 24).toBeLessThanOrEqual(nitrogen.high + 1e-9);
      }),
    );
  });
});

it("a belt's net rises with the gain and falls with the loss", () => {
  fc.assert(
    fc.property(
      real(2, 30),
      real(0, 20),
      real(30, 800),
      real(0, 0.4),
      real(0, 0.9),
      (h, w, field, gain, loss) => {
        const net = (g: number, l: number): number =>
          reached(
            beltNet({
              height: figure("tree-height", h, "m"),
              width: figure("belt-width", w, "m"),
              field: figure("field-width", field, "m"),
              competition: figure("competition-zone", 1),
              shelter: figure("shelter-zone", 12),
              loss: figure("shelter-loss", l),
              gain: figure("shelter-gain", g),
            }),
          ).net.middle;
        expect(net(gain + 0.1, loss)).toBeGreaterThanOrEqual(net(gain, loss));
        expect(net(gain, loss + 0.1)).toBeLessThanOrEqual(net(gain, loss));
        expect(net(0, 0)).toBeCloseTo(-w / field, 12);
      },
    ),
  );
});

describe("quadrats", () => {
  it("give the same from any order, and from frames measured in feet", () => {
    const quadrat = fc.record({ areaM2: real(0.05, 2), amount: real(0, 500) });
    fc.assert(
      fc.property(fc.array(quadrat, { minLength: 3, maxLength: 9 }), (quadrats) => {
        const mass = reached(coverCropMass(quadrats, BROADCAST));
        const back = reached(coverCropMass([...quadrats].reverse(), BROADCAST));
        expect(back.value).toBeCloseTo(mass.value, 6);
        const feet = quadrats.map(({ areaM2, amount }) => ({
          areaM2: (areaM2 / 0.3048 ** 2) * 0.3048 ** 2,
          amount,
        }));
        expect(reached(coverCropMass(feet, BROADCAST)).value).toBeCloseTo(mass.value, 6);
        if (mass.range.ok) expect(numbersIn(mass.range).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  const STRIPS = 4000;

  it.each([3, 4, 8])("%i frames that differ by 30 %%: 92 to 98 of 100 ranges hold the truth", (n) => {
    const random = seeded(77 * n);
    const sigma = Math.sqrt(Math.log(1.09));
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    let inside = 0;
    for (let strip = 0; strip < STRIPS; strip++) {
      const quadrats = Array.from({ length: n }, () => ({
        areaM2: 0.5,
        amount: 200 * Math.exp(sigma * normal() - sigma ** 2 / 2),
      }));
      const range = reached(reached(coverCropMass(quadrats, BROADCAST)).range);
      if (range.lower <= 4000 && 4000 <= range.upper) inside++;
    }
    expect(inside / STRIPS).toBeGreaterThan(0.92);
    expect(inside / STRIPS).toBeLessThan(0.98);
  });

  it.each([3, 4, 8])("%i frames with 6 plants by chance: 92 to 98 of 100 ranges hold the truth", (n) => {
    const random = seeded(99 * n);
    let inside = 0;
    for (let strip = 0; strip < STRIPS; strip++) {
      const quadrats = Array.from({ length: n }, () => ({ areaM2: 0.25, amount: chanceCount(6, random) }));
      const range = reached(reached(plantsPerM2(quadrats, BROADCAST)).range);
      if (range.lower <= 24 && 24 <= range.upper) inside++;
    }
    expect(inside / STRIPS).toBeGreaterThan(0.92);
    expect(inside / STRIPS).toBeLessThan(0.98);
  });
});
