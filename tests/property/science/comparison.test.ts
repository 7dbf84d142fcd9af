/** Laws of comparing: units, order, sides, and chance and range by one rule. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { trendOfField, trendOfSpot } from "../../../src/science/over-years/trend.ts";
import { compareCounts } from "../../../src/science/side-by-side/counts.ts";
import { compareGroups } from "../../../src/science/side-by-side/groups.ts";
import { comparePairs } from "../../../src/science/side-by-side/pairs.ts";
import { percentileRange, resample } from "../../../src/science/statistics/bootstrap.ts";
import { powerOf } from "../../../src/science/statistics/power.ts";
import { rateRatioChance, rateRatioRange } from "../../../src/science/statistics/rate-ratio.ts";
import { reached } from "../../unit/science/counts.ts";

/** Readings in whole tenths of a millimetre, as rulers give them. */
const reading = fc.integer({ min: 1, max: 2000 }).map((tenths) => tenths / 10);
const readings = fc.array(reading, { minLength: 3, maxLength: 7 });
const sides = fc.array(fc.tuple(reading, reading), { minLength: 3, maxLength: 8 });
const seen = (values: readonly number[]) => values.map((value) => ({ value, least: null }));
const pairsOf = (some: readonly (readonly [number, number])[]) =>
  some.map(([a, b], at) => ({ label: `${at}`, a: { value: a, least: null }, b: { value: b, least: null } }));
const ASKED = { scale: "difference", unit: "mm", worthwhile: 10, seed: 1 } as const;
const RATIO = { scale: "ratio", unit: "mm/h", worthwhile: 2, seed: 1 } as const;
const near = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-6 * (1 + Math.abs(b)));
const finiteIn = (value: unknown): boolean =>
  typeof value === "number"
    ? Number.isFinite(value)
    : typeof value !== "object" || value === null || Object.values(value).every(finiteIn);

