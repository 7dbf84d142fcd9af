/** What the entries of a spade hole say: worms found and placed, who sorted how long, conditions, the end. */
import type { TemperatureEntry, WETNESS, WetnessEntry } from "../conditions.ts";
import { type Entry, type Fate, fatesOf, inOrder } from "../entry.ts";
import type { Problem } from "../result.ts";
import type { RingClock } from "../ring/clock.ts";
import { type Steps, stepsIn } from "../steps.ts";
import { type Answer, settledFrom, standing } from "./answers.ts";
import { type CountRead, countOf, type Touch } from "./count.ts";
import {
  type FoundEntry,
  LAYERS,
  type Layer,
  type SortedEntry,
  WORM_GROUPS,
  type WormGroup,
} from "./entries.ts";
import { holeClock, type MustardRead, mustardOf, type SortingRead, sortingOf } from "./sorting.ts";

type ClosedEntry = Extract<Entry, { type: "closed" }>;

/** How wet the ground is, as a hand tells. */
export type Wetness = (typeof WETNESS)[number];

/** The worms of one layer. */
export interface FoundRead extends CountRead<FoundEntry> {
  /** Somebody looked there: none found is then a count of nought, else there is no count. */
  readonly looked: boolean;
}

/** A condition, once there is one answer. */
export interface Condition<T, E> {
  readonly value: T;
  readonly entry: E;
}

/** A hole as its entries tell it. */
export interface HoleReading extends Steps {
  readonly found: Readonly<Record<Layer, FoundRead>>;
  readonly foundTotal: number;
  readonly placed: Readonly<Record<WormGroup, CountRead<SortedEntry>>>;
  readonly placedTotal: number;
  /** Worms still in the pot; never below nought. */
  readonly left: number;
  /** No number is in doubt. */
  readonly settled: boolean;
  readonly sorting: Readonly<Record<Layer, SortingRead>>;
  readonly mustard: readonly MustardRead[];
  /** Temperature of the soil in °C. */
  readonly soilTemperature: Condition<number, TemperatureEntry> | null;
  readonly temperaturesInDoubt: readonly TemperatureEntry[];
  readonly wetness: Condition<Wetness, WetnessEntry> | null;
  readonly wetnessInDoubt: readonly WetnessEntry[];
  readonly closed: ClosedEntry | null;
  /** Closed, or the worms of the soil counted at once: a total alone is a full result. */
  readonly finished: boolean;
  /** What to say beside the numbers; it never removes one. */
  readonly cautions: readonly Problem[];
  /** How many entries count, undo entries left out. */
  readonly living: number;
  readonly clock: RingClock;
}

const celsius = ({ value, unit }: TemperatureEntry): number =>
  unit === "C" ? value : ((value - 32) * 5) / 9;

/** Entries sorted by what they are. */
interface Gathered {
  readonly touches: Readonly<Record<Layer | WormGroup, Touch[]>>;
  readonly found: Readonly<Record<Layer, Answer<FoundEntry>[]>>;
  readonly sorted: Readonly<Record<WormGroup, Answer<SortedEntry>[]>>;
  readonly temperatures: Answer<TemperatureEntry>[];
  readonly wetness: Answer<WetnessEntry>[];
  /** Not taken back, in order; and of these the ones that were not replaced either. */
  readonly said: Entry[];
  readonly counting: Entry[];
}

const nothing = (): Gathered => ({
  touches: { mulch: [], soil: [], "mustard-water": [], young: [], surface: [], topsoil: [], deep: [] },
  found: { mulch: [], soil: [], "mustard-water": [] },
  sorted: { young: [], surface: [], topsoil: [], deep: [] },
  temperatures: [],
  wetness: [],
  said: [],
  counting: [],
});

const add = (all: Gathered, entry: Entry, at: number, replaced: boolean): void => {
  switch (entry.type) {
    case "worm":
      if (!replaced) all.touches[entry.from].push({ entry, at });
      break;
    case "placed":
      if (!replaced) all.touches[entry.group].push({ entry, at });
      break;
    case "found":
      all.found[entry.from].push({ entry, at, replaced });
      break;
    case "sorted":
      all.sorted[entry.group].push({ entry, at, replaced });
      break;
    case "temperature":
      // The temperature of mustard water is not that of the ground.
      if (entry.of === "soil") all.temperatures.push({ entry, at, replaced });
      break;
    case "wetness":
      all.wetness.push({ entry, at, replaced });
      break;
    default:
  }
};

