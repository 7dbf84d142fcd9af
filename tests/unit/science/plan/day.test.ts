import { describe, expect, it } from "vitest";
import { type DayMeans, dayPlan, type TestCosts, USUAL_MINUTES } from "../../../../src/science/plan/day.ts";
import { holesShow, linesShow } from "../../../../src/science/plan/day-shows.ts";
import { walkingOrder } from "../../../../src/science/plan/walking-order.ts";
import { reached, reasonOf } from "../counts.ts";
import { nearEquator } from "../position/places.ts";

const MEANS: DayMeans = { hours: 6, people: 2, litres: 60, strips: 2, ringsAtHand: 4 };
const COSTS: TestCosts = { ...USUAL_MINUTES, litresPerRing: 2, marksPerLine: 100, holeAreaM2: 0.04 };

describe("what fits into a day", () => {
  it("adds up as by hand", () => {
    // 720 minutes of hands; one of each on two strips is 24 + 38 + 38 = 100: seven rounds, 20 minutes left, in
    // which neither a line (24) nor anything else fits. Rings: 4 rounds of 75 minutes by 4 rings are 8 a strip.
    const plan = reached(dayPlan(MEANS, COSTS, ["rings", "lines", "holes"]));
    expect(plan).toMatchObject({
      perStrip: { lines: 7, holes: 7, rings: 7 },
      handMinutes: 700,
      handMinutesLeft: 20,
      litres: 28,
      ringsHeldBy: "hands",
      cautions: [],
    });
  });

  it("is held by water, by rings at hand, or by nothing", () => {
    const held = (changed: Partial<DayMeans>) => reached(dayPlan({ ...MEANS, ...changed }, COSTS, ["rings"]));
    expect(held({ litres: 13 })).toMatchObject({ perStrip: { rings: 3 }, ringsHeldBy: "water" });
    expect(held({ ringsAtHand: 2 })).toMatchObject({ perStrip: { rings: 4 }, ringsHeldBy: "rings-at-hand" });
    expect(held({ ringsAtHand: 10, litres: 200 })).toMatchObject({
      perStrip: { rings: 10 },
      ringsHeldBy: null,
    });
    expect(reached(dayPlan(MEANS, COSTS, ["lines"])).ringsHeldBy).toBeNull();
  });

  it("gives the test wanted first its three before another begins", () => {
    // 100 minutes: three lines on two strips take 72, three holes 114.
    const means = { ...MEANS, hours: 100 / 120 };
    expect(reached(dayPlan(means, COSTS, ["lines", "holes"])).perStrip).toMatchObject({ lines: 4, holes: 0 });
    const holesFirst = reached(dayPlan({ ...MEANS, hours: 1 }, COSTS, ["holes", "lines"]));
    expect(holesFirst.perStrip).toMatchObject({ holes: 3, lines: 0 });
    expect(holesFirst.cautions).toEqual([
      { code: "science/too-few-for-a-range", facts: { test: "lines", has: 0, needs: 3 } },
    ]);
  });

  it("stops where there are enough lines: nine for give or take 5 points at 100 marks", () => {
    // t₈ = 2.306 (NIST): 2.306·6.25/√9 = 4.8 points; with eight 2.365·6.25/√8 = 5.2.
    expect(reached(dayPlan({ ...MEANS, hours: 24 }, COSTS, ["lines"])).perStrip.lines).toBe(9);
  });

  it("says what they can show, and why they cannot", () => {
    const { shows } = reached(dayPlan(MEANS, COSTS, ["lines", "holes", "rings"]));
    // t₆ = 2.447 (NIST): 2.447·6.25/√7 = 5.78 points.
    expect(reached(shows.lines ?? linesShow(0, 100)).giveOrTake).toBeCloseTo(0.0578, 4);
    // √(1/9 + 1/2) = 0.7817 of the mean: 2.447·0.7817/√7 = 0.723.
    expect(reached(shows.holes ?? holesShow(0, 0.04)).giveOrTake).toBeCloseTo(0.723, 3);
    expect(shows.rings).toMatchObject({ ok: true });
    const nothing = reached(dayPlan({ ...MEANS, hours: 0 }, COSTS, ["lines", "rings"]));
    expect(nothing.perStrip).toEqual({ lines: 0, holes: 0, rings: 0 });
    expect(nothing.shows.holes).toBeNull();
    expect(nothing.shows.lines).toMatchObject({ problem: { code: "science/too-few-lines" } });
    expect(nothing.shows.rings).toMatchObject({ problem: { code: "science/too-few-rings" } });
    expect(nothing.cautions).toHaveLength(2);
  });

  it("has reasons", () => {
    const reason = (means: Partial<DayMeans>, costs: Partial<TestCosts> = {}) =>
      reasonOf(dayPlan({ ...MEANS, ...means }, { ...COSTS, ...costs }, ["lines"]));
    for (const hours of [-1, 25, Number.NaN]) expect(reason({ hours })).toBe("science/not-a-day");
    expect(reason({ people: 0 })).toBe("science/not-a-count");
    expect(reason({ strips: 1.5 })).toBe("science/not-a-count");
    expect(reason({ ringsAtHand: -1 })).toBe("science/not-a-count");
    expect(reason({ litres: Number.NaN })).toBe("science/no-number");
    expect(reason({}, { lineMinutes: 0 })).toBe("science/not-minutes");
    expect(reason({}, { walkMinutes: -1 })).toBe("science/not-minutes");
    expect(reason({}, { ringRunMinutes: Number.POSITIVE_INFINITY })).toBe("science/not-minutes");
    expect(reason({}, { litresPerRing: 0 })).toBe("science/no-number");
    expect(reason({}, { marksPerLine: 0 })).toBe("science/no-marks-read");
    expect(reason({}, { holeAreaM2: 0 })).toBe("science/no-number");
    expect(reasonOf(dayPlan(MEANS, COSTS, []))).toBe("science/nothing-wanted");
    expect(reasonOf(holesShow(5, Number.NaN))).toBe("science/no-number");
  });
});

