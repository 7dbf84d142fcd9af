/** Everything that was measured in one field on one day, strip by strip, and the field's own yardstick. */
import type { RecordId } from "../../../record/ids.ts";
import type { Guess } from "../../../record/kinds/guess.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import type { Result } from "../../../record/result.ts";
import { wormsPerHole, wormsPerM2 } from "../../../science/earthworms/field.ts";
import type { HoleCount } from "../../../science/earthworms/hole-count.ts";
import type { Estimate } from "../../../science/estimate.ts";
import { groupedBy } from "../../../science/together.ts";
import type { House } from "../../parts/house.ts";
import { countsOf } from "../../parts/line-counts.ts";
import { onGrass, type Spots, spotsOf } from "../../parts/old-grass.ts";
import { readPhotos } from "../../parts/photos/model.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { type SameField, sameField, sameStrip } from "../../parts/same-field.ts";
import type { Settings } from "../../parts/settings.ts";
import { coverOfLines, type StripCover, type SummedLine } from "../../parts/strip-cover.ts";
import { visitsOf } from "../../parts/visits.ts";
import { countOfHole, type DayHole, readHoles } from "../hole/holes-of-day.ts";
import { type DayRing, readRingDay } from "../rings/day.ts";
import { type RingsTogether, ringsTogether } from "./rings-together.ts";

/** What was read at one place. */
export interface Measured {
  /** Oldest first. */
  readonly lines: readonly SummedLine[];
  readonly holes: readonly DayHole[];
  readonly rings: readonly DayRing[];
}

/** What comes of it. */
export interface PlaceResults {
  readonly cover: StripCover<SummedLine>;
  readonly holes: readonly DayHole[];
  readonly holeCounts: readonly HoleCount[];
  readonly perHole: Result<Estimate>;
  readonly perM2: Result<Estimate>;
  readonly soak: RingsTogether;
}

/** A strip that was measured on that day. */
export interface DayStrip extends PlaceResults {
  readonly id: RecordId<"strip">;
  readonly strip: Listed<"strip"> | undefined;
  /** What was guessed before it was measured. */
  readonly guesses: Readonly<Partial<Record<Guess["what"], number>>>;
  readonly notes: number;
  /** The first taken first. */
  readonly photos: readonly Listed<"photo">[];
  readonly newestMs: number;
}

/** What old grass says: of that day, else of the newest day before it that has a number, test by test. */
export interface Yardstick extends PlaceResults {
  /** Where it was measured; several when old grass was marked at more than one place. */
  readonly spots: readonly Listed<"spot">[];
  /** The day of each test; null when there was none. */
  readonly days: Readonly<Record<"line" | "hole" | "ring", string | null>>;
  /** What was begun there on that day, finished or not. */
  readonly today: Measured;
}

export interface DayOfField {
  readonly same: SameField;
  /** The visit that was asked for, then every other one of the field on that day. */
  readonly visits: readonly Listed<"visit">[];
  /** The strip that was measured last stands first. */
  readonly strips: readonly DayStrip[];
  /** Null when the field has no old-grass spot, or nothing was measured there. */
  readonly yardstick: Yardstick | null;
  readonly stripOf: (id: RecordId<"strip">) => RecordId<"strip">;
  /** Every photo of the day, the first taken first. */
  readonly photos: readonly Listed<"photo">[];
}

type Test = Listed<"observation">;

/** Lines with their sums alone, added up off the page. */
const summedLines = async (
  { records, results }: Pick<House, "records" | "results">,
  tests: readonly Test[],
): Promise<readonly SummedLine[]> => {
  const headers = tests
    .flatMap(({ id, body }) => (body.type === "line" ? [{ id, header: body as LineHeader }] : []))
    .sort((a, b) => a.header.startedAtMs - b.header.startedAtMs);
  if (headers.length === 0) return [];
  const ropes = await records.many([...new Set(headers.map(({ header }) => header.rope))]);
  const marksOf = new Map(
    ropes.flatMap(({ id, body }) => (body.type === "rope" ? [[id as string, body.marks] as const] : [])),
  );
  const framed = headers.map(({ id, header }) => ({
    id,
    header,
    frame: { way: header.way, ropeMarks: marksOf.get(header.rope) ?? 0 },
  }));
  const sums = await results.lines(framed.map(({ id, frame }) => ({ id, frame })));
  return framed.flatMap((line, at) => {
    const summed = sums[at];
    if (summed === undefined) return [];
    const { tally, endedAt, finished } = summed;
    return [{ ...line, reading: { tally, endedAt }, finished, counts: countsOf(tally) }];
  });
};

