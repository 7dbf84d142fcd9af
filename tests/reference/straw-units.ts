/** Pounds, tons and printed contents, for the files of extension services. */
import { expect } from "vitest";
import type { Ranged } from "../../src/science/residue/ranged.ts";
import { strawWaysOf } from "../../src/science/residue/straw-ways.ts";
import { nutrientPerTonne } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";
import { own } from "../unit/science/straw/figures.ts";

export const LB = 0.453_592_37;
/** Kilograms per hectare for a pound and a short ton per acre. */
export const LB_PER_AC = 1.120851;
export const SHORT_TON_PER_AC = 2241.702;
/** Kilograms per tonne for a pound per short ton. */
export const LB_PER_TON = 0.5;

export const grainOf = (
  kgPerHa: number,
  dry: number,
): { readonly yield: Ranged; readonly dryShare: Ranged } => ({
  yield: own(kgPerHa, "kg/har", "grain-yield"),
  dryShare: own(dry, "1", "dry-matter"),
});
export const byIndex = (index: number) =>
  ({ way: "harvest-index", harvestIndex: own(index, "1", "harvest-index") }) as const;
export const byRatio = (ratio: number) =>
  ({ way: "straw-per-grain", ratio: own(ratio, "1", "straw-per-grain") }) as const;

type Asked = Parameters<typeof nutrientPerTonne>;

/** The range offered holds the printed content, kg/t. */
export const holdsPrinted = (crop: Asked[0], nutrient: Asked[1], printed: number): void => {
  const { low, high } = reached(nutrientPerTonne(crop, nutrient));
  expect(printed).toBeGreaterThanOrEqual(low);
  expect(printed).toBeLessThanOrEqual(high);
};

/** The range of straw per grain as weighed that is offered holds the printed pounds of a bushel. */
export const holdsStrawPerBushel = (crop: Asked[0], strawLb: number, bushelLb: number): void => {
  const [ratio] = strawWaysOf(crop).flatMap((way) => (way.way === "straw-per-grain" ? [way.ratio] : []));
  if (ratio === undefined) throw new Error(`no straw per grain for ${crop}`);
  expect(strawLb / bushelLb).toBeGreaterThanOrEqual(ratio.low - 0.005);
  expect(strawLb / bushelLb).toBeLessThanOrEqual(ratio.high + 0.005);
};
