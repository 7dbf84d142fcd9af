/** Spots inside one strip are sub-samples: one number per strip before strips are compared. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { type Intraclass, intraclass } from "../statistics/intraclass.ts";
import { sumOf } from "../statistics/sample.ts";
import { type Scale, type Seen, shownOn, workedWith } from "./scale.ts";

/** n counts the spots. */
export interface StripMeans extends Worked {
  /** One value per strip, geometric where ratios are compared, in the order given. */
  readonly strips: readonly { readonly label: string; readonly value: number; readonly spots: number }[];
  /** How alike the spots of one strip are, or why that is not known. */
  readonly alike: Result<Intraclass>;
}

/**
 * The mean of the spots of each strip, as the one value that the strip enters a comparison with. Put together as
 * if they were strips, 18 holes of six strips would seem to show what six numbers cannot.
 *
 * @param strips per strip its spots; a strip without any is left out
 * @returns `science/nothing-read` when no strip has a spot, `science/no-ratio-of-nothing`, `science/no-number`.
 * The caution says for how many independent spots they count when spots of a strip are alike
 *
 * Source: Lohr 1999, chapter 5 (clusters).
 *
 * @example
 * const seen = (values) => values.map((value) => ({ value, least: null }));
 * const strips = [{ label: "1", spots: seen([12, 13, 11]) }, { label: "2", spots: seen([9, 8, 10]) }];
 * meansOfStrips(strips, "difference").value.strips[0] // => { label: "1", value: 12, spots: 3 }
 */
export const meansOfStrips = (
  strips: readonly { readonly label: string; readonly spots: readonly Seen[] }[],
  scale: Scale,
): Result<StripMeans> => {
  const groups: number[][] = [];
  const means: StripMeans["strips"][number][] = [];
  for (const { label, spots } of strips) {
    const numbers: number[] = [];
    for (const spot of spots) {
      const worked = workedWith(spot, scale);
      if (!worked.ok) return worked;
      numbers.push(worked.value.number);
    }
    if (numbers.length === 0) continue;
    groups.push(numbers);
    means.push({ label, value: shownOn(scale, sumOf(numbers) / numbers.length), spots: numbers.length });
  }
  const spots = groups.flat().length;
  if (spots === 0) return failed("science/nothing-read");
  const alike = intraclass(groups);
  const cautions: Caution[] =
    alike.ok && alike.value.worth < spots
      ? [
          {
            code: "science/spots-are-sub-samples",
            facts: { spots, strips: means.length, worth: Math.max(1, Math.round(alike.value.worth)) },
          },
        ]
      : [];
  const methods = ["spots-alike"] as const;
  return ok({
    strips: means,
    alike,
    n: spots,
    sampledBy: "spots",
    cautions,
    methods,
    sources: sourcesOf(methods),
  });
};
