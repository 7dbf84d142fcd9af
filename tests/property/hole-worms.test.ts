import fc from "fast-check";
import { expect, test } from "vitest";
import { wormsPerHole, wormsPerM2 } from "../../src/science/earthworms/field.ts";
import { shareOfHolesWith } from "../../src/science/earthworms/groups.ts";
import { GUIDES } from "../../src/science/earthworms/guides.ts";
import { wormsInHole, wormsPerM2OfHole } from "../../src/science/earthworms/hole.ts";
import type { HoleCount } from "../../src/science/earthworms/hole-count.ts";
import { holesNeeded } from "../../src/science/earthworms/holes-needed.ts";
import { readByGuide } from "../../src/science/earthworms/read-guide.ts";
import { spreadOfHoles } from "../../src/science/earthworms/spread.ts";
import { unlikeLastTime } from "../../src/science/earthworms/unlike.ts";
import { negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { reached } from "../unit/science/counts.ts";
import { hole, holes } from "../unit/science/earthworms/holes.ts";

const RUNS = { numRuns: 300 };
const counts = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 3, maxLength: 12 });
const some = counts.filter((all) => all.some((count) => count > 0));

/** Numbers that no hole should hold, among those that one may. */
const odd = fc.oneof(
  fc.integer({ min: 0, max: 50 }),
  fc.constantFrom(-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e300),
);
const oddOrNone = fc.option(odd, { nil: null });
const oddHole: fc.Arbitrary<HoleCount> = fc.record({
  sidesM: fc.option(fc.tuple(odd, odd), { nil: null }),
  depthM: odd,
  found: fc.record({ mulch: oddOrNone, soil: oddOrNone, "mustard-water": oddOrNone }),
  placed: fc.record({ young: odd, surface: odd, topsoil: odd, deep: odd }),
  left: odd,
  settled: fc.boolean(),
  finished: fc.boolean(),
  soilTemperatureC: oddOrNone,
  wetness: fc.constantFrom("dry" as const, "moist" as const, "wet" as const, null),
  personMinutes: oddOrNone,
  workedDaysAgo: oddOrNone,
  place: fc.option(fc.record({ latitudeDeg: odd, longitudeDeg: odd }), { nil: null }),
});

/** No number anywhere in an answer may be NaN. */
const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

test("no input makes an exception or a NaN", () => {
  fc.assert(
    fc.property(fc.array(oddHole, { maxLength: 6 }), odd, odd, (all, one, other) => {
      const answers: unknown[] = [
        ...all.map((each) => [wormsInHole(each), wormsPerM2OfHole(each)]),
        wormsPerHole(all),
        wormsPerM2(all),
        spreadOfHoles(all),
        shareOfHolesWith("deep", all),
        unlikeLastTime(all, all.slice(1)),
        holesNeeded(all, { giveOrTake: one, sidesM: [0.2, other] }),
        holesNeeded(all, { giveOrTake: 0.5, sidesM: [0.2, 0.2] }),
        negativeBinomialK([one, other, 3]),
      ];
      for (const guide of GUIDES) {
        const read = readByGuide(guide, all, { landUse: null, month: one, hemisphere: "north" });
        answers.push(read.ok ? [read.value.counted, read.value.cautions] : read);
      }
      expect(numbersIn(answers).filter(Number.isNaN)).toEqual([]);
    }),
    RUNS,
  );
});

test("the order of holes does not matter", () => {
  fc.assert(
    fc.property(some, (all) => {
      const forth = reached(wormsPerM2(holes(...all)));
      const back = reached(wormsPerM2(holes(...[...all].reverse())));
      expect(back.value).toBeCloseTo(forth.value, 9);
      expect(reached(back.range).upper / reached(forth.range).upper).toBeCloseTo(1, 9);
    }),
    RUNS,
  );
});

