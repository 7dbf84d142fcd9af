import { describe, expect, it, test } from "vitest";
import { meanOfRings, type RingPoint } from "../../../../src/science/infiltration/replicates.ts";
import {
  logSpreadOf,
  PLANNED_LOG_SPREAD,
  smallestRatio,
  spreadBetweenRings,
} from "../../../../src/science/infiltration/smallest-ratio.ts";
import { startGaps } from "../../../../src/science/infiltration/start-gaps.ts";
import { finishFirst, litresNeeded, litresToGo } from "../../../../src/science/infiltration/water.ts";
import { reached, reasonOf } from "../counts.ts";
import { RULER } from "./rings.ts";

const ring = (value: number, more: Partial<RingPoint> = {}): RingPoint => ({
  id: `ring ${value}`,
  value,
  least: 1,
  censored: false,
  burrow: false,
  crack: false,
  ...more,
});
const codes = (said: { cautions: readonly { code: string }[] }) => said.cautions.map(({ code }) => code);

describe("mean of the rings", () => {
  it("keeps every ring as a point and gives a range from three on", () => {
    const two = reached(meanOfRings([ring(10), ring(40)], "mm/h"));
    expect(two.value).toBeCloseTo(20, 9);
    expect(reasonOf(two.range)).toBe("science/too-few-rings");
    const three = reached(meanOfRings([ring(10), ring(20), ring(40)], "mm/h"));
    expect(three).toMatchObject({ n: 3, sampledBy: "rings", unit: "mm/h" });
    expect(three.points).toHaveLength(3);
    const { lower, upper } = reached(three.range);
    expect(lower * upper).toBeCloseTo(three.value ** 2, 6);
  });

  it("names burrows and cracks, and says which rings did not drain", () => {
    const mean = reached(
      meanOfRings(
        [ring(10, { censored: true }), ring(300, { burrow: true, crack: true }), ring(20), ring(25)],
        "mm/h",
      ),
    );
    expect(mean).toMatchObject({ n: 4, withBurrow: 1, withCrack: 1, censored: 1 });
    expect(codes(mean)).toEqual([
      "science/rings-not-drained",
      "science/rings-with-burrow",
      "science/rings-with-crack",
    ]);
  });

  it("does not say that burrows may have been missed where a ring without a number is over one", () => {
    const four = [ring(20), ring(25), ring(30), ring(40)];
    expect(codes(reached(meanOfRings(four, "mm")))).toEqual(["science/few-rings-may-miss-burrows"]);
    expect(codes(reached(meanOfRings(four, "mm", true)))).toEqual([]);
  });

  it("puts the least that could be seen in the place of nothing, and leaves out what is no number", () => {
    const mean = reached(
      meanOfRings([ring(0, { least: 2 }), ring(8), ring(Number.NaN), ring(-1, { least: 0 })], "mm"),
    );
    expect(mean.value).toBeCloseTo(4, 9);
    expect(codes(mean)).toEqual(["science/rings-left-out", "science/rings-below-ruler"]);
  });

  it("of rings that read the same has no range", () => {
    const alike = reached(meanOfRings([ring(12.7), ring(12.7), ring(12.7)], "mm/h"));
    expect(alike.value).toBeCloseTo(12.7, 9);
    expect(reasonOf(alike.range)).toBe("science/rings-all-alike");
  });

  it("of nothing is a reason, and rings apart by all that numbers can hold give no range", () => {
    expect(reasonOf(meanOfRings([], "mm"))).toBe("science/nothing-read");
    expect(reasonOf(meanOfRings([ring(Number.POSITIVE_INFINITY)], "mm"))).toBe("science/nothing-read");
    const far = reached(meanOfRings([ring(1e-300), ring(1e300), ring(1)], "mm"));
    expect(reasonOf(far.range)).toBe("science/no-number");
  });
});

describe("what so many rings can show", () => {
  it("falls with more rings and rises with the spread", () => {
    const three = reached(smallestRatio(3)).ratio;
    const ten = reached(smallestRatio(10)).ratio;
    expect(three).toBeGreaterThan(ten);
    expect(reached(smallestRatio(3, 2 * PLANNED_LOG_SPREAD)).ratio).toBeCloseTo(three ** 2, 6);
    expect(reached(smallestRatio(3, 0)).ratio).toBe(1);
  });

  it("is not asked of one ring, half a ring, or a spread that is none", () => {
    expect(reasonOf(smallestRatio(1))).toBe("science/too-few-rings");
    expect(reasonOf(smallestRatio(2.5))).toBe("science/not-a-count");
    expect(reasonOf(smallestRatio(3, Number.NaN))).toBe("science/no-number");
    expect(reasonOf(smallestRatio(3, -1))).toBe("science/no-number");
    expect(reasonOf(smallestRatio(2, 1e6))).toBe("science/no-number");
  });

  it("knows the spread seen, pooled over strips", () => {
    const spread = reached(spreadBetweenRings([[10, 20], [30, 60], [5]]));
    expect(spread.degreesOfFreedom).toBe(2);
    expect(spread.logSpread).toBeCloseTo(Math.log(2) / Math.SQRT2, 9);
    expect(logSpreadOf(spread.coefficientOfVariation)).toBeCloseTo(spread.logSpread, 9);
    expect(reasonOf(spreadBetweenRings([]))).toBe("science/too-few-rings");
    expect(reasonOf(spreadBetweenRings([[10, 20, 0, Number.NaN]]))).toBe("science/too-few-rings");
  });
});

