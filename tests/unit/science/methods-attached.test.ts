import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";
import { METHODS } from "../../../src/science/methods/all.ts";
import { comparePairs } from "../../../src/science/side-by-side/pairs.ts";
import {
  referenceEvapotranspiration,
  usualStandIns,
} from "../../../src/science/water/reference-evapotranspiration.ts";
import { reached } from "./counts.ts";

const science = resolve(import.meta.dirname, "../../../src/science");
const texts = readdirSync(science, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts") && !/^(methods|sources|constants)[/.]/.test(path))
  .map((path) => readFileSync(join(science, path), "utf8"))
  .join("\n");

it("every method stands with the results that it is used for", () => {
  const nowhere = Object.keys(METHODS).filter((id) => !texts.includes(`"${id}"`));
  expect(nowhere).toEqual([]);
});

const UCCLE = { latitudeDeg: 50.8, elevationM: 100, dayOfYear: 187 };
const SIXTH_OF_JULY = {
  maxC: 21.5,
  minC: 12.3,
  humidity: { by: "extremes", max: 0.84, min: 0.63 },
  wind: { metresPerSecond: 2.78, heightM: 10 },
  sun: { hours: 9.25 },
} as const;

it("Penman–Monteith lists its parts, and no wind at 2 m where no wind was read", () => {
  const of = (wind: (typeof SIXTH_OF_JULY)["wind"] | null) =>
    reached(referenceEvapotranspiration({ ...SIXTH_OF_JULY, wind }, UCCLE, usualStandIns()));
  const parts = [
    "vapour-pressure",
    "air-pressure",
    "extraterrestrial-radiation",
    "net-radiation",
    "penman-monteith",
  ];
  expect(of(null).methods).toEqual(parts);
  expect(of(SIXTH_OF_JULY.wind).methods).toEqual([...parts.slice(0, 2), "wind-at-2-m", ...parts.slice(2)]);
  expect(of(null).sources).toContain("asce-2005");
});

const seen = (value: number) => ({ value, least: null });

it("a comparison of pairs lists the rank test that it hands back", () => {
  const pairs = [1, 2, 3].map((more) => ({ label: `${more}`, a: seen(10 + more), b: seen(10) }));
  const asked = { scale: "difference", unit: "mm", worthwhile: 5, seed: 1 } as const;
  expect(reached(comparePairs(pairs, "blocks", asked)).methods).toContain("signed-rank");
});