const gather = (ordered: readonly Entry[], fates: readonly Fate[]): Gathered => {
  const all = nothing();
  for (const [at, entry] of ordered.entries()) {
    const fate = fates[at];
    if (fate === "taken-back" || entry.type === "undo") continue;
    all.said.push(entry);
    if (fate === "counts") all.counting.push(entry);
    add(all, entry, at, fate === "replaced");
  }
  return all;
};

const conditionsOf = ({ temperatures, wetness }: Gathered) => {
  const warm = settledFrom(standing(temperatures), (entry) => Math.round(celsius(entry) * 1e6));
  const wet = settledFrom(standing(wetness), ({ is }) => is);
  return {
    soilTemperature: warm.answer === null ? null : { value: celsius(warm.answer), entry: warm.answer },
    temperaturesInDoubt: warm.inDoubt,
    wetness: wet.answer === null ? null : { value: wet.answer.is, entry: wet.answer },
    wetnessInDoubt: wet.inDoubt,
  };
};

const sumOf = (counts: readonly { readonly count: number }[]): number =>
  counts.reduce((sum, { count }) => sum + count, 0);

/**
 * Reads a hole from its entries.
 *
 * Worms are found per layer and placed per group, one by one or counted at once; see `countOf`. The layers
 * add up. More placed than found is a caution, because one worm too many in either is as likely as one too
 * few in the other.
 *
 * What was read from a list of entries is kept as long as the list is. A list of entries is never changed.
 *
 * @param entries of one hole, in any order; those of lines and rings say nothing here
 * @returns nothing found, nothing placed and not finished for no entries
 *
 * @example
 * readHole(entries).left; // 2: "14 found, 12 placed, 2 left"
 */
export const readHole = (entries: readonly Entry[]): HoleReading => {
  const kept = readBefore.get(entries);
  if (kept !== undefined) return kept;
  const reading = readEntries(entries);
  readBefore.set(entries, reading);
  return reading;
};

const readBefore = new WeakMap<readonly Entry[], HoleReading>();

const readEntries = (entries: readonly Entry[]): HoleReading => {
  const ordered = inOrder(entries);
  const fates = fatesOf(ordered);
  const all = gather(ordered, fates);
  const clock = holeClock(ordered);
  const sorting = sortingOf(all.counting, clock);
  const living = new Set(all.counting);
  const mustard = mustardOf(all.said, (entry) => living.has(entry));
  const closed = all.counting.findLast((entry) => entry.type === "closed") ?? null;

  const foundAt = (layer: Layer): FoundRead => {
    const count = countOf(all.touches[layer], all.found[layer]);
    // A hole that was closed without a worm was looked at; so was what somebody sorted or poured on.
    const looked =
      count.standsFor.length > 0 ||
      sorting[layer].length > 0 ||
      (layer === "soil" && closed !== null) ||
      (layer === "mustard-water" && mustard.length > 0);
    return { ...count, looked };
  };
  const placedIn = (group: WormGroup) => countOf(all.touches[group], all.sorted[group]);
  const found = { mulch: foundAt("mulch"), soil: foundAt("soil"), "mustard-water": foundAt("mustard-water") };
  const placed = {
    young: placedIn("young"),
    surface: placedIn("surface"),
    topsoil: placedIn("topsoil"),
    deep: placedIn("deep"),
  };
  const counts = [...LAYERS.map((layer) => found[layer]), ...WORM_GROUPS.map((group) => placed[group])];
  const foundTotal = sumOf(LAYERS.map((layer) => found[layer]));
  const placedTotal = sumOf(WORM_GROUPS.map((group) => placed[group]));
  const settled = counts.every(({ inDoubt }) => inDoubt.length === 0);

  const cautions: Problem[] = [];
  if (settled && placedTotal > foundTotal)
    cautions.push({
      code: "record/more-placed-than-found",
      facts: { found: foundTotal, placed: placedTotal, more: placedTotal - foundTotal },
    });
  const others = counts.reduce((sum, { fromOtherPhones }) => sum + fromOtherPhones, 0);
  if (others > 0) cautions.push({ code: "record/counted-on-two-phones", facts: { touches: others } });
  if (LAYERS.some((layer) => sorting[layer].some(({ clocksApart }) => clocksApart)))
    cautions.push({ code: "record/sorting-clocks-apart", facts: {} });

  return {
    found,
    foundTotal,
    placed,
    placedTotal,
    left: Math.max(0, foundTotal - placedTotal),
    settled,
    sorting,
    mustard,
    ...conditionsOf(all),
    closed,
    finished: closed !== null || found.soil.atOnce !== null,
    cautions,
    ...stepsIn(ordered, fates),
    living: all.counting.length,
    clock,
  };
};
