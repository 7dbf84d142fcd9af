import { describe, expect, it } from "vitest";
import { wormsPerHole, wormsPerM2 } from "../../../../src/science/earthworms/field.ts";
import { unlikeLastTime } from "../../../../src/science/earthworms/unlike.ts";
import { reached, reasonOf } from "../counts.ts";
import { codes, hole, holes } from "./holes.ts";

describe("mean of holes", () => {
  it("gives per hole and per m² with a range that never falls below nothing", () => {
    // 4, 9, 14: mean 9, s = 5; t (2 df, tables) 4.303; half on the log scale 4.303·5/(9·√3) = 1.38.
    const per = reached(wormsPerHole(holes(4, 9, 14)));
    expect(per.value).toBe(9);
    expect(per.n).toBe(3);
    const range = reached(per.range);
    expect(range.lower).toBeCloseTo(9 * Math.exp(-1.3802), 3);
    expect(range.upper).toBeCloseTo(9 * Math.exp(1.3802), 1);
    expect(range.method).toBe("holes-mean-log-t");
    const m2 = reached(wormsPerM2(holes(4, 9, 14)));
    expect(m2.value).toBeCloseTo(225, 9);
    expect(m2.unit).toBe("/m2");
    expect(reached(m2.range).upper).toBeCloseTo(25 * range.upper, 6);
  });

  it("gives no range for fewer than three holes", () => {
    expect(reasonOf(wormsPerHole([]))).toBe("science/nothing-read");
    expect(reached(wormsPerHole(holes(9))).value).toBe(9);
    expect(reasonOf(reached(wormsPerHole(holes(9, 3))).range)).toBe("science/too-few-holes");
    expect(reasonOf(reached(wormsPerHole(holes(0, 0))).range)).toBe("science/too-few-holes");
  });

  it("bounds what was missed when no hole has a worm", () => {
    // Poisson: e^(−x) = 0.05 at x = 2.9957 worms over 5 holes of 0.04 m², that is 0.2 m².
    const none = reached(wormsPerM2(holes(0, 0, 0, 0, 0)));
    expect(none.value).toBe(0);
    expect(reached(none.range)).toMatchObject({ lower: 0, sides: "upper-only", method: "none-found-exact" });
    expect(reached(none.range).upper).toBeCloseTo(2.995732 / 0.2, 4);
    expect(codes(none.cautions)).toEqual(["science/none-found"]);
    expect(reached(reached(wormsPerHole(holes(0, 0, 0, 0, 0))).range).upper).toBeCloseTo(2.995732 / 5, 5);
  });

  it("lets the spread of chance stand in when all holes are alike", () => {
    const alike = reached(wormsPerHole(holes(9, 9, 9)));
    // s² = 9: 4.303·3/(9·√3) = 0.828.
    expect(reached(alike.range).upper).toBeCloseTo(9 * Math.exp(0.8281), 2);
    expect(codes(alike.cautions)).toEqual(["science/holes-alike"]);
    expect(alike.methods).toContain("holes-mean-alike");
    const m2 = reached(wormsPerM2(holes(9, 9, 9)));
    expect(reached(m2.range).upper).toBeCloseTo(25 * reached(alike.range).upper, 6);
  });

  it("leaves unfinished and doubtful holes out and says so; counts that are no counts end it", () => {
    const mixed = [...holes(4, 9, 14), hole(99, { finished: false }), hole(99, { settled: false })];
    const mean = reached(wormsPerHole(mixed));
    expect(mean.value).toBe(9);
    expect(codes(mean.cautions).slice(0, 2)).toEqual(["science/holes-unfinished", "science/holes-in-doubt"]);
    expect(reasonOf(wormsPerHole([...holes(1), hole(Number.NaN)]))).toBe("science/not-a-count");
    expect(reasonOf(wormsPerHole([hole(4, { finished: false })]))).toBe("science/nothing-read");
  });

  it("gives holes of several sizes per m² only, and says so", () => {
    const small = hole(9);
    const large = hole(14, { sidesM: [0.25, 0.25] });
    expect(reasonOf(wormsPerHole([small, large]))).toBe("science/hole-sizes-differ");
    const mean = reached(wormsPerM2([small, large, small]));
    expect(mean.value).toBeCloseTo((225 + 224 + 225) / 3, 9);
    expect(codes(mean.cautions)).toContain("science/hole-sizes-mixed");
    // 20 × 25 and 25 × 20 are one size.
    const turned = [hole(1, { sidesM: [0.2, 0.25] }), hole(3, { sidesM: [0.25, 0.2] })];
    expect(reached(wormsPerHole(turned)).value).toBe(2);
    const sizeless = [...holes(4, 9, 14), hole(5, { sidesM: null })];
    expect(reached(wormsPerM2(sizeless)).n).toBe(3);
    expect(codes(reached(wormsPerM2(sizeless)).cautions)[0]).toBe("science/holes-without-size");
    expect(reasonOf(wormsPerM2([hole(5, { sidesM: null })]))).toBe("science/no-hole-size");
  });

  it("says what the holes have not in common, and keeps the number", () => {
    const at = (metres: number) => ({ latitudeDeg: 52, longitudeDeg: metres / 68_500 });
    const unlike = [
      hole(4, { personMinutes: 5, depthM: 0.2, place: at(0) }),
      hole(9, { personMinutes: 15, depthM: 0.3, place: at(12) }),
      hole(14, { found: { mulch: 3, soil: 11, "mustard-water": null }, place: at(500) }),
    ];
    const mean = reached(wormsPerHole(unlike));
    expect(mean.value).toBe(9);
    expect(codes(mean.cautions)).toEqual([
      "science/efforts-differ",
      "science/depths-differ",
      "science/layers-differ",
      "science/holes-close-together",
      "science/few-holes-may-miss-patches",
    ]);
    expect(mean.cautions.at(-2)?.facts).toEqual({ holes: 2, metres: 30 });
    expect(mean.methods).toContain("hole-conditions");
    const far = [hole(4, { place: at(0) }), hole(9, { place: at(40) })];
    expect(reached(wormsPerHole(far)).cautions).toEqual([]);
    const alike = [hole(4, { personMinutes: 5 }), hole(9, { personMinutes: 7 })];
    expect(reached(wormsPerHole(alike)).cautions).toEqual([]);
  });
});

