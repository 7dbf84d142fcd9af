import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";
import { WEED_STATEMENTS } from "../../../src/science/cover-crop/weeds.ts";
import { GUIDES } from "../../../src/science/earthworms/guides.ts";
import { TARGETS } from "../../../src/science/ground-cover/targets.ts";
import { ALPHA_PER_MM } from "../../../src/science/infiltration/kfs/alpha.ts";
import { BASIC_RATES } from "../../../src/science/infiltration/kfs/permeability-class.ts";
import type { Constant } from "../../../src/science/method.ts";
import { METHODS } from "../../../src/science/methods/all.ts";
import type { MethodId } from "../../../src/science/methods.ts";
import { NITROGEN_MATERIALS } from "../../../src/science/nitrogen/materials.ts";
import { COVER_CROP_ENDS } from "../../../src/science/nitrogen/tie-up.ts";
import { coverCoefficientOf } from "../../../src/science/residue/cover-mass.ts";
import { RESIDUE_CROPS } from "../../../src/science/residue/crops.ts";
import { decayRateOf } from "../../../src/science/residue/decay.ts";
import { MEASURED_LOSSES, PASSES } from "../../../src/science/residue/passes.ts";
import type { Ranged } from "../../../src/science/residue/ranged.ts";
import { strawWaysOf } from "../../../src/science/residue/straw-ways.ts";
import { gainOf, SHELTERED_CROPS } from "../../../src/science/shelter/net.ts";
import { CURVE_NUMBERS } from "../../../src/science/storm/curve-number-table.ts";
import { GREEN_AMPT_SOILS } from "../../../src/science/storm/green-ampt-soils.ts";
import { STORM_SHAPES } from "../../../src/science/storm/shapes.ts";
import { ROOTED_CROPS } from "../../../src/science/water/root-zone.ts";
import { SOIL_TEXTURES } from "../../../src/science/water/soils.ts";
import { DECISIONS } from "./sweep/decisions.ts";
import { RINGS_AND_STORMS } from "./sweep/rings-and-storms.ts";

const science = resolve(import.meta.dirname, "../../../src/science");
const files = readdirSync(science, { recursive: true, encoding: "utf8" }).filter((path) =>
  path.endsWith(".ts"),
);
const textOf = (path: string): string => readFileSync(join(science, path), "utf8");
const lists = files
  .filter((path) => /^methods[/\\]/.test(path))
  .map(textOf)
  .join("\n");

/** Limits of the programs: what a slip of the pen is, and when to stop trying. No answer rests on them. */
const LIMITS = [
  "DEEPEST_RAIN_MM",
  "FARTHEST_ASKED_M",
  "FARTHEST_CORNER_M",
  "FARTHEST_M",
  "GEODESIC_DONE",
  "GEODESIC_ROUNDS",
  "LEAST_TRIES",
  "LONGEST_DAY_H",
  "LONGEST_RAIN_MIN",
  "MOST_LATITUDE_DEG",
  "MOST_MARKS",
  "MOST_MASS_KG_PER_HA",
  "MOST_PLACES",
  "MOST_PLANNED",
  "MOST_POINTS",
  "ROUNDING",
  "SAME_PLACE_M",
  "TALLEST_STUBBLE_MM",
  "TALLEST_TREE_M",
  "TRIES_PER_POINT",
];
/** Made from a constant that is listed. */
const DERIVED = ["PLANNED_LOG_SPREAD"];

it("every number that is exported stands on the list of a method, or is a limit of the programs", async () => {
  const numbers = new Set<string>();
  for (const path of files.filter((one) => /^export const [A-Z][A-Z0-9_]*\b/m.test(textOf(one)))) {
    const exported: Record<string, unknown> = await import(join(science, path));
    for (const [name, value] of Object.entries(exported))
      if (/^[A-Z][A-Z0-9_]*$/.test(name) && typeof value === "number") numbers.add(name);
  }
  expect(numbers.size).toBeGreaterThan(140);
  const unlisted = [...numbers].filter((name) => !new RegExp(`\\b${name}\\b`).test(lists)).sort();
  expect(unlisted.filter((name) => !LIMITS.includes(name))).toEqual(DERIVED);
  expect(LIMITS.filter((name) => !unlisted.includes(name))).toEqual([]);
});

/** Exported tables: by which methods their numbers are listed. */
const TABLES: Readonly<Record<string, readonly MethodId[]>> = {
  ALPHA_PER_MM: ["kfs-steady-ring"],
  BASIC_RATES: ["permeability-class"],
  CURVE_NUMBERS: ["curve-number"],
  GREEN_AMPT_SOILS: ["green-ampt-ponding"],
  GUIDES: ["guide-level"],
  STORM_SHAPES: ["storm-24-h-shape"],
  TARGETS: ["chance-logit-t"],
  USUAL_MINUTES: ["day-plan"],
  WEED_STATEMENTS: ["weed-statements"],
};
/** Exported lists with numbers in them that no answer rests on. */
const NO_TABLES = {
  BY_CHANCE: "unevenness of things that lie by chance, by definition",
  HEADLINE_MINUTES: "times at which depths are said, and no figure behind one",
  NO_PIECES: "nothing read",
  WORM_METHODS: "how holes are dug; the numbers go into the record",
};

const holdsNumbers = (value: unknown): boolean =>
  typeof value === "number" ||
  (typeof value === "object" && value !== null && Object.values(value).some(holdsNumbers));

