/** What a belt of trees gives and takes on the whole field. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LEAST_GAIN, TALLEST_TREE_M } from "../constants/water.ts";
import { assumed, type Limits, type Ranged, ranged, usable } from "../residue/ranged.ts";
import { corners } from "../water/corners.ts";

/** Gain in the sheltered zone, percent of yield: Kort 1988, weighted means of field-years; two marks. */
const GAINS = {
  "spring-wheat": [8, "kort-1988"],
  maize: [12, "kort-1988"],
  "winter-wheat": [23, "kort-1988"],
  oats: [6, "kort-1988-from-memory"],
  rye: [19, "kort-1988-from-memory"],
  hay: [20, "kort-1988-from-memory"],
  barley: [25, "kort-1988-from-memory"],
  millet: [44, "kort-1988-from-memory"],
} as const;

/** A crop with a published gain. Alfalfa rests on three field-years and is not offered. */
export type ShelteredCrop = keyof typeof GAINS;
export const SHELTERED_CROPS = Object.keys(GAINS) as readonly ShelteredCrop[];

/**
 * Gain of a crop in the sheltered zone: from the 2 % lost that yield monitors saw on some fields up to the published
 * mean, which stems from studies of 1934 to 1984. The middle lies halfway.
 *
 * Source: Kort 1988; yield monitors, south-west Minnesota 2007; the person can change it.
 *
 * @example
 * gainOf("maize").high // => 0.12
 */
export const gainOf = (crop: ShelteredCrop): Ranged => {
  const [percent, source] = GAINS[crop];
  const high = percent / 100;
  return assumed("shelter-gain", { low: LEAST_GAIN, middle: (LEAST_GAIN + high) / 2, high }, "1", source);
};

/**
 * How far, in tree heights, trees take more than they give, and how far they give.
 *
 * Source: yield monitors, south-west Minnesota 2007, for 1 to 1.5 and for gains at 6 to 12; that shelter ends at 10
 * to 15 is a rule of this product. The person can change both.
 *
 * @example
 * usualZones().shelter // => { low: 10, middle: 12, high: 15 }
 */
export const usualZones = (): { readonly competition: Ranged; readonly shelter: Ranged } => ({
  competition: assumed(
    "competition-zone",
    { low: 1, middle: 1.25, high: 1.5 },
    "1",
    "minnesota-yield-monitors",
  ),
  shelter: assumed("shelter-zone", { low: 10, middle: 12, high: 15 }, "1", "own-rule"),
});

/** A belt along one side of a field, per metre of belt. */
export interface Belt {
  /** m, of the tallest row. */
  readonly height: Ranged;
  /** m, land that the belt takes. */
  readonly width: Ranged;
  /** m, of the field down the wind, the belt's own width with it. */
  readonly field: Ranged;
  /** Tree heights from the belt to the end of the loss. */
  readonly competition: Ranged;
  /** Tree heights from the belt to the end of the gain. */
  readonly shelter: Ranged;
  /** Share of yield lost in the competition zone. */
  readonly loss: Ranged;
  /** Share of yield gained beyond it; negative for a loss. */
  readonly gain: Ranged;
}

/** What the belt comes to. */
export interface BeltNet {
  /** Change of the whole field's yield as a share, land taken included. */
  readonly net: Ranged;
  /** Gain in the sheltered zone at which the belt pays in yield; a reason when no field is sheltered. */
  readonly breakEven: Result<Ranged>;
}

const METRES: Limits = { unit: "m", least: 0.1, most: 20_000 };
const HEIGHTS: Limits = { unit: "1", least: 0, most: 50 };

interface Parts {
  readonly lost: number;
  readonly competing: number;
  readonly gaining: number;
  readonly field: number;
}

const partsAt = (height: number, width: number, field: number, near: number, far: number): Parts => {
  const open = Math.max(0, field - width);
  const competing = Math.min(near * height, open);
  const gaining = Math.max(0, Math.min(far * height, open) - competing);
  return { lost: width, competing, gaining, field };
};

/**
 * Net effect of a belt on a field, per metre of belt: `(c·(1 − l) + z·(1 + g) + rest)/W − 1`, with the zones cut off
 * where the field ends, and the gain at which it comes to nothing: `(w + l·c)/z`.
 *
 * Counts yield alone. Soil kept from blowing, stock sheltered, snow caught and wood are the person's to weigh.
 *
 * @returns shares; `science/not-a-range` for what cannot be, `science/belt-wider-than-field`. The break-even has its own
 * reason (`science/no-sheltered-zone`) when trees compete as far as the field goes
 *
 * Source: worked out here from Kort 1988 and the competition zone.
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const m = (name, value) => assumed(name, exactly(value), "m", "yours");
 * const share = (name, value) => assumed(name, exactly(value), "1", "yours");
 * const belt = { height: m("tree-height", 12), width: m("belt-width", 10), field: m("field-width", 400), competition: share("competition-zone", 1), shelter: share("shelter-zone", 12), loss: share("shelter-loss", 0.5), gain: share("shelter-gain", 0.08) };
 * beltNet(belt).value.net.middle // => ≈ -0.0136
 */
export const beltNet = (belt: Belt): Result<BeltNet> => {
  const { height, width, field, competition, shelter, loss, gain } = belt;
  const good = usable([
    [height, { ...METRES, most: TALLEST_TREE_M }],
    [width, { ...METRES, least: 0 }],
    [field, METRES],
    [competition, HEIGHTS],
    [shelter, HEIGHTS],
    [loss, { unit: "1", least: 0, most: 1 }],
    [gain, { unit: "1", least: -1, most: 5 }],
  ]);
  if (!good.ok) return good;
  if (width.high >= field.low) return failed("science/belt-wider-than-field");
  const from = [height, width, field, competition, shelter, loss, gain];
  const net = corners(from, ([h = 0, w = 0, W = 1, near = 0, far = 0, l = 0, g = 0]) => {
    const parts = partsAt(h, w, W, near, far);
    return (parts.gaining * g - parts.competing * l - parts.lost) / parts.field;
  });
  const needed = corners(from.slice(0, 6), ([h = 0, w = 0, W = 1, near = 0, far = 0, l = 0]) => {
    const parts = partsAt(h, w, W, near, far);
    return (parts.lost + l * parts.competing) / parts.gaining;
  });
  const cautions = [
    { code: "science/shelter-old-studies", facts: {} },
    { code: "science/one-wind-only", facts: {} },
    { code: "science/local-advice-first", facts: {} },
  ] as const;
  return ok({
    net: ranged([net.low, net.middle, net.high], "1", { from, method: "shelter-net", cautions }),
    breakEven: Object.values(needed).every(Number.isFinite)
      ? ok(
          ranged([needed.low, needed.middle, needed.high], "1", {
            from: from.slice(0, 6),
            method: "shelter-net",
            cautions,
          }),
        )
      : failed("science/no-sheltered-zone"),
  });
};

/**
 * Share of yield that trees cost in the competition zone, where nobody measured it.
 *
 * Source: a rule of this product, 20 to 60 %; the person can change it.
 *
 * @example
 * usualLoss().middle // => 0.5
 */
export const usualLoss = (): Ranged =>
  assumed("shelter-loss", { low: 0.2, middle: 0.5, high: 0.6 }, "1", "own-rule");
