import { describe, expect, it } from "vitest";
import { coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { chanceOfAtLeast, TARGETS } from "../../../src/science/ground-cover/targets.ts";
import { SOURCES } from "../../../src/science/sources.ts";
import { line, PLAIN, reached, reasonOf } from "./counts.ts";

const five = [44, 36, 52, 41, 47].map((hits) => line(hits));
const chance = (lines: Parameters<typeof chanceOfAtLeast>[0], target: number) =>
  reached(chanceOfAtLeast(lines, "residue", PLAIN, target)).chance;

describe("chance of reaching a target", () => {
  it("is one half at the value and agrees with the ends of the range", () => {
    const range = reached(reached(coverOfStrip(five, "residue", PLAIN)).range);
    expect(chance(five, 0.44)).toBeCloseTo(0.5, 8);
    expect(chance(five, range.lower)).toBeCloseTo(0.975, 6);
    expect(chance(five, range.upper)).toBeCloseTo(0.025, 6);
  });

  it("comes from the exact bound when none or all were hit", () => {
    const all = [line(100), line(100), line(100)];
    const bound = reached(reached(coverOfStrip(all, "residue", PLAIN)).range).lower;
    expect(chance(all, bound)).toBeCloseTo(0.95, 8);
    const none = [line(0), line(0), line(0)];
    expect(chance(none, reached(reached(coverOfStrip(none, "residue", PLAIN)).range).upper)).toBeCloseTo(
      0.05,
      8,
    );
    expect(chance(none, 0.3)).toBeLessThan(1e-9);
  });

  it("uses the planning spread when lines agree to the mark", () => {
    const value = chance([line(50), line(50), line(50)], 0.45);
    expect(value).toBeGreaterThan(0.5);
    expect(value).toBeLessThan(0.95);
  });

  it("says why it cannot tell", () => {
    expect(reasonOf(chanceOfAtLeast([line(44), line(50)], "residue", PLAIN, 0.3))).toBe(
      "science/too-few-lines",
    );
    expect(reasonOf(chanceOfAtLeast([], "residue", PLAIN, 0.3))).toBe("science/no-marks-read");
    expect(reasonOf(chanceOfAtLeast([line(-1)], "residue", PLAIN, 0.3))).toBe("science/not-a-count");
    for (const target of [0, 1, -0.1, 30, Number.NaN])
      expect(reasonOf(chanceOfAtLeast(five, "residue", PLAIN, target))).toBe("science/not-a-target");
  });
});

describe("targets offered", () => {
  it("carry the marks of their sources", () => {
    expect(TARGETS.map(({ share, source }) => [share, SOURCES[source].mark])).toEqual([
      [0.3, "published"],
      [0.75, "common-practice"],
    ]);
  });
});
