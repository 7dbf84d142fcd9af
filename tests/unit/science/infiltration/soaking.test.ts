import { describe, expect, it, test } from "vitest";
import { readRing } from "../../../../src/record/ring/reading.ts";
import { rateOf } from "../../../../src/science/infiltration/pieces.ts";
import { type Soaking, soakingOf } from "../../../../src/science/infiltration/soaking.ts";
import {
  down,
  gone,
  happened,
  level,
  look,
  notebook,
  PHONE,
  pour,
  start,
} from "../../record/ring-entries.ts";
import { reached, reasonOf } from "../counts.ts";
import { FROM_RIM, KEPT, mlOf, POURS, poured, RULER, rounded, ruled, soakingFrom } from "./rings.ts";

const depths = ({ curve }: Soaking): number[] => rounded(curve.map(({ mm }) => mm));
const codes = ({ cautions }: Soaking): string[] => cautions.map(({ code }) => code);
const rates = ({ pieces }: Soaking): number[] => rounded(pieces.map(rateOf), 2);

describe("a ruler in the ring", () => {
  it("adds up the drops", () => {
    const soaking = ruled([
      [5, 8],
      [10, 14],
    ]);
    expect(soaking.curve).toEqual([
      { atMin: 0, mm: 0 },
      { atMin: 5, mm: 8 },
      { atMin: 10, mm: 14 },
    ]);
    expect(rates(soaking)).toEqual([96, 72]);
    expect(codes(soaking)).toEqual([]);
  });

  it("reads the same from the rim down as from the ground up", () => {
    const points = [
      [5, 8],
      [10, 14],
    ] as const;
    expect(depths(ruled(points, FROM_RIM))).toEqual(depths(ruled(points)));
  });

  it("starts anew after a refill, and joins a refill of up to a minute", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, level(100));
      write(10, level(60));
      write(11, level(100, { afterRefill: true }));
      write(21, level(70));
    });
    expect(depths(soaking)).toEqual([0, 40, 40, 70]);
    expect(soaking.pieces.map(({ kind }) => kind)).toEqual(["soak", "refill", "soak"]);
  });

  it("breaks at a refill that took longer, unless the water was measured", () => {
    const slow = (ml: number | null) =>
      soakingFrom(({ write }) => {
        write(0, level(100));
        write(10, level(60));
        if (ml !== null) write(12, pour(ml));
        write(14, level(95, { afterRefill: true }));
        write(24, level(70));
      });
    const unseen = slow(null);
    expect(unseen.brokenBy).toBe("refill-unseen");
    expect(depths(unseen)).toEqual([0, 40]);
    expect(codes(unseen)).toEqual(["science/ring-refill-unseen"]);
    // 60 + 50 − 95 = 15 mm went in while it was filled.
    expect(depths(slow(mlOf(50)))).toEqual([0, 40, 55, 80]);
  });

  it("counts measured water between two levels without a word on the refill", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, level(50));
      write(5, pour(mlOf(30)));
      write(10, level(45));
    });
    expect(depths(soaking)).toEqual([0, 35]);
  });

  it("lets one step up pass, and asks about more", () => {
    expect(
      codes(
        ruled([
          [5, 8],
          [10, 7],
          [15, 12],
        ]),
      ),
    ).toEqual([]);
    const rose = ruled([
      [5, 8],
      [10, 14],
      [15, 2],
      [20, 6],
      [25, 10],
    ]);
    expect(rose.brokenBy).toBe("level-rose");
    expect(codes(rose)).toEqual(["science/ring-level-rose"]);
  });

  it("notices the ruler that is read the other way round", () => {
    const turned = soakingFrom(({ write }) => {
      write(0, level(10));
      write(5, level(18));
      write(10, level(24));
      write(10.5, level(10, { afterRefill: true }));
    });
    expect(codes(turned)).toContain("science/ruler-wrong-way");
    const right = soakingFrom(({ write }) => {
      write(0, down(10));
      write(5, down(18));
      write(10, down(24));
      write(10.5, down(10, { afterRefill: true }));
    }, FROM_RIM);
    expect(codes(right)).toEqual([]);
  });

  it("compares both scales where the rim was measured, and not where it was not", () => {
    const mixed = (rimToSoilM: readonly number[]) =>
      soakingFrom(
        ({ write }) => {
          write(0, level(60));
          write(5, down(60));
        },
        { ...RULER, rimToSoilM },
      );
    expect(depths(mixed([0.11]))).toEqual([0, 10]);
    expect(mixed([]).brokenBy).toBe("levels-unlike");
  });

  it("does not count down to a level of nothing, but does to the moment it was gone", () => {
    const empty = soakingFrom(({ write }) => {
      write(0, level(20));
      write(5, level(0));
      write(10, level(0));
    });
    expect(empty.pieces.map(({ leftOut }) => leftOut)).toEqual(["ran-dry", "ran-dry"]);
    const seen = soakingFrom(({ write }) => {
      write(0, level(20));
      write(5, gone);
    });
    expect(depths(seen)).toEqual([0, 20]);
  });

  it("puts readings of one moment into the next stretch", () => {
    const soaking = ruled([
      [5, 8],
      [5, 9],
      [10, 14],
    ]);
    expect(depths(soaking)).toEqual([0, 8, 14]);
    const jumped = ruled([
      [5, 8],
      [5, 2],
      [10, 14],
    ]);
    expect(jumped.brokenBy).toBe("level-rose");
  });
});

