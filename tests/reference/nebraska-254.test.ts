/**
 * Source: University of Nebraska-Lincoln, Biological Systems Engineering, faculty publication 254.
 * Mark: published (with 50 marks each hit is worth 2 %).
 */
import { expect, it } from "vitest";
import { coverOfLine } from "../../src/science/ground-cover/strip.ts";
import { line, PLAIN, reached } from "../unit/science/counts.ts";

it("counts 2 % a hit on a rope with 50 marks", () => {
  for (const hits of [1, 22, 50])
    expect(reached(coverOfLine(line(hits, 50), "residue", PLAIN)).value).toBeCloseTo((2 * hits) / 100, 12);
});
