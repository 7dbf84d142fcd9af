/** Cover by distance from the middle of the machine pass, from the order of the marks. */
import { type Failed, failed, ok, type Result } from "../../record/result.ts";
import { PASS_CLASSES } from "../constants.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOfCover } from "../methods/behind/ground-cover.ts";

/** One line in the order of its marks. */
export interface OrderedLine {
  /** Per mark whether it hit the kind asked for; null for a mark not read. */
  readonly marks: readonly (boolean | null)[];
  readonly markSpacingMm: number;
  /** 90 straight across the rows, 0 along them. */
  readonly angleToRowsDeg: number;
  /** Where the first mark lies, across the rows from the middle of a pass, in walking direction. */
  readonly firstMarkFromMiddleMm: number;
}

/** One class of distance, with the marks that fell into it. */
export interface PassClass {
  readonly fromMm: number;
  readonly toMm: number;
  readonly hits: number;
  readonly marks: number;
  /** Null when no mark fell into it. */
  readonly share: number | null;
}

/** Cover by distance from the middle of the pass; n counts the lines. */
export interface AcrossPass extends Worked {
  readonly classes: readonly PassClass[];
}

const problemOf = ({ markSpacingMm, angleToRowsDeg, firstMarkFromMiddleMm }: OrderedLine): Failed | null => {
  if (!(markSpacingMm > 0 && Number.isFinite(markSpacingMm)))
    return failed("science/not-a-length", { value: String(markSpacingMm) });
  if (!Number.isFinite(firstMarkFromMiddleMm))
    return failed("science/not-a-length", { value: String(firstMarkFromMiddleMm) });
  return angleToRowsDeg >= 0 && angleToRowsDeg <= 90
    ? null
    : failed("science/not-an-angle", { angle: String(angleToRowsDeg) });
};

/**
 * Cover in four equal classes from the middle of a pass out to its edge, both sides and all passes crossed
 * put together: `y = |x − W·round(x/W)|` with x the way across the rows. It shows residue thrown badly behind
 * a harvester. A class has few marks and its marks lie on few passes, so it is shown without a range and says so
 * (`science/classes-without-a-range`).
 *
 * @param lines lines of one strip, each with its marks in order
 * @param passWidthMm working width of the machine, above 0
 * @returns `science/not-a-length` for a width or spacing that is not above 0 and finite, `science/not-an-angle`
 * outside 0 to 90, `science/no-marks-read` when no mark was read
 *
 * Source: geometry.
 *
 * @example
 * coverAcrossPass([{ marks: [true, false, true], markSpacingMm: 1000, angleToRowsDeg: 90,
 *   firstMarkFromMiddleMm: 0 }], 8000); // marks at 0, 1 and 2 m from the middle
 */
export const coverAcrossPass = (lines: readonly OrderedLine[], passWidthMm: number): Result<AcrossPass> => {
  if (!(passWidthMm > 0 && Number.isFinite(passWidthMm)))
    return failed("science/not-a-length", { value: String(passWidthMm) });
  const width = passWidthMm / 2 / PASS_CLASSES;
  const classes = Array.from({ length: PASS_CLASSES }, () => ({ hits: 0, marks: 0 }));
  for (const line of lines) {
    const problem = problemOf(line);
    if (problem !== null) return problem;
    const { marks, markSpacingMm, angleToRowsDeg, firstMarkFromMiddleMm } = line;
    const stepMm = markSpacingMm * Math.sin((angleToRowsDeg * Math.PI) / 180);
    for (const [index, hit] of marks.entries()) {
      if (hit === null) continue;
      const across = firstMarkFromMiddleMm + index * stepMm;
      const fromMiddle = Math.abs(across - passWidthMm * Math.round(across / passWidthMm));
      // A mark on a border belongs to the outer class; the margin keeps it there in inches too.
      const place = Math.min(PASS_CLASSES - 1, Math.floor(fromMiddle / width + 1e-9));
      const found = classes[place];
      if (found === undefined) continue;
      found.marks++;
      if (hit) found.hits++;
    }
  }
  if (classes.every(({ marks }) => marks === 0)) return failed("science/no-marks-read");
  const methods = ["across-pass"] as const;
  return ok({
    classes: classes.map(({ hits, marks }, place) => ({
      fromMm: place * width,
      toMm: (place + 1) * width,
      hits,
      marks,
      share: marks === 0 ? null : hits / marks,
    })),
    n: lines.filter(({ marks }) => marks.some((hit) => hit !== null)).length,
    sampledBy: "lines",
    cautions: [{ code: "science/classes-without-a-range", facts: {} }],
    methods,
    sources: sourcesOfCover(methods),
  });
};
