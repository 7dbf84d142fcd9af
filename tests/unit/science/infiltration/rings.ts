/** Made-up ring tests. */
import { readRing } from "../../../../src/record/ring/reading.ts";
import type { RingSet } from "../../../../src/science/infiltration/ring-set.ts";
import { type Soaking, soakingOf } from "../../../../src/science/infiltration/soaking.ts";
import { down, gone, level, notebook, pour, start } from "../../record/ring-entries.ts";
import { reached } from "../counts.ts";

/** A ring of 15 cm, read with a ruler of whole millimetres that stands in the water. */
export const RULER: RingSet = {
  way: "ruler",
  rulerReads: "water-depth",
  insideM: [0.15, null],
  outerInsideM: null,
  innerOutsideM: null,
  stepMm: 1,
  rimToSoilM: [],
  heightsM: [],
};
export const FROM_RIM: RingSet = { ...RULER, rulerReads: "down-from-rim" };
export const POURS: RingSet = { ...RULER, way: "measured-pour" };
export const KEPT: RingSet = { ...RULER, way: "kept-at-one-level" };

/** Millilitres that make so many millimetres in the ring of 15 cm. */
export const mlOf = (mm: number): number => (mm * Math.PI * 150 ** 2) / 4 / 1000;

export const soakingFrom = (
  write: (book: ReturnType<typeof notebook>) => void,
  set: RingSet = RULER,
): Soaking => {
  const book = notebook();
  book.write(0, start);
  write(book);
  return reached(soakingOf(readRing(book.entries), set));
};

/** A ruler test with so much soaked in at so many minutes, from a ring that holds enough. */
export const ruled = (
  points: readonly (readonly [min: number, mm: number])[],
  set: RingSet = RULER,
): Soaking =>
  soakingFrom(({ write }) => {
    write(0, set.rulerReads === "water-depth" ? level(1000) : down(0));
    for (const [min, mm] of points)
      write(min, set.rulerReads === "water-depth" ? level(1000 - mm) : down(mm));
  }, set);

/** The same kept at one level, so that no ruler sets a bound. */
export const topped = (points: readonly (readonly [min: number, mm: number])[]): Soaking =>
  soakingFrom(({ write }) => {
    write(0, pour(mlOf(80)));
    let before = 0;
    for (const [min, mm] of points) {
      write(min, pour(mlOf(mm - before)));
      before = mm;
    }
  }, KEPT);

/** Pours of 25.4 mm one after the other, each gone after so many minutes. */
export const poured = (minutes: readonly number[], gapMin = 0.5): Soaking =>
  soakingFrom(({ write }) => {
    let at = 0;
    for (const taken of minutes) {
      write(at, pour(mlOf(25.4)));
      at += taken;
      write(at, gone);
      at += gapMin;
    }
  }, POURS);

export const rounded = (values: readonly number[], digits = 3): number[] =>
  values.map((value) => Number(value.toFixed(digits)));
