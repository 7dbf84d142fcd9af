/** The straw ledger: per strip and harvest year what grew, what went, what was left, and what came back. */
import { failed, ok, type Result } from "../../record/result.ts";
import { MOST_MASS_KG_PER_HA } from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import { assumed, exactly, type Limits, type Ranged, ranged, usable } from "../residue/ranged.ts";

const MASS: Limits = { unit: "kg/har", least: 0, most: MOST_MASS_KG_PER_HA };
const DRY: Limits = { unit: "1", least: 0.3, most: 1 };
const WEIGHT: Limits = { unit: "kg", least: 0, most: 2000 };

/** Bales of one kind. */
export interface Bales {
  readonly count: number;
  /** kg each, as weighed. */
  readonly weight: Ranged;
  /** Dry share of that weight. */
  readonly dryShare: Ranged;
}

/** Animals on the stubble. */
export interface Grazing {
  readonly head: number;
  readonly days: number;
  /** Dry kg of straw that one animal eats in a day; the person's own figure. */
  readonly eaten: Ranged;
}

/** What is written down of one strip in one harvest year. */
export interface StrawYear {
  readonly strip: string;
  readonly harvestYear: number;
  readonly areaHa: number;
  /** Dry kg/ha, as `strawGrown` gives it; null when the yield is not known. */
  readonly grown: Ranged | null;
  readonly bales: readonly Bales[];
  readonly grazings: readonly Grazing[];
  /** Dry kg/ha of straw, compost or dung spread; null for none. */
  readonly broughtBack: Ranged | null;
}

/** Everything in dry kg/ha. */
export interface LedgerLine {
  readonly strip: string;
  readonly harvestYear: number;
  readonly grown: Ranged | null;
  readonly carriedOff: Ranged;
  readonly grazed: Ranged;
  /** Grown less carried off and grazed, never below 0; null when what grew is not known. */
  readonly left: Ranged | null;
  readonly broughtBack: Ranged;
}

/** A strip over its years, in dry kg/ha. */
export interface LedgerSum {
  readonly strip: string;
  /** Harvest years in the sum. */
  readonly years: number;
  /** Years of them with a known growth; only these are in `grown` and `left`. */
  readonly yearsGrown: number;
  readonly grown: Ranged | null;
  readonly carriedOff: Ranged;
  readonly grazed: Ranged;
  readonly left: Ranged | null;
  readonly broughtBack: Ranged;
  readonly cautions: readonly Caution[];
}

/** Lines by strip and year, and a sum per strip in the order of the strips. */
export interface Ledger {
  readonly lines: readonly LedgerLine[];
  readonly sums: readonly LedgerSum[];
}

/**
 * Dry share of straw as it is baled. Common practice.
 *
 * @example
 * baledDryShare().middle // => 0.86
 */
export const baledDryShare = (): Ranged =>
  assumed("dry-matter", { low: 0.82, middle: 0.86, high: 0.9 }, "1", "baled-dry-share");

const ENDS = ["low", "middle", "high"] as const;

const summed = (parts: readonly Ranged[], cautions: readonly Caution[] = []): Ranged => {
  const at = (end: (typeof ENDS)[number]): number => parts.reduce((sum, part) => sum + part[end], 0);
  return ranged([at("low"), at("middle"), at("high")], "kg/har", {
    from: parts,
    method: "straw-ledger",
    cautions,
  });
};

const times = (factor: number, parts: readonly Ranged[]): Ranged => {
  const at = (end: (typeof ENDS)[number]): number =>
    parts.reduce((product, part) => product * part[end], factor);
  return ranged([at("low"), at("middle"), at("high")], "kg/har", { from: parts, method: "straw-ledger" });
};

const counted = (...values: readonly number[]): boolean =>
  values.every((value) => value >= 0 && value <= 1e6 && Number.isFinite(value));

