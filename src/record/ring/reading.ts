/** What the entries of a ring say: when it began, what was poured and read, what happened, and when it ended. */
import { type Entry, fatesOf, inOrder } from "../entry.ts";
import { stepsIn } from "../steps.ts";
import { toSi } from "../units.ts";
import { type Anchor, anchorOf, CLOCKS_APART_MS, clockOf, type RingClock, timeOf } from "./clock.ts";
import type { GoneEntry, LevelEntry, LookEntry, PourEntry, StartEntry, StopEntry } from "./entries.ts";
import type {
  HappeningRead,
  OpenLook,
  RingDoubt,
  RingEnd,
  RingEvent,
  RingMoment,
  RingReading,
} from "./events.ts";

/** A number that comes this long after it was looked at was entered later. */
export const ENTERED_LATER_MS = 60_000;

/** Where an entry stands in time: the moment itself, and the first entry that told of it. */
interface Placed {
  readonly anchor: Anchor;
  readonly first: Entry;
}

/**
 * The moment of each entry. The answer to a look has the moment of the look. A correction that keeps the
 * moment of what it replaces also keeps its clocks: the page it is typed on may be another one, and the wall
 * clock may have been set since. Only earlier entries are asked, so a file whose entries point at each other
 * in a circle cannot hang this.
 */
const placesOf = (ordered: readonly Entry[]): ReadonlyMap<string, Placed> => {
  const places = new Map<string, Placed>();
  const looks = new Set<string>();
  for (const entry of ordered) {
    if (entry.type === "look") looks.add(entry.id);
    const before = "replaces" in entry ? (entry.replaces ?? []).map((id) => places.get(id)) : [];
    const same = before.find((one) => one !== undefined && one.anchor.lookedAtMs === entry.lookedAtMs);
    const look =
      (entry.type === "level" || entry.type === "gone") && entry.timed === "now" && looks.has(entry.of ?? "")
        ? places.get(entry.of ?? "")
        : undefined;
    if (same !== undefined) places.set(entry.id, same);
    else places.set(entry.id, { anchor: look?.anchor ?? anchorOf(entry), first: entry });
  }
  return places;
};

const byMoment = (
  a: { readonly moment: RingMoment; readonly entry: Entry },
  b: { readonly moment: RingMoment; readonly entry: Entry },
): number => Math.sign(a.moment.sinceStartMs - b.moment.sinceStartMs) || Math.sign(a.entry.n - b.entry.n);

const isCorrection = (entry: Entry): boolean => "replaces" in entry && entry.replaces !== undefined;

type Answer = LevelEntry | GoneEntry;

/** What an answer says, so that two phones which agree are one answer. */
const said = (answer: Answer): string =>
  answer.type === "gone" ? "gone" : `${toSi(answer.value, answer.unit)} ${answer.reads}`;

/** Living entries of a ring, by what they are. */
const sorted = (living: readonly Entry[]) => {
  const starts: StartEntry[] = [];
  const stops: StopEntry[] = [];
  const looks: LookEntry[] = [];
  const happened: Extract<Entry, { type: "happened" }>[] = [];
  const read: (PourEntry | Answer)[] = [];
  for (const entry of living) {
    if (entry.type === "start") starts.push(entry);
    else if (entry.type === "stop") stops.push(entry);
    else if (entry.type === "look") looks.push(entry);
    else if (entry.type === "happened") happened.push(entry);
    else if (entry.type === "pour" || entry.type === "level" || entry.type === "gone") read.push(entry);
  }
  return { starts, stops, looks, happened, read };
};

/** Answers by the question they answer: the look, the ring, and which side of the refill. */
const answersByQuestion = (read: readonly (PourEntry | Answer)[], looks: ReadonlySet<string>) => {
  const questions = new Map<string, [Answer, ...Answer[]]>();
  const free: (PourEntry | Answer)[] = [];
  for (const entry of read) {
    if (entry.type === "pour" || !looks.has(entry.of ?? "")) {
      free.push(entry);
      continue;
    }
    const side = entry.type === "level" && entry.afterRefill === true ? "after" : "before";
    const question = `${entry.of} ${entry.ring} ${side}`;
    const answers = questions.get(question);
    if (answers === undefined) questions.set(question, [entry]);
    else answers.push(entry);
  }
  return { questions, free };
};

const eventOf = (entry: PourEntry | Answer, moment: RingMoment): RingEvent => {
  const shared = { id: entry.id, ring: entry.ring, moment, corrected: isCorrection(entry) };
  if (entry.type === "pour")
    return { ...shared, type: "pour", cubicMetres: toSi(entry.value, entry.unit), entry };
  if (entry.type === "gone") return { ...shared, type: "gone", entry };
  const { reads, value, unit } = entry;
  const afterRefill = entry.afterRefill === true;
  return { ...shared, type: "level", levelM: toSi(value, unit), reads, afterRefill, entry };
};

/** When things were looked at, as the clock of this ring tells it. */
type Moments = (entry: Entry) => RingMoment;

