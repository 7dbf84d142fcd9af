import { describe, expect, it } from "vitest";
import { readRing } from "../../../../src/record/ring/reading.ts";
import { depthAfter, HEADLINE_MINUTES } from "../../../../src/science/infiltration/depth-after.ts";
import { lastStretch, rateOfLastHalfHour } from "../../../../src/science/infiltration/last-stretch.ts";
import { lastThree, levellingOf } from "../../../../src/science/infiltration/levelling.ts";
import { ringRate } from "../../../../src/science/infiltration/ring-rate.ts";
import { sideFlow } from "../../../../src/science/infiltration/side-flow.ts";
import { soakingOf } from "../../../../src/science/infiltration/soaking.ts";
import { gone, happened, level, notebook, PHONE, pour, start } from "../../record/ring-entries.ts";
import { reached, reasonOf } from "../counts.ts";
import { KEPT, mlOf, POURS, poured, RULER, rounded, ruled, soakingFrom, topped } from "./rings.ts";

const every = (stepMin: number, toMin: number, mmAt: (min: number) => number) =>
  Array.from({ length: Math.round(toMin / stepMin) }, (_, at): [number, number] => {
    const min = (at + 1) * stepMin;
    return [min, mmAt(min)];
  });
/** Two-term curve; its steady rate is 60·a mm/h. */
const twoTerm =
  (s: number, a: number) =>
  (min: number): number =>
    s * Math.sqrt(min) + a * min;

describe("depth after 30, 60 and 180 minutes", () => {
  const soaking = ruled([
    [20, 20],
    [40, 30],
    [70, 42],
  ]);

  it("lies straight between the readings around that moment", () => {
    expect(HEADLINE_MINUTES).toEqual([30, 60, 180]);
    const half = reached(depthAfter(soaking, 30));
    expect(half).toMatchObject({ value: 25, unit: "mm", n: 3, sampledBy: "readings" });
    expect(reasonOf(half.range)).toBe("science/one-ring-only");
    expect(reached(depthAfter(soaking, 60)).value).toBeCloseTo(38, 9);
    expect(reached(depthAfter(soaking, 70)).value).toBe(42);
  });

  it("is never given beyond the last reading", () => {
    expect(reasonOf(depthAfter(soaking, 70.01))).toBe("science/not-so-long-yet");
    expect(reasonOf(depthAfter(soaking, 180))).toBe("science/not-so-long-yet");
    expect(reasonOf(depthAfter(ruled([]), 30))).toBe("science/not-so-long-yet");
  });

  it("is not given over a stretch that does not count", () => {
    const leaked = soakingFrom(({ write }) => {
      write(0, level(100));
      write(20, level(80));
      write(40, level(40));
      write(41, happened("leaked"), PHONE, 25);
    });
    expect(reached(depthAfter(leaked, 15)).value).toBe(15);
    expect(depthAfter(leaked, 30)).toEqual({
      ok: false,
      problem: { code: "science/curve-broken", facts: { minutes: 30, reachedMin: 20 } },
    });
  });

  it.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY])("is not asked for %d minutes", (minutes) => {
    expect(reasonOf(depthAfter(soaking, minutes))).toBe("science/not-a-time");
  });
});

describe("rate of the last half hour", () => {
  it("is what soaked in over the last thirty minutes, also from the middle of a stretch", () => {
    const soaking = ruled([
      [20, 40],
      [40, 60],
      [60, 70],
    ]);
    // 10 of the 20 minutes before it, 10 mm, and the last 20 minutes, 10 mm: 20 mm in half an hour.
    expect(reached(rateOfLastHalfHour(soaking))).toMatchObject({ value: 40, unit: "mm/h", n: 2 });
  });

  it("leaves out the while of a refill", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, level(100));
      write(19, level(81));
      write(20, level(100, { afterRefill: true }));
      write(30, level(90));
    });
    expect(reached(rateOfLastHalfHour(soaking)).value).toBeCloseTo(60, 9);
  });

  it("wants half an hour without a break, and never reaches into the wetting", () => {
    expect(reasonOf(rateOfLastHalfHour(ruled([[29, 20]])))).toBe("science/no-half-hour-yet");
    expect(reasonOf(rateOfLastHalfHour(ruled([])))).toBe("science/no-half-hour-yet");
    expect(reasonOf(rateOfLastHalfHour(poured([40, 20])))).toBe("science/no-half-hour-yet");
    expect(reached(rateOfLastHalfHour(poured([40, 40]))).value).toBeCloseTo(38.1, 6);
  });

  it("ends before a leak", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, level(100));
      write(40, level(60));
      write(50, level(10));
      write(51, happened("leaked"), PHONE, 41);
    });
    expect(lastStretch(soaking)).toHaveLength(1);
    expect(reached(rateOfLastHalfHour(soaking)).value).toBe(60);
  });
});

