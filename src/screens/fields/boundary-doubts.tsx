/** How large the field is so far, and what makes that rough. */
import { useMemo } from "preact/hooks";
import { toShown } from "../../record/units.ts";
import { useHouse } from "../parts/house.ts";
import { lengthWords } from "../parts/lengths.ts";
import { writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { type Corner, closedEdge, coarseCorners, unseenPieces } from "./boundary-draft.ts";
import { sizeOf } from "./boundary-model.ts";
import { BOUNDARY_WORDS } from "./words.boundary.ts";

/** Pieces without a position that are named one by one. */
const NAMED = 4;

export const SizeSoFar = ({ corners }: { readonly corners: readonly Corner[] }) => {
  const { habits } = useHouse().settings.value;
  const says = useWordsOf(BOUNDARY_WORDS);
  const size = useMemo(() => sizeOf(closedEdge(corners).corners), [corners]);
  return (
    <div class="figure size-so-far">
      <p class="big">
        {size === null ? "–" : writeNumber(toShown("area", size.areaM2, habits).value, TONGUE, 2)}
        <small> {habits.area}</small>
      </p>
      <p role="status">
        <b>{corners.length === 0 ? says.stillNone : says.corners(corners.length)}</b>
        <br />
        {size === null ? says.openArea : says.around(lengthWords("distance", size.perimeterM, habits))}
      </p>
    </div>
  );
};

export const BoundaryDoubts = ({ corners }: { readonly corners: readonly Corner[] }) => {
  const { habits } = useHouse().settings.value;
  const says = useWordsOf(BOUNDARY_WORDS);
  const coarse = coarseCorners(corners);
  const { leftOut } = useMemo(() => closedEdge(corners), [corners]);
  const best = Math.min(...coarse.map(({ accuracyM }) => accuracyM ?? 0));
  const doubts = [
    ...(leftOut > 0 ? [says.leftOut(leftOut)] : []),
    ...(coarse.length > 0 ? [says.coarseCorners(coarse.length, lengthWords("distance", best, habits))] : []),
    ...unseenPieces(corners)
      .slice(0, NAMED)
      .map(([from, to]) => says.unseen(from, to)),
  ];
  return doubts.length === 0 ? null : (
    <ul class="doubts">
      {doubts.map((doubt) => (
        <li key={doubt}>{doubt}</li>
      ))}
    </ul>
  );
};
