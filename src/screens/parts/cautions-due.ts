/** Which cautions have to be said before a line, ring or hole, from the records and what was read on this device. */
import type { RecordId } from "../../record/ids.ts";
import type { ManagementEvent } from "../../record/kinds/event.ts";
import type { Observation } from "../../record/kinds/observation.ts";

/** Said once on each field. */
type FieldCaution = "services";
/** Said when the last field was another farm's, and while sprays may still be wet. */
type ComingCaution = "clean-kit" | "sprayed";
/** Said to every person once a season. */
const SEASON_CAUTIONS = [
  "livestock",
  "fences",
  "lightning",
  "heat",
  "alone",
  "lifting",
  "mustard",
  "driving",
  "soil-between-farms",
] as const;
type SeasonCaution = (typeof SEASON_CAUTIONS)[number];

export type CautionName = FieldCaution | ComingCaution | SeasonCaution;

/** Whether a caution is about this ground and this coming, and not one of the season. */
export const isOfThisPlace = (name: CautionName): boolean => !SEASON_CAUTIONS.some((one) => one === name);

/** What was read on this device: by key, when, in wall milliseconds. */
export type CautionsRead = Readonly<Record<string, number>>;

/** One caution to be said. */
export interface DueCaution {
  readonly name: CautionName;
  /** Under this key it is kept as read. */
  readonly key: string;
  /** Day of the spraying; null for every other caution. */
  readonly day: string | null;
}

/** What the cautions of one set-out hang on. */
export interface CautionFacts {
  /** Before a line nobody digs and nothing heavy is carried: only coming onto the field is spoken of. */
  readonly test: "line" | "ring" | "hole";
  /** The field, by the id that stands for it. */
  readonly field: string;
  readonly person: string | null;
  /** A ring or hole stood on this field at an earlier visit. */
  readonly dugBefore: boolean;
  /** The visit before this one, when it was on a field of another farm. */
  readonly fromOtherFarm: string | null;
  readonly events: readonly { readonly id: string; readonly body: Pick<ManagementEvent, "day" | "what"> }[];
  /** Calendar day and moment, as this device's clock shows them. */
  readonly day: string;
  readonly nowMs: number;
}

/** Whether a ring or hole stood here at another visit than this one: lines and notes leave the ground whole. */
export const wasDug = (
  tests: readonly { readonly body: Pick<Observation, "type" | "visit"> }[],
  visit: RecordId<"visit">,
): boolean =>
  tests.some(({ body }) => (body.type === "ring" || body.type === "hole") && body.visit !== visit);

const DAY_MS = 86_400_000;
/** A season lasts half a year: what was read before is said again (own choice, no source). */
const SEASON_MS = 180 * DAY_MS;
/**
 * A spraying is spoken of for so many days, once a day. Times on labels run from hours to weeks; only the
 * label knows, so the longest usual one is taken (own choice, no source).
 */
const SPRAYED_DAYS = 31;

const daysBetween = (from: string, to: string): number =>
  (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS;

/** A spraying that may still keep people out; one dated tomorrow was written across a border of time zones. */
export const isRecent = (sprayed: string, today: string): boolean => {
  const days = daysBetween(sprayed, today);
  return days >= -1 && days <= SPRAYED_DAYS;
};

/** Said before one test only. */
const ONLY_BEFORE: { readonly [C in SeasonCaution]?: CautionFacts["test"] } = {
  mustard: "hole",
  driving: "ring",
};
const belongs = (name: SeasonCaution, test: CautionFacts["test"]): boolean =>
  test !== "line" && (ONLY_BEFORE[name] ?? test) === test;

/**
 * The cautions that have to be said now, the ones of this place first. What was read more
 * than a day ahead of this clock is said again: nobody knows when that was.
 */
export const cautionsDue = (facts: CautionFacts, read: CautionsRead): readonly DueCaution[] => {
  const due: DueCaution[] = [];
  const add = (name: CautionName, of: string, forMs: number, day: string | null = null): void => {
    const key = `${name} ${of}`;
    const age = facts.nowMs - (read[key] ?? Number.NEGATIVE_INFINITY);
    if (age < -DAY_MS || age > forMs) due.push({ name, key, day });
  };
  if (facts.test !== "line" && !facts.dugBefore) add("services", facts.field, Number.MAX_VALUE);
  const sprayed = facts.events
    .filter(({ body }) => body.what === "sprayed" && isRecent(body.day, facts.day))
    .sort((a, b) => (a.body.day < b.body.day ? 1 : -1))[0];
  if (sprayed !== undefined) add("sprayed", `${sprayed.id} ${facts.day}`, Number.MAX_VALUE, sprayed.body.day);
  if (facts.fromOtherFarm !== null)
    add("clean-kit", `${facts.fromOtherFarm} ${facts.field}`, Number.MAX_VALUE);
  for (const name of SEASON_CAUTIONS)
    if (belongs(name, facts.test)) add(name, facts.person ?? "nobody", SEASON_MS);
  return due;
};

/** The most that a device keeps of what was read; the oldest goes first and would only be said again. */
const MOST_READ = 2000;

/** What was read so far, and these now. */
export const nowRead = (read: CautionsRead, due: readonly DueCaution[], nowMs: number): CautionsRead => {
  const all = Object.entries({ ...read, ...Object.fromEntries(due.map(({ key }) => [key, nowMs])) });
  return Object.fromEntries(all.sort(([, a], [, b]) => b - a).slice(0, MOST_READ));
};

/** A visit as far as coming from another farm goes. */
export interface CameFrom {
  readonly visit: RecordId<"visit">;
  /** The farm by the id that stands for it, null when the field belongs to none that is known. */
  readonly farm: string | null;
}

/**
 * The visit before, when it was another farm's. Between two fields of no known farm nothing can be told, and
 * nothing is said.
 *
 * @returns the id of that visit, by which this coming is kept as read; null when there is nothing to say
 */
export const fromOtherFarm = (before: CameFrom | null, farm: string | null): string | null =>
  before === null || before.farm === farm ? null : before.visit;
