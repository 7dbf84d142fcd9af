import { describe, expect, it } from "vitest";
import { meanHeadMm } from "../../../../src/science/infiltration/heads.ts";
import { ALPHA_PER_MM } from "../../../../src/science/infiltration/kfs/alpha.ts";
import {
  steadyBeerkanKfs,
  transientBeerkanKfs,
  transientSlope,
} from "../../../../src/science/infiltration/kfs/beerkan.ts";
import { fallingHeadKfs } from "../../../../src/science/infiltration/kfs/falling-head.ts";
import {
  fallingHeadKfsOfRing,
  steadyBeerkanOfRing,
  steadyKfsOfRing,
  transientBeerkanOfRing,
} from "../../../../src/science/infiltration/kfs/of-ring.ts";
import { permeabilityClass } from "../../../../src/science/infiltration/kfs/permeability-class.ts";
import { steadyRingKfs, twoHeadKfs } from "../../../../src/science/infiltration/kfs/steady-ring.ts";
import { conductivityAt20, waterViscosity } from "../../../../src/science/infiltration/kfs/viscosity.ts";
import { down, gone, level, pour } from "../../record/ring-entries.ts";
import { reached, reasonOf } from "../counts.ts";
import { FROM_RIM, KEPT, mlOf, POURS, poured, RULER, ruled, soakingFrom } from "./rings.ts";

const codes = (worked: { readonly cautions: readonly { readonly code: string }[] }): string[] =>
  worked.cautions.map(({ code }) => code);
const STANDING = { rimToSoilM: [0.07, 0.07], heightsM: [0.15] } as const;
const SOIL = { alphaPerMm: ALPHA_PER_MM["structured-or-medium-sand"], waterC: null } as const;
const RING = { radiusMm: 100, insertionMm: 50 } as const;

describe("heads", () => {
  it("of a ruler: levels, with a refill as a jump", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, level(100));
      write(10, level(60));
      write(10.5, level(100, { afterRefill: true }));
      write(20.5, level(70));
    });
    expect(soaking.heads.map(({ mm, filled }) => [Math.round(mm), filled])).toEqual([
      [100, false],
      [60, false],
      [100, true],
      [70, false],
    ]);
    expect(reached(meanHeadMm(soaking.heads, 0, 10))).toBeCloseTo(80, 9);
    expect(reached(meanHeadMm(soaking.heads, 0, 20.5))).toBeCloseTo(82.5, 9);
    expect(reached(meanHeadMm(soaking.heads, 5, 10))).toBeCloseTo(70, 9);
  });

  it("of pours: half the depth of each", () => {
    expect(reached(meanHeadMm(poured([10, 20, 30]).heads, 0, 61))).toBeCloseTo(12.7, 9);
  });

  it("down from the rim needs the rim", () => {
    const write = ({ write: at }: Parameters<Parameters<typeof soakingFrom>[0]>[0]): void => {
      at(0, down(20));
      at(10, down(40));
    };
    expect(soakingFrom(write, FROM_RIM).heads).toEqual([]);
    const known = soakingFrom(write, { ...FROM_RIM, rimToSoilM: [0.12] });
    expect(known.heads.map(({ mm }) => Math.round(mm))).toEqual([100, 80]);
  });

  it("kept at one level: the mark from beginning to end, nothing without it", () => {
    const kept = soakingFrom(({ write }) => {
      write(0, pour(mlOf(50)));
      write(0, level(50));
      write(20, pour(mlOf(10)));
    }, KEPT);
    expect(reached(meanHeadMm(kept.heads, 0, 20))).toBeCloseTo(50, 9);
    expect(
      soakingFrom(({ write }) => {
        write(0, pour(mlOf(50)));
        write(20, pour(mlOf(10)));
      }, KEPT).heads,
    ).toEqual([]);
  });

  it("says when most of a stretch was not read", () => {
    expect(reasonOf(meanHeadMm([], 0, 10))).toBe("science/head-not-known");
    const short = [
      { atMin: 0, mm: 9, filled: true },
      { atMin: 4, mm: 8, filled: false },
    ];
    expect(reasonOf(meanHeadMm(short, 0, 10))).toBe("science/head-not-known");
  });
});

