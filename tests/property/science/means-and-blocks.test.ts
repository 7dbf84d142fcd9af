/** Laws of plain means, clusters and blocks: units, order, shift, and what a larger reading does. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareBlocks } from "../../../src/science/side-by-side/blocks.ts";
import { intraclass } from "../../../src/science/statistics/intraclass.ts";
import { meanOfReadings, meanOverLines } from "../../../src/science/statistics/mean.ts";
import { pairedStudent, welch } from "../../../src/science/statistics/two-means.ts";
import { reached } from "../../unit/science/counts.ts";

/** Depths in whole millimetres, as a ruler gives them. */
const depth = fc.integer({ min: 0, max: 200 });
const depths = fc.array(depth, { minLength: 3, maxLength: 10 });
const lines = fc.array(fc.array(depth, { minLength: 1, maxLength: 10 }), { minLength: 3, maxLength: 8 });
const near = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-7 * (1 + Math.abs(b)));
const INCH = 25.4;

describe("mean depth", () => {
  it("is the same in inches and in millimetres, in any order of readings and lines", () => {
    fc.assert(
      fc.property(depths, lines, (one, several) => {
        for (const [mm, inch, back] of [
          [
            meanOfReadings(one, "mm"),
            meanOfReadings(
              one.map((value) => value / INCH),
              "m",
            ),
            meanOfReadings(one.toReversed(), "mm"),
          ],
          [
            meanOverLines(several, "mm"),
            meanOverLines(
              several.map((values) => values.map((value) => value / INCH)),
              "m",
            ),
            meanOverLines(several.map((values) => values.toReversed()).toReversed(), "mm"),
          ],
        ].map((three) => three.map(reached))) {
          if (mm === undefined || inch === undefined || back === undefined) throw new Error("three means");
          near(INCH * inch.value, mm.value);
          near(back.value, mm.value);
          expect([inch.range.ok, back.range.ok]).toEqual([mm.range.ok, mm.range.ok]);
          if (!(mm.range.ok && inch.range.ok && back.range.ok)) continue;
          near(INCH * inch.range.value.upper, mm.range.value.upper);
          near(back.range.value.lower, mm.range.value.lower);
          expect(mm.range.value.lower).toBeLessThanOrEqual(mm.value);
          expect(mm.range.value.upper).toBeGreaterThanOrEqual(mm.value);
        }
      }),
    );
  });

  it("never falls when a reading rises, and moves with a shift of all", () => {
    fc.assert(
      fc.property(depths, fc.nat(), fc.integer({ min: 1, max: 50 }), (values, which, more) => {
        const mean = reached(meanOfReadings(values, "mm"));
        const raised = values.map((value, at) => (at === which % values.length ? value + more : value));
        expect(reached(meanOfReadings(raised, "mm")).value).toBeGreaterThan(mean.value);
        near(
          reached(
            meanOfReadings(
              values.map((value) => value + more),
              "mm",
            ),
          ).value,
          mean.value + more,
        );
      }),
    );
  });
});

it("the correlation within groups does not mind units, shift or order", () => {
  const groups = fc.array(fc.array(depth, { minLength: 2, maxLength: 6 }), { minLength: 2, maxLength: 6 });
  fc.assert(
    fc.property(groups, fc.integer({ min: -100, max: 100 }), (some, shift) => {
      const seen = intraclass(some);
      const other = intraclass(
        some.toReversed().map((group) => group.toReversed().map((value) => (value + shift) / INCH)),
      );
      expect(other.ok).toBe(seen.ok);
      if (seen.ok && other.ok) near(other.value.correlation, seen.value.correlation);
    }),
  );
});

it("Welch's and the paired test say the same of shifted and of scaled values", () => {
  fc.assert(
    fc.property(depths, depths, fc.integer({ min: -100, max: 100 }), (a, b, shift) => {
      const [plain, moved] = [
        welch(a, b),
        welch(
          a.map((one) => (one + shift) / INCH),
          b.map((one) => (one + shift) / INCH),
        ),
      ];
      expect(moved.ok).toBe(plain.ok);
      if (plain.ok && moved.ok) {
        near(moved.value.t, plain.value.t);
        near(moved.value.chance, plain.value.chance);
        near(INCH * moved.value.difference, plain.value.difference);
      }
      const [pairs, inches] = [pairedStudent(a), pairedStudent(a.map((one) => one / INCH))];
      expect(inches.ok).toBe(pairs.ok);
      if (pairs.ok && inches.ok) near(inches.value.t, pairs.value.t);
    }),
  );
});

describe("blocks", () => {
  const table = fc
    .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 2, max: 6 }))
    .chain(([treatments, blocks]) =>
      fc.array(fc.array(fc.integer({ min: 1, max: 999 }), { minLength: blocks, maxLength: blocks }), {
        minLength: treatments,
        maxLength: treatments,
      }),
    );
  const compared = (rows: readonly (readonly number[])[], scale: "difference" | "ratio" = "difference") =>
    compareBlocks(
      rows.map((row, at) => ({ label: `${at}`, blocks: row.map((value) => ({ value, least: null })) })),
      { scale, unit: "mm", worthwhile: 0 },
    );

  it("say the same in inches, in another order of blocks, and with every block shifted by its own amount", () => {
    fc.assert(
      fc.property(
        table,
        fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 6, maxLength: 6 }),
        (rows, shifts) => {
          const plain = compared(rows);
          for (const [other, unit] of [
            [compared(rows.map((row) => row.map((value) => value / INCH))), INCH],
            [compared(rows.map((row) => row.toReversed())), 1],
            [compared(rows.map((row) => row.map((value, at) => value + (shifts[at] ?? 0)))), 1],
          ] as const) {
            expect(other.ok).toBe(plain.ok);
            if (!(plain.ok && other.ok)) continue;
            near(other.value.table.f, plain.value.table.f);
            for (const [at, two] of other.value.twos.entries()) {
              const before = plain.value.twos[at];
              near(unit * two.value, before?.value ?? Number.NaN);
              expect(two.word).toBe(before?.word);
            }
          }
        },
      ),
    );
  });

  it("ratios do not mind the unit at all", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const plain = compared(rows, "ratio");
        const inches = compared(
          rows.map((row) => row.map((value) => value / INCH)),
          "ratio",
        );
        expect(inches.ok).toBe(plain.ok);
        if (!(plain.ok && inches.ok)) return;
        for (const [at, two] of inches.value.twos.entries())
          near(two.value, plain.value.twos[at]?.value ?? Number.NaN);
      }),
    );
  });

  it("a treatment that is raised in every block is never behind where it was", () => {
    fc.assert(
      fc.property(table, fc.integer({ min: 1, max: 100 }), (rows, more) => {
        const plain = compared(rows);
        const raised = compared(rows.map((row, at) => (at === 0 ? row.map((value) => value + more) : row)));
        if (!(plain.ok && raised.ok)) return;
        near(raised.value.twos[0]?.value ?? Number.NaN, (plain.value.twos[0]?.value ?? Number.NaN) + more);
        near(raised.value.table.rest.squares, plain.value.table.rest.squares);
      }),
    );
  });
});
