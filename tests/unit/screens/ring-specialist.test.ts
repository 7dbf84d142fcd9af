import { describe, expect, it } from "vitest";
import { residualSpreadMm } from "../../../src/science/infiltration/models/spread.ts";
import { ringForSpecialist } from "../../../src/science/infiltration/ring-for-specialist.ts";
import { soakingOf } from "../../../src/science/infiltration/soaking.ts";
import { celsiusOf, conditionsOf } from "../../../src/screens/measure/rings/conditions.ts";
import { specialistCsv } from "../../../src/screens/measure/rings/specialist-csv.ts";
import {
  fitRows,
  GROUND_FIRST,
  groundStated,
  kfsRows,
} from "../../../src/screens/measure/rings/specialist-model.ts";
import { reached } from "../science/counts.ts";
import { EXAMPLE, P3_11 } from "../science/infiltration/published-tests.ts";
import { entriesOf, ringWith } from "./ring-samples.ts";

/** A ring whose water stood 150 mm deep, with the depths of a published test. */
const found = (curve: typeof EXAMPLE) => {
  const ring = ringWith([
    { type: "start", atMin: 0 },
    ...curve.map(({ atMin, mm }) => ({ type: "level" as const, atMin, mm: 150 - mm })),
  ]);
  const soaking = reached(soakingOf(ring.reading, ring.set));
  return ringForSpecialist(soaking, ring.set, groundStated(GROUND_FIRST));
};

describe("what is left over at a reading", () => {
  it("is the root of the sum of squares over the readings that are not used up", () => {
    // √(8/(4 − 2)), by hand.
    expect(residualSpreadMm({ sseMm2: 8, n: 4, free: 2 })).toEqual({ ok: true, value: 2 });
    expect(residualSpreadMm({ sseMm2: 0, n: 2, free: 2 })).toMatchObject({
      ok: false,
      problem: { facts: { needs: 3, has: 2 } },
    });
  });
});

describe("the curves of a ring", () => {
  it("stand in one order, and how far each lies above the lowest criterion", () => {
    const rows = reached(fitRows(found(EXAMPLE)));
    expect(rows.map(({ model }) => model)).toEqual([
      "kostiakov",
      "kostiakov-lewis",
      "philip",
      "horton",
      "green-ampt",
    ]);
    expect(rows.filter(({ chosen }) => chosen).map(({ model }) => model)).toEqual(["horton"]);
    expect(rows.find(({ model }) => model === "horton")?.above).toBe(0);
    // AICc = n·ln(SSE/n) + 2κ + 2κ(κ + 1)/(n − κ − 1) with the published readings and independent sums of
    // squares: n = 10; power of time 38.96277 mm², κ = 3, so 23.60; dying rate 2.4009 mm², κ = 4, so 1.73.
    const above = rows.find(({ model }) => model === "kostiakov")?.above ?? 0;
    expect(above).toBeCloseTo(23.6 - 1.73, 1);
  });

  it("have the reason in their place when none can be laid", () => {
    const rows = fitRows(found(EXAMPLE.slice(0, 2)));
    expect(rows).toMatchObject({ ok: false, problem: { code: "science/too-few-readings-for-a-curve" } });
  });
});

describe("the conductivities of a ring", () => {
  it("say once what holds for all of them, and nothing that the sheet says already", () => {
    const { rows, forAll } = kfsRows(found(EXAMPLE), []);
    expect(forAll.map(({ code }) => code)).toContain("science/not-for-design");
    for (const { own } of rows) expect(own.map(({ code }) => code)).not.toContain("science/not-for-design");
    expect(kfsRows(found(EXAMPLE), forAll).forAll).toEqual([]);
  });

  it("miss the depth of the ring by name, and the first pour before the room for water", () => {
    const { rows } = kfsRows(found(EXAMPLE), []);
    const of = (name: string) => rows.find(({ way }) => way === name)?.kfs;
    expect(of("steady-ring")).toMatchObject({ ok: false, problem: { code: "science/not-measured" } });
    expect(of("falling-head")).toMatchObject({
      ok: false,
      problem: { code: "science/kfs-first-pour-not-gone" },
    });
  });
});

it("hands the same over as a table, with the reason where a number is missing", () => {
  const csv = specialistCsv(found(P3_11), false, ({ code }) => `because ${code}`);
  const rows = csv.split("\r\n");
  expect(rows[0]).toBe("\ufeffpart,of,what,value,unit,standard error,said beside it,example");
  // Published readings, independent least squares: see tests/reference/subramanya.test.ts.
  expect(csv).toMatch(/\r\ncurve,horton,f_c,26\.20\d*,mm\/h,/u);
  expect(csv).toContain("curve,philip,A,0,mm/h,,because science/held-at-its-bound");
  expect(csv).toContain("curve,philip,said,,,,because science/collapses-to-root-time");
  expect(csv).toContain("conductivity,falling-head,said,,,,because science/kfs-first-pour-not-gone");
  expect(rows.filter((row) => row.startsWith("curve,horton,left over at "))).toHaveLength(P3_11.length - 1);
  expect(rows.slice(1, -1).every((row) => row.endsWith(",no"))).toBe(true);
  const invented = specialistCsv(found(P3_11), true, ({ code }) => code).split("\r\n");
  expect(invented.slice(1, -1).every((row) => row.endsWith(",yes"))).toBe(true);
});

describe("what was noted beside a ring", () => {
  it("is the newest answer that was not taken back or corrected", () => {
    const [first, second] = entriesOf([
      { type: "start", atMin: 0 },
      { type: "start", atMin: 1 },
    ]);
    if (first === undefined || second === undefined) throw new Error("no entries");
    const water = { type: "temperature", of: "water", unit: "C" } as const;
    const cold = { ...first, ...water, value: 8, typed: "8" };
    const warm = { ...second, ...water, value: 18, typed: "18", replaces: [first.id] };
    expect(conditionsOf([cold, warm]).water?.value).toBe(18);
    const undo = { ...second, id: "f".repeat(16), n: 3, type: "undo", takesBack: second.id } as const;
    expect(conditionsOf([cold, warm, undo]).water?.value).toBe(8);
    expect(conditionsOf([])).toEqual({ wetness: null, wetnessIds: [], water: null });
  });

  it("is brought to degrees Celsius", () => {
    // 50 °F is 10 °C by definition.
    expect(celsiusOf({ value: 50, unit: "F" })).toBeCloseTo(10, 12);
  });
});
