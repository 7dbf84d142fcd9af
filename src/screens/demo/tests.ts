/** The three tests of the example farm: what the ground is like goes in, readings come out. */
import type { Draft } from "../../record/command/command.ts";
import type { RecordId } from "../../record/ids.ts";
import type { HoleHeader, LineHeader, RingHeader } from "../../record/kinds/observation.ts";
import type { Place as PlaceAgainstRow } from "../../record/shapes.ts";
import type { DemoPen, Said } from "./demo-pen.ts";
import { type Lie, type Place, stoodAt } from "./ground.ts";
import type { DemoKit, DemoStrip } from "./lay-out.ts";
import type { Scatter } from "./scatter.ts";

export const MINUTE_MS = 60_000;

/** Where and when a test is made. */
export interface On {
  readonly visit: RecordId<"visit">;
  readonly field: RecordId<"field">;
  readonly lie: Lie;
  readonly strip: DemoStrip;
  /** At the marked spot, else somewhere in the strip. */
  readonly atSpot: boolean;
  readonly atMs: number;
}

/** What tests are written with. */
export interface Hand {
  readonly pen: DemoPen;
  readonly scatter: Scatter;
  readonly kit: DemoKit;
}

const somewhere = ({ share }: Scatter, { strip, atSpot }: On): Place => {
  if (atSpot && strip.spot !== null) return strip.spot.place;
  const { fromM, toM } = strip;
  return { acrossM: fromM + (toM - fromM) * (0.2 + 0.6 * share()), alongM: 30 + 110 * share() };
};

const shared = ({ visit, field, strip, atSpot, atMs }: On) => ({
  visit,
  field,
  strip: strip.id,
  person: null,
  startedAtMs: Math.round(atMs),
  ...(atSpot && strip.spot !== null ? { spot: strip.spot.id } : {}),
});

/** What lies on the ground of a strip, as shares. */
export interface GroundOf {
  readonly residue: number;
  readonly green: number;
}

type Letter = "flat" | "standing" | "green" | "bare" | "stone";

const lettersOf = ({ share, around }: Scatter, { residue, green }: GroundOf, marks: number): Letter[] => {
  // Lines of one strip differ by more than their marks would by themselves.
  const cover = Math.min(0.98, Math.max(0.02, around(residue + green, 0.05)));
  const greenPart = green / (residue + green);
  return Array.from({ length: marks }, () => {
    if (share() < cover) return share() < greenPart ? "green" : share() < 0.15 ? "standing" : "flat";
    return share() < 0.05 ? "stone" : "bare";
  });
};

const markOf = (letter: Letter, mark: number): Draft => {
  if (letter === "flat" || letter === "standing")
    return { type: "mark", mark, cover: "residue", stance: letter };
  return { type: "mark", mark, cover: letter };
};

const totalsOf = (letters: readonly Letter[]): Draft => {
  const count = (wanted: Letter): number => letters.filter((letter) => letter === wanted).length;
  return {
    type: "totals",
    flat: count("flat"),
    standing: count("standing"),
    bare: count("bare"),
    green: count("green"),
    stone: count("stone"),
    own: 0,
  };
};

/** What is written down of these marks, in each way to count. */
const lineReadings = (letters: readonly Letter[], way: LineHeader["way"], atMs: number): Said[] => {
  if (way === "totals") return [{ atMs: atMs + 4 * MINUTE_MS, draft: totalsOf(letters) }];
  const marks = letters.map((letter, at) => ({ atMs: atMs + at * 2400, draft: markOf(letter, at + 1) }));
  if (way === "mark-by-mark") return marks;
  const isMiss = (_: Said, at: number): boolean => letters[at] !== "flat" && letters[at] !== "standing";
  const end: Draft = { type: "end", mark: letters.length };
  return [...marks.filter(isMiss), { atMs: atMs + 4 * MINUTE_MS, draft: end }];
};

/** A line straight across the rows. */
export const line = ({ pen, scatter, kit }: Hand, on: On, ground: GroundOf, way: LineHeader["way"]): void => {
  const { lie, atMs } = on;
  const start = somewhere(scatter, on);
  const end = { acrossM: start.acrossM + 0.3 * (kit.ropeMarks - 1), alongM: start.alongM };
  const frame = { way, ropeMarks: kit.ropeMarks };
  const letters = lettersOf(scatter, ground, kit.ropeMarks);
  const id = pen.write(
    "observation",
    {
      ...shared(on),
      type: "line",
      rope: kit.rope,
      way,
      place: "across-rows",
      angleToRowsDeg: 90,
      rowSpacingM: 0.125,
      passWidthM: 24,
      start: stoodAt(lie, start, Math.round(atMs)),
      end: stoodAt(lie, end, Math.round(atMs + 4 * MINUTE_MS)),
      fifthKey: null,
      askThickness: false,
    },
    atMs,
  );
  pen.read(id, frame, lineReadings(letters, way, atMs));
};

const found = (from: "mulch" | "soil", count: number): Draft => ({
  type: "found",
  from,
  count,
  typed: String(count),
});

