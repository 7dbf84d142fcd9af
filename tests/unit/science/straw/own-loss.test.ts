import { describe, expect, it } from "vitest";
import { coverOfStrip } from "../../../../src/science/ground-cover/strip.ts";
import { lossAfter } from "../../../../src/science/residue/decay.ts";
import { lossRateOfLines } from "../../../../src/science/residue/own-loss.ts";
import { line, PLAIN, reached, reasonOf } from "../counts.ts";
import { codesOf, own } from "./figures.ts";

const cover = (...hits: readonly number[]) =>
  reached(
    coverOfStrip(
      hits.map((hit) => line(hit)),
      "residue",
      PLAIN,
    ),
  );

describe("rate of loss of a field's own lines", () => {
  it("needs no coefficient: 80 % and 60 % a hundred days apart are ln(1.609/0.916)/100 per day", () => {
    const rate = reached(lossRateOfLines(cover(78, 80, 82), cover(57, 60, 63), 100));
    expect(rate.middle).toBeCloseTo(Math.log(Math.log(0.2) / Math.log(0.4)) / 100, 9);
    expect(rate.low).toBeLessThan(rate.middle);
    expect(rate.high).toBeGreaterThan(rate.middle);
    expect(rate).toMatchObject({ unit: "/d", n: 6, sampledBy: "lines" });
    expect(rate.methods).toContain("two-day-loss");
    expect(rate.assumptions).toMatchObject([{ name: "decay-rate", source: "own-lines" }]);
    // Masses of 80 and 60 % are 1.609 and 0.916 over the same coefficient.
    const loss = reached(lossAfter(rate, own(100, "d", "decay-rate")));
    expect(loss.middle).toBeCloseTo(1 - Math.log(0.4) / Math.log(0.2), 9);
  });

  it("says when nothing was lost, and refuses when cover rose", () => {
    const same = reached(lossRateOfLines(cover(58, 60, 62), cover(57, 61, 63), 100));
    expect(same).toMatchObject({ low: 0, middle: 0 });
    expect(same.high).toBeGreaterThan(0);
    expect(codesOf(same)).toContain("science/no-loss-seen");
    expect(reasonOf(lossRateOfLines(cover(38, 40, 42), cover(88, 90, 92), 100))).toBe("science/cover-rose");
  });

  it("warns near full cover", () => {
    const rate = reached(lossRateOfLines(cover(97, 98, 99), cover(57, 60, 63), 200));
    expect(codesOf(rate)).toContain("science/near-full-cover");
  });

  it("gives reasons instead of rates without end", () => {
    expect(reasonOf(lossRateOfLines(cover(78, 80, 82), cover(0, 0, 0), 100))).toBe("science/no-residue");
    expect(reasonOf(lossRateOfLines(cover(78, 80), cover(57, 60, 63), 100))).toBe("science/too-few-lines");
    expect(reasonOf(lossRateOfLines(cover(57, 60, 63), cover(78), 100))).toBe("science/too-few-lines");
    for (const days of [0, -5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(lossRateOfLines(cover(78, 80, 82), cover(57, 60, 63), days))).toBe("science/no-number");
  });

  it("takes all-hit for the fullest cover and stays finite", () => {
    const rate = reached(lossRateOfLines(cover(100, 100, 100), cover(57, 60, 63), 200));
    expect([rate.low, rate.middle, rate.high].every(Number.isFinite)).toBe(true);
  });
});
