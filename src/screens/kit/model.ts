/** Ropes: usual sizes, bounds, and the lines that were made with one. */
import type { RecordId } from "../../record/ids.ts";
import type { Rope } from "../../record/kinds/kit.ts";
import { inUnit, toSi, type UnitHabits } from "../../record/units.ts";
import type { NumberRule } from "../parts/number-line.tsx";
import type { Listed, Reader } from "../parts/reader.ts";

/** A rope as lists show it. */
export interface ListedRope {
  readonly id: RecordId<"kit">;
  readonly rope: Rope;
}

/**
 * Two usual sizes. 15 cm: a tape of 15.2 m with 100 points, Journal of Soil and Water Conservation 76(5):
 * 403 (2021). 1 ft: a tape of 100 ft with a mark at every foot, University of Missouri Extension G1570
 * (1993); University of Nebraska, faculty publication 254.
 */
export const USUAL = {
  metric: { marks: 100, spacingM: toSi(15, "cm") },
  foot: { marks: 100, spacingM: toSi(1, "ft") },
} as const;

type SpacingUnit = UnitHabits["spacing"];

/** A spacing as it is written into the form, short enough to read. */
export const spacingText = (spacingM: number, unit: SpacingUnit): string =>
  String(Number(inUnit(spacingM, unit).toFixed(2)));

/** A spacing that was put into the form, and the text that stands for it there. */
export interface KnownSpacing {
  readonly spacingM: number;
  readonly text: string;
}

/**
 * The spacing to keep. A text that nobody touched stands for the exact value behind it: else 15 cm shown
 * as 5.91 inches would be kept as 15.01 cm.
 */
export const spacingToKeep = (
  known: KnownSpacing | null,
  typed: string,
  value: number,
  unit: SpacingUnit,
): number => (known !== null && known.text === typed ? known.spacingM : toSi(value, unit));

/** Marks that a rope may have; what is asked about is own choice, no source. */
export const marksRule = (refused: string): NumberRule => ({
  bounds: { min: 9, max: 501 },
  refuse: (value) => (Number.isInteger(value) && value >= 1 && value <= 10_000 ? null : refused),
});

/** Spacings that a rope may have: 1 cm to 3 m are kept without asking (own choice, no source). */
export const spacingRule = (unit: SpacingUnit, refused: string): NumberRule => ({
  bounds: { min: inUnit(0.0099, unit), max: inUnit(3.001, unit) },
  refuse: (value) => {
    const spacingM = toSi(value, unit);
    return spacingM >= 0.001 && spacingM <= 100 ? null : refused;
  },
});

/** Every living rope, by name. */
export const readRopes = async (records: Reader): Promise<readonly ListedRope[]> => {
  const kit = await records.list({ kind: "kit" });
  return kit
    .flatMap(({ id, body }) => (body.type === "rope" ? [{ id, rope: body }] : []))
    .sort((a, b) => a.rope.name.localeCompare(b.rope.name, undefined, { numeric: true }));
};

/** How many living lines were made with each rope. */
export const linesByRope = (lines: readonly Listed<"observation">[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { body } of lines)
    if (body.type === "line") counts.set(body.rope, (counts.get(body.rope) ?? 0) + 1);
  return counts;
};