const lineOf = (year: StrawYear): Result<LedgerLine> => {
  const { strip, harvestYear, areaHa, grown, bales, grazings } = year;
  if (!(areaHa > 0 && areaHa <= 1e6 && Number.isSafeInteger(harvestYear)))
    return failed("science/not-a-straw-year", { harvestYear: String(harvestYear) });
  const bad =
    bales.some(({ count }) => !counted(count)) || grazings.some(({ head, days }) => !counted(head, days));
  if (bad) return failed("science/not-a-straw-year", { harvestYear });
  const broughtBack = year.broughtBack ?? assumed("straw-brought-back", exactly(0), "kg/har", "yours");
  const good = usable([
    ...(grown === null ? [] : [[grown, MASS] as const]),
    ...bales.flatMap(({ weight, dryShare }) => [[weight, WEIGHT] as const, [dryShare, DRY] as const]),
    ...grazings.map(({ eaten }) => [eaten, { unit: "kg", least: 0, most: 100 }] as const),
    [broughtBack, MASS],
  ]);
  if (!good.ok) return good;
  const carriedOff = summed(
    bales.map(({ count, weight, dryShare }) => times(count / areaHa, [weight, dryShare])),
  );
  const grazed = summed(
    grazings.map(({ head, days, eaten }) => times((head * days) / areaHa, [eaten])),
    grazings.length > 0 ? [{ code: "science/dung-not-counted", facts: {} }] : [],
  );
  if (carriedOff.high + grazed.high > 100 * MOST_MASS_KG_PER_HA)
    return failed("science/not-a-straw-year", { harvestYear });
  const known = { strip, harvestYear, grown, carriedOff, grazed, broughtBack };
  if (grown === null) return ok({ ...known, left: null });
  const rest = (had: number, gone: number): number => Math.max(0, had - gone);
  const more = carriedOff.low + grazed.low > grown.high;
  return ok({
    ...known,
    left: ranged(
      [
        rest(grown.low, carriedOff.high + grazed.high),
        rest(grown.middle, carriedOff.middle + grazed.middle),
        rest(grown.high, carriedOff.low + grazed.low),
      ],
      "kg/har",
      {
        from: [grown, carriedOff, grazed],
        method: "straw-ledger",
        cautions: more ? [{ code: "science/more-gone-than-grown", facts: { harvestYear } }] : [],
      },
    ),
  });
};

const sumOf = (strip: string, lines: readonly LedgerLine[]): LedgerSum => {
  const grown = lines.flatMap((line) => (line.grown === null ? [] : [line.grown]));
  const left = lines.flatMap((line) => (line.left === null ? [] : [line.left]));
  const years = lines.map(({ harvestYear }) => harvestYear);
  const gaps = Math.max(...years) - Math.min(...years) + 1 - years.length;
  const cautions: Caution[] = [];
  if (gaps > 0) cautions.push({ code: "science/years-without-a-line", facts: { years: gaps } });
  if (grown.length < lines.length)
    cautions.push({ code: "science/grown-not-known", facts: { years: lines.length - grown.length } });
  return {
    strip,
    years: lines.length,
    yearsGrown: grown.length,
    grown: grown.length === 0 ? null : summed(grown),
    carriedOff: summed(lines.map((line) => line.carriedOff)),
    grazed: summed(lines.map((line) => line.grazed)),
    left: left.length === 0 ? null : summed(left),
    broughtBack: summed(lines.map((line) => line.broughtBack)),
    cautions,
  };
};

/**
 * The ledger of strips: carried off = bales × weight, grazed = head × days × eaten, left = grown − carried off −
 * grazed. All in dry kg/ha. What was brought back stands beside it and is not taken for straw left. Ends of a sum
 * take all years at their low, or all at their high end, so the sum is wider than what is likely.
 *
 * @param years in any order; each strip once per harvest year
 * @returns lines by strip and year. `science/year-twice` when a strip has a year twice, `science/not-a-straw-year`
 * for an area that is not above 0, a year that is not whole, or counts of bales, head or days that are negative or not
 * finite, `science/not-a-range` for figures out of order or beyond what is possible. More gone than could have
 * grown is said and leaves 0 (`science/more-gone-than-grown`). No years give an empty ledger
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const bales = [{ count: 40, weight: assumed("bale-weight", exactly(250), "kg", "yours"), dryShare: assumed("dry-matter", exactly(0.8), "1", "yours") }];
 * const grown = assumed("mass", exactly(7000), "kg/har", "yours");
 * const book = strawLedger([{ strip: "A", harvestYear: 2025, areaHa: 4, grown, bales, grazings: [], broughtBack: null }]);
 * book.value.lines[0].left.middle // => 5000
 */
export const strawLedger = (years: readonly StrawYear[]): Result<Ledger> => {
  const byStrip = new Map<string, LedgerLine[]>();
  for (const year of [...years].sort((a, b) => a.harvestYear - b.harvestYear)) {
    const line = lineOf(year);
    if (!line.ok) return line;
    const { strip, harvestYear } = line.value;
    const lines = byStrip.get(strip) ?? [];
    if (lines.at(-1)?.harvestYear === harvestYear) return failed("science/year-twice", { harvestYear });
    byStrip.set(strip, [...lines, line.value]);
  }
  const strips = [...byStrip].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return ok({
    lines: strips.flatMap(([, lines]) => lines),
    sums: strips.map(([strip, lines]) => sumOf(strip, lines)),
  });
};