/** Works out what comes of it. */
export const resultsOf = ({ lines, holes, rings }: Measured, settings: Settings): PlaceResults => {
  const holeCounts = holes.map(countOfHole);
  return {
    cover: coverOfLines(lines, settings),
    holes,
    holeCounts,
    perHole: wormsPerHole(holeCounts),
    perM2: wormsPerM2(holeCounts),
    soak: ringsTogether(rings),
  };
};

/** Old measurements are looked for among so many of the newest: a field holds thousands. */
const AMONG_NEWEST = 400;

type Type = "line" | "hole" | "ring";

/** Tests on old grass up to a day, by type and day. */
interface OnGrass {
  readonly spots: Spots;
  /** The newest day first. */
  readonly days: readonly string[];
  readonly on: (type: Type, day: string) => readonly Test[];
}

const testsOnGrass = async (
  records: Reader,
  { same, all, day }: { same: SameField; all: readonly Listed<"visit">[]; day: string },
): Promise<OnGrass | null> => {
  // A field without a marked spot is the usual one, and needs no look at its measurements.
  const marked = await Promise.all(
    same.ids.flatMap((field) =>
      [false, true].map((deleted) => records.list({ field, kind: "spot" }, { limit: 1, deleted })),
    ),
  );
  if (marked.flat().length === 0) return null;
  const lists = await Promise.all(
    same.ids.map((field) =>
      records.list({ field, kind: "observation" }, { newestFirst: true, limit: AMONG_NEWEST }),
    ),
  );
  const tests = lists.flat().filter(({ body }) => body.type !== "note");
  const spots = await spotsOf(records, tests);
  const dayOf = new Map(all.map(({ id, body }) => [id, body.day] as const));
  const there = tests.flatMap((test) => {
    const on = dayOf.get(test.body.visit) ?? "";
    return on === "" || on > day || !onGrass(spots, test.body) ? [] : [{ test, on }];
  });
  return {
    spots,
    days: [...new Set(there.map(({ on }) => on))].sort().reverse(),
    on: (type, of) => there.flatMap(({ test, on }) => (on === of && test.body.type === type ? [test] : [])),
  };
};

/** The newest day on which these tests give a number; else the newest on which there are any. */
const newestWith = async <T>(
  { days, on }: OnGrass,
  type: Type,
  read: (tests: readonly Test[]) => Promise<readonly T[]>,
  counts: (found: readonly T[]) => boolean,
): Promise<{ readonly day: string | null; readonly found: readonly T[] }> => {
  let newest: { readonly day: string; readonly found: readonly T[] } | null = null;
  for (const day of days) {
    const tests = on(type, day);
    if (tests.length === 0) continue;
    const found = await read(tests);
    if (counts(found)) return { day, found };
    newest ??= { day, found };
  }
  return newest ?? { day: null, found: [] };
};

const readYardstick = async (
  house: Pick<House, "records" | "results">,
  settings: Settings,
  of: { readonly same: SameField; readonly all: readonly Listed<"visit">[]; readonly day: string },
): Promise<Yardstick | null> => {
  const { records } = house;
  const grass = await testsOnGrass(records, of);
  if (grass === null || grass.days.length === 0) return null;
  const readRings = async (tests: readonly Test[]): Promise<readonly DayRing[]> => {
    const [first] = tests;
    const day =
      first === undefined ? null : await readRingDay(records, first.body.visit, new Map(), () => false);
    const ids = new Set(tests.map(({ id }) => id));
    return (day?.rings ?? []).filter(({ id }) => ids.has(id));
  };
  const readers = {
    line: (tests: readonly Test[]) => summedLines(house, tests),
    hole: (tests: readonly Test[]) => readHoles(records, tests),
    ring: readRings,
  };
  const [lines, holes, rings] = await Promise.all([
    newestWith(grass, "line", readers.line, (all) => coverOfLines(all, settings).cover.ok),
    newestWith(grass, "hole", readers.hole, (all) => all.some(({ reading }) => reading.finished)),
    newestWith(grass, "ring", readers.ring, (all) => ringsTogether(all).after.some(({ mean }) => mean.ok)),
  ]);
  const onDay = async <T>(
    type: Type,
    { day, found }: { readonly day: string | null; readonly found: readonly T[] },
    read: (tests: readonly Test[]) => Promise<readonly T[]>,
  ): Promise<readonly T[]> => (day === of.day ? found : read(grass.on(type, of.day)));
  const [linesToday, holesToday, ringsToday] = await Promise.all([
    onDay("line", lines, readers.line),
    onDay("hole", holes, readers.hole),
    onDay("ring", rings, readers.ring),
  ]);
  const used = [...lines.found, ...holes.found, ...rings.found];
  const ids = new Set(used.flatMap(({ header }) => header.spot ?? []));
  return {
    spots: [...ids].flatMap((id) => grass.spots.get(id) ?? []),
    days: { line: lines.day, hole: holes.day, ring: rings.day },
    today: { lines: linesToday, holes: holesToday, rings: ringsToday },
    ...resultsOf({ lines: lines.found, holes: holes.found, rings: rings.found }, settings),
  };
};

