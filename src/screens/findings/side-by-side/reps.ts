/** Strips that stand in reps: pairs of two treatments, or blocks of more. */
import { ok, type Result } from "../../../record/result.ts";
import { type BlocksComparison, compareBlocks } from "../../../science/side-by-side/blocks.ts";
import { comparePairs, type PairsComparison } from "../../../science/side-by-side/pairs.ts";
import { meanOnScale, type Scale, type Seen } from "../../../science/side-by-side/scale.ts";
import type { Listed } from "../../parts/reader.ts";
import type { Asked, Side } from "./sides.ts";

const SEED = 1;
/** One rep alone is one strip against one strip. */
const LEAST_REPS = 2;

/** The strips of one treatment. */
export interface Treatment {
  readonly key: string;
  /** Any of them, for its name. */
  readonly strip: Listed<"strip">;
  readonly sides: readonly Side[];
}

interface Reps {
  readonly treatments: readonly Treatment[];
  readonly reps: number;
  /** Reps in which a treatment is missing: they are left out. */
  readonly incomplete: readonly number[];
}

/** What the reps say. */
export type RepsNow = Reps &
  (
    | { readonly design: "pairs"; readonly compared: Result<PairsComparison> }
    | { readonly design: "blocks"; readonly compared: Result<BlocksComparison> }
  );

/** What was done on a strip; where nothing was said of it, its name. */
const treatmentOf = ({ body }: Listed<"strip">): string =>
  body.done.length > 0 ? [...body.done].sort().join(" ") : body.name.trim().toLowerCase();

/** Several strips of one treatment in one rep, as one value. */
const together = (sides: readonly Side[], scale: Scale): Result<Seen> =>
  meanOnScale(
    sides.map(({ mean }) => mean),
    scale,
  );

const rowsOf = (
  treatments: readonly Treatment[],
  reps: readonly number[],
  scale: Scale,
): Result<readonly (readonly Seen[])[]> => {
  const rows: Seen[][] = [];
  for (const { sides } of treatments) {
    const row: Seen[] = [];
    for (const rep of reps) {
      const one = together(
        sides.filter(({ strip }) => strip.strip?.body.rep === rep),
        scale,
      );
      if (!one.ok) return one;
      row.push(one.value);
    }
    rows.push(row);
  }
  return ok(rows);
};

interface InReps {
  readonly treatments: readonly Treatment[];
  /** Reps that hold every treatment, and those in which one is missing. */
  readonly complete: readonly number[];
  readonly incomplete: readonly number[];
}

/**
 * Puts strips into treatments and reps.
 *
 * @returns null when the strips do not stand in at least two reps that each hold every treatment: each strip is
 * then a place of its own
 */
export const inReps = (sides: readonly Side[]): InReps | null => {
  const found = new Map<string, { strip: Listed<"strip">; sides: Side[] }>();
  const repsOf = new Map<number, Set<string>>();
  for (const side of sides) {
    const { strip } = side.strip;
    const rep = strip?.body.rep ?? null;
    if (strip === undefined || rep === null) return null;
    const key = treatmentOf(strip);
    found.set(key, { strip, sides: [...(found.get(key)?.sides ?? []), side] });
    repsOf.set(rep, (repsOf.get(rep) ?? new Set()).add(key));
  }
  const treatments = [...found].map(
    ([key, { strip, sides: own }]): Treatment => ({ key, strip, sides: own }),
  );
  const ordered = [...repsOf].sort(([a], [b]) => a - b);
  const complete = ordered.flatMap(([rep, keys]) => (keys.size === treatments.length ? [rep] : []));
  if (treatments.length < 2 || complete.length < LEAST_REPS) return null;
  const incomplete = ordered.flatMap(([rep]) => (complete.includes(rep) ? [] : [rep]));
  return { treatments, complete, incomplete };
};

/**
 * Compares treatments by their reps.
 *
 * @returns null when the strips do not stand in reps, as `inReps` says
 */
export const compareReps = (sides: readonly Side[], asked: Asked): RepsNow | null => {
  const found = inReps(sides);
  if (found === null) return null;
  const { treatments, complete, incomplete } = found;
  const { scale, worthwhile } = asked;
  const unit = sides[0]?.estimate.unit ?? "1";
  const rows = rowsOf(treatments, complete, scale);
  const base = { treatments, reps: complete.length, incomplete };
  if (treatments.length === 2) {
    const pairs = (value: readonly (readonly Seen[])[]) =>
      complete.flatMap((rep, at) => {
        const [a, b] = [value[0]?.[at], value[1]?.[at]];
        return a === undefined || b === undefined ? [] : [{ label: String(rep), a, b }];
      });
    const compared = rows.ok
      ? comparePairs(pairs(rows.value), "blocks", { scale, unit, worthwhile, seed: SEED })
      : rows;
    return { ...base, design: "pairs", compared };
  }
  const compared = rows.ok
    ? compareBlocks(
        treatments.map(({ key }, at) => ({ label: key, blocks: rows.value[at] ?? [] })),
        { scale, unit, worthwhile },
      )
    : rows;
  return { ...base, design: "blocks", compared };
};
