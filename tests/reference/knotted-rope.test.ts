/**
 * Source: a printed correction to a wrong answer, https://www.farmprogress.com/story-revisit-how-residue-is-
 * calculated-9-45904.
 * Mark: published (25 hits on a 50 ft rope knotted every 6 in are 25 %, not 50 %).
 */
import { expect, it } from "vitest";
import { coverOfLine } from "../../src/science/ground-cover/strip.ts";
import { line, PLAIN, reached } from "../unit/science/counts.ts";

it("divides by marks and never by length", () => {
  const knots = 50 / 0.5;
  expect(reached(coverOfLine(line(25, knots), "residue", PLAIN)).value).toBe(0.25);
});