/** Worms of a hole by where they live, about half of them young; `all` stay `all`. */
export const sortedInto = ({ share }: Scatter, all: number): readonly Draft[] => {
  const counts = { young: 0, surface: 0, topsoil: 0, deep: 0 };
  for (let worm = 0; worm < all; worm++) {
    const where = share();
    counts[where < 0.52 ? "young" : where < 0.62 ? "surface" : where < 0.88 ? "topsoil" : "deep"] += 1;
  }
  return (["young", "surface", "topsoil", "deep"] as const).map((group) => ({
    type: "sorted",
    group,
    count: counts[group],
    typed: String(counts[group]),
  }));
};

/** The header of a spade hole of 20 × 20 × 20 cm. */
export const holeHeader = (
  { scatter, kit }: Hand,
  on: On,
  number: number,
  more: Partial<HoleHeader> = {},
): HoleHeader => ({
  ...shared(on),
  type: "hole",
  template: kit.template,
  sidesM: null,
  depthM: 0.2,
  method: null,
  landUse: "cropland",
  minutes: 5,
  mustardMin: null,
  at: stoodAt(on.lie, somewhere(scatter, on), Math.round(on.atMs)),
  number,
  place: "between-rows",
  ...more,
});

/** A hole that was sorted to the end; worms are told apart only when `groups` says so. */
export const hole = (
  hand: Hand,
  on: On,
  worms: number,
  number: number,
  groups: boolean,
  more: Partial<HoleHeader> = {},
): void => {
  const { pen, scatter } = hand;
  const id = pen.write("observation", holeHeader(hand, on, number, more), on.atMs);
  const all = scatter.count(worms, 0.3);
  const onTop = Math.min(all, scatter.share() < 0.4 ? 1 : 0);
  const warm = Math.round(scatter.around(SOIL_C, 0.4) * 2) / 2;
  const told: Draft[] = [
    ...sortedInto(scatter, all),
    { type: "temperature", of: "soil", value: warm, unit: "C", typed: String(warm) },
    { type: "wetness", is: "moist" },
  ];
  const steps: Draft[] = [
    found("mulch", onTop),
    found("soil", all - onTop),
    ...(groups ? told : []),
    { type: "closed" },
  ];
  pen.read(
    id,
    null,
    steps.map((draft, at) => ({ atMs: on.atMs + (2 + at) * MINUTE_MS, draft })),
  );
};

/** When a ring is read, in minutes after the start. */
export const PLAN_MIN = [5, 10, 20, 30, 45, 60];
/** A shorter plan, as it was kept in the years before. */
export const SHORT_PLAN_MIN = [10, 30, 60];
const FILLED_MM = 150;
const SOIL_C = 10;

/** How far a ring takes in water: by sorptivity first, steadily later. */
const soakedMm = (at60Mm: number, minutes: number): number =>
  at60Mm * (0.55 * Math.sqrt(minutes / 60) + (0.45 * minutes) / 60);

const level = (mm: number): Draft => ({
  type: "level",
  ring: "inner",
  value: mm,
  unit: "mm",
  reads: "water-depth",
  typed: String(mm),
  timed: "now",
});

/** The readings of a ring that takes in so much within an hour, up to and with this minute. */
export const ringReadings = (
  startMs: number,
  at60Mm: number,
  upToMin: number,
  planMin: readonly number[] = PLAN_MIN,
): readonly Said[] => [
  { atMs: startMs, draft: { type: "start", timed: "now" } },
  ...[0, ...planMin]
    .filter((minutes) => minutes <= upToMin)
    .map((minutes) => ({
      atMs: startMs + minutes * MINUTE_MS,
      draft: level(Math.max(0, Math.round(FILLED_MM - soakedMm(at60Mm, minutes)))),
    })),
];

/** The header of a ring that is read with a ruler. */
export const ringHeader = (
  { scatter, kit }: Hand,
  on: On,
  ring: RecordId<"kit">,
  place: PlaceAgainstRow,
  planMin: readonly number[] = PLAN_MIN,
): RingHeader => ({
  ...shared(on),
  type: "ring",
  ring,
  outer: null,
  ruler: kit.ruler,
  bottle: null,
  way: "ruler",
  rulerReads: "water-depth",
  mulch: "kept",
  rimToSoilM: [],
  planMin: [...planMin],
  at: stoodAt(on.lie, somewhere(scatter, on), Math.round(on.atMs)),
  follows: null,
  place,
});

/** A ring that was read for an hour. */
export const ring = (
  hand: Hand,
  on: On,
  at60Mm: number,
  which: number,
  stands: { readonly place: PlaceAgainstRow; readonly planMin: readonly number[] },
): void => {
  const { pen, scatter, kit } = hand;
  const of = kit.rings[which % kit.rings.length];
  if (of === undefined) return;
  const id = pen.write("observation", ringHeader(hand, on, of, stands.place, stands.planMin), on.atMs);
  pen.read(id, null, [
    ...ringReadings(on.atMs, scatter.times(at60Mm, 0.14), 60, stands.planMin),
    { atMs: on.atMs + 60.2 * MINUTE_MS, draft: { type: "stop", why: "done", timed: "now" } },
  ]);
};
