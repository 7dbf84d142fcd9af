/**
 * Source: University of Missouri Extension, G1570 (1993), line-transect method, text and figure 1.
 * Mark: published.
 */
import { expect, it } from "vitest";
import { coverOfLine } from "../../src/science/ground-cover/strip.ts";
import { EMPTY, line, PLAIN, reached } from "../unit/science/counts.ts";

it("reads 44 hits of 100 marks as 44 %", () => {
  expect(reached(coverOfLine(line(44), "residue", PLAIN)).value).toBe(0.44);
});

it("reads hits at marks 1, 3, 8 and 9 of ten as 40 % (figure 1)", () => {
  const hits = new Set([1, 3, 8, 9]);
  const counts = { ...EMPTY };
  for (let mark = 1; mark <= 10; mark++) {
    const key = hits.has(mark) ? "residueFlat" : "bare";
    Object.assign(counts, { [key]: counts[key] + 1 });
  }
  expect(reached(coverOfLine(counts, "residue", PLAIN)).value).toBe(0.4);
});
