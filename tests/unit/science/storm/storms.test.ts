import { describe, expect, it } from "vitest";
import { failed } from "../../../../src/record/result.ts";
import { MODELS } from "../../../../src/science/infiltration/models/fit.ts";
import { capacityOf } from "../../../../src/science/infiltration/models/line.ts";
import { type RingFits, ringFits } from "../../../../src/science/infiltration/models/ring-fits.ts";
import {
  compositeCurveNumber,
  curveNumberRunoff,
  curveNumberWhen,
} from "../../../../src/science/storm/curve-number.ts";
import { GREEN_AMPT_SOILS, greenAmptOfSoil } from "../../../../src/science/storm/green-ampt-soils.ts";
import { STORM_LIMITS } from "../../../../src/science/storm/limits.ts";
import { constantRain, gaugeRain, shapedRain, triangularRain } from "../../../../src/science/storm/rain.ts";
import { ringInStorm } from "../../../../src/science/storm/ring-in-storm.ts";
import { stripsInStorm } from "../../../../src/science/storm/strips-in-storm.ts";
import { absorb } from "../../../../src/science/storm/time-compression.ts";
import { reached, reasonOf } from "../counts.ts";
import { EXAMPLE, P3_12 } from "../infiltration/published-tests.ts";

const codes = (cautions: readonly { readonly code: string }[]): string[] => cautions.map(({ code }) => code);

/** A ring whose readings lie on a two-term curve, with a little scatter so that it can be judged. */
const ring = (s: number, a: number): RingFits =>
  reached(
    ringFits(
      [2, 5, 10, 20, 30, 45, 60, 90, 120].map((atMin, at) => ({
        atMin,
        mm: s * Math.sqrt(atMin / 60) + (a * atMin) / 60 + (at % 2 === 0 ? 0.02 : -0.02),
      })),
    ),
  );

describe("storms that cannot be", () => {
  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 2001])("%d mm", (mm) => {
    expect(reasonOf(constantRain(mm, 60))).toBe("science/not-a-rain");
    expect(reasonOf(triangularRain(mm, 60, 0.5))).toBe("science/not-a-rain");
    expect(reasonOf(shapedRain(mm, "II"))).toBe("science/not-a-rain");
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("%d min", (minutes) => {
    expect(reasonOf(constantRain(20, minutes))).toBe("science/not-a-time");
    expect(reasonOf(triangularRain(20, minutes, 0.5))).toBe("science/not-a-time");
  });

  it("a peak outside of the storm", () => {
    for (const peak of [-0.1, 1.1, Number.NaN])
      expect(reasonOf(triangularRain(20, 60, peak))).toBe("science/not-a-peak");
    for (const peak of [0, 1]) expect(reached(triangularRain(20, 60, peak)).totalMm).toBeCloseTo(20, 9);
  });
});

describe("the person's own gauge", () => {
  it("takes totals and what fell since the last look, in any order", () => {
    const total = gaugeRain(
      [
        { atMin: 20, mm: 5 },
        { atMin: 0, mm: 0 },
        { atMin: 10, mm: 2 },
      ],
      "total",
    );
    const since = gaugeRain(
      [
        { atMin: 10, mm: 2 },
        { atMin: 20, mm: 3 },
      ],
      "since-last",
    );
    expect(reached(total)).toEqual(reached(since));
    expect(reached(total).cautions).toEqual([]);
  });

  it("says looks that are far apart", () => {
    expect(codes(reached(gaugeRain([{ atMin: 60, mm: 9 }], "total")).cautions)).toEqual([
      "science/gauge-read-seldom",
    ]);
  });

  it("refuses nothing, times twice, water at the beginning, falling totals, no rain", () => {
    expect(reasonOf(gaugeRain([], "total"))).toBe("science/nothing-read");
    expect(
      reasonOf(
        gaugeRain(
          [
            { atMin: 10, mm: 1 },
            { atMin: 10, mm: 2 },
          ],
          "total",
        ),
      ),
    ).toBe("science/not-a-time");
    expect(reasonOf(gaugeRain([{ atMin: 0, mm: 1 }], "total"))).toBe("science/not-a-time");
    expect(reasonOf(gaugeRain([{ atMin: -5, mm: 1 }], "total"))).toBe("science/not-a-time");
    expect(
      reasonOf(
        gaugeRain(
          [
            { atMin: 5, mm: 3 },
            { atMin: 9, mm: 1 },
          ],
          "total",
        ),
      ),
    ).toBe("science/gauge-went-down");
    expect(reasonOf(gaugeRain([{ atMin: 5, mm: -3 }], "since-last"))).toBe("science/not-a-rain");
    expect(reasonOf(gaugeRain([{ atMin: 5, mm: 0 }], "total"))).toBe("science/not-a-rain");
  });
});

