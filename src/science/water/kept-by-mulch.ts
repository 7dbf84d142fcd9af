/** Water that a mulch keeps in the soil over a period, from the person's own rain. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution } from "../estimate.ts";
import { assumed, type Limits, type Ranged, ranged, type Span, usable } from "../residue/ranged.ts";
import { type DryingDay, twoStageDrying } from "./two-stage-drying.ts";

/** One rain. */
export interface Rain {
  /** Whole number that grows by one a day, the same count as the period's. */
  readonly day: number;
  /** mm; null when nobody measured it. */
  readonly mm: number | null;
}

/** A period, its rain and what the air asks for. */
export interface DryingPeriod {
  readonly firstDay: number;
  /** Counts too. */
  readonly lastDay: number;
  /** In any order; several of one day add up. */
  readonly rains: readonly Rain[];
  /** mm per day: one for each day in order, or a single one for all of them. */
  readonly reference: readonly Ranged[];
}

/** The ground that dries. */
export interface DryingGround {
  /** Readily and totally evaporable water in mm, as `soilWaterOf`. */
  readonly quickWater: Ranged;
  readonly surfaceWater: Ranged;
  /** Evaporation of wet ground over the reference, `wetGround`. */
  readonly wetSoil: Ranged;
}

const MOST_DAYS = 1000;
const DEPTH: Limits = { unit: "mm", least: 0, most: 300 };

/**
 * Evaporation of wet bare ground over that of the reference.
 *
 * Source: FAO-56, eq. 72; its usual bounds of 1.05 and 1.30 from memory; the person can change it.
 *
 * @example
 * wetGround().middle // => 1.2
 */
export const wetGround = (): Ranged =>
  assumed("wet-soil-coefficient", { low: 1.05, middle: 1.2, high: 1.3 }, "1", "fao-56-from-memory");

interface Days {
  /** Rain of each day. */
  readonly rainMm: readonly (number | null)[];
  readonly cautions: readonly Caution[];
}

const rainByDay = ({ firstDay, lastDay, rains, reference }: DryingPeriod): Result<Days> => {
  const days = lastDay - firstDay + 1;
  if (!(Number.isInteger(firstDay) && Number.isInteger(lastDay) && days >= 1 && days <= MOST_DAYS))
    return failed("science/not-a-period", { most: MOST_DAYS });
  if (reference.length !== 1 && reference.length !== days)
    return failed("science/not-one-a-day", { days, has: reference.length });
  const inside = rains.filter(({ day }) => day >= firstDay && day <= lastDay);
  if (inside.some(({ day, mm }) => !(Number.isInteger(day) && (mm === null || (mm >= 0 && mm <= 2000)))))
    return failed("science/out-of-bounds", { what: "rain", least: 0, most: 2000 });
  if (!inside.some(({ mm }) => mm !== 0)) return failed("science/no-rain-dates");
  const rainMm = Array.from({ length: days }, (): number | null => 0);
  for (const { day, mm } of inside) {
    const before = rainMm[day - firstDay] ?? null;
    rainMm[day - firstDay] = before === null || mm === null ? null : before + mm;
  }
  const cautions: Caution[] = [];
  const unknown = inside.filter(({ mm }) => mm === null).length;
  if (unknown > 0) cautions.push({ code: "science/rain-not-measured", facts: { rains: unknown } });
  if (inside.length < rains.length)
    cautions.push({ code: "science/rain-outside-period", facts: { rains: rains.length - inside.length } });
  return ok({ rainMm, cautions });
};

const COUNTED_FROM_RAIN: Caution = { code: "science/counted-from-first-rain", facts: {} };

