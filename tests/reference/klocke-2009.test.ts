/**
 * Source: Klocke, Currie & Aiken 2009, Transactions of the ASABE 52(1): 103-110.
 * Mark: published (abstract: 25 to 75 % cover gave small reductions, full cover 50 to 65 %); computed here by hand
 * (the way between).
 */
import { expect, it } from "vitest";
import { cut } from "./mulch-cover.ts";

it.each([0.25, 0.5, 0.75])("is nothing at the low end at %d cover, as Klocke saw it", (cover) => {
  expect(cut(cover).low).toBe(0);
});

it("ends at 50 to 65 % at full cover and never says one number", () => {
  expect(cut(1)).toMatchObject({ low: 0.3, middle: 0.5, high: 0.65 });
  expect(cut(0.5).high).toBeGreaterThan(cut(0.5).low);
});

it("makes no leap on the way to a full cover: at 95 % halfway between 45 and 65 %", () => {
  expect(cut(0.95).high).toBeCloseTo(0.55, 9);
  // 75 % cover, then a fifth and half of the way to 50 % at full cover from a quarter of the cover.
  expect(cut(0.8).middle).toBeCloseTo(0.2 + 0.25 * 0.2, 9);
  expect(cut(0.8).low).toBeCloseTo(0.3 * 0.2, 9);
});
