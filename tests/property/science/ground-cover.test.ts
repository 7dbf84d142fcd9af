import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkLayout } from "../../../src/science/ground-cover/in-step.ts";
import type { CoverKind, LineCounts } from "../../../src/science/ground-cover/line.ts";
import { linesNeeded } from "../../../src/science/ground-cover/lines-needed.ts";
import { percentagesThatSum } from "../../../src/science/ground-cover/percentages.ts";
import { coverOfLine, coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { chanceOfAtLeast } from "../../../src/science/ground-cover/targets.ts";
import { exactInterval, wilsonInterval } from "../../../src/science/statistics/proportion.ts";
import { PLAIN, reached } from "../../unit/science/counts.ts";

const count = fc.nat(60);
const counts: fc.Arbitrary<LineCounts> = fc.record({
  residueFlat: count,
  residueStanding: count,
  green: count,
  bare: count,
  stone: count,
  own: count,
  notRead: count,
});
const strip = fc.array(counts, { minLength: 1, maxLength: 9 });
const kind = fc.constantFrom<CoverKind>(
  "ground-cover",
  "residue",
  "residue-standing",
  "green",
  "bare",
  "stone",
  "own",
);
const counting = fc.record({ stoneCounts: fc.boolean() });

describe("laws of ground cover", () => {
  it("does not depend on the order of the lines", () => {
    fc.assert(
      fc.property(strip, kind, counting, fc.infiniteStream(fc.nat()), (lines, what, how, picks) => {
        const left = [...lines];
        const shuffled: LineCounts[] = [];
        for (const pick of picks) {
          shuffled.push(...left.splice(pick % left.length, 1));
          if (left.length === 0) break;
        }
        const a = coverOfStrip(lines, what, how);
        const b = coverOfStrip(shuffled, what, how);
        expect(b.ok).toBe(a.ok);
        if (!(a.ok && b.ok)) return;
        expect(b.value.value).toBe(a.value.value);
        expect(b.value.range.ok).toBe(a.value.range.ok);
        if (!(a.value.range.ok && b.value.range.ok)) return;
        expect(b.value.range.value.lower).toBeCloseTo(a.value.range.value.lower, 9);
        expect(b.value.range.value.upper).toBeCloseTo(a.value.range.value.upper, 9);
      }),
    );
  });

  it("keeps every range inside 0 to 1 and around the value, and never shows a NaN", () => {
    fc.assert(
      fc.property(strip, kind, counting, (lines, what, how) => {
        for (const cover of [
          coverOfStrip(lines, what, how),
          ...lines.map((one) => coverOfLine(one, what, how)),
        ]) {
          if (!cover.ok) continue;
          expect(JSON.stringify(cover)).not.toContain("null");
          const { value, range } = cover.value;
          if (!range.ok) continue;
          const { lower, upper } = range.value;
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(lower).toBeLessThanOrEqual(value);
          expect(upper).toBeGreaterThanOrEqual(value);
          expect(upper).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it("never gives less cover for more residue", () => {
    fc.assert(
      fc.property(strip, fc.nat(), fc.nat(60), (lines, pick, more) => {
        const at = pick % lines.length;
        const richer = lines.map((one, index) =>
          // Bare marks turn into residue, the marks read stay the same.
          index === at
            ? {
                ...one,
                bare: one.bare - Math.min(more, one.bare),
                residueFlat: one.residueFlat + Math.min(more, one.bare),
              }
            : one,
        );
        for (const what of ["residue", "ground-cover"] as const) {
          const before = coverOfStrip(lines, what, PLAIN);
          const after = coverOfStrip(richer, what, PLAIN);
          if (before.ok && after.ok) expect(after.value.value).toBeGreaterThanOrEqual(before.value.value);
        }
        const bare = coverOfStrip(lines, "bare", PLAIN);
        const barer = coverOfStrip(richer, "bare", PLAIN);
        if (bare.ok && barer.ok) expect(barer.value.value).toBeLessThanOrEqual(bare.value.value);
      }),
    );
  });

  it("asks hits and misses the same question", () => {
    const residueAndBare = fc.array(fc.record({ hits: fc.nat(50), misses: fc.nat(50) }), {
      minLength: 3,
      maxLength: 6,
    });
    fc.assert(
      fc.property(residueAndBare, (pairs) => {
        const empty = { residueStanding: 0, green: 0, stone: 0, own: 0, notRead: 0 };
        const lines = pairs.map(({ hits, misses }) => ({ ...empty, residueFlat: hits, bare: misses }));
        const residue = coverOfStrip(lines, "residue", PLAIN);
        const bare = coverOfStrip(lines, "bare", PLAIN);
        if (!(residue.ok && bare.ok && residue.value.range.ok && bare.value.range.ok)) return;
        expect(residue.value.value + bare.value.value).toBeCloseTo(1, 12);
        expect(residue.value.range.value.lower + bare.value.range.value.upper).toBeCloseTo(1, 9);
        const at30 = reached(chanceOfAtLeast(lines, "residue", PLAIN, 0.3)).chance;
        const at70 = reached(chanceOfAtLeast(lines, "bare", PLAIN, 0.7)).chance;
        expect(at30 + at70).toBeCloseTo(1, 6);
      }),
    );
  });

  it("gives a chance between 0 and 1 that falls as the target rises", () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.array(counts, { minLength: 3, maxLength: 9 }), share, share, (lines, one, other) => {
        const low = chanceOfAtLeast(lines, "residue", PLAIN, Math.min(one, other));
        const high = chanceOfAtLeast(lines, "residue", PLAIN, Math.max(one, other));
        if (!(low.ok && high.ok)) return;
        expect(low.value.chance).toBeLessThanOrEqual(1);
        expect(high.value.chance).toBeGreaterThanOrEqual(0);
        expect(low.value.chance).toBeGreaterThanOrEqual(high.value.chance - 1e-7);
      }),
    );
  });

  it("plans a band that holds its middle and shrinks when less is asked", () => {
    const wish = fc.double({ min: 0.03, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(fc.array(counts, { maxLength: 9 }), wish, (lines, giveOrTake) => {
        const plan = linesNeeded(lines, "residue", PLAIN, { giveOrTake, marksPerLine: 100 });
        const looser = linesNeeded(lines, "residue", PLAIN, {
          giveOrTake: giveOrTake + 0.05,
          marksPerLine: 100,
        });
        if (!(plan.ok && looser.ok)) return;
        const { low, middle, high } = plan.value.more;
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
        expect(looser.value.more.middle).toBeLessThanOrEqual(middle);
      }),
      { numRuns: 50 },
    );
  });

  it("shows percentages that sum to 100 and lie within a point", () => {
    const amounts = fc.dictionary(fc.stringMatching(/^[a-z]{1,4}$/), fc.nat(1000), {
      minKeys: 1,
      maxKeys: 8,
    });
    fc.assert(
      fc.property(amounts, (parts) => {
        const shown = percentagesThatSum(parts);
        const sum = Object.values(parts).reduce((total, part) => total + part, 0);
        expect(shown.ok).toBe(sum > 0);
        if (!shown.ok) return;
        expect(Object.values(shown.value.percent).reduce((total, part) => total + part, 0)).toBe(100);
        for (const [key, percent] of Object.entries(shown.value.percent))
          expect(Math.abs(percent - (100 * (parts[key] ?? 0)) / sum)).toBeLessThan(1);
      }),
    );
  });

  it("gives the same warning whether lengths are in inches or in millimetres", () => {
    const inches = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(
        inches,
        inches,
        fc.nat(200),
        fc.integer({ min: 0, max: 90 }),
        (spacing, row, marks, angle) => {
          const check = (unit: number) =>
            checkLayout({
              markSpacingMm: spacing * unit,
              marks: marks + 1,
              angleToRowsDeg: angle,
              rowSpacingMm: row * unit,
              passWidthMm: 240 * unit,
            });
          const [mm, inch] = [reached(check(25.4)), reached(check(1))];
          expect(mm.cautions.map(({ code }) => code)).toEqual(inch.cautions.map(({ code }) => code));
          expect(mm.acrossMm / 25.4).toBeCloseTo(inch.acrossMm, 6);
        },
      ),
    );
  });

  it("keeps ranges of trials inside 0 to 1, around the share", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(), (trials, pick) => {
        const hits = pick % (trials + 1);
        for (const range of [wilsonInterval(hits, trials, 0.95), exactInterval(hits, trials, 0.95)]) {
          const { lower, upper } = reached(range);
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(lower).toBeLessThanOrEqual(hits / trials + 1e-12);
          expect(upper).toBeGreaterThanOrEqual(hits / trials - 1e-12);
          expect(upper).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});
