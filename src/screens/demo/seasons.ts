/** Three harvest years of all three tests. What the ground is like is set here, and the stories with it. */
import type { RecordId } from "../../record/ids.ts";
import type { HoleHeader } from "../../record/kinds/observation.ts";
import type { Place as PlaceAgainstRow } from "../../record/shapes.ts";
import { dayOf } from "../parts/numbers.ts";
import type { DemoStrip, Piece, Quarter } from "./lay-out.ts";
import {
  type GroundOf,
  type Hand,
  hole,
  line,
  MINUTE_MS,
  type On,
  PLAN_MIN,
  ring,
  SHORT_PLAN_MIN,
} from "./tests.ts";
import type { FarmWords } from "./words.farm.ts";

/** One visit of a field. */
export interface Season {
  /** The morning of that day. */
  readonly atMs: number;
  readonly harvestYear: number;
  /** 0 for the newest; what the ground is like drifts with the years. */
  readonly yearsAgo: number;
}

const visitOf = ({ pen }: Hand, field: RecordId<"field">, { atMs, harvestYear }: Season): RecordId<"visit"> =>
  pen.write("visit", { field, day: dayOf(atMs), harvestYear }, atMs);

/** Cover after drilling: much where the straw stayed, little where it went. The clear difference. */
const STRAW_LEFT: GroundOf = { residue: 0.7, green: 0.06 };
const STRAW_OFF: GroundOf = { residue: 0.28, green: 0.06 };
const COVER_CROP: GroundOf = { residue: 0.5, green: 0.36 };
const OLD_GRASS: GroundOf = { residue: 0.12, green: 0.86 };
const NO_COVER_CROP: GroundOf = { residue: 0.46, green: 0.08 };

/** Worms of a hole: hardly apart, and far apart from hole to hole. What cannot be told. */
const WORMS = { strawLeft: 8, strawOff: 7, coverCrop: 10, oldGrass: 19, withCover: 9, withoutCover: 6 };

/**
 * Millimetres in an hour. Where the straw stayed more soaks in between the rows and more in wheel tracks; but
 * most of its rings stand in wheel tracks, and those of the other side between the rows. Put together it seems
 * to be the other way round. What reverses.
 */
const SOAKED_MM = {
  strawLeft: { "between-rows": 62, "wheel-track": 12 },
  strawOff: { "between-rows": 46, "wheel-track": 8 },
  coverCrop: { "between-rows": 68, "wheel-track": 14 },
} as const;

/** Between the rows and in wheel tracks, in the newest year; one of each in the years before. */
const RINGS: Readonly<Record<keyof typeof SOAKED_MM, readonly [between: number, wheels: number]>> = {
  strawLeft: [2, 5],
  strawOff: [5, 2],
  coverCrop: [2, 2],
};

/** Less of everything in the years before: the straw has been left for three years. */
const earlier = (value: number, yearsAgo: number): number => value * 0.93 ** yearsAgo;

const drifted = ({ residue, green }: GroundOf, yearsAgo: number): GroundOf => ({
  residue: earlier(residue, yearsAgo),
  green: earlier(green, yearsAgo),
});

/** The tests of one day: one walks the lines, two dig, and six rings run at a time. */
const dayOn = (hand: Hand, { id, lie }: Pick<Piece, "id" | "lie">, season: Season) => {
  const visit = visitOf(hand, id, season);
  let [lines, holes, rings] = [0, 0, 0];
  const newest = season.yearsAgo === 0;
  const on = (strip: DemoStrip, minutes: number, atSpot: boolean): On => ({
    visit,
    field: id,
    lie,
    strip,
    atSpot,
    atMs: season.atMs + minutes * MINUTE_MS,
  });
  return {
    visit,
    line: (strip: DemoStrip, ground: GroundOf, atSpot: boolean): void => {
      const way = atSpot && newest ? (ground.residue < 0.4 ? "mark-by-mark" : "misses-only") : "totals";
      line(hand, on(strip, 40 + 6 * lines, atSpot), ground, way);
      lines += 1;
    },
    hole: (strip: DemoStrip, worms: number, atSpot: boolean, more: Partial<HoleHeader> = {}): void => {
      const number = holes + 1;
      hole(hand, on(strip, 30 + 14 * holes, atSpot), worms, number, newest, more);
      holes = number;
    },
    ring: (strip: DemoStrip, at60Mm: number, atSpot: boolean, place: PlaceAgainstRow): void => {
      const together = hand.kit.rings.length;
      const which = rings % together;
      const minutes = 75 * Math.floor(rings / together) + 3 * which;
      const planMin = newest ? PLAN_MIN : SHORT_PLAN_MIN;
      ring(hand, on(strip, minutes, atSpot), at60Mm, which, { place, planMin });
      rings += 1;
    },
  };
};

