/** What lies on a field as one mixture: carbon, nitrogen and their ratio. */
import { failed, ok, type Result } from "../../record/result.ts";
import { type Limits, type Ranged, ranged, usable } from "../residue/ranged.ts";

/** One part of the mixture. */
export interface MixedPart {
  /** Dry kg/ha. */
  readonly mass: Ranged;
  /** Share of dry matter that is carbon. */
  readonly carbon: Ranged;
  /** C:N. */
  readonly ratio: Ranged;
}

const MASS: Limits = { unit: "kg/har", least: 0, most: 200_000 };
const CARBON: Limits = { unit: "1", least: 0.2, most: 0.7 };
const RATIO: Limits = { unit: "1", least: 3, most: 1000 };

/**
 * Whether parts can be mixed.
 *
 * @returns the figures behind all parts. `science/nothing-read` for none, `science/not-a-range` for a mass outside 0 to
 * 200 t/ha, carbon outside 20 to 70 % or a ratio outside 3 to 1000, `science/no-mass` when all masses are 0
 */
export const mixable = (parts: readonly MixedPart[]): Result<readonly Ranged[]> => {
  if (parts.length === 0) return failed("science/nothing-read");
  const good = usable(
    parts.flatMap(({ mass, carbon, ratio }) => [
      [mass, MASS] as const,
      [carbon, CARBON] as const,
      [ratio, RATIO] as const,
    ]),
  );
  if (!good.ok) return good;
  return parts.some(({ mass }) => mass.middle > 0)
    ? ok(parts.flatMap(({ mass, carbon, ratio }) => [mass, carbon, ratio]))
    : failed("science/no-mass");
};

type End = "low" | "middle" | "high";

/** Carbon over nitrogen, each part with its own end of mass and carbon; null for a mixture of nothing. */
const ratioAt = (parts: readonly MixedPart[], ratio: End, weight: (at: number) => End): number | null => {
  let carbon = 0;
  let nitrogen = 0;
  for (const [at, part] of parts.entries()) {
    const kg = part.mass[weight(at)] * part.carbon[weight(at)];
    carbon += kg;
    nitrogen += kg / part.ratio[ratio];
  }
  return nitrogen > 0 ? carbon / nitrogen : null;
};

/**
 * C:N of a mixture: all carbon over all nitrogen, `Σ m·c / Σ (m·c/r)`. A mean of the ratios by mass would be wrong, and
 * can land on the other side of 24.
 *
 * The ends have all ratios low and all high, and of each part little or much, whichever moves the answer further.
 *
 * @param parts in any order
 * @returns C:N; reasons as `mixable`
 *
 * Source: mass balance, as in equations for compost (Cornell).
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const part = (kg, ratio) => ({ mass: assumed("mass", exactly(kg), "kg/har", "yours"), carbon: assumed("carbon-share", exactly(0.42), "1", "yours"), ratio: assumed("carbon-to-nitrogen", exactly(ratio), "1", "yours") });
 * mixtureCarbonToNitrogen([part(5000, 37), part(2500, 11)]).value.middle // => ≈ 20.7
 */
export const mixtureCarbonToNitrogen = (parts: readonly MixedPart[]): Result<Ranged> => {
  const from = mixable(parts);
  if (!from.ok) return from;
  const middle = ratioAt(parts, "middle", () => "middle") ?? 0;
  // The most (least) has every ratio high (low), and much of the parts above some ratio and little of those below it:
  // all such cuts are tried.
  const outermost = (side: "low" | "high"): readonly number[] => {
    const sorted = [...parts].sort((a, b) => a.ratio[side] - b.ratio[side]);
    const other = side === "low" ? "high" : "low";
    return [...sorted, null].flatMap((_, cut) => {
      const value = ratioAt(sorted, side, (at) => (at < cut ? other : side));
      return value === null ? [] : [value];
    });
  };
  const low = Math.min(middle, ...outermost("low"));
  const high = Math.max(middle, ...outermost("high"));
  return ok(ranged([low, middle, high], "1", { from: from.value, method: "mixture-c-n" }));
};
