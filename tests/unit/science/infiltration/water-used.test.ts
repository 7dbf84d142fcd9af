import { describe, expect, it } from "vitest";
import { readRing } from "../../../../src/record/ring/reading.ts";
import type { RingSet } from "../../../../src/science/infiltration/ring-set.ts";
import { litresUsed } from "../../../../src/science/infiltration/water.ts";
import { down, gone, level, notebook, pour, start } from "../../record/ring-entries.ts";
import { RULER } from "./rings.ts";

/** 30 cm across: π/4 · 3 dm · 3 dm = 7.06858 dm², so 1 dm of water is 7.06858 L. */
const WIDE: RingSet = { ...RULER, insideM: [0.3, null] };
const FROM_RIM: RingSet = { ...WIDE, rulerReads: "down-from-rim", rimToSoilM: [0.07, 0.08, 0.09, 0.08] };
/** Between the rings: π/4 · (6² − 3.1²) dm² = 20.72666 dm². */
const DOUBLE: RingSet = { ...WIDE, outerInsideM: [0.6, null], innerOutsideM: 0.31 };

const used = (set: RingSet, write: (book: ReturnType<typeof notebook>["write"]) => void) => {
  const book = notebook();
  book.write(0, start);
  write(book.write);
  return litresUsed([{ reading: readRing(book.entries), set }]);
};
const outer = (value: number, more: { afterRefill?: true } = {}) =>
  ({ ...level(value, more), ring: "outer" }) as const;

describe("water used", () => {
  it("is nothing before anything was read", () => {
    expect(litresUsed([])).toMatchObject({ value: 0, reckoned: false, more: false });
    expect(used(WIDE, () => {})).toMatchObject({ value: 0, reckoned: false, more: false });
  });

  it("is what was measured, in both rings", () => {
    const both = used(RULER, (write) => {
      write(0, pour(500));
      write(0, pour(1500, "outer"));
      write(5, level(40));
    });
    expect(both).toMatchObject({ value: 2, reckoned: false, more: false });
  });

  it("is reckoned from the first level and from what each refill raised", () => {
    const told = used(WIDE, (write) => {
      write(0, level(100)); // 1 dm: 7.06858 L
      write(10, level(60));
      write(20, level(40));
      write(20.5, level(95, { afterRefill: true })); // 0.55 dm: 3.88772 L
      write(30, level(70));
    });
    expect(told.value).toBeCloseTo(7.068_58 + 3.887_72, 4);
    expect(told).toMatchObject({ reckoned: true, more: false });
  });

  it("goes by both diameters of a ring that is not round", () => {
    // π/4 · 3 dm · 2 dm = 4.71239 dm², 1.2 dm deep.
    const { value } = used({ ...WIDE, insideM: [0.3, 0.2] }, (write) => write(0, level(120)));
    expect(value).toBeCloseTo(5.654_87, 4);
  });

  it("goes by what was measured at a refill, and reckons the others", () => {
    const told = used(WIDE, (write) => {
      write(0, level(100)); // 7.06858 L
      write(10, level(40));
      write(10.2, pour(4000));
      write(10.4, level(95, { afterRefill: true }));
      write(20, level(45));
      write(20.4, level(95, { afterRefill: true })); // 0.5 dm: 3.53429 L
    });
    expect(told.value).toBeCloseTo(7.068_58 + 4 + 3.534_29, 4);
    const first = used(WIDE, (write) => {
      write(0, pour(7000));
      write(0, level(100));
    });
    expect(first).toMatchObject({ value: 7, reckoned: false, more: false });
  });

  it("goes by the distance from rim to ground where the ruler is read down from the rim", () => {
    const told = used(FROM_RIM, (write) => {
      write(0, down(20)); // 80 − 20 mm: 0.6 dm, 4.24115 L
      write(10, down(50));
      write(10.5, down(15, { afterRefill: true })); // 0.35 dm: 2.47400 L
    });
    expect(told.value).toBeCloseTo(4.241_15 + 2.474, 4);
    expect(told).toMatchObject({ reckoned: true, more: false });
  });

  it("says that more went in where nobody measured from rim to ground", () => {
    const told = used({ ...FROM_RIM, rimToSoilM: [] }, (write) => {
      write(0, down(20));
      write(10, down(50));
      write(10.5, down(15, { afterRefill: true })); // 2.47400 L
    });
    expect(told.value).toBeCloseTo(2.474, 4);
    expect(told).toMatchObject({ reckoned: true, more: true });
  });

  it("rises from the ground when the water was gone", () => {
    const told = used(WIDE, (write) => {
      write(0, level(50)); // 3.53429 L
      write(10, gone);
      write(11, level(100, { afterRefill: true })); // 7.06858 L
    });
    expect(told.value).toBeCloseTo(3.534_29 + 7.068_58, 4);
    expect(used(WIDE, (write) => write(10, gone))).toMatchObject({ value: 0, reckoned: false, more: true });
  });

  it("takes a level that rose without a refill for no water, until somebody says so", () => {
    const { value } = used(WIDE, (write) => {
      write(0, level(50));
      write(10, level(90));
    });
    expect(value).toBeCloseTo(3.534_29, 4);
  });

  it("says that more went in when a refill ended lower than the level before it", () => {
    const told = used(WIDE, (write) => {
      write(0, level(50));
      write(30, level(40, { afterRefill: true }));
    });
    expect(told.value).toBeCloseTo(3.534_29, 4);
    expect(told.more).toBe(true);
  });

  it("counts the space between two rings by its own levels, and says when nothing was read there", () => {
    const told = used(DOUBLE, (write) => {
      write(0, level(100)); // 7.06858 L
      write(0, outer(80)); // 0.8 dm: 16.58133 L
      write(10, outer(50));
      write(10.5, outer(70, { afterRefill: true })); // 0.2 dm: 4.14533 L
    });
    expect(told.value).toBeCloseTo(7.068_58 + 16.581_33 + 4.145_33, 4);
    expect(told).toMatchObject({ reckoned: true, more: false });
    expect(used(DOUBLE, (write) => write(0, level(100))).more).toBe(true);
  });

  it("fills a ring kept at one level to its mark, and adds what was topped up, measured or not", () => {
    const told = used({ ...WIDE, way: "kept-at-one-level" }, (write) => {
      write(0, level(100)); // 7.06858 L
      write(10, pour(500));
      write(15, level(96));
      write(16, level(100)); // 0.04 dm: 0.28274 L
      write(20, pour(400));
    });
    expect(told.value).toBeCloseTo(7.068_58 + 0.5 + 0.282_74 + 0.4, 4);
  });
});
