/** What was seen, then what it proves: a comparison in sentences. */
import { failed, type Result } from "../../../record/result.ts";
import type { Bounds } from "../../../science/estimate.ts";
import type { ComparisonPlan } from "../../../science/side-by-side/plan.ts";
import type { Scale } from "../../../science/side-by-side/scale.ts";
import type { Catalogue } from "../../catalogue.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { Measure } from "./conditions.ts";
import type { MeasureNow } from "./model.ts";
import type { Compared } from "./places.ts";
import type { SideWords } from "./words.ts";

/** How many there are of each, the most first; what all have in common is named alone. Empty for none. */
export const sharesText = (words: Pick<SideWords, "share">, said: readonly string[]): string => {
  const counts = new Map<string, number>();
  for (const one of said) counts.set(one, (counts.get(one) ?? 0) + 1);
  if (counts.size === 1) return said[0] ?? "";
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([one, count]) => words.share(one, count, said.length))
    .join(", ");
};

/** Ratios nearer to one than this are called about the same (own choice, no source). */
const SAME_RATIO = 1.05;

/** A difference or ratio of two by their names. */
export interface Versus {
  readonly measure: Measure;
  readonly scale: Scale;
  readonly first: string;
  readonly second: string;
  readonly value: number;
  readonly range: Result<Bounds>;
}

/** The name of a measure, with the place against the row where its tests of one place alone are compared. */
export const measureName = (
  words: SideWords,
  { place }: Catalogue,
  { asked, at }: Pick<MeasureNow, "asked" | "at">,
): string => (at === null ? words.measure[asked.measure] : words.of(words.measure[asked.measure], place[at]));

const plain = (value: number): string => writeNumber(value, TONGUE, value < 1 ? 2 : value < 10 ? 1 : 0);

const back = (scale: Scale, value: number): number => (scale === "ratio" ? 1 / value : -value);
const isTurned = ({ scale, value }: Versus): boolean => value < (scale === "ratio" ? 1 : 0);

/** Turned so that the larger one is named first. */
const turnedUp = (of: Versus): Versus => {
  if (!isTurned(of)) return of;
  const { scale } = of;
  const range: Result<Bounds> = of.range.ok
    ? {
        ok: true,
        value: { lower: back(scale, of.range.value.upper), upper: back(scale, of.range.value.lower) },
      }
    : of.range;
  return { ...of, first: of.second, second: of.first, value: back(scale, of.value), range };
};

/** What was seen, whatever it proves. */
export const seenText = (words: SideWords, of: Versus): string => {
  if (of.scale === "ratio" && of.value === 0) return words.noneThere(of.second, of.first);
  const { measure, first, second, value } = turnedUp(of);
  if (measure === "cover") {
    const points = Math.round(value * 100);
    return points === 0 ? words.same(first, second) : words.morePoints(points, first, second);
  }
  return value < SAME_RATIO ? words.same(first, second) : words.ratio(measure, value, first, second);
};

/** The pairs behind it, set against each other the same way round as what was seen in all. */
export const pairsText = (
  words: SideWords,
  of: Versus,
  each: readonly { readonly label: string; readonly value: number }[],
): {
  readonly heading: string;
  readonly rows: readonly { readonly rep: string; readonly value: string }[];
} => {
  const { first, second, scale } = turnedUp(of);
  const rows = each.map(({ label, value }) => {
    const turned = isTurned(of) ? back(scale, value) : value;
    return {
      rep: words.rep(label),
      value:
        scale === "ratio"
          ? words.timesOf(writeNumber(turned, TONGUE, 2))
          : words.pointsOf(writeNumber(turned * 100, TONGUE)),
    };
  });
  return { heading: words.eachPair(first, second), rows };
};

/** The range of a difference or ratio; empty when there is none. */
export const versusRangeText = (words: SideWords, of: Versus): string => {
  if (of.scale === "ratio" && of.value === 0)
    return of.range.ok ? words.ratioUpTo(plain(of.range.value.upper)) : "";
  const { range, scale } = turnedUp(of);
  if (!range.ok) return "";
  const { lower, upper } = range.value;
  if (scale === "ratio") return words.ratioRange(plain(lower), plain(upper));
  return words.pointsRange(writeNumber(lower * 100, TONGUE), writeNumber(upper * 100, TONGUE));
};

/** Two strips, as `Versus`. */
export const versusOf = (
  measure: Measure,
  { comparison, turned }: Compared,
  a: string,
  b: string,
): Versus => ({
  measure,
  scale: comparison.scale,
  first: turned ? b : a,
  second: turned ? a : b,
  value: comparison.value,
  range: comparison.range,
});

const moreOf = (
  plan: ComparisonPlan,
  has: number,
): Result<{ readonly low: number; readonly high: number }> => {
  if (!plan.needed.ok) return failed(plan.needed.problem.code, plan.needed.problem.facts);
  const { low, high } = plan.needed.value;
  return { ok: true, value: { low: Math.max(0, low - has), high: Math.max(0, high - has) } };
};

/** What more samples would bring, while it cannot be told; empty when that is not known. */
export const moreText = (
  words: SideWords,
  measure: Measure,
  { comparison, plan, fewest, each }: Compared,
): string => {
  if (comparison.word !== "cannot-tell-yet") return "";
  const { range } = comparison;
  if (!range.ok && range.problem.code === "science/too-few-to-compare")
    return words.moreForRange(measure, Number(range.problem.facts["needs"] ?? 0) - fewest);
  const more = moreOf(plan, each);
  if (!more.ok) return "";
  return more.value.high === 0
    ? words.enough(measure, plan.worthwhile)
    : words.moreEach(measure, Math.max(1, more.value.low), more.value.high, plan.worthwhile);
};

/** The same for pairs, and for blocks. */
export const moreRepsText = (
  words: SideWords,
  measure: Measure,
  plan: ComparisonPlan,
  reps: number,
  by: "pair" | "block",
): string => {
  const more = moreOf(plan, reps);
  if (!more.ok) return "";
  return more.value.high === 0
    ? words.enough(measure, plan.worthwhile)
    : words.moreReps[by](Math.max(1, more.value.low), more.value.high, measure, plan.worthwhile);
};
