/** In how many holes the grown worms of one way of living were found. */
import type { WormGroup } from "../../record/hole/entries.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution, Estimate } from "../estimate.ts";
import { countedHoles } from "./field.ts";
import type { HoleCount } from "./hole-count.ts";
import { shareOfHoles } from "./spread.ts";

/** Young worms cannot be told apart by where they live. */
export type GrownGroup = Exclude<WormGroup, "young">;
export const GROWN_GROUPS = ["surface", "topsoil", "deep"] as const satisfies readonly GrownGroup[];

/** The share of holes with one group; n counts the holes where that can be said. */
export interface GroupShare {
  readonly group: GrownGroup;
  /** Holes in which the group was seen, those with worms left in the pot too. */
  readonly seenIn: number;
  readonly holes: number;
  /** Holes where nobody can say: only young worms, worms left in the pot, or a total alone. */
  readonly notDetermined: number;
  /** `science/not-determined` when nothing can be said of any hole; never the same as absent. */
  readonly share: Result<Estimate>;
}

/** Whether a hole can say of any group that it is there or not. */
const isDetermined = ({ hole, worms }: { readonly hole: HoleCount; readonly worms: number }): boolean => {
  // A hole without a worm has no worm of this group either.
  if (worms === 0) return true;
  const grown = GROWN_GROUPS.some((group) => hole.placed[group] > 0);
  return grown && hole.left === 0;
};

/**
 * Share of holes with grown worms of one group, with its exact range.
 *
 * A hole where worms are left in the pot is not counted, whether or not the group was among those placed:
 * counting it only when the group was seen would make the share too large. A hole with only young worms says
 * nothing of any group.
 *
 * @param holes in any order, finished ones count
 * @returns `share` is `science/not-determined` when no hole can say, with the caution
 * `science/holes-not-determined` when some cannot; reasons as `countedHoles`
 *
 * Source: Clopper & Pearson 1934 for the range; groups by grown worms alone, common practice.
 *
 * @example
 * shareOfHolesWith("deep", holes); // seen in 3 of 10 holes: 0.30 (0.067 to 0.652)
 */
export const shareOfHolesWith = (group: GrownGroup, holes: readonly HoleCount[]): Result<GroupShare> => {
  const all = countedHoles(holes);
  if (!all.ok) return all;
  const { counted } = all.value;
  const determined = counted.filter(isDetermined);
  const notDetermined = counted.length - determined.length;
  const share = shareOfHoles(
    determined.filter(({ hole }) => hole.placed[group] > 0).length,
    determined.length,
  );
  const cautions: Caution[] = [...all.value.cautions];
  if (notDetermined > 0)
    cautions.push({ code: "science/holes-not-determined", facts: { holes: notDetermined } });
  return ok({
    group,
    seenIn: counted.filter(({ hole }) => hole.placed[group] > 0).length,
    holes: counted.length,
    notDetermined,
    share:
      determined.length === 0
        ? failed("science/not-determined", { holes: notDetermined })
        : share.ok
          ? ok({ ...share.value, cautions })
          : share,
  });
};