it("every table that is exported stands on the list of a method", async () => {
  const tables = new Set<string>();
  for (const path of files.filter((one) => !/^(methods|sources)([/\\]|\.ts)/.test(one))) {
    const exported: Record<string, unknown> = await import(join(science, path));
    for (const [name, value] of Object.entries(exported))
      if (/^[A-Z][A-Z0-9_]*$/.test(name) && typeof value === "object" && holdsNumbers(value))
        tables.add(name);
  }
  expect([...tables].sort()).toEqual([...Object.keys(TABLES), ...Object.keys(NO_TABLES)].sort());
  for (const [name, methods] of Object.entries(TABLES))
    for (const method of methods) expect(METHODS[method].constants.length, name).toBeGreaterThan(0);
});

/** Numbers that methods list one by one, and sources of the tables that they read. */
const LISTED: readonly Constant[] = Object.values(METHODS).flatMap(
  ({ constants }): readonly Constant[] => constants,
);
const listedAlone = (value: number): boolean =>
  LISTED.some((one) => one.unit !== "values" && Math.abs(one.value - value) < 1e-12);

it("every figure that science brings itself stands on the list of a method", () => {
  const own = [...DECISIONS, ...RINGS_AND_STORMS].filter(({ args }) => args.length === 0);
  const figures = own.flatMap(({ name, call }) => {
    const answer = call() as Partial<Ranged>;
    return answer.assumptions === undefined ? [] : answer.assumptions.map((one) => ({ ...one, from: name }));
  });
  expect(figures.length).toBeGreaterThan(5);
  const unlisted = figures.filter(({ source, low, middle, high }) => {
    const table = LISTED.some((one) => one.unit === "values" && one.source === source);
    return source !== "yours" && !table && ![low, middle, high].every(listedAlone);
  });
  expect(unlisted.map(({ from, name }) => `${from}: ${name}`)).toEqual([]);
});

it("the levels of guides, the masses of weed statements and the cover aimed at are the listed ones", () => {
  const levels = GUIDES.map(({ source, levels: some }) => [
    source,
    some.filter(({ from }) => from > 0).length,
  ]);
  const tables = METHODS["guide-level"].constants.filter(({ unit }) => unit === "values");
  expect(tables.map(({ source, value }) => [source, value])).toEqual(levels);
  const masses = METHODS["weed-statements"].constants.map(({ value, source }) => [source, value]);
  expect(masses).toEqual(WEED_STATEMENTS.map(({ source, fromKgPerHa }) => [source, fromKgPerHa]));
  const aims = METHODS["chance-logit-t"].constants.map(({ value, source }) => [source, value]);
  for (const { source, share } of TARGETS) expect(aims).toContainEqual([source, share]);
  const gain = METHODS["shelter-net"].constants.find(({ symbol }) => symbol === "g_least");
  for (const crop of SHELTERED_CROPS) expect(gainOf(crop).low).toBe(gain?.value);
});

it("no method lists two constants by one symbol", () => {
  for (const [id, { constants }] of Object.entries(METHODS)) {
    const symbols = constants.map(({ symbol }) => symbol);
    expect(new Set(symbols).size, id).toBe(symbols.length);
  }
});

const heldBy = (method: MethodId, symbol: string): number | undefined =>
  METHODS[method].constants.find((one) => one.symbol === symbol && one.unit === "values")?.value;
const figures = (all: readonly { readonly low: number; readonly middle: number; readonly high: number }[]) =>
  // Ends that lie a quarter to either side are made from the one figure that is known.
  all.reduce((sum, { low, middle, high }) => {
    const single = Math.abs(low / middle - 0.75) < 1e-9 && Math.abs(high / middle - 1.25) < 1e-9;
    return sum + (single ? 1 : 3);
  }, 0);
const known = <T>(all: readonly ({ readonly ok: true; readonly value: T } | { readonly ok: false })[]): T[] =>
  all.flatMap((one) => (one.ok ? [one.value] : []));
const ways = RESIDUE_CROPS.flatMap(strawWaysOf);

it.each<[MethodId, string, number]>([
  ["curve-number", "CN", CURVE_NUMBERS.reduce((sum, { poor, good }) => sum + poor.length + good.length, 0)],
  ["storm-24-h-shape", "s", Object.values(STORM_SHAPES).flat().length],
  ["green-ampt-ponding", "K", Object.keys(GREEN_AMPT_SOILS).length],
  ["green-ampt-ponding", "M", 2 * Object.keys(GREEN_AMPT_SOILS).length],
  ["kfs-steady-ring", "α*", Object.keys(ALPHA_PER_MM).length],
  [
    "permeability-class",
    "K_soil",
    BASIC_RATES.reduce((sum, { toMmPerH }) => sum + (toMmPerH === null ? 1 : 2), 0),
  ],
  ["residue-decay", "k", figures(known(RESIDUE_CROPS.map(decayRateOf)))],
  ["cover-mass", "A", figures(known(RESIDUE_CROPS.map(coverCoefficientOf)))],
  ["straw-harvest-index", "h", 3 * ways.filter(({ way }) => way === "harvest-index").length],
  ["straw-per-grain", "r", 3 * ways.filter(({ way }) => way === "straw-per-grain").length],
  ["straw-line", "a", ways.filter(({ way }) => way === "line").length],
  ["passes", "r_1", 4 * PASSES.length],
  ["mass-left", "f", 2 * MEASURED_LOSSES.length],
  ["available-water", "Z_r", 2 * ROOTED_CROPS.length],
  ["available-water", "p_t", ROOTED_CROPS.length],
  ["two-stage-drying", "REW", 2 * SOIL_TEXTURES.length],
  ["mixture-c-n", "r_i", NITROGEN_MATERIALS.length],
  ["first-season-nitrogen", "s", COVER_CROP_ENDS.length],
  ["shelter-net", "g", SHELTERED_CROPS.length - (heldBy("shelter-net", "g_other") ?? 0)],
])("the table %s %s holds as many values as its method says", (method, symbol, values) => {
  expect(heldBy(method, symbol)).toBe(values);
});