/**
 * Water that bare ground loses over a period: two-stage drying after each rain. The surface is taken for dry before
 * the first rain of the period, so nothing is counted until then.
 *
 * @returns mm over the period. `science/no-rain-dates` without a rain inside it: without rain there is no figure;
 * `science/not-a-period` for days that are not whole, run backwards or are more than 1000; `science/not-one-a-day` for
 * a reference that fits neither one day nor all; `science/out-of-bounds` or `science/not-a-range` for what cannot be
 *
 * Source: FAO-56, eqs 71 to 77.
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const mm = (value) => assumed("surface-water", exactly(value), "mm", "yours");
 * const ground = { quickWater: mm(6), surfaceWater: mm(12), wetSoil: assumed("wet-soil-coefficient", exactly(1.2), "1", "yours") };
 * const reference = [assumed("reference-evapotranspiration", exactly(4.5), "mm/d", "yours")];
 * bareSoilEvaporation({ firstDay: 1, lastDay: 3, rains: [{ day: 1, mm: 30 }], reference }, ground).value.middle // => ≈ 11.88
 */
export const bareSoilEvaporation = (period: DryingPeriod, ground: DryingGround): Result<Ranged> => {
  const rain = rainByDay(period);
  if (!rain.ok) return rain;
  const { quickWater, surfaceWater, wetSoil } = ground;
  const { reference } = period;
  const good = usable([
    [quickWater, DEPTH],
    [surfaceWater, DEPTH],
    [wetSoil, { unit: "1", least: 0.5, most: 2 }],
    ...reference.map((one) => [one, { unit: "mm/d", least: 0, most: 30 }] as const),
  ]);
  if (!good.ok) return good;
  const total = (end: keyof Span): Result<number> => {
    const days = rain.value.rainMm.map(
      (rainMm, at): DryingDay => ({ rainMm, etMm: (reference[at] ?? reference[0])?.[end] ?? 0 }),
    );
    const surface = { rewMm: quickWater[end], tewMm: surfaceWater[end] };
    const dried = twoStageDrying(days, surface, wetSoil[end], surface.tewMm);
    return dried.ok ? ok(dried.value.reduce((sum, day) => sum + day.evaporatedMm, 0)) : dried;
  };
  const low = total("low");
  const middle = total("middle");
  const high = total("high");
  if (!low.ok) return low;
  if (!middle.ok) return middle;
  if (!high.ok) return high;
  return ok(
    ranged([low.value, middle.value, high.value], "mm", {
      from: [quickWater, surfaceWater, wetSoil, ...reference],
      method: "two-stage-drying",
      cautions: [COUNTED_FROM_RAIN, ...rain.value.cautions],
    }),
  );
};

const BESIDE: readonly Caution[] = [
  { code: "science/local-advice-first", facts: {} },
  { code: "science/cool-later-seedbed", facts: {} },
  { code: "science/kept-without-plants", facts: {} },
];

/**
 * Water that a mulch keeps: evaporation of bare ground times the cut. Often nothing at the low end, and said so.
 *
 * @param bare as `bareSoilEvaporation`
 * @param cut as `evaporationCut`
 * @returns mm over the period, with the cautions of both and those of a cool, later seedbed in spring and of local
 * advice; `science/not-a-range` for what cannot be
 *
 * Source: FAO-56, chapter 11, and 10 from memory; Klocke et al. 2009.
 *
 * @example
 * import { assumed } from "../residue/ranged.ts";
 * const bare = assumed("surface-water", { low: 20, middle: 30, high: 40 }, "mm", "yours");
 * const cut = assumed("full-cover-cut", { low: 0, middle: 0.15, high: 0.3 }, "1", "yours");
 * keptByMulch(bare, cut).value // => { low: 0, middle: 4.5, high: 12, unit: "mm" }
 */
export const keptByMulch = (bare: Ranged, cut: Ranged): Result<Ranged> => {
  const good = usable([
    [bare, { unit: "mm", least: 0, most: 30_000 }],
    [cut, { unit: "1", least: 0, most: 1 }],
  ]);
  if (!good.ok) return good;
  return ok(
    ranged([bare.low * cut.low, bare.middle * cut.middle, bare.high * cut.high], "mm", {
      from: [bare, cut],
      method: "kept-by-mulch",
      cautions: BESIDE,
    }),
  );
};