describe("the spread of ten holes and more", () => {
  const FEW = "science/few-holes-may-miss-patches";
  const cautionsOf = (...counts: number[]) => codes(reached(wormsPerHole(holes(...counts))).cautions);
  const ten = (low: number, high: number) => [...Array(5).fill(low), ...Array(5).fill(high)];

  it("is said where chance does not give half the mean of it", () => {
    // Half of them d above 20 and half below: s² = d²·10/9. √(s² − 20) = 10 at d² = 108.
    expect(cautionsOf(...ten(10, 30))).toEqual([FEW]);
    expect(cautionsOf(...ten(9, 31))).toEqual([FEW, "science/range-if-lopsided"]);
  });

  it("or where it is above seven tenths of the mean", () => {
    // Of 3, s² = d²·10/9: 1.1 at d = 1, 4.44 at d = 2, where 0.7·3 is 2.1 and √4.44 is 2.108.
    expect(cautionsOf(...ten(2, 4))).toEqual([FEW]);
    expect(cautionsOf(...ten(1, 5))).toEqual([FEW, "science/range-if-lopsided"]);
    expect(cautionsOf(...ten(1, 5).slice(1))).toEqual([FEW]);
  });

  it("is none where all are alike or nothing was found", () => {
    expect(cautionsOf(...ten(4, 4))).toEqual(["science/holes-alike"]);
    expect(cautionsOf(...ten(0, 0))).toEqual(["science/none-found"]);
  });
});

describe("against last time", () => {
  it("says depth, size and effort that are unlike", () => {
    const now = [hole(4, { personMinutes: 5 }), hole(9, { personMinutes: 5 })];
    expect(unlikeLastTime(now, [hole(4, { personMinutes: 6 })])).toEqual([]);
    expect(codes(unlikeLastTime(now, [hole(4, { depthM: 0.1 })]))).toEqual([
      "science/depth-unlike-last-time",
    ]);
    expect(codes(unlikeLastTime(now, [hole(4, { sidesM: [0.3, 0.3] })]))).toEqual([
      "science/hole-size-unlike-last-time",
    ]);
    expect(codes(unlikeLastTime(now, [hole(4, { personMinutes: 20 })]))).toEqual([
      "science/efforts-unlike-last-time",
    ]);
    expect(unlikeLastTime(now, [])).toEqual([]);
    expect(unlikeLastTime([], now)).toEqual([]);
    expect(unlikeLastTime(now, [hole(4)])).toEqual([]);
  });
});