describe("from a ring", () => {
  const points = [30, 60, 90, 120, 150, 180].map((min) => [min, 10 + min] as const);

  it("steady single ring: pooled rate under the mean head of the last three", () => {
    const set = { ...RULER, ...STANDING };
    const kfs = reached(steadyKfsOfRing(ruled(points, set), set, { ...SOIL, waterC: 8 }));
    // 60 mm/h; the ring of the made-up test holds 1000 mm at the beginning.
    const g = 0.316 * Math.PI * 80 + 0.184 * Math.PI * 75;
    const head = 1000 - 10 - (90 + 180) / 2;
    expect(kfs.value).toBeCloseTo(60 / (head / g + 1 / (0.012 * g) + 1), 6);
    expect(reached(kfs.at20) / kfs.value).toBeCloseTo(1.3826, 3);
    expect(codes(kfs)).toContain("science/not-for-design");
    expect(codes(kfs)).not.toContain("science/kfs-not-level-yet");
  });

  it("needs to know how deep the ring stands, and says a double ring and a rate that still slows", () => {
    expect(reasonOf(steadyKfsOfRing(ruled(points), RULER, SOIL))).toBe("science/not-measured");
    const set = { ...RULER, ...STANDING, outerInsideM: [0.3, null] as const };
    const slowing = [10, 20, 30, 60, 90, 120].map((min) => [min, 40 * Math.sqrt(min / 10)] as const);
    const kfs = reached(steadyKfsOfRing(ruled(slowing, set), set, SOIL));
    expect(codes(kfs)).toEqual(
      expect.arrayContaining(["science/kfs-not-level-yet", "science/kfs-double-ring"]),
    );
    expect(reasonOf(kfs.at20)).toBe("science/not-measured");
  });

  it("falling head: the first pour, with its front against the ring", () => {
    const set = { ...POURS, ...STANDING };
    const kfs = reached(fallingHeadKfsOfRing(poured([10, 20]), set, 0.25, SOIL));
    expect(kfs.value).toBeCloseTo(49.2055, 3);
    // 25.4/0.25 mm is deeper than 80 mm.
    expect(codes(kfs)).toContain("science/kfs-front-below-ring");
    expect(codes(reached(fallingHeadKfsOfRing(poured([10]), POURS, 0.25, SOIL)))).toContain(
      "science/kfs-insertion-not-measured",
    );
    expect(reasonOf(fallingHeadKfsOfRing(ruled(points), RULER, 0.25, SOIL))).toBe(
      "science/kfs-first-pour-not-gone",
    );
  });

  it("Beerkan: steady from the last pours, transient from the curve, deep rings said", () => {
    const soaking = poured([4, 6, 8, 8, 8, 8, 8], 0);
    const steady = reached(steadyBeerkanOfRing(soaking, POURS, SOIL));
    expect(steady.value).toBeCloseTo((60 * 25.4) / 8 / 2.515, 3);
    const transient = reached(transientBeerkanOfRing(soaking, POURS, SOIL));
    expect(transient.methods).toContain("kfs-beerkan-transient");
    const deep = { ...POURS, ...STANDING };
    expect(codes(reached(steadyBeerkanOfRing(soaking, deep, SOIL)))).toContain("science/kfs-ring-too-deep");
    expect(reasonOf(steadyBeerkanOfRing(poured([4]), POURS, SOIL))).toBe("science/too-few-intervals");
  });

  it("water that is read to be gone stands at nothing", () => {
    const soaking = soakingFrom(({ write }) => {
      write(0, pour(mlOf(20)));
      write(5, gone);
    }, POURS);
    expect(soaking.heads.map(({ mm }) => Math.round(mm * 1e6) / 1e6)).toEqual([20, 0]);
  });
});

