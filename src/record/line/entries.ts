/** What is written down at a line: marks, mulch thickness, sums, and where the line ends. */
import { moment, replaces, unusual } from "../moment.ts";
import { finite, name, whole } from "../shapes.ts";
import * as z from "../zod.ts";

/** What the raindrop meets first at a mark. */
export const COVERS = ["residue", "bare", "green", "stone", "own"] as const;
export type Cover = (typeof COVERS)[number];

const markNumber = whole(1, 10_000);
const stance = z.oneOf(["flat", "standing"]);
const tally = whole(0, 10_000);

const mark = z.strictObject({
  ...moment,
  type: z.literal("mark"),
  mark: markNumber,
  cover: z.oneOf(COVERS),
  /** Residue only: lying flat or standing. */
  stance: z.exactOptional(stance),
  replaces,
});
/** The rope says another number: the next mark read is this one, what lies between was not read. */
const setMark = z.strictObject({ ...moment, type: z.literal("set-mark"), mark: markNumber });
const thickness = z.strictObject({
  ...moment,
  type: z.literal("thickness"),
  mark: markNumber,
  value: finite,
  unit: z.oneOf(["mm", "in"]),
  /** As it was typed. */
  typed: name,
  unusual,
  replaces,
});
/** Marks counted on paper or aloud, entered as sums. */
const totals = z.strictObject({
  ...moment,
  type: z.literal("totals"),
  flat: tally,
  standing: tally,
  bare: tally,
  green: tally,
  stone: tally,
  own: tally,
  replaces,
});
/** The line ends here: the last mark that was looked at. When only misses were called, the rest is residue. */
const end = z.strictObject({
  ...moment,
  type: z.literal("end"),
  mark: whole(0, 10_000),
  rest: z.exactOptional(stance),
  replaces,
});

export const lineEntries = [mark, setMark, thickness, totals, end] as const;
export type MarkEntry = z.Infer<typeof mark>;
export type ThicknessEntry = z.Infer<typeof thickness>;
export type TotalsEntry = z.Infer<typeof totals>;
export type EndEntry = z.Infer<typeof end>;
export type Stance = z.Infer<typeof stance>;