const NAMES = ["strawLeft", "strawOff", "coverCrop"] as const;
const GROUNDS = { strawLeft: STRAW_LEFT, strawOff: STRAW_OFF, coverCrop: COVER_CROP };

/** How many there are of each, in the newest year and in the years before; the first at the marked spot. */
const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at);

/** One season of the first field, strip by strip: each step is written by itself. */
export function* seasonOfPiece(
  hand: Hand,
  words: FarmWords,
  piece: Piece,
  season: Season,
): Generator<undefined> {
  const { atMs, yearsAgo } = season;
  const day = dayOn(hand, piece, season);
  const newest = yearsAgo === 0;
  for (const name of NAMES) {
    const strip = piece[name];
    for (const at of upTo(newest ? 5 : 4)) day.line(strip, drifted(GROUNDS[name], yearsAgo), at === 0);
    for (const at of upTo(newest ? 5 : 3)) day.hole(strip, earlier(WORMS[name], yearsAgo), at === 0);
    yield;
    const [between, wheels] = newest ? RINGS[name] : [1, 1];
    for (const at of upTo(between + wheels)) {
      const place = at < between ? "between-rows" : "wheel-track";
      day.ring(strip, earlier(SOAKED_MM[name][place], yearsAgo), at === 0, place);
    }
    yield;
  }
  day.line(piece.oldGrass, OLD_GRASS, true);
  day.hole(piece.oldGrass, WORMS.oldGrass, true, { landUse: "grassland", place: "other" });
  day.ring(piece.oldGrass, 92, true, "other");
  note(hand, piece.id, day.visit, null, newest ? words.notes.wheels : words.notes.casts, atMs);
  yield;
}

/** One season of the second field, pair by pair. */
export function* seasonOfQuarter(
  hand: Hand,
  words: FarmWords,
  quarter: Quarter,
  season: Season,
): Generator<undefined> {
  const { atMs, yearsAgo } = season;
  const day = dayOn(hand, quarter, season);
  for (const { withCover, withoutCover } of quarter.pairs) {
    for (const at of upTo(2)) day.line(withCover, drifted(COVER_CROP, yearsAgo), at === 0);
    for (const at of upTo(2)) day.line(withoutCover, drifted(NO_COVER_CROP, yearsAgo), at === 0);
    day.hole(withCover, earlier(WORMS.withCover, yearsAgo), true);
    day.hole(withoutCover, earlier(WORMS.withoutCover, yearsAgo), true);
    day.ring(withCover, earlier(55, yearsAgo), true, "between-rows");
    day.ring(withoutCover, earlier(38, yearsAgo), true, "between-rows");
    yield;
  }
  const crusted = quarter.pairs[0]?.withoutCover.id ?? null;
  if (yearsAgo === 0) note(hand, quarter.id, day.visit, crusted, words.notes.crust, atMs);
  yield;
}

/** A note in words. */
export const note = (
  { pen }: Hand,
  field: RecordId<"field">,
  visit: RecordId<"visit">,
  strip: RecordId<"strip"> | null,
  text: string,
  atMs: number,
): void => {
  pen.write(
    "observation",
    {
      type: "note",
      visit,
      field,
      strip,
      text,
      at: { position: null, why: "not-asked" },
      person: null,
      startedAtMs: Math.round(atMs + 200 * MINUTE_MS),
    },
    atMs,
  );
};