describe("pairs", () => {
  it("say the same in inches and in millimetres", () => {
    fc.assert(
      fc.property(sides, (some) => {
        const mm = reached(comparePairs(pairsOf(some), "blocks", ASKED));
        const inch = reached(
          comparePairs(pairsOf(some.map(([a, b]) => [a / 25.4, b / 25.4])), "blocks", {
            ...ASKED,
            worthwhile: 10 / 25.4,
          }),
        );
        expect(inch.word).toBe(mm.word);
        near(inch.value * 25.4, mm.value);
        expect(reached(inch.signFlip).chance).toBe(reached(mm.signFlip).chance);
        if (mm.range.ok) near(reached(inch.range).lower * 25.4, mm.range.value.lower);
        if (mm.signedRank.ok) expect(reached(inch.signedRank).chance).toBe(mm.signedRank.value.chance);
        const [ratio, ratioInch] = [some, some.map(([a, b]) => [a / 25.4, b / 25.4] as const)].map((values) =>
          reached(comparePairs(pairsOf(values), "blocks", RATIO)),
        );
        near(ratio?.value ?? 0, ratioInch?.value ?? 1);
      }),
      { numRuns: 40 },
    );
  });

  it("do not mind their order, a shift of both sides, or which side stands first", () => {
    fc.assert(
      fc.property(sides, (some) => {
        const plain = reached(comparePairs(pairsOf(some), "blocks", ASKED));
        const back = reached(comparePairs(pairsOf(some.toReversed()), "blocks", ASKED));
        expect(back.value).toBe(plain.value);
        expect(back.range).toEqual(plain.range);
        near(
          reached(comparePairs(pairsOf(some.map(([a, b]) => [a + 50, b + 50])), "blocks", ASKED)).value,
          plain.value,
        );
        const turned = reached(comparePairs(pairsOf(some.map(([a, b]) => [b, a])), "blocks", ASKED));
        near(turned.value, -plain.value);
        expect(turned.word).toBe(plain.word);
        expect(reached(turned.signFlip).chance).toBe(reached(plain.signFlip).chance);
      }),
      { numRuns: 40 },
    );
  });

  it("never give less than the smallest chance, nor a number that is none", () => {
    fc.assert(
      fc.property(sides, (some) => {
        const result = reached(comparePairs(pairsOf(some), "farms", RATIO));
        const { chance, smallest } = reached(result.signFlip);
        expect(chance).toBeGreaterThanOrEqual(smallest * (1 - 1e-12));
        expect(finiteIn(result)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});

it("groups turned round are the same with the sign turned", () => {
  fc.assert(
    fc.property(readings, readings, (a, b) => {
      const plain = reached(compareGroups(seen(a), seen(b), "strips", ASKED));
      const turned = reached(compareGroups(seen(b), seen(a), "strips", ASKED));
      near(turned.value, -plain.value);
      expect(turned.word).toBe(plain.word);
      near(reached(turned.permutation).chance, reached(plain.permutation).chance);
      near(reached(turned.rankSum).chance, reached(plain.rankSum).chance);
      expect(finiteIn(plain)).toBe(true);
      if (plain.chance.ok && plain.range.ok)
        expect(plain.chance.value < 0.05).toBe(plain.word === "clearly-different");
    }),
    { numRuns: 40 },
  );
});

describe("counts", () => {
  const counts = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 8 });

  it("have a chance below 5 % exactly when the 95 % range leaves out 1, and below 20 % with the 80 % one", () => {
    fc.assert(
      fc.property(counts, counts, (a, b) => {
        fc.pre(a.some((count) => count > 0) || b.some((count) => count > 0));
        const result = reached(compareCounts({ counts: a, effortEach: 1 }, { counts: b, effortEach: 1 }, 2));
        const chance = reached(result.chance);
        fc.pre(Math.abs(chance - 0.05) > 1e-6 && Math.abs(chance - 0.2) > 1e-6);
        expect(result.word === "clearly-different").toBe(chance < 0.05);
        expect(result.word === "cannot-tell-yet").toBe(chance > 0.2);
        expect(finiteIn(result)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it("turned round give the ratio turned round", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 1, max: 200 }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        (x, y, phi) => {
          const [a, b] = [
            { count: x, effort: 4 },
            { count: y, effort: 7 },
          ];
          const unevenness = { varianceToMean: phi, degreesOfFreedom: 9 };
          const [one, other] = [
            reached(rateRatioRange(a, b, unevenness, 0.95)),
            reached(rateRatioRange(b, a, unevenness, 0.95)),
          ];
          expect(one.lower * (other.upper ?? 0)).toBeCloseTo(1, 4);
          near(reached(rateRatioChance(a, b, unevenness)), reached(rateRatioChance(b, a, unevenness)));
        },
      ),
      { numRuns: 100 },
    );
  });
});

it("power grows with the difference and with samples", () => {
  const wanted = { design: "two-groups", level: 0.95, power: 0.8 } as const;
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 4, noNaN: true }),
      fc.integer({ min: 3, max: 60 }),
      (difference, n) => {
        const power = reached(powerOf(difference, 1, n, wanted));
        expect(power).toBeGreaterThan(0.05 - 1e-6);
        expect(reached(powerOf(difference + 0.2, 1, n, wanted))).toBeGreaterThanOrEqual(power - 1e-7);
        expect(reached(powerOf(difference, 1, n + 1, wanted))).toBeGreaterThanOrEqual(power - 1e-7);
        expect(reached(powerOf(-difference, 1, n, wanted))).toBeCloseTo(power, 12);
      },
    ),
    { numRuns: 60 },
  );
});

describe("years", () => {
  const years = fc.array(reading, { minLength: 2, maxLength: 12 });
  const valuesOf = (some: readonly number[], unit = 1, shift = 0) =>
    some.map((value, at) => ({
      spot: "1",
      season: "s",
      harvestYear: 2020 + at,
      value: value / unit + shift,
      fromPaper: false,
    }));

  it("say the same in inches, shifted, and in any order of writing down", () => {
    fc.assert(
      fc.property(years, (some) => {
        const mm = reached(trendOfSpot(valuesOf(some), ASKED));
        const inch = reached(trendOfSpot(valuesOf(some, 25.4, 3).toReversed(), ASKED));
        near(inch.slope * 25.4, mm.slope);
        expect(inch.test.s).toBe(mm.test.s);
        expect(inch.word).toBe(mm.word);
        expect(finiteIn({ ...mm, range: mm.range.ok ? mm.range : null })).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("counted out have a range without 0 exactly when their chance is 5 % or less", () => {
    fc.assert(
      fc.property(fc.uniqueArray(reading, { minLength: 2, maxLength: 10 }), (some) => {
        const trend = reached(trendOfSpot(valuesOf(some), ASKED));
        expect(trend.word === "clearly-different").toBe(trend.test.chance <= 0.05 + 1e-12);
        expect(trend.word === "cannot-tell-yet").toBe(trend.test.chance > 0.2 + 1e-12);
      }),
      { numRuns: 100 },
    );
  });

  it("of one spot have the same chance by whole years as by Mann and Kendall", () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2, maxLength: 7 }), (some) => {
        const field = reached(trendOfField(valuesOf(some), ASKED));
        near(field.byYears.chance, reached(trendOfSpot(valuesOf(some), ASKED)).test.chance);
        near(field.byYears.variance, field.together.variance);
      }),
      { numRuns: 40 },
    );
  });
});

it("samples drawn anew do not mind the order, and move with a shift", () => {
  const mean = ([only]: readonly Float64Array[]): number =>
    (only ?? new Float64Array(1)).reduce((sum, value) => sum + value, 0) / (only?.length ?? 1);
  fc.assert(
    fc.property(fc.array(reading, { minLength: 6, maxLength: 20 }), (some) => {
      const of = (values: readonly number[]) =>
        reached(percentileRange(reached(resample([values], mean, { draws: 400, seed: 9 })), 0.9));
      expect(of(some.toReversed())).toEqual(of(some));
      near(of(some.map((value) => value + 100)).lower, of(some).lower + 100);
    }),
    { numRuns: 30 },
  );
});
