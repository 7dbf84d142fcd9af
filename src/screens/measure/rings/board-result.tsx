/** What came of a ring so far, small, on its row of the board: its curve and the depths that were reached. */
import type { SoakPoint } from "../../../science/infiltration/soaking.ts";
import { useHouse } from "../../parts/house.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { resultOf } from "./result.ts";
import { headlineCells } from "./result-words.ts";
import { RING_WORDS } from "./words.ts";

const [WIDE, HIGH] = [84, 30];
/** Room for the width of the line. */
const EDGE = 2;

/** The bend of a curve at a glance; the ring's own screen has it with axes and in figures. */
const SmallCurve = ({ points }: { readonly points: readonly SoakPoint[] }) => {
  const last = points.at(-1);
  if (points.length < 2 || last === undefined || last.atMin <= 0) return null;
  const most = Math.max(...points.map(({ mm }) => mm), Number.EPSILON);
  const path = points.map(({ atMin, mm }) => {
    const x = EDGE + (atMin / last.atMin) * (WIDE - 2 * EDGE);
    const y = HIGH - EDGE - (Math.max(0, mm) / most) * (HIGH - 2 * EDGE);
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  });
  return (
    <svg class="board-curve" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      <path d={`M${path.join("L")}`} />
    </svg>
  );
};

export const BoardResult = ({ ring }: { readonly ring: DayRing }) => {
  const words = useWordsOf(RING_WORDS);
  const { habits } = useHouse().settings.value;
  const result = resultOf(ring);
  const reached = headlineCells(words, result, null, habits).filter(({ value }) => value !== null);
  return (
    <>
      {result.soaking.ok ? <SmallCurve points={result.soaking.value.curve} /> : null}
      {reached.length === 0 ? null : (
        <span class="board-headline">{reached.map(({ of, value }) => `${of}: ${value}`).join(" · ")}</span>
      )}
    </>
  );
};
