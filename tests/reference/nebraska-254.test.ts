/**
 * University of Nebraska-Lincoln, Biological Systems Engineering, faculty publication 254 (published): with 50 marks each
 * hit is worth 2 %. Kansas State University, eUpdate 426 (published): 45 cm of a 100 cm stick is 45 %.
 */
import { expect, it } from "vitest";
import { coverOfLine } from "../../src/science/ground-cover/strip.ts";
import { line, PLAIN, reached } from "../unit/science/counts.ts";

it("counts 2 % a hit on a rope with 50 marks", () => {
  for (const hits of [1, 22, 50])
    expect(reached(coverOfLine(line(hits, 50), "residue", PLAIN)).value).toBeCloseTo((2 * hits) / 100, 12);
});

it("reads 45 of 100 cm as 45 %", () => {
  expect(reached(coverOfLine(line(45), "residue", PLAIN)).value).toBe(0.45);
});
