/**
 * Source: Kansas State University, eUpdate 426.
 * Mark: published (45 cm of a 100 cm stick is 45 %).
 */
import { expect, it } from "vitest";
import { coverOfLine } from "../../src/science/ground-cover/strip.ts";
import { line, PLAIN, reached } from "../unit/science/counts.ts";

it("reads 45 of 100 cm as 45 %", () => {
  expect(reached(coverOfLine(line(45), "residue", PLAIN)).value).toBe(0.45);
});