describe("levelled off", () => {
  it("is a rate that is the same over the last third of the test", () => {
    const steady = ruled(every(5, 60, (min) => 8 * min));
    const levelling = reached(levellingOf(steady));
    expect(levelling).toMatchObject({ status: "levelled-off", because: [], moreMin: { value: 0 } });
    expect(levelling.rate).toMatchObject({ unit: "mm/h", n: 3, sampledBy: "intervals" });
    expect(levelling.rate.value).toBeCloseTo(480, 9);
    const spans = lastThree(steady).map(({ fromMin, toMin }) => [fromMin, toMin]);
    expect(spans).toEqual([
      [40, 45],
      [45, 55],
      [55, 60],
    ]);
  });

  it("takes the last three readings where they span enough by themselves", () => {
    const three = lastThree(ruled(every(20, 120, (min) => 3 * min)));
    expect(three.map(({ fromMin }) => fromMin)).toEqual([60, 80, 100]);
  });

  it("is still slowing while the rates differ, with the pooled rate and how long it would take", () => {
    const curve = twoTerm(40, 0.5);
    const slow = reached(levellingOf(topped(every(10, 60, curve))));
    expect(slow.status).toBe("still-slowing");
    expect(slow.because).toEqual(["rates-differ"]);
    expect(slow.rate.value).toBeCloseTo((60 * (curve(60) - curve(30))) / 30, 6);
    // T = (0.19015·40/0.5)² = 231.4 min.
    expect(reached(slow.moreMin)).toBeCloseTo(231.4 - 60, 1);
  });

  it("of rates that differ without slowing down says so", () => {
    const scattered = topped([
      [10, 10],
      [20, 20],
      [30, 32],
      [40, 42],
    ]);
    const levelling = reached(levellingOf(scattered));
    expect(levelling.because).toEqual(["rates-differ"]);
    expect(reasonOf(levelling.moreMin)).toBe("science/rates-scatter");
  });

  it("of a pure √t curve is never called, and no end is in sight", () => {
    const levelling = reached(levellingOf(topped(every(5, 60, (min) => 20 * Math.sqrt(min)))));
    expect(levelling.status).toBe("still-slowing");
    expect(["science/not-levelling-yet", "science/levels-not-in-a-day"]).toContain(
      reasonOf(levelling.moreMin),
    );
  });

  it("cannot be told with drops of few steps of the ruler", () => {
    const levelling = reached(levellingOf(ruled(every(10, 60, (min) => min / 2))));
    expect(levelling.status).toBe("cannot-tell");
    expect(levelling.because).toEqual(["small-drops"]);
    expect(levelling.rate.cautions).toContainEqual({
      code: "science/drops-too-small",
      facts: { steps: 20, mm: 20 },
    });
    expect(reasonOf(levelling.moreMin)).toBe("science/drops-too-small");
    // A finer ruler can: the same readings in steps of a quarter of a millimetre.
    const fine = ruled(
      every(10, 60, (min) => min / 2),
      { ...RULER, stepMm: 0.25 },
    );
    expect(reached(levellingOf(fine)).status).toBe("levelled-off");
  });

  it("wants a third of the time run, also when the rates agree", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, pour(mlOf(50)));
      write(60, pour(mlOf(50)));
      write(61, happened("bumped"), PHONE, 30);
      for (const min of [65, 70, 75]) write(min, pour(mlOf(4)));
    }, KEPT);
    const levelling = reached(levellingOf(soaking));
    expect(levelling.because).toEqual(["too-short-a-span"]);
    // The three begin at 60 min; from 90 min on they span a third.
    expect(reached(levelling.moreMin)).toBeCloseTo(15, 9);
  });

  it("does not compare a short interval with one many times as long", () => {
    const levelling = reached(
      levellingOf(
        topped([
          [10, 10],
          [11, 11],
          [12, 12],
        ]),
      ),
    );
    expect(levelling.because).toEqual(["uneven-intervals"]);
  });

  it("of measured pours goes by the pours behind the wetting", () => {
    expect(reasonOf(levellingOf(poured([5, 10, 10])))).toBe("science/too-few-intervals");
    const levelling = reached(levellingOf(poured([5, 10, 10, 10])));
    expect(levelling.status).toBe("levelled-off");
    expect(levelling.rate.value).toBeCloseTo(152.4, 6);
  });

  it("wants three intervals, and gives no number that is none when nothing soaks in", () => {
    expect(
      reasonOf(
        levellingOf(
          ruled([
            [10, 20],
            [20, 40],
          ]),
        ),
      ),
    ).toBe("science/too-few-intervals");
    const nothing = reached(
      levellingOf(
        ruled([
          [10, 0],
          [20, 0],
          [30, 0],
        ]),
      ),
    );
    expect(nothing).toMatchObject({ status: "cannot-tell", spread: null, rates: [0, 0, 0] });
    const dry = reached(
      levellingOf(
        topped([
          [10, 0],
          [20, 0],
          [30, 0],
        ]),
      ),
    );
    expect(dry).toMatchObject({ status: "levelled-off", spread: null });
  });
});

