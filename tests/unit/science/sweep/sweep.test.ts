import { readdirSync } from "node:fs";
import { resolve, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { METHODS } from "../../../../src/science/methods/all.ts";
import { COMPARING_AND_PLACES } from "./comparing-and-places.ts";
import { DECISIONS } from "./decisions.ts";
import { GROUND_AND_HOLES } from "./ground-and-holes.ts";
import { RINGS_AND_STORMS } from "./rings-and-storms.ts";
import { methodsSaid, notSwept, swept, troublesOf } from "./sweep.ts";

const ROOM = resolve(import.meta.dirname, "../../../../src/science");
const SWEPT = [...GROUND_AND_HOLES, ...RINGS_AND_STORMS, ...DECISIONS, ...COMPARING_AND_PLACES];
const NAMES = SWEPT.map(({ name }) => name);

const filesOfRoom = (): readonly string[] =>
  readdirSync(ROOM, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".d.ts"))
    .map((path) => path.split(sep).join("/"))
    .sort();

/** Every function that any file of the room exports, as the running module shows it. */
const exportedFunctions = async (): Promise<readonly string[]> => {
  const modules = await Promise.all(
    filesOfRoom().map(async (path) => {
      const module: Readonly<Record<string, unknown>> = await import(pathToFileURL(resolve(ROOM, path)).href);
      return Object.entries(module).flatMap(([name, one]) =>
        typeof one === "function" ? [`${path} ${name}`] : [],
      );
    }),
  );
  return modules.flat();
};

it("knows every function that the room exports, and none that is gone", async () => {
  const exported = await exportedFunctions();
  expect(exported.length).toBeGreaterThan(350);
  expect(notSwept(exported, NAMES)).toEqual({ missing: [], gone: [] });
  expect(new Set(NAMES).size).toBe(NAMES.length);
});

it("hears of every method from an answer to an example", () => {
  const said = methodsSaid(SWEPT);
  expect(Object.keys(METHODS).filter((id) => !said.has(id))).toEqual([]);
});

it("would miss a new function, and one that went", () => {
  expect(notSwept(["a.ts old", "a.ts brandNew"], ["a.ts old", "a.ts gone"])).toEqual({
    missing: ["a.ts brandNew"],
    gone: ["a.ts gone"],
  });
});

describe("planted faults are found", () => {
  const planted = {
    leaksNaN: (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length,
    throws: (values: readonly number[]) => {
      if (values.length === 0) throw new Error("empty");
      return 1;
    },
    noughtOfNothing: (values: readonly number[]) => ({ ok: true, value: values.length }),
    endless: (value: number) => ({ ok: true, value: { deep: [1 / value] } }),
    fine: (value: number) => (Number.isFinite(value) ? { ok: true, value: 1 } : { ok: false, problem: {} }),
  };
  const [leaks, throwing, nought, endless, fine] = swept("planted.ts", planted, {
    leaksNaN: [[1, 2]],
    throws: [[1]],
    noughtOfNothing: [[1]],
    endless: [2],
    fine: [2],
  });

  it.each([
    ["a number that is none", leaks, "NaN"],
    ["an exception", throwing, "threw Error: empty"],
    ["nought where nothing was read", nought, "every list empty: an answer"],
    ["an endless number deep inside", endless, "value.deep.0: Infinity"],
  ])("%s", (_, one, says) => {
    if (one === undefined) throw new Error("the plant is missing");
    expect(troublesOf(one).join("\n")).toContain(says);
  });

  it("and none where there is none", () => {
    if (fine === undefined) throw new Error("the plant is missing");
    expect(troublesOf(fine)).toEqual([]);
  });
});

describe("no number that is none, no exception, a reason instead of nought", () => {
  it.each(SWEPT.map((one) => [one.name, one] as const))("%s", (_, one) => {
    expect(troublesOf(one).slice(0, 5)).toEqual([]);
  });
});
