/** What was done on the example farm, the rain, what was guessed, and a result on paper. */

import type { RecordId } from "../../record/ids.ts";
import type { EarlierResult } from "../../record/kinds/earlier.ts";
import type { EVENTS } from "../../record/kinds/event.ts";
import { dayOf } from "../parts/numbers.ts";
import type { DemoPen } from "./demo-pen.ts";
import type { Piece, Quarter } from "./lay-out.ts";
import type { Scatter } from "./scatter.ts";
import type { FarmWords } from "./words.farm.ts";

const DAY_MS = 86_400_000;

type What = (typeof EVENTS)[number];

/** A harvest year on the northern half of the earth, month and day; `before` counts back from the harvest. */
const YEAR_OF_FARM: readonly {
  readonly what: What;
  readonly before: 0 | 1;
  readonly day: string;
  readonly on: "field" | "strawLeft" | "strawOff" | "coverCrop";
}[] = [
  { what: "cover-crop-sown", before: 1, day: "08-22", on: "coverCrop" },
  { what: "cover-crop-terminated", before: 1, day: "10-06", on: "coverCrop" },
  { what: "drilled", before: 1, day: "10-10", on: "field" },
  { what: "sprayed", before: 0, day: "04-20", on: "field" },
  { what: "harvested", before: 0, day: "08-10", on: "field" },
  { what: "straw-left", before: 0, day: "08-10", on: "strawLeft" },
  { what: "straw-baled", before: 0, day: "08-13", on: "strawOff" },
];

/** Events of the last three harvest years, as far as they have come. */
export const events = (
  pen: DemoPen,
  words: FarmWords,
  { piece, quarter }: { readonly piece: Piece; readonly quarter: Quarter },
  { nowMs, harvestYear }: { readonly nowMs: number; readonly harvestYear: number },
): void => {
  const today = dayOf(nowMs);
  for (const year of [harvestYear - 2, harvestYear - 1, harvestYear])
    for (const { what, before, day, on } of YEAR_OF_FARM) {
      const date = `${year - before}-${day}`;
      if (date >= today) continue;
      const strip = on === "field" ? null : piece[on].id;
      const said = { day: date, what, words: what === "sprayed" ? words.sprayed : "" };
      pen.write("event", { field: piece.id, strip, ...said }, Date.parse(date));
      if (on === "field") pen.write("event", { field: quarter.id, strip: null, ...said }, Date.parse(date));
    }
};

/** Rain of the last two months, about every fifth day, and some three days ago. */
export const rain = (pen: DemoPen, { share }: Scatter, field: RecordId<"field">, nowMs: number): void => {
  const gauge = (daysAgo: number, depthMm: number): void => {
    const atMs = nowMs - daysAgo * DAY_MS;
    pen.write("rain", { field, day: dayOf(atMs), depthMm }, atMs);
  };
  for (let daysAgo = 60; daysAgo > 7; daysAgo -= 3 + Math.floor(share() * 5))
    gauge(daysAgo, Math.round((1 + 14 * share() ** 2) * 2) / 2);
  gauge(3, 7.5);
};

/** What the grower guessed before the newest visit. */
export const guesses = (pen: DemoPen, piece: Piece, visit: RecordId<"visit">, atMs: number): void => {
  const guess = (what: EarlierResult["what"], strip: RecordId<"strip">, value: number): void => {
    pen.write(
      "guess",
      { field: piece.id, strip, visit, person: null, what, value, atMs: Math.round(atMs) },
      atMs,
    );
  };
  guess("ground-cover-percent", piece.strawLeft.id, 50);
  guess("ground-cover-percent", piece.strawOff.id, 45);
  guess("worms-per-hole", piece.strawLeft.id, 12);
  guess("soaked-in-60-min-mm", piece.strawOff.id, 25);
};

/** The result that was on paper before any of this. */
export const onPaper = (words: FarmWords, piece: Piece, harvestYear: number): EarlierResult => ({
  field: piece.id,
  strip: piece.strawLeft.id,
  day: `${harvestYear - 4}-04-14`,
  what: "ground-cover-percent",
  value: 31,
  samples: 3,
  origin: words.paper,
});