const momentsBy =
  (clock: RingClock, places: ReadonlyMap<string, Placed>): Moments =>
  (entry) => {
    const { anchor, first } = places.get(entry.id) ?? { anchor: anchorOf(entry), first: entry };
    const lookedAt = timeOf(clock, anchor);
    const enteredAt = timeOf(clock, { ...anchorOf(first), lookedAtMonoMs: first.monoMs });
    const typed = "timed" in entry && entry.timed !== "now";
    return {
      ...lookedAt,
      lookedAtMs: anchor.lookedAtMs,
      enteredLater: typed || enteredAt.sinceStartMs - lookedAt.sinceStartMs > ENTERED_LATER_MS,
      by: entry.by,
    };
  };

const endsOf = <E extends StartEntry | StopEntry>(entries: readonly E[], when: Moments): RingEnd<E>[] =>
  entries.map((entry) => ({ entry, moment: when(entry) })).sort(byMoment);

const readEntries = (entries: readonly Entry[]): RingReading => {
  const ordered = inOrder(entries).filter(({ id }, at, all) => id !== all[at - 1]?.id);
  const fates = fatesOf(ordered);
  const living = ordered.filter(({ type }, at) => fates[at] === "counts" && type !== "undo");
  const { starts, stops, looks, happened, read } = sorted(living);
  const places = placesOf(ordered);

  // Nought is the first start; two phones may both have touched it. Without one, the first thing read.
  const candidates: readonly Entry[] = starts.length > 0 ? starts : read.length > 0 ? read : living;
  const anyZero = candidates[0] === undefined ? null : (places.get(candidates[0].id)?.anchor ?? null);
  const provisional = momentsBy(clockOf(ordered, anyZero), places);
  const first = candidates.map((entry) => ({ entry, moment: provisional(entry) })).sort(byMoment)[0]?.entry;
  const zero = first === undefined ? null : (places.get(first.id)?.anchor ?? null);
  const clock = clockOf(ordered, zero);
  const when = momentsBy(clock, places);

  const startsRead = endsOf(starts, when);
  const apart = startsRead.some(({ moment }) => moment.sinceStartMs > CLOCKS_APART_MS);
  const events: RingEvent[] = [];
  const inDoubt: (RingDoubt & { readonly entry: Entry })[] = [];
  const everyLook = new Map(ordered.flatMap((one) => (one.type === "look" ? [[one.id, one]] : [])));
  const { questions, free } = answersByQuestion(read, new Set(everyLook.keys()));
  for (const entry of free) events.push(eventOf(entry, when(entry)));
  for (const answers of questions.values()) {
    const [answer] = answers;
    const look = everyLook.get(answer.of ?? "");
    if (look !== undefined && new Set(answers.map(said)).size > 1)
      inDoubt.push({ look, ring: answer.ring, moment: when(look), answers, entry: look });
    else {
      // Of answers that agree the first stands.
      const event = eventOf(answer, when(answer));
      events.push({ ...event, corrected: answers.some(isCorrection) });
    }
  }
  const answered = new Set(read.map((entry) => (entry.type === "pour" ? undefined : entry.of)));
  const openLooks: OpenLook[] = looks
    .filter(({ id }) => !answered.has(id))
    .map((look) => ({ look, moment: when(look), entry: look }))
    .sort(byMoment)
    .map(({ look, moment }) => ({ look, moment }));
  const ofOuter = new Set(ordered.flatMap((one) => ("ring" in one && one.ring === "outer" ? [one.id] : [])));
  const happenings: HappeningRead[] = happened.map((entry) => ({
    what: entry.what,
    ring: entry.replaces?.some((id) => ofOuter.has(id)) === true ? "outer" : "inner",
    words: entry.words,
    moment: when(entry),
    corrected: isCorrection(entry),
    entry,
  }));
  return {
    start: startsRead[0] ?? null,
    startsInDoubt: apart ? startsRead.map(({ entry }) => entry) : [],
    events: events.sort(byMoment),
    inDoubt: inDoubt.sort(byMoment).map(({ entry: _entry, ...doubt }) => doubt),
    openLooks,
    happenings: happenings.sort(byMoment),
    stop: endsOf(stops, when)[0] ?? null,
    ...stepsIn(ordered, fates),
    living: living.length,
    clock,
  };
};

const readBefore = new WeakMap<readonly Entry[], RingReading>();

/**
 * Reads a ring from its entries.
 *
 * Answers of two phones to one look that say the same are one answer; those that differ are in doubt and
 * count nowhere until one is chosen. A number for a look that was taken back still has the moment of that
 * look: the look was real. What is absurd in a file (times in any order, levels before the start, entries
 * that point at each other) is read as it stands and never stops this.
 *
 * What was read from a list of entries is kept as long as the list is. A list of entries is never changed.
 *
 * @param entries the ring's entries, in any order
 *
 * @example
 * readRing([]).events // => []
 */
export const readRing = (entries: readonly Entry[]): RingReading => {
  const kept = readBefore.get(entries);
  if (kept !== undefined) return kept;
  const reading = readEntries(entries);
  readBefore.set(entries, reading);
  return reading;
};