describe("impossible input comes back as a reason", () => {
  const POUR = { pouredMm: 25, minutes: 10, moistureGap: 0.3, alphaPerMm: 0.012, insertionMm: 100 };
  const BAD = [0, -1, Number.NaN, Number.POSITIVE_INFINITY];

  it.each(BAD)("%d", (bad) => {
    expect(reasonOf(fallingHeadKfs({ ...POUR, pouredMm: bad }, null))).toBe("science/not-a-depth");
    expect(reasonOf(fallingHeadKfs({ ...POUR, minutes: bad }, null))).toBe("science/not-a-time");
    expect(reasonOf(fallingHeadKfs({ ...POUR, moistureGap: bad }, null))).toBe("science/not-a-moisture-gap");
    expect(reasonOf(fallingHeadKfs({ ...POUR, alphaPerMm: bad }, null))).toBe("science/not-an-alpha");
    const rate = { mmPerH: 50, headMm: 50 };
    expect(reasonOf(steadyRingKfs({ ...rate, mmPerH: bad }, RING, 0.012, null))).toBe("science/not-a-rate");
    expect(reasonOf(steadyRingKfs(rate, { ...RING, radiusMm: bad }, 0.012, null))).toBe("science/not-a-ring");
    expect(reasonOf(steadyRingKfs(rate, { ...RING, insertionMm: bad }, 0.012, null))).toBe(
      "science/not-a-ring",
    );
    expect(reasonOf(steadyRingKfs(rate, RING, bad, null))).toBe("science/not-an-alpha");
    const beerkan = { radiusMm: 75, insertionMm: null };
    expect(reasonOf(steadyBeerkanKfs(bad, beerkan, 0.012, null))).toBe("science/not-a-rate");
    expect(reasonOf(steadyBeerkanKfs(50, { ...beerkan, radiusMm: bad }, 0.012, null))).toBe(
      "science/not-a-ring",
    );
    expect(reasonOf(steadyBeerkanKfs(50, beerkan, bad, null))).toBe("science/not-an-alpha");
  });

  it("a room of all the soil, hot water, heads that say nothing", () => {
    expect(reasonOf(fallingHeadKfs({ ...POUR, moistureGap: 1 }, null))).toBe("science/not-a-moisture-gap");
    for (const celsius of [-0.1, 60.1, Number.NaN]) {
      expect(reasonOf(waterViscosity(celsius))).toBe("science/not-a-water-temperature");
      expect(reasonOf(conductivityAt20(10, celsius))).toBe("science/not-a-water-temperature");
    }
    expect(reasonOf(conductivityAt20(-1, 10))).toBe("science/not-a-rate");
    const one = { mmPerH: 50, headMm: 50 };
    expect(reasonOf(twoHeadKfs([one, one], RING, null))).toBe("science/kfs-heads-disagree");
    expect(reasonOf(twoHeadKfs([one, { mmPerH: 40, headMm: 80 }], RING, null))).toBe(
      "science/kfs-heads-disagree",
    );
    const steep = reached(twoHeadKfs([one, { mmPerH: 200, headMm: 80 }], RING, null));
    expect(reasonOf(steep.alphaPerMm)).toBe("science/kfs-no-suction-left");
    expect(reasonOf(steadyRingKfs({ mmPerH: 50, headMm: -1 }, RING, 0.012, null))).toBe(
      "science/not-a-depth",
    );
  });

  it("a low head is said", () => {
    const low = reached(steadyRingKfs({ mmPerH: 50, headMm: 20 }, RING, 0.012, null));
    expect(codes(low)).toContain("science/kfs-outside-steady-range");
  });

  it("a run without a steady part, and classes of no rate", () => {
    const slowing = [1, 4, 9, 16].map((atMin) => ({ atMin, mm: 10 * Math.sqrt(atMin) - 0.1 * atMin }));
    expect(reasonOf(transientSlope(slowing))).toBe("science/kfs-no-steady-part");
    expect(reasonOf(transientSlope(slowing.slice(0, 2)))).toBe("science/too-few-readings-for-a-curve");
    expect(reasonOf(transientSlope([...slowing, { atMin: -1, mm: 0 }]))).toBe("science/not-a-time");
    expect(reasonOf(transientBeerkanKfs(slowing, { radiusMm: 75, insertionMm: null }, 0.012, null))).toBe(
      "science/kfs-no-steady-part",
    );
    for (const bad of [-1, Number.NaN]) expect(reasonOf(permeabilityClass(bad))).toBe("science/not-a-rate");
  });
});
