/** The price of straw at which selling breaks even, gains and drawbacks of mulch in one sum. */
import { failed, ok, type Result } from "../../record/result.ts";
import { MOST_MASS_KG_PER_HA } from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import {
  assumed,
  fits,
  type Limits,
  type Made,
  type Ranged,
  ranged,
  type Span,
  usable,
} from "../residue/ranged.ts";
import type { Nutrient } from "./nutrients.ts";

/** What straw does when it stays, besides its nutrients. Only these are counted, each by the person's own figures. */
export type WorthOfStaying = "water-kept" | "no-tracks" | "no-straw-to-buy-back" | "other-gain";
/** What mulch costs. */
export type CostOfMulch =
  | "chopping"
  | "slugs"
  | "cold-seedbed"
  | "nitrogen-tied-up"
  | "water-drunk-by-cover-crop"
  | "other-cost";

/** One item by the hectare. */
export interface PerHectare<Name> {
  readonly name: Name;
  /** Money per hectare. */
  readonly perHa: Ranged;
}

/** A nutrient that leaves with the straw. */
export interface NutrientPriced {
  readonly nutrient: Nutrient;
  /** kg per tonne of straw as sold. */
  readonly content: Ranged;
  /** Money per kg of the same form; 0 for what the field does not miss. */
  readonly price: Ranged;
}

/** The sum's items. */
export interface StrawSale {
  /** Straw carried off, kg/ha as sold. */
  readonly sold: Ranged;
  readonly nutrients: readonly NutrientPriced[];
  /** Baling and hauling that the seller pays, money per tonne. */
  readonly baling: Ranged;
  readonly worth: readonly PerHectare<WorthOfStaying>[];
  readonly costs: readonly PerHectare<CostOfMulch>[];
}

/** One item of the sum, in money per tonne of straw sold; costs of mulch count downwards. */
export interface SumItem {
  readonly name: Nutrient | "baling" | WorthOfStaying | CostOfMulch;
  readonly perTonne: Span;
}

/** The price, and the sum that it is. */
export interface BreakEven {
  /** Money per tonne as sold. Below 0: leaving it costs more than it is worth, at any price. */
  readonly price: Ranged;
  readonly items: readonly SumItem[];
}

const MONEY = 1e9;
const KG_PER_T = 1000;
const SOLD: Limits = { unit: "kg/har", least: 1, most: MOST_MASS_KG_PER_HA };
const CONTENT: Limits = { unit: "kg/t", least: 0, most: 100 };
const PER_KG: Limits = { unit: "{money}/kg", least: 0, most: MONEY };
const PER_T: Limits = { unit: "{money}/t", least: 0, most: MONEY };
const PER_HA: Limits = { unit: "{money}/har", least: 0, most: MONEY };

/**
 * What an amount per hectare is worth: millimetres of water or kilograms of nitrogen, times the person's own price of
 * one. For a cost of so much per hectare the amount is 1.
 *
 * @returns money per hectare; `science/not-a-range` when either is negative, not finite, out of order or above 10⁹
 *
 * @example
 * worthPerHa({ low: 0, middle: 10, high: 30 }, { low: 2, middle: 2, high: 2 }).value // => { low: 0, middle: 20, high: 60 }
 */
export const worthPerHa = (amount: Span, price: Span): Result<Ranged> => {
  const worth = {
    low: amount.low * price.low,
    middle: amount.middle * price.middle,
    high: amount.high * price.high,
  };
  return fits(amount, 0, MONEY) && fits(price, 0, MONEY) && fits(worth, 0, MONEY)
    ? ok(assumed("worth", worth, "{money}/har", "yours"))
    : failed("science/not-a-range", { what: "worth", least: 0, most: MONEY });
};

/** Ends of money per hectare over tonnes per hectare, whichever way the sign goes. */
const perTonne = (low: number, middle: number, high: number, sold: Ranged): [number, number, number] => {
  const t = (kg: number): number => kg / KG_PER_T;
  const all = [low, high].flatMap((money) => [money / t(sold.low), money / t(sold.high)]);
  return [Math.min(...all), middle / t(sold.middle), Math.max(...all)];
};

const span = ([low, middle, high]: readonly [number, number, number]): Span => ({ low, middle, high });
const total = (items: readonly Span[], end: keyof Span): number =>
  items.reduce((sum, item) => sum + item[end], 0);

