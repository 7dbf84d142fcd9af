/** What one hole says by itself, for its own sheet. */
import { type Entry, type Fate, fatesOf, inOrder } from "../../../record/entry.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { Result } from "../../../record/result.ts";
import { wormsInHole, wormsPerM2OfHole } from "../../../science/earthworms/hole.ts";
import { type HoleCount, holeAreaM2 } from "../../../science/earthworms/hole-count.ts";
import type { Estimate } from "../../../science/estimate.ts";
import type { House } from "../../parts/house.ts";
import { onGrass, spotsOf } from "../../parts/old-grass.ts";
import { sameField, sameStrip } from "../../parts/same-field.ts";
import { countOfHole, type DayHole, readHoles } from "./holes-of-day.ts";
import { workedDaysAgo } from "./worked-ago.ts";

/** Touches of one kind that follow each other and met the same fate. */
export interface RawRow {
  readonly entry: Entry;
  readonly times: number;
  readonly fate: Fate;
}

export interface HoleSheet {
  readonly hole: DayHole;
  readonly deleted: boolean;
  readonly count: HoleCount;
  readonly perHole: Result<Estimate>;
  readonly perM2: Result<Estimate>;
  readonly areaM2: Result<number>;
  /** Guessed on this strip and visit; null when nobody did. */
  readonly guess: number | null;
  readonly raw: readonly RawRow[];
}

const sameTouch = (a: Entry, b: Entry): boolean =>
  (a.type === "worm" && b.type === "worm" && a.from === b.from) ||
  (a.type === "placed" && b.type === "placed" && a.group === b.group);

/**
 * Every reading in order, with what became of it. Touches of one kind that follow each other stand as one
 * row; an undo is seen at what it took back.
 */
export const rawRows = (entries: readonly Entry[]): readonly RawRow[] => {
  const ordered = inOrder(entries);
  const fates = fatesOf(ordered);
  const rows: RawRow[] = [];
  for (const [at, entry] of ordered.entries()) {
    if (entry.type === "undo") continue;
    const fate = fates[at] ?? "counts";
    const before = rows.at(-1);
    if (before !== undefined && before.fate === fate && sameTouch(before.entry, entry))
      rows[rows.length - 1] = { ...before, times: before.times + 1 };
    else rows.push({ entry, times: 1, fate });
  }
  return rows;
};

/** Reads the sheet of a hole; null when the hole is not on this device. */
export const readHoleSheet = async (
  { records }: House,
  id: RecordId<"observation">,
): Promise<HoleSheet | null> => {
  const row = await records.one(id);
  if (row === undefined) return null;
  const [hole] = await readHoles(records, [row]);
  if (hole === undefined) return null;
  const { header } = hole;
  const [entries, same, joins, visit] = await Promise.all([
    records.entries([id]),
    sameField(records, header.field),
    records.joins(),
    records.one(header.visit),
  ]);
  const stripOf = sameStrip(joins);
  const oldGrass = onGrass(await spotsOf(records, [row]), header);
  // Nothing is guessed of old grass, and nobody tills it.
  const isStrip = (strip: RecordId<"strip">): boolean =>
    !oldGrass && stripOf(strip) === stripOf(header.strip);
  const fields = same?.ids ?? [header.field];
  const [worked, guesses] = await Promise.all([
    visit === undefined || oldGrass ? null : workedDaysAgo(records, fields, isStrip, visit.body.day),
    Promise.all(fields.map((field) => records.list({ field, kind: "guess" }))),
  ]);
  const count = { ...countOfHole(hole), workedDaysAgo: worked };
  const guess = guesses
    .flat()
    .find(
      ({ body }) =>
        body.what === "worms-per-hole" &&
        body.visit === header.visit &&
        body.strip !== null &&
        isStrip(body.strip),
    );
  return {
    hole,
    deleted: row.deleted,
    count,
    perHole: wormsInHole(count),
    perM2: wormsPerM2OfHole(count),
    areaM2: holeAreaM2(count.sidesM),
    guess: guess?.body.value ?? null,
    raw: rawRows(entries.get(id) ?? []),
  };
};