describe("measured pours", () => {
  it("are volume over the measured area, the first one wetting", () => {
    const { pours, curve } = poured([10, 20]);
    expect(pours.map(({ wetting, drained }) => [wetting, drained])).toEqual([
      [true, true],
      [false, true],
    ]);
    expect(rounded(pours.map(({ mmPerH }) => mmPerH ?? 0))).toEqual([152.4, 76.2]);
    expect(rounded(curve.map(({ mm }) => mm))).toEqual([0, 25.4, 25.4, 50.8]);
  });

  it("break the curve when the ring stood empty for more than a minute", () => {
    const late = poured([10, 20], 5);
    expect(late.brokenBy).toBe("dry");
    expect(codes(late)).toEqual([]);
    expect(late.pours[1]?.mmPerH).toBeCloseTo(76.2, 6);
  });

  it("that did not drain keep what is left, and what soaked in so far", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, pour(mlOf(25)));
      write(5, gone);
      write(5.5, pour(mlOf(25)));
      write(65.5, level(10));
    }, POURS);
    expect(soaking.pours[1]).toMatchObject({ drained: false, wetting: false });
    expect(soaking.pours[1]?.leftMm).toBeCloseTo(10, 9);
    expect(soaking.pours[1]?.mmPerH).toBeCloseTo(15, 6);
  });

  it("from several bottles are one pour until it is gone", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, pour(mlOf(10)));
      write(0.4, pour(mlOf(15)));
      write(10, gone);
    }, POURS);
    expect(soaking.pours).toHaveLength(1);
    expect(soaking.pours[0]?.pouredMm).toBeCloseTo(25, 9);
  });

  it("leave out a level right after the water, which the bottle knows better", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, pour(mlOf(25)));
      write(0.2, level(23, { afterRefill: true }));
      write(10, gone);
    }, POURS);
    expect(depths(soaking)).toEqual([0, 25]);
  });
});

describe("kept at one level", () => {
  const kept = (write: Parameters<typeof soakingFrom>[0]) => soakingFrom(write, KEPT);

  it("what is poured in is what soaked in; the first filling is not", () => {
    const soaking = kept(({ write }) => {
      write(-1, pour(mlOf(50)));
      write(-0.8, pour(mlOf(20)));
      write(5, pour(mlOf(8)));
      write(5.3, pour(mlOf(2)));
      write(10, pour(mlOf(6)));
    });
    expect(depths(soaking)).toEqual([0, 10, 16]);
  });

  it("a level read in between is compared with the mark, and the pour behind it only counts what is new", () => {
    const soaking = kept(({ write }) => {
      write(0, pour(mlOf(50)));
      write(0.1, level(50));
      write(5, level(42));
      write(6, pour(mlOf(10)));
    });
    expect(depths(soaking)).toEqual([0, 8, 10]);
  });
});