/**
 * The price at which selling breaks even: `P = Σ n·p + b + (W − C)/X`. Nutrients that leave, what baling costs the
 * seller, what the straw would be worth on the field (`W`, water kept among it) less what mulch costs (`C`: slugs, a
 * cold seedbed, nitrogen tied up, water that a cover crop drinks), over the tonnes sold.
 *
 * Nitrogen of straw is no fertiliser of the next year: who counts it should price it low. Nothing is counted that
 * was not put in, soil carbon and structure among it, and that is said (`science/only-what-was-counted`).
 *
 * @returns money per tonne as sold, with the items of the sum. `science/not-a-range` for straw below 1 kg/ha or above
 * 200 t/ha, for prices and costs that are negative or not finite
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const nutrients = [{ nutrient: "K2O", content: assumed("nutrient", exactly(10), "kg/t", "yours"), price: assumed("nutrient-price", exactly(0.8), "{money}/kg", "yours") }];
 * const baling = assumed("baling", exactly(20), "{money}/t", "yours");
 * const costs = [{ name: "slugs", perHa: assumed("worth", exactly(16), "{money}/har", "yours") }];
 * breakEven({ sold: assumed("mass", exactly(4000), "kg/har", "yours"), nutrients, baling, worth: [], costs }).value.price.middle // => 24
 */
export const breakEven = (sale: StrawSale): Result<BreakEven> => {
  const { sold, nutrients, baling, worth, costs } = sale;
  const good = usable([
    [sold, SOLD],
    [baling, PER_T],
    ...nutrients.flatMap(({ content, price }) => [[content, CONTENT] as const, [price, PER_KG] as const]),
    ...[...worth, ...costs].map(({ perHa }) => [perHa, PER_HA] as const),
  ]);
  if (!good.ok) return good;
  const leaving = nutrients.map(({ nutrient, content, price }) => ({
    name: nutrient,
    perTonne: {
      low: content.low * price.low,
      middle: content.middle * price.middle,
      high: content.high * price.high,
    },
  }));
  const items: readonly SumItem[] = [
    ...leaving,
    { name: "baling", perTonne: { low: baling.low, middle: baling.middle, high: baling.high } },
    ...worth.map(({ name, perHa: { low, middle, high } }) => ({
      name,
      perTonne: span(perTonne(low, middle, high, sold)),
    })),
    ...costs.map(({ name, perHa: { low, middle, high } }) => ({
      name,
      perTonne: span(perTonne(-high, -middle, -low, sold)),
    })),
  ];
  // Worth and costs stand over the same tonnes, so their difference is taken before it is divided.
  const gains = worth.map(({ perHa }) => perHa);
  const losses = costs.map(({ perHa }) => perHa);
  const [low, middle, high] = perTonne(
    total(gains, "low") - total(losses, "high"),
    total(gains, "middle") - total(losses, "middle"),
    total(gains, "high") - total(losses, "low"),
    sold,
  );
  const direct = [...leaving.map((item) => item.perTonne), baling];
  const made: Made = {
    from: [sold, baling, ...nutrients.flatMap(({ content, price }) => [content, price]), ...gains, ...losses],
    method: "break-even",
    cautions: [
      { code: "science/local-rules-first", facts: {} },
      { code: "science/only-what-was-counted", facts: {} },
    ],
  };
  return ok({
    price: ranged(
      [total(direct, "low") + low, total(direct, "middle") + middle, total(direct, "high") + high],
      "{money}/t",
      made,
    ),
    items,
  });
};

/** What selling gains at a price. */
export interface Gain {
  /** Money per tonne as sold; below 0 selling loses. */
  readonly perTonne: Ranged;
  /** Money per hectare. */
  readonly perHa: Ranged;
}

/**
 * What selling gains: price less the price that breaks even, and that times the tonnes.
 *
 * @param price that is paid, money per tonne as sold, 0 or more
 * @param even as `breakEven` gave it
 * @param sold kg/ha as sold, the same as in the sum
 * @returns `science/not-a-range` as `breakEven`. With `science/price-inside-range` when the range holds both gain
 * and loss: the figures cannot tell
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const sold = assumed("mass", exactly(4000), "kg/har", "yours");
 * const money = (value) => assumed("baling", exactly(value), "{money}/t", "yours");
 * const even = breakEven({ sold, nutrients: [], baling: money(20), worth: [], costs: [] }).value;
 * gainOfSelling(money(50), even, sold).value.perHa.middle // => 120
 */
export const gainOfSelling = (price: Ranged, even: BreakEven, sold: Ranged): Result<Gain> => {
  const good = usable([
    [price, PER_T],
    [sold, SOLD],
  ]);
  if (!good.ok) return good;
  const per = {
    low: price.low - even.price.high,
    middle: price.middle - even.price.middle,
    high: price.high - even.price.low,
  };
  const both = per.low < 0 && per.high > 0;
  const cautions: Caution[] = both ? [{ code: "science/price-inside-range", facts: {} }] : [];
  const made: Made = { from: [price, even.price, sold], method: "break-even", cautions };
  const t = (kg: number): number => kg / KG_PER_T;
  const all = [per.low, per.high].flatMap((money) => [money * t(sold.low), money * t(sold.high)]);
  return ok({
    perTonne: ranged([per.low, per.middle, per.high], "{money}/t", made),
    perHa: ranged([Math.min(...all), per.middle * t(sold.middle), Math.max(...all)], "{money}/har", made),
  });
};