describe("time compression", () => {
  const rain = reached(constantRain(30, 60));

  it("all soaks in while the rain stays below what the soil takes, to the last crumb", () => {
    const storm = absorb(rain, capacityOf({ kind: "two-term", s: 0, a: 30 }), []);
    expect(storm).toMatchObject({
      pondsAtMin: null,
      pondsAtMm: null,
      ranOffMm: 0,
      soakedMm: 30,
      pondedMin: 0,
    });
  });

  it("soil that takes just what falls runs nothing off, read in whatever steps", () => {
    const soil = capacityOf({ kind: "step", atOnceMm: 1, mmPerH: 0 });
    const late = reached(gaugeRain([{ atMin: 30, mm: 1 }], "since-last"));
    for (let step = 1; step <= 29; step++) {
      const wanted = Array.from({ length: 30 }, (_, at) => (at + 1) * step);
      const storm = absorb(late, soil, wanted);
      expect(storm).toMatchObject({ soakedMm: 1, ranOffMm: 0, pondsAtMin: null, pondedMin: 0 });
      expect(storm.moments.every(({ ranOffMm }) => ranOffMm === 0)).toBe(true);
    }
    const odd = absorb(reached(constantRain(1.0000000000000022, 5.000000000000006)), soil, []);
    expect(odd).toMatchObject({ ranOffMm: 0, pondsAtMin: null, pondsAtMm: null });
  });

  it("soil that fills up takes no more", () => {
    const storm = absorb(rain, capacityOf({ kind: "step", atOnceMm: 12, mmPerH: 0 }), [60]);
    expect(storm.soakedMm).toBeCloseTo(12, 9);
    expect(storm.pondsAtMin).toBeCloseTo(24, 9);
    expect(
      absorb(rain, capacityOf({ kind: "horton", f0: 60, fc: 0, k: 5 }), []).soakedMm,
    ).toBeLessThanOrEqual(12);
  });

  it("a break in the rain ends the ponding, and what soaked in is remembered", () => {
    const bursts = reached(
      gaugeRain(
        [
          { atMin: 10, mm: 15 },
          { atMin: 20, mm: 15 },
          { atMin: 30, mm: 30 },
        ],
        "total",
      ),
    );
    const soil = capacityOf({ kind: "two-term", s: 20, a: 5 });
    const storm = absorb(bursts, soil, [10, 20, 30]);
    expect(storm.moments[0]?.soakedMm).toBe(storm.moments[1]?.soakedMm);
    // The second burst finds wet soil: it ponds at once and goes on along the curve.
    const at10 = storm.moments[0]?.soakedMm ?? 0;
    expect(storm.soakedMm).toBeCloseTo(soil.depthAt(soil.hoursAt(at10) + 10 / 60), 9);
  });
});

describe("one ring", () => {
  it("is run on the chosen model, and on every other beside it", () => {
    const fits = reached(ringFits(EXAMPLE));
    const storm = ringInStorm(fits, reached(shapedRain(100, "II")), [720]);
    expect(storm.model).toBe("horton");
    expect(storm.byModel.map(({ model }) => model)).toEqual([...MODELS]);
    expect(storm.moments).toHaveLength(1);
    expect(codes(storm.cautions)).toEqual(["science/storm-shape-of-one-country", ...codes(STORM_LIMITS)]);
    expect(storm.methods).toEqual(expect.arrayContaining(["fit-horton", "time-compression"]));
  });

  it("says when the storm goes deeper than the test did", () => {
    const storm = ringInStorm(reached(ringFits(P3_12)), reached(constantRain(60, 24 * 60)), []);
    expect(storm.cautions[0]).toEqual({ code: "science/storm-beyond-readings", facts: { mm: 12.9 } });
  });

  it("always says what a ring cannot know", () => {
    expect(codes(STORM_LIMITS)).toEqual([
      "science/storm-ring-is-a-point",
      "science/storm-no-slope",
      "science/storm-no-crusting",
      "science/storm-flooding-reads-high",
      "science/storm-small-ring-overstates",
      "science/not-for-design",
    ]);
  });
});