const guessesOf = async (
  records: Reader,
  same: SameField,
  visits: readonly Listed<"visit">[],
): Promise<readonly Listed<"guess">[]> => {
  const days = new Set<string>(visits.map(({ id }) => id));
  const lists = await Promise.all(same.ids.map((field) => records.list({ field, kind: "guess" })));
  return lists.flat().filter(({ body }) => body.visit !== null && days.has(body.visit));
};

/**
 * Reads the day that a visit belongs to, with every other visit of the same field on it. What was measured at
 * the old-grass spot stands apart from the strips.
 *
 * @returns null when the visit or its field is not on this device
 */
export const readDay = async (
  house: Pick<House, "records" | "results">,
  settings: Settings,
  id: RecordId<"visit">,
): Promise<DayOfField | null> => {
  const { records } = house;
  const visit = await records.one(id);
  const same = visit === undefined ? undefined : await sameField(records, visit.body.field);
  if (visit === undefined || same === undefined) return null;
  const { day } = visit.body;
  const [all, joins] = await Promise.all([visitsOf(records, same.ids), records.joins()]);
  const visits = [visit, ...all.filter((one) => one.body.day === day && one.id !== id)];
  const stripOf = sameStrip(joins);
  const everything: readonly Test[] = (
    await Promise.all(visits.map((one) => records.list({ visit: one.id, kind: "observation" })))
  ).flat();
  const spots = await spotsOf(records, everything);
  const onStrips = everything.filter(({ body }) => !onGrass(spots, body));
  const tests = onStrips.filter(({ body }) => body.type !== "note");
  const [lines, holes, ringDay, guesses, photos, yardstick] = await Promise.all([
    summedLines(house, tests),
    readHoles(records, tests),
    tests.some(({ body }) => body.type === "ring") ? readRingDay(records, id, new Map(), () => false) : null,
    guessesOf(records, same, visits),
    readPhotos(records, [...visits.map((one) => one.id), ...everything.map((one) => one.id)]),
    readYardstick(house, settings, { same, all, day }),
  ]);
  const rings = (ringDay?.rings ?? []).filter(({ header }) => !onGrass(spots, header));
  const rootOf = ({ header }: { readonly header: { readonly strip: RecordId<"strip"> } }): string =>
    stripOf(header.strip);
  const [linesBy, holesBy, ringsBy] = [
    groupedBy(lines, rootOf),
    groupedBy(holes, rootOf),
    groupedBy(rings, rootOf),
  ];
  const bodiesBy = groupedBy(onStrips, ({ body }) => (body.strip === null ? "" : stripOf(body.strip)));
  const ids = [...new Set([...linesBy.keys(), ...holesBy.keys(), ...ringsBy.keys()])] as RecordId<"strip">[];
  const strips = await records.many(ids);
  return {
    same,
    visits,
    stripOf,
    yardstick,
    photos,
    strips: ids
      .map((strip): DayStrip => {
        const measured = {
          lines: linesBy.get(strip) ?? [],
          holes: holesBy.get(strip) ?? [],
          rings: ringsBy.get(strip) ?? [],
        };
        const own = bodiesBy.get(strip) ?? [];
        const there = new Set<string>(own.map((one) => one.id));
        return {
          id: strip,
          strip: strips.find((one) => one.id === strip),
          ...resultsOf(measured, settings),
          guesses: Object.fromEntries(
            guesses
              .filter(({ body }) => body.strip !== null && stripOf(body.strip) === strip)
              .map(({ body }) => [body.what, body.value]),
          ),
          notes: own.filter(({ body }) => body.type === "note").length,
          photos: photos.filter(({ body }) => there.has(body.of)),
          newestMs: Math.max(
            ...[...measured.lines, ...measured.holes, ...measured.rings].map(
              ({ header }) => header.startedAtMs,
            ),
          ),
        };
      })
      .sort((a, b) => b.newestMs - a.newestMs),
  };
};