describe("what happened to the ring", () => {
  const points = [
    [10, 20],
    [20, 36],
    [30, 50],
    [40, 62],
  ] as const;
  const ringWith = (...what: [Parameters<typeof happened>[0], number][]) =>
    soakingFrom(({ write }) => {
      write(0, level(1000));
      for (const [min, mm] of points) write(min, level(1000 - mm));
      for (const [one, min] of what) write(50, happened(one), PHONE, min);
    });
  const left = (soaking: Soaking) => soaking.pieces.map(({ leftOut }) => leftOut);

  test("after a leak nothing counts, and what came before does", () => {
    const soaking = ringWith(["leaked", 25]);
    expect(left(soaking)).toEqual([null, null, "leaked", "leaked"]);
    expect(depths(soaking)).toEqual([0, 20, 36]);
    expect(soaking.leaked).toBe(true);
    expect(soaking.cautions).toContainEqual({ code: "science/ring-leaked", facts: { minutes: 20 } });
  });

  test("a leak right at a reading leaves that reading", () => {
    expect(left(ringWith(["leaked", 20]))).toEqual([null, null, "leaked", "leaked"]);
  });

  test("a burrow and a crack count and are named", () => {
    const soaking = ringWith(["burrow", 15], ["crack", 16]);
    expect(left(soaking)).toEqual([null, null, null, null]);
    expect(soaking.named).toEqual({ burrow: true, crack: true });
    expect(codes(soaking)).toEqual(["science/ring-burrow", "science/ring-crack"]);
  });

  test("rain leaves out what it fell on", () => {
    expect(left(ringWith(["rain-began", 12], ["rain-ended", 18]))).toEqual([null, "rain", null, null]);
    expect(left(ringWith(["rain-began", 25]))).toEqual([null, null, "rain", "rain"]);
    expect(left(ringWith(["rain-ended", 5]))).toEqual(["rain", null, null, null]);
  });

  test("a bump, a move and a late topping", () => {
    expect(left(ringWith(["bumped", 15]))).toEqual([null, "bumped", null, null]);
    expect(left(ringWith(["moved", 15]))).toEqual([null, "moved", "moved", "moved"]);
    expect(left(ringWith(["topped-up-late", 20]))).toEqual([null, "topped-up-late", null, null]);
  });

  test("a ring that ran dry counts again once it holds water", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, level(20));
      write(5, level(8));
      write(8, happened("ran-dry"));
      write(15, level(0));
      write(16, level(90, { afterRefill: true }));
      write(26, level(70));
    });
    expect(left(soaking)).toEqual([null, "ran-dry", "dry", null]);
    expect(depths(soaking)).toEqual([0, 12]);
  });

  test("a missed reading changes nothing; no water left ends a kept level only", () => {
    expect(left(ringWith(["missed-reading", 15], ["no-water-left", 15]))).toEqual([null, null, null, null]);
    const kept = soakingFrom(({ write }) => {
      write(0, pour(mlOf(50)));
      write(10, pour(mlOf(8)));
      write(12, happened("no-water-left"));
      write(20, pour(mlOf(2)));
    }, KEPT);
    expect(left(kept)).toEqual([null, "no-water-left"]);
  });
});

describe("what is said beside it", () => {
  test("answers in doubt, numbers missing, clocks apart, water later than the start, a rate that rose", () => {
    const soaking = soakingFrom(({ write }) => {
      write(3, level(200));
      write(8, look);
      const asked = write(10, look);
      write(10.1, level(180, { of: asked }));
      write(10.2, level(118, { of: asked }), { ...PHONE, number: 2 });
      write(13, level(180), { ...PHONE, aheadMs: 10_000 });
      write(23, level(100));
    });
    expect(codes(soaking)).toEqual([
      "science/ring-answers-in-doubt",
      "science/ring-numbers-missing",
      "science/clocks-apart",
      "science/ring-began-apart",
      "science/ring-rate-rose",
    ]);
  });

  test("a ring whose kit cannot be right, and one without water, give a reason", () => {
    const { entries, write } = notebook();
    write(0, start);
    expect(reasonOf(soakingOf(readRing([...entries]), RULER))).toBe("science/nothing-read");
    expect(reasonOf(soakingOf(readRing([...entries]), POURS))).toBe("science/nothing-read");
    expect(reasonOf(soakingOf(readRing([...entries]), KEPT))).toBe("science/nothing-read");
    write(0, level(100));
    const reading = readRing(entries);
    expect(reasonOf(soakingOf(reading, { ...RULER, insideM: [0, null] }))).toBe("science/not-a-ring");
    expect(reasonOf(soakingOf(reading, RULER, "outer"))).toBe("science/no-outer-ring");
    expect(reached(soakingOf(reading, RULER)).curve).toEqual([{ atMin: 0, mm: 0 }]);
  });
});