describe("walking order", () => {
  const at = (...rows: readonly (readonly number[])[]) => nearEquator(rows);
  const start = { latitudeDeg: 0, longitudeDeg: 0 };

  it("goes straight along a line, and round a square", () => {
    const line = reached(walkingOrder(start, at([300, 0], [100, 0], [200, 0]), false));
    expect(line).toMatchObject({ order: [1, 2, 0], exact: true, lengthM: expect.closeTo(300, 0) });
    expect(reached(walkingOrder(start, at([300, 0], [100, 0], [200, 0]), true)).lengthM).toBeCloseTo(600, 0);
    const square = reached(walkingOrder(start, at([100, 100], [100, 0], [0, 100]), true));
    expect(square.lengthM).toBeCloseTo(400, 0);
    expect(square.order[1]).toBe(0);
  });

  it("stays well behaved with many spots", () => {
    // Forty spots on a circle: the way round is the shortest, 40 chords of 2·500·sin(π/40) from the first of them.
    const spots = at(
      ...Array.from({ length: 40 }, (_, k) => {
        const angle = (2 * Math.PI * ((k * 17) % 40)) / 40;
        return [500 * Math.cos(angle), 500 * Math.sin(angle)];
      }),
    );
    const [first, ...others] = spots;
    if (first === undefined) throw new Error("no spot");
    const round = reached(walkingOrder(first, others, true));
    expect(round.exact).toBe(false);
    expect(Math.abs(round.lengthM / (40 * 1000 * Math.sin(Math.PI / 40)) - 1)).toBeLessThan(0.001);
    expect(walkingOrder(first, others, true)).toEqual(walkingOrder(first, others, true));
  });

  it("takes none, one, and all on one spot", () => {
    expect(reached(walkingOrder(start, [], true))).toMatchObject({ order: [], lengthM: 0, exact: true });
    expect(reached(walkingOrder(start, at([0, 50]), true)).lengthM).toBeCloseTo(100, 0);
    const heap = reached(
      walkingOrder(
        start,
        Array.from({ length: 30 }, () => start),
        true,
      ),
    );
    expect(new Set(heap.order).size).toBe(30);
    expect(heap.lengthM).toBe(0);
  });

  it("has reasons", () => {
    expect(reasonOf(walkingOrder(start, [{ latitudeDeg: Number.NaN, longitudeDeg: 0 }], false))).toBe(
      "science/not-a-place",
    );
    expect(reasonOf(walkingOrder(start, [{ latitudeDeg: 2, longitudeDeg: 0 }], false))).toBe(
      "science/too-far-to-walk",
    );
    expect(
      reasonOf(
        walkingOrder(
          start,
          Array.from({ length: 301 }, () => start),
          false,
        ),
      ),
    ).toBe("science/too-many-places");
  });
});
