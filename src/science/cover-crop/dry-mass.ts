/** Dry mass of what was cut, from its fresh mass and a dried part of it. */
import { failed, ok, type Result } from "../../record/result.ts";
import { bounded } from "../water/bounded.ts";

/** A part of the cut that was weighed, dried to the end and weighed again, in g or any one unit. */
export interface DriedPart {
  readonly fresh: number;
  readonly dry: number;
}

const HEAVIEST_G = 1e6;

/**
 * Dry mass by a dried part: `fresh · dry_part/fresh_part`.
 *
 * @param fresh of all that was cut, 0 or more, in the unit of the answer
 * @param part in one unit, any
 * @returns `science/out-of-bounds` for masses that cannot be, a part of nothing among them; `science/dry-above-fresh`
 * for a part that gained by drying
 *
 * Source: Andrews et al., Oregon State University.
 *
 * @example
 * dryMass(9.6, { fresh: 1, dry: 0.16 }).value // => ≈ 1.536
 */
export const dryMass = (fresh: number, part: DriedPart): Result<number> => {
  const good = bounded([
    ["fresh mass", fresh, 0, HEAVIEST_G],
    ["fresh part", part.fresh, 1e-9, HEAVIEST_G],
    ["dry part", part.dry, 0, HEAVIEST_G],
  ]);
  if (!good.ok) return good;
  return part.dry <= part.fresh ? ok((fresh * part.dry) / part.fresh) : failed("science/dry-above-fresh");
};
