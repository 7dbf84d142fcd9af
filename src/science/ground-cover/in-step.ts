/** Whether a line lies so that its marks can see the whole row and the whole machine pass. */
import { failed, ok, type Result } from "../../record/result.ts";
import { MOST_MARKS, WIDEST_GAP_SHARE } from "../constants.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOfCover } from "../methods/behind/ground-cover.ts";

/** Lengths in millimetres; null where nobody has said it. */
export interface LineLayout {
  readonly markSpacingMm: number;
  readonly marks: number;
  /** 90 straight across the rows, 45 diagonal, 0 along them. */
  readonly angleToRowsDeg: number;
  readonly rowSpacingMm: number | null;
  readonly passWidthMm: number | null;
}

/** What a line can see as it lies; n counts its marks. */
export interface LayoutCheck extends Worked {
  /** How far the line reaches across the rows, from its first mark to its last. */
  readonly acrossMm: number;
  /** Widest stretch between two rows that no mark falls on, as a share of the row spacing; null without one. */
  readonly widestGapShare: number | null;
}

/** From a thousandth of a millimetre to a thousand kilometres: what lies outside is a slip of the pen. */
const positive = (value: number): boolean => value >= 1e-3 && value <= 1e9;

/** Widest gap, around the circle, between the places 0, step, 2·step … taken modulo 1. */
const widestGap = (step: number, marks: number): number => {
  const phases = Array.from({ length: marks }, (_, mark) => {
    const turns = mark * step;
    return turns - Math.floor(turns);
  }).sort((a, b) => a - b);
  let widest = 1 - (phases.at(-1) ?? 0) + (phases[0] ?? 0);
  for (const [index, phase] of phases.entries())
    if (index > 0) widest = Math.max(widest, phase - (phases[index - 1] ?? 0));
  return widest;
};

/**
 * Checks a line before it is counted.
 *
 * Going from mark to mark one moves `a = spacing·sin(angle)` across the rows. When a is a whole number of
 * rows, or a simple fraction of one, the marks fall on one or a few places between the rows only and read
 * residue that lies in strips far too high or too low. Every mark is put at its place between the rows;
 * **in step** is a line that leaves a stretch unseen wider than a fifth of the row spacing (or twice the
 * spacing of evenly spread marks, on a short rope). So 1/1, 1/2, 1/3 and 1/4 warn, 1/5 and finer do not, and
 * a near miss warns unless the line is long enough to drift across the gap. The fifth is our own rule.
 * A line along the rows is always in step. A line has to cross one full machine pass, since residue is
 * thrown unevenly across it.
 *
 * @returns `science/not-a-length` unless spacing, row spacing and pass width are above 0 and possible,
 * `science/not-an-angle` outside 0 to 90, `science/no-marks-read` without a mark, `science/not-a-count` for more
 * than 10 000 marks, which no rope has. Cautions
 * `science/in-step-with-rows` and `science/less-than-one-pass`; what was not said is not checked.
 *
 * Source: Rickman, Waldman, Morrison & McCool 1996 for the failure; geometry for the rule.
 *
 * @example
 * // 1 ft marks at 45° to 30 in rows: 3.54 marks a row, not in step
 * checkLayout({ markSpacingMm: 304.8, marks: 100, angleToRowsDeg: 45, rowSpacingMm: 762, passWidthMm: null });
 */
export const checkLayout = (layout: LineLayout): Result<LayoutCheck> => {
  const { markSpacingMm, marks, angleToRowsDeg, rowSpacingMm, passWidthMm } = layout;
  for (const length of [markSpacingMm, rowSpacingMm ?? 1, passWidthMm ?? 1])
    if (!positive(length)) return failed("science/not-a-length", { value: String(length) });
  if (!(angleToRowsDeg >= 0 && angleToRowsDeg <= 90))
    return failed("science/not-an-angle", { angle: String(angleToRowsDeg) });
  if (!(Number.isSafeInteger(marks) && marks > 0)) return failed("science/no-marks-read");
  if (marks > MOST_MARKS) return failed("science/not-a-count", { count: String(marks) });
  const stepMm = markSpacingMm * Math.sin((angleToRowsDeg * Math.PI) / 180);
  const acrossMm = (marks - 1) * stepMm;
  const cautions: Caution[] = [];
  const gap = rowSpacingMm === null ? null : widestGap(stepMm / rowSpacingMm, marks);
  // The margin keeps the answer the same whether lengths were typed in inches or millimetres.
  if (rowSpacingMm !== null && gap !== null && gap > Math.max(WIDEST_GAP_SHARE, 2 / marks) + 1e-6)
    cautions.push({
      code: "science/in-step-with-rows",
      facts: { rowsPerMark: stepMm / rowSpacingMm, widestGapShare: gap },
    });
  if (passWidthMm !== null && acrossMm < passWidthMm * (1 - 1e-9))
    cautions.push({ code: "science/less-than-one-pass", facts: { acrossMm, passWidthMm } });
  const methods = ["in-step"] as const;
  return ok({
    acrossMm,
    widestGapShare: gap,
    n: marks,
    sampledBy: "marks",
    cautions,
    methods,
    sources: sourcesOfCover(methods),
  });
};
