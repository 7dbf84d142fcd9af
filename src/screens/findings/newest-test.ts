/**
 * What one test found, strip beside strip: on the newest day on which it found something on two strips, else on the
 * newest day of all. A day that was just begun would hide the last comparison; that there is one is said.
 */
import type { RecordId } from "../../record/ids.ts";
import { failed, type Result } from "../../record/result.ts";
import type { Place } from "../../record/shapes.ts";
import type { MeanFound } from "../../science/earthworms/worms-of-field.ts";
import type { Caution } from "../../science/estimate.ts";
import type { FieldResults } from "../../science/field-results.ts";
import type { StripOnDay } from "../../science/ground-cover/field-cover.ts";
import type { DayOfField } from "../measure/visit/day-strips.ts";
import { PREFERRED_MINUTES, type SoakMinutes } from "../measure/visit/rings-together.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import type { Measure } from "./side-by-side/conditions.ts";
import { type PlacesOfStrip, unlikePlaces } from "./unlike-places.ts";

/** A number, and what is said beside it. */
interface Read {
  readonly found: Result<MeanFound>;
  /** Worms per hole beside those per m²; null for other tests, and where that is the number itself. */
  readonly perHole: number | null;
  /** Rings that stood there, whatever became of them; null for other tests. */
  readonly stood: number | null;
  /** What has to be borne in mind with the number; none without one. */
  readonly cautions: readonly Caution[];
}

/** Old grass on one day. */
export interface GrassFound extends Read {
  readonly day: string;
  readonly visits: readonly RecordId<"visit">[];
  readonly spots: readonly Listed<"spot">[];
}

/** One strip of the day. */
export interface StripFound extends Read {
  readonly id: RecordId<"strip">;
  readonly strip: Listed<"strip"> | undefined;
  readonly visits: readonly RecordId<"visit">[];
  /**
   * Chance that the true share of what is aimed at, residue alone or all ground cover, is at least the target; null
   * when it is not known, or not asked.
   */
  readonly chance: number | null;
}

/** What one test found. */
export interface TestFound {
  readonly measure: Measure;
  /** Worms: of one square metre, unless the size of the holes is not known. */
  readonly per: "hole" | "m2";
  /** Rings: the time for which most strips can say. */
  readonly minutes: SoakMinutes;
  readonly day: string;
  /** A newer day with a number on one strip alone, the newest of them; null when there is none. */
  readonly since: { readonly day: string; readonly strip: Listed<"strip"> | undefined } | null;
  readonly strips: readonly StripFound[];
  /** Old grass on the day, else on the newest day before it; null when nothing was found on it up to that day. */
  readonly grass: GrassFound | null;
  /** The places against the row of each strip with a number, when they are unlike; else empty. */
  readonly unlike: readonly PlacesOfStrip[];
}

/** One way to read a number off a test. */
interface Way<G> {
  readonly per: "hole" | "m2";
  readonly minutes: SoakMinutes;
  readonly read: (one: G) => Read;
}

interface OnGround {
  readonly day: string;
  readonly visits: readonly RecordId<"visit">[];
  readonly places: readonly (Place | null)[];
}
type OnStrip<G> = G & { readonly strip: RecordId<"strip">; readonly chance?: number | null };
type OnSpots<G> = G & { readonly spots: readonly RecordId<"spot">[] };

/** From where names, and the tests of one day, are read. */
export interface Sources {
  readonly records: Reader;
  readonly dayOf: (visit: RecordId<"visit">) => Promise<DayOfField | null>;
}

const newest = async <G extends OnGround>(
  { records, dayOf }: Sources,
  measure: Measure,
  all: readonly OnStrip<G>[],
  oldGrass: readonly OnSpots<G>[],
  ways: readonly Way<G>[],
): Promise<readonly TestFound[]> => {
  const numbered = all.filter((one) => ways.some(({ read }) => read(one).found.ok));
  const days = numbered.map((one) => one.day);
  const [last] = numbered;
  // A day that stands twice has two strips.
  const day = days.find((one, at) => days.indexOf(one) !== at) ?? last?.day;
  if (last === undefined || day === undefined) return [];
  const ofDay = all.filter((one) => one.day === day);
  const able = ({ read }: Way<G>): number => ofDay.filter((one) => read(one).found.ok).length;
  const [way] = [...ways].sort((a, b) => able(b) - able(a));
  if (way === undefined) return [];
  const { per, minutes } = way;
  const read = (one: G): Read => {
    const of = way.read(one);
    return of.found.ok ? of : { ...of, cautions: [] };
  };
  const grass = oldGrass.find((one) => one.day <= day && read(one).found.ok);
  const [strips, spots, unlike] = await Promise.all([
    records.many([...new Set([...ofDay, last].map(({ strip }) => strip))]),
    grass === undefined ? [] : records.many(grass.spots),
    unlikePlaces(
      { measure, minutes },
      ofDay.filter((one) => read(one).found.ok),
      dayOf,
    ),
  ]);
  return [
    {
      measure,
      per,
      minutes,
      day,
      since: last.day === day ? null : { day: last.day, strip: strips.find(({ id }) => id === last.strip) },
      strips: ofDay.map((one) => ({
        ...read(one),
        id: one.strip,
        strip: strips.find(({ id }) => id === one.strip),
        visits: one.visits,
        chance: one.chance ?? null,
      })),
      grass: grass === undefined ? null : { ...read(grass), day: grass.day, visits: grass.visits, spots },
      unlike,
    },
  ];
};

/** The tests of a field that found something: lines, holes and rings, each on its own newest day. */
export const newestTests = async (sources: Sources, all: FieldResults): Promise<readonly TestFound[]> => {
  const { cover, worms, soaked, oldGrass } = all;
  const found = await Promise.all([
    newest<Omit<StripOnDay, "strip" | "chance">>(sources, "cover", cover.onDays, cover.oldGrass, [
      {
        per: "hole",
        minutes: 60,
        read: (one) => ({ found: one.cover, perHole: null, stood: null, cautions: one.cautions }),
      },
    ]),
    newest(sources, "worms", worms, oldGrass.worms, [
      // Holes of several sizes can only be compared by the square metre.
      {
        per: "m2",
        minutes: 60,
        read: ({ perM2, perHole, cautions }) => ({
          found: perM2,
          perHole: perHole.ok ? perHole.value.value : null,
          stood: null,
          cautions,
        }),
      },
      {
        per: "hole",
        minutes: 60,
        read: ({ perHole, cautions }) => ({ found: perHole, perHole: null, stood: null, cautions }),
      },
    ]),
    newest(
      sources,
      "soak",
      soaked,
      oldGrass.soaked,
      PREFERRED_MINUTES.map((minutes) => ({
        per: "hole",
        minutes,
        read: ({ after, rings, cautions }) => ({
          found: after.find((one) => one.minutes === minutes)?.depth ?? failed("science/nothing-read"),
          perHole: null,
          stood: rings,
          // Of a depth that is not shown nothing has to be said.
          cautions: cautions.filter(
            ({ code, facts }) => code !== "science/rings-not-read-so-long" || facts["minutes"] === minutes,
          ),
        }),
      })),
    ),
  ]);
  return found.flat();
};
