/**
 * Source: USDA NRCS 2004, National Engineering Handbook part 630, chapter 10, examples 10-1 to 10-4.
 * Mark: published (read in a course copy), inches there.
 */
import { describe, expect, it } from "vitest";
import { curveNumberRunoff } from "../../src/science/storm/curve-number.ts";
import { reached } from "../unit/science/counts.ts";

const inches = (rain: number, curveNumber: number): number =>
  reached(curveNumberRunoff(rain * 25.4, curveNumber)).value / 25.4;

describe("runoff in inches", () => {
  it.each([
    ["10-1", 4.3, 74, 1.82],
    ["10-2, least", 4.3, 55, 0.65],
    ["10-2, most", 4.3, 88, 3.01],
    ["10-3, first part", 5.1, 75, 2.53],
    ["10-3, second part", 5.1, 69, 2.03],
  ])("example %s", (_name, rain, curveNumber, published) => {
    expect(inches(rain, curveNumber)).toBeCloseTo(published, 2);
  });

  it("example 10-3 weighted by 400 and 230 acres: 2.35", () => {
    expect((400 * inches(5.1, 75) + 230 * inches(5.1, 69)) / 630).toBeCloseTo(2.35, 2);
  });

  it("example 10-4: a curve number of 73 or of 72.8 gives 2.36 or 2.34", () => {
    expect(inches(5.1, 73)).toBeCloseTo(2.36, 2);
    expect(inches(5.1, 72.8)).toBeCloseTo(2.34, 2);
  });
});