describe("strips", () => {
  const slow = [ring(10, 3), ring(12, 4), ring(14, 5)];
  const fast = [ring(30, 20), ring(35, 25), ring(50, 30)];
  const rings = [...slow, ...fast].map((fits, at) => ({
    id: String(at),
    strip: at < 3 ? "mulched" : "bare",
    fits,
  }));

  it("the slower strip runs off first, with its rings and its range", () => {
    const { order, cautions } = reached(stripsInStorm(rings, reached(constantRain(60, 60))));
    expect(order.map(({ strip, place }) => [strip, place])).toEqual([
      ["mulched", 1],
      ["bare", 2],
    ]);
    const [first] = order;
    expect(first?.aheadOfNext).toEqual({ pairs: 9, first: 9, clear: true });
    expect(first?.soaked.n).toBe(3);
    const range = reached(first?.soaked.range ?? failed("science/nothing-read"));
    expect(codes(first?.soaked.cautions ?? [])[0]).toBe("science/storm-range-too-narrow");
    expect(range.lower).toBeGreaterThanOrEqual(0);
    expect(range.upper).toBeLessThanOrEqual(60);
    expect((first?.soaked.value ?? 0) + (first?.ranOff.value ?? 0)).toBeCloseTo(60, 9);
    expect(first?.runsOffAtMin).toBe(
      first?.rings.map(({ storm }) => storm.pondsAtMin ?? 0).sort((a, b) => a - b)[1],
    );
    expect(codes(cautions)).not.toContain("science/storm-order-not-clear");
  });

  it("rings that do not agree make the order unclear, and few rings give no range", () => {
    const mixed = [slow[0], fast[2], slow[1], fast[1]].flatMap((fits, at) =>
      fits === undefined ? [] : [{ id: String(at), strip: at < 2 ? "a" : "b", fits }],
    );
    const { order, cautions } = reached(stripsInStorm(mixed, reached(constantRain(60, 60))));
    expect(codes(cautions)).toContain("science/storm-order-not-clear");
    expect(reasonOf(order[0]?.soaked.range ?? failed("science/nothing-read"))).toBe("science/too-few-rings");
  });

  it("a storm that soaks in everywhere: a shared place, no range, and that is said", () => {
    const { order, cautions } = reached(stripsInStorm(rings, reached(constantRain(2, 60))));
    expect(
      order.map(({ place, runsOffAtMin, ringsRunningOff }) => [place, runsOffAtMin, ringsRunningOff]),
    ).toEqual([
      [1, null, 0],
      [1, null, 0],
    ]);
    expect(cautions[0]?.code).toBe("science/storm-all-soaks-in");
    expect(order.map(({ soaked }) => reasonOf(soaked.range))).toEqual([
      "science/rings-all-alike",
      "science/rings-all-alike",
    ]);
  });

  it("two of four rings that run off give no middle time: more than half have to", () => {
    const four = [slow[0], slow[1], fast[1], fast[2]].flatMap((fits, at) =>
      fits === undefined ? [] : [{ id: String(at), strip: "a", fits }],
    );
    const [strip] = reached(stripsInStorm(four, reached(constantRain(20, 60)))).order;
    expect([strip?.ringsRunningOff, strip?.runsOffAtMin]).toEqual([2, null]);
  });

  it("more than half of the rings have to run off for a strip to have a time", () => {
    const one = [slow[0], fast[1], fast[2]].flatMap((fits, at) =>
      fits === undefined ? [] : [{ id: String(at), strip: "a", fits }],
    );
    const [strip] = reached(stripsInStorm(one, reached(constantRain(20, 60)))).order;
    expect([strip?.ringsRunningOff, strip?.runsOffAtMin, strip?.aheadOfNext]).toEqual([1, null, null]);
  });

  it("no rings", () => {
    expect(reasonOf(stripsInStorm([], reached(constantRain(60, 60))))).toBe("science/nothing-read");
  });
});

describe("soils by texture and curve numbers", () => {
  it("refuse what cannot be", () => {
    expect(reasonOf(greenAmptOfSoil({ ...GREEN_AMPT_SOILS.loam, suctionMm: 0 }, 0.3))).toBe(
      "science/not-a-soil",
    );
    expect(reasonOf(greenAmptOfSoil({ ...GREEN_AMPT_SOILS.loam, effectivePorosity: 1 }, 0.3))).toBe(
      "science/not-a-soil",
    );
    for (const share of [-0.1, 1, Number.NaN])
      expect(reasonOf(greenAmptOfSoil(GREEN_AMPT_SOILS.loam, share))).toBe("science/not-a-filled-share");
    for (const number of [0, -1, 101, Number.NaN]) {
      expect(reasonOf(curveNumberRunoff(50, number))).toBe("science/not-a-curve-number");
      expect(reasonOf(curveNumberWhen(number, "wet"))).toBe("science/not-a-curve-number");
      expect(reasonOf(compositeCurveNumber([{ area: 1, curveNumber: number }]))).toBe(
        "science/not-a-curve-number",
      );
    }
    expect(reasonOf(curveNumberRunoff(-1, 75))).toBe("science/not-a-rain");
    expect(reasonOf(compositeCurveNumber([]))).toBe("science/nothing-read");
    expect(reasonOf(compositeCurveNumber([{ area: 0, curveNumber: 75 }]))).toBe("science/not-an-area");
  });

  it("nothing runs off up to a fifth of what the ground holds, all of it at 100", () => {
    expect(reached(curveNumberRunoff(16.9, 75)).value).toBe(0);
    expect(reached(curveNumberRunoff(50, 100)).value).toBe(50);
    expect(reached(curveNumberWhen(75, "average")).value).toBe(75);
  });
});