describe("water", () => {
  it("needed goes by area and depth, with the space between two rings", () => {
    const double = { insideM: [0.3, null], outerInsideM: [0.6, null], innerOutsideM: null } as const;
    // A metre of water in half a square metre would be 500 L; 28.3 L for 10 cm in a ring of 60 cm.
    expect(reached(litresNeeded(double, 100)).value).toBeCloseTo(28.27, 2);
    expect(reached(litresNeeded({ ...double, outerInsideM: null }, 100)).value).toBeCloseTo(7.07, 2);
    expect(reasonOf(litresNeeded(double, 0))).toBe("science/not-a-length");
    expect(reasonOf(litresNeeded({ ...double, insideM: [0, null] }, 10))).toBe("science/not-a-ring");
  });

  it("still to go is rate by time", () => {
    expect(reached(litresToGo(RULER, 60, 30)).value).toBeCloseTo(reached(litresNeeded(RULER, 30)).value, 9);
    expect(reached(litresToGo(RULER, 60, -5)).value).toBe(0);
    expect(reached(litresToGo(RULER, 0, 30)).value).toBe(0);
    expect(reasonOf(litresToGo(RULER, Number.NaN, 30))).toBe("science/no-number");
    expect(reasonOf(litresToGo(RULER, -1, 30))).toBe("science/no-number");
  });
});

describe("rings to finish first", () => {
  const rings = [
    { id: "a", strip: "mulch", litres: 3 },
    { id: "b", strip: "mulch", litres: 1 },
    { id: "c", strip: "bare", litres: 2 },
    { id: "d", strip: "bare", litres: 8 },
  ];
  const order = (finished: [string, number][], litres: number) =>
    finishFirst(rings, new Map(finished), litres).order.map(({ id, enough }) => (enough ? id : `(${id})`));

  it("are one of each strip in turn, the thriftiest of each", () => {
    expect(order([], 6)).toEqual(["b", "c", "a", "(d)"]);
  });

  it("begin with the strip that has fewest", () => {
    expect(order([["mulch", 2]], 3)).toEqual(["c", "(d)", "b", "(a)"]);
  });

  it("with no water, or water that is no number, are none", () => {
    expect(order([], 0)).toEqual(["(b)", "(c)", "(a)", "(d)"]);
    expect(order([], Number.NaN)).toEqual(["(b)", "(c)", "(a)", "(d)"]);
    expect(finishFirst([], new Map(), 10).order).toEqual([]);
    const unknown = finishFirst([{ id: "x", strip: "s", litres: Number.NaN }], new Map(), 100).order;
    expect(unknown).toMatchObject([{ id: "x", enough: false }]);
  });
});

describe("start gaps", () => {
  const PLAN = [5, 10, 20, 30];
  const MINUTE_MS = 60_000;

  test("rings of one plan start a minute apart", () => {
    const waiting = ["a", "b", "c"].map((id) => ({ id, planMin: PLAN }));
    const starts = reached(startGaps({ nowMs: 1000, running: [], waiting }));
    expect(starts).toEqual([
      { id: "a", startAtMs: 1000 },
      { id: "b", startAtMs: 1000 + MINUTE_MS },
      { id: "c", startAtMs: 1000 + 2 * MINUTE_MS },
    ]);
  });

  test("what runs already is gone round, and what is long past is not", () => {
    const running = [{ id: "r", planMin: [5], startedAtMs: 0 }];
    const at = (nowMs: number) =>
      reached(startGaps({ nowMs, running, waiting: [{ id: "a", planMin: [] }] }))[0]?.startAtMs;
    expect(at(4.5 * MINUTE_MS)).toBe(6 * MINUTE_MS);
    expect(at(4 * MINUTE_MS)).toBe(4 * MINUTE_MS);
    expect(at(5.5 * MINUTE_MS)).toBe(6 * MINUTE_MS);
    expect(at(60 * MINUTE_MS)).toBe(60 * MINUTE_MS);
  });

  test("nothing to start is nothing, and a plan that holds no number is a reason", () => {
    expect(reached(startGaps({ nowMs: 0, running: [], waiting: [] }))).toEqual([]);
    for (const planMin of [[Number.NaN], [1e300], [Number.POSITIVE_INFINITY]]) {
      const bad = { nowMs: 0, running: [], waiting: [{ id: "a", planMin }] };
      expect(reasonOf(startGaps(bad))).toBe("science/not-a-time");
    }
    expect(reasonOf(startGaps({ nowMs: Number.NaN, running: [], waiting: [] }))).toBe("science/not-a-time");
  });
});