test("the mean lies in its range, and the range above nothing", () => {
  fc.assert(
    fc.property(counts, (all) => {
      const { value, range } = reached(wormsPerHole(holes(...all)));
      const { lower, upper } = reached(range);
      expect(lower).toBeLessThanOrEqual(value);
      expect(upper).toBeGreaterThan(value);
      expect(lower).toBeGreaterThanOrEqual(0);
    }),
    RUNS,
  );
});

test("one worm more in any hole never lowers the mean", () => {
  fc.assert(
    fc.property(counts, fc.nat(), (all, which) => {
      const more = all.map((count, at) => (at === which % all.length ? count + 1 : count));
      expect(reached(wormsPerM2(holes(...more))).value).toBeGreaterThan(
        reached(wormsPerM2(holes(...all))).value,
      );
    }),
    RUNS,
  );
});

test("every hole twice leaves the mean and narrows the range", () => {
  fc.assert(
    fc.property(some, (all) => {
      const once = reached(wormsPerHole(holes(...all)));
      const twice = reached(wormsPerHole(holes(...all, ...all)));
      expect(twice.value).toBeCloseTo(once.value, 9);
      expect(reached(twice.range).upper).toBeLessThan(reached(once.range).upper);
    }),
    RUNS,
  );
});

test("worms per m² do not depend on the depth, and go with one over the area", () => {
  fc.assert(
    fc.property(
      some,
      fc.integer({ min: 5, max: 50 }),
      fc.integer({ min: 5, max: 50 }),
      (all, cm, depthCm) => {
        const sidesM = [cm / 100, cm / 100] as const;
        const sized = all.map((count) => hole(count, { sidesM, depthM: depthCm / 100 }));
        const perHole = reached(wormsPerHole(sized)).value;
        expect(reached(wormsPerM2(sized)).value).toBeCloseTo(perHole / (sidesM[0] * sidesM[1]), 6);
      },
    ),
    RUNS,
  );
});

test("a wider answer never needs more holes, and the band lies in order", () => {
  fc.assert(
    fc.property(some, fc.double({ min: 0.2, max: 0.5, noNaN: true }), (all, giveOrTake) => {
      const sidesM = [0.2, 0.2] as const;
      const tight = holesNeeded(holes(...all), { giveOrTake, sidesM });
      const wide = holesNeeded(holes(...all), { giveOrTake: 2 * giveOrTake, sidesM });
      if (!(tight.ok && wide.ok)) return;
      expect(wide.value.more.middle).toBeLessThanOrEqual(tight.value.more.middle);
      expect(tight.value.more.low).toBeLessThanOrEqual(tight.value.more.middle);
      expect(tight.value.more.middle).toBeLessThanOrEqual(tight.value.more.high);
    }),
    RUNS,
  );
});

test("a k is given exactly when the variance with n is larger than the mean", () => {
  fc.assert(
    fc.property(some, (all) => {
      const mean = all.reduce((sum, count) => sum + count, 0) / all.length;
      const variance = all.reduce((sum, count) => sum + (count - mean) ** 2, 0) / all.length;
      const k = negativeBinomialK(all);
      // A hair above the mean k is beyond any use and none is given either.
      if (variance <= mean) expect(k.ok).toBe(false);
      else if (variance > mean * 1.001) expect(reached(k)).toBeGreaterThan(0);
    }),
    RUNS,
  );
});

test("more worms never read as less by any guide", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 60 }), (worms) => {
      for (const guide of GUIDES) {
        const at = {
          landUse: null,
          month: guide.season?.months[0] ?? 5,
          hemisphere: guide.season?.hemisphere ?? "north",
        };
        const dug = { sidesM: guide.sidesM ?? ([0.2, 0.2] as const), depthM: guide.depthM ?? 0.2 };
        const rank = (count: number) =>
          guide.levels.indexOf(reached(readByGuide(guide, [hole(count, dug)], at)).level);
        expect(rank(worms + 1)).toBeGreaterThanOrEqual(rank(worms));
      }
    }),
    RUNS,
  );
});