describe("the rate of a ring", () => {
  it("of measured pours is that of the last one behind the wetting that drained", () => {
    expect(reached(ringRate(poured([5, 12])))).toMatchObject({ from: "drained-pour", censored: false });
    expect(reached(ringRate(poured([5, 12]))).mmPerH).toBeCloseTo(127, 6);
    expect(reasonOf(ringRate(poured([5])))).toBe("science/only-wetting");
  });

  it("of a pour that did not drain is what soaked in so far, as censored", () => {
    const undrained = (left: number | null) =>
      soakingFrom(({ write }) => {
        write(0, pour(mlOf(25)));
        write(5, gone);
        write(5.5, pour(mlOf(25)));
        if (left !== null) write(65.5, level(left));
      }, POURS);
    const partial = reached(ringRate(undrained(10)));
    expect(partial).toMatchObject({ from: "undrained-pour", censored: true });
    expect(partial.mmPerH).toBeCloseTo(15, 6);
    expect(partial.leastMmPerH).toBeCloseTo(1, 6);
    expect(reasonOf(ringRate(undrained(null)))).toBe("science/undrained-unread");
  });

  it("of a ruler is pooled over the last three intervals, or over what there is", () => {
    expect(reached(ringRate(ruled(every(20, 120, (min) => 3 * min))))).toMatchObject({
      from: "last-three",
      status: "levelled-off",
    });
    const few = reached(
      ringRate(
        ruled([
          [10, 20],
          [30, 40],
        ]),
      ),
    );
    expect(few).toMatchObject({ from: "last-readings", status: null });
    expect(few.mmPerH).toBeCloseTo(80, 9);
    expect(reasonOf(ringRate(ruled([])))).toBe("science/nothing-soaked-yet");
  });
});

describe("side flow of a double ring", () => {
  const set = { ...KEPT, insideM: [0.3, null], outerInsideM: [0.6, null], innerOutsideM: 0.3 } as const;
  const flow = (innerMl: number, outerMl: number, outerFromMin = 0) => {
    const { entries, write } = notebook();
    write(0, start);
    write(0, pour(5000));
    write(outerFromMin, pour(15_000, "outer"));
    for (const min of [15, 30]) {
      write(min, pour(innerMl));
      write(min + outerFromMin, pour(outerMl, "outer"));
    }
    const reading = readRing(entries);
    return sideFlow(reached(soakingOf(reading, set)), reached(soakingOf(reading, set, "outer")));
  };

  it("is the rate between the rings over the rate inside", () => {
    const said = reached(flow(350, 1500));
    expect(rounded([said.value])).toEqual([1.429]);
    expect(said.cautions).toEqual([]);
    const sideways = reached(flow(350, 3000));
    expect(sideways.cautions).toEqual([{ code: "science/side-flow", facts: { ratio: 2.9 } }]);
  });

  it("goes by the time that both were read", () => {
    expect(reached(flow(350, 1500, 10)).value).toBeCloseTo(reached(flow(350, 1500)).value, 9);
    expect(reasonOf(flow(350, 1500, 100))).toBe("science/rings-not-read-together");
    expect(reasonOf(flow(0, 1500))).toBe("science/nothing-soaked-yet");
  });
});
