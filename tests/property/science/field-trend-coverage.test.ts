/**
 * How often the range of the change over all spots of a field holds no change, and how often the word is wrong, when
 * spots share the weather of a year and years are like the one before. Fixed seeds; the figures stand in the docstring of
 * `trendOfField`.
 */
import { describe, expect, it } from "vitest";
import { trendOfField } from "../../../src/science/over-years/trend.ts";
import { reached } from "../../unit/science/counts.ts";
import { normal, seeded } from "./seeded.ts";

type Random = () => number;
/** Values of so many years, with a variance of 1. */
type Years = (years: number, random: Random) => readonly number[];
const TRIES = 300;
const SPOTS = 6;
const many = <T>(n: number, one: (at: number) => T): readonly T[] =>
  Array.from({ length: n }, (_, at) => one(at));

const likeTheOneBefore =
  (correlation: number): Years =>
  (years, random) => {
    let year = normal(random);
    return many(years, () => {
      const now = year;
      year = correlation * year + Math.sqrt(1 - correlation ** 2) * normal(random);
      return now;
    });
  };

/** Wet or dry, and nothing between: a spell goes on with the chance given. */
const spells =
  (goesOn: number): Years =>
  (years, random) => {
    let wet = random() < 0.5 ? 1 : -1;
    return many(years, () => {
      const now = wet;
      if (random() >= goesOn) wet = -wet;
      return now;
    });
  };

interface Seen {
  readonly held: number;
  readonly clearly: number;
  readonly clearlyOrProbably: number;
  /** How often it was said that years may run together, beside ranges that missed. */
  readonly saidOfMissed: number;
}

const seen = (years: number, shared: number, weather: Years, spot: Years): Seen => {
  const random = seeded(100 * years + 10 * shared);
  const trends = many(TRIES, () => {
    const ofYears = weather(years, random);
    const values = many(SPOTS, (at) => {
      const own = spot(years, random);
      return ofYears.map((year, when) => ({
        spot: `${at}`,
        season: "s",
        harvestYear: 2000 + when,
        value: Math.sqrt(shared) * year + Math.sqrt(1 - shared) * (own[when] ?? 0),
        fromPaper: false,
      }));
    }).flat();
    return reached(trendOfField(values, { unit: "1", seed: 1 }));
  });
  const ranges = trends.filter(({ range }) => range.ok);
  const missed = ranges.filter(
    ({ range }) => range.ok && !(range.value.lower <= 0 && range.value.upper >= 0),
  );
  const said = missed.filter(({ cautions }) =>
    cautions.some(({ code }) => code === "science/years-may-run-together"),
  );
  const share = (word: string): number => trends.filter((trend) => trend.word === word).length / TRIES;
  return {
    held: 1 - missed.length / ranges.length,
    clearly: share("clearly-different"),
    clearlyOrProbably: 1 - share("cannot-tell-yet"),
    saidOfMissed: said.length / Math.max(1, missed.length),
  };
};

describe("six spots without a change", () => {
  it.each([4, 5, 6, 8, 12])("%i years that are not alike, and spots that are or are not", (years) => {
    for (const spot of [likeTheOneBefore(0), likeTheOneBefore(0.5)]) {
      const { held, clearly, clearlyOrProbably } = seen(years, 0.5, likeTheOneBefore(0), spot);
      expect(held).toBeGreaterThan(0.92);
      expect(clearly).toBeLessThan(0.08);
      expect(clearlyOrProbably).toBeLessThan(0.26);
    }
  });

  it.each([
    [4, 0.98, 1, 0.95, 1],
    [5, 0.92, 0.99, 0.87, 0.97],
    [6, 0.9, 0.98, 0.82, 0.94],
    [8, 0.86, 0.96, 0.77, 0.92],
    [12, 0.82, 0.95, 0.75, 0.87],
  ])("%i years like the one before: held less, and said from five years on", (years, ...bounds) => {
    const [leastOfSome, mostOfSome, leastOfHalf, mostOfHalf] = bounds;
    for (const shared of [0.5, 0.8]) {
      const some = seen(years, shared, likeTheOneBefore(0.3), likeTheOneBefore(0.3));
      const half = seen(years, shared, likeTheOneBefore(0.5), likeTheOneBefore(0.5));
      expect(some.held).toBeGreaterThan(leastOfSome);
      expect(some.held).toBeLessThanOrEqual(mostOfSome);
      expect(half.held).toBeGreaterThan(leastOfHalf);
      expect(half.held).toBeLessThanOrEqual(mostOfHalf);
      for (const one of [some, half]) {
        if (one.held < 0.92) expect(one.saidOfMissed).toBe(1);
        expect(one.clearly).toBeLessThanOrEqual(1 - one.held + 0.01);
      }
      if (years === 4) expect(half.clearly).toBe(0);
      if (years === 12) expect(half.clearly).toBeGreaterThan(0.13);
    }
  });

  it("wet and dry spells of four years in the mean: held 80 times with 12 years, and said", () => {
    const { held, saidOfMissed } = seen(12, 0.5, spells(0.75), likeTheOneBefore(0));
    expect(Math.abs(held - 0.8)).toBeLessThan(0.06);
    expect(saidOfMissed).toBe(1);
  });
});
