/**
 * Mulch against evaporation (all published; FAO-56 read second-hand). Greb (1966), SSSA Proceedings 30: wheat straw of 1,120 kg/ha, 30 % cover, cut the loss of
 * 20 days from wet soil by 16 %, 60 % cover by 33 %, 3,360 kg/ha, 90 % cover, by 49 %. Klocke, Currie & Aiken (2009),
 * Transactions of the ASABE 52(1): 103-110: 25 to 75 % cover gave small reductions, full cover 50 to 65 %. FAO-56,
 * chapter 11: 5 % for each 10 % covered.
 */
import { describe, expect, it } from "vitest";
import { keptByMulch } from "../../src/science/water/kept-by-mulch.ts";
import { evaporationCut, fullCoverCut, type Mulch } from "../../src/science/water/mulch-cut.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

const mulch = (cover: number): Mulch => ({
  cover: figure("cover", cover),
  fullCut: fullCoverCut(),
  thickness: null,
  mass: null,
  crop: null,
});
const cut = (cover: number) => reached(evaporationCut(mulch(cover)));

describe("the cut", () => {
  it.each([
    [0.3, 0.16],
    [0.6, 0.33],
    [0.9, 0.49],
  ])("holds what Greb saw at %d cover, within 4 points at the high end", (cover, seen) => {
    expect(Math.abs(cut(cover).high - seen)).toBeLessThan(0.04 + 1e-9);
    expect(cut(cover).low).toBeLessThan(seen);
  });

  it.each([0.25, 0.5, 0.75])("is nothing at the low end at %d cover, as Klocke saw it", (cover) => {
    expect(cut(cover).low).toBe(0);
  });

  it("ends at 50 to 65 % at full cover and never says one number", () => {
    expect(cut(1)).toMatchObject({ low: 0.3, middle: 0.5, high: 0.65 });
    expect(cut(0.5).high).toBeGreaterThan(cut(0.5).low);
  });

  it.each([
    [0.1, 0.05],
    [0.3, 0.15],
    [0.5, 0.25],
    [0.6, 0.3],
    [0.8, 0.4],
    [0.9, 0.45],
  ])("follows 5 % for each 10 % at the high end at %d cover", (cover, high) => {
    expect(cut(cover).high).toBeCloseTo(high, 9);
  });

  it("5.0 mm a day under 80 % cover become 3.0 at the high end, 2.5 under a full cover that cuts half", () => {
    expect(5 * (1 - cut(0.8).high)).toBeCloseTo(3, 9);
    const half = { ...mulch(1), fullCut: figure("full-cover-cut", 0.5) };
    expect(5 * (1 - reached(evaporationCut(half)).high)).toBeCloseTo(2.5, 9);
  });

  it("makes no leap on the way to a full cover: at 95 % halfway between 45 and 65 %", () => {
    expect(cut(0.95).high).toBeCloseTo(0.55, 9);
    // 75 % cover, then a fifth and half of the way to 50 % at full cover from a quarter of the cover.
    expect(cut(0.8).middle).toBeCloseTo(0.2 + 0.25 * 0.2, 9);
    expect(cut(0.8).low).toBeCloseTo(0.3 * 0.2, 9);
  });

  it("K_c,ini 0.70 under 50 % mulch is 0.525 and 0.80 is 0.60 (chapter 11)", () => {
    expect(0.7 * (1 - cut(0.5).high)).toBeCloseTo(0.525, 9);
    expect(0.8 * (1 - cut(0.5).high)).toBeCloseTo(0.6, 9);
  });

  it("K_c,ini 0.80 and a reference of 4.5 mm a day: half a mulch keeps 0.90 mm a day at the high end (by hand)", () => {
    const bare = figure("surface-water", 0.8 * 4.5, "mm");
    expect(reached(keptByMulch(bare, cut(0.5))).high).toBeCloseTo(0.9, 9);
  });
});
