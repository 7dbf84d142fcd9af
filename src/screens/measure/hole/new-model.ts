/** Before a hole: what it was last time stands there already, and one key starts it. */
import { readClock } from "../../../device/clock.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { HoleHeader, LandUse, Observation } from "../../../record/kinds/observation.ts";
import type { Stood } from "../../../record/shapes.ts";
import { type Hemisphere, inSeason, type Season } from "../../../science/earthworms/protocol.ts";
import { WORM_METHODS, wormMethod } from "../../../science/earthworms/worm-methods.ts";
import type { House } from "../../parts/house.ts";
import { onGrass, spotsOf } from "../../parts/old-grass.ts";
import type { Listed } from "../../parts/reader.ts";
import { onceEach, sameField, sameStrip, standsFor } from "../../parts/same-field.ts";
import { type Ground, readSpots, type SpotToChoose } from "../set-out/ground.ts";
import { type DayHole, holesOfDay } from "./holes-of-day.ts";

/** Size, depth and minutes of a hole, from a method or by hand. */
export type Dimensions = Pick<HoleHeader, "template" | "sidesM" | "depthM" | "minutes" | "mustardMin">;

/** What the person chooses for a hole. */
export interface Choices {
  readonly landUse: LandUse | null;
  /** Short name of a worm method; null for own sizes. */
  readonly method: string | null;
  /** Own sizes; null as long as they are not written. */
  readonly own: Dimensions | null;
  readonly ground: Ground;
  readonly place: HoleHeader["place"];
}

/** What there is to choose from, and what is chosen at first. */
export interface Dig {
  readonly visit: Listed<"visit">;
  readonly field: Listed<"field">;
  readonly strips: readonly Listed<"strip">[];
  readonly spots: readonly SpotToChoose[];
  readonly templates: readonly Listed<"kit">[];
  /** The last hole of the day on a strip; null before the first. */
  readonly last: DayHole | null;
  readonly number: number;
  /** Where on earth the field lies, from any position taken there; null when none was. */
  readonly hemisphere: Hemisphere | null;
  /** Guesses of worms per hole on this visit, by strip. */
  readonly guesses: ReadonlyMap<RecordId<"strip">, number>;
  /** Strips with a hole on this day: what is guessed after the first hole is no guess. */
  readonly dug: ReadonlySet<RecordId<"strip">>;
  readonly first: Choices;
}

const hemisphereAt = (latitudeDeg: number): Hemisphere => (latitudeDeg < 0 ? "south" : "north");

const positionIn = (body: Observation) => (body.type === "line" ? body.start.position : body.at.position);

/** Half of the earth of a position; null without one. */
export const hemisphereOf = (at: { readonly latitudeDeg: number } | null): Hemisphere | null =>
  at === null ? null : hemisphereAt(at.latitudeDeg);

const choicesOf = (
  before: HoleHeader | undefined,
  known: (strip: RecordId<"strip"> | undefined) => RecordId<"strip"> | null,
): Choices => {
  if (before === undefined)
    return {
      landUse: "cropland",
      method: WORM_METHODS[0].id,
      own: null,
      ground: { strip: known(undefined), spot: null },
      place: null,
    };
  const { landUse, method, template, sidesM, depthM, minutes, mustardMin, place, strip } = before;
  const offered = method !== null && wormMethod(method) !== undefined;
  return {
    landUse,
    method: offered ? method : null,
    own: offered ? null : { template, sidesM, depthM, minutes, mustardMin },
    ground: { strip: known(strip), spot: null },
    place,
  };
};

/** Reads what a new hole of a visit can choose from; null when the visit is not on this device. */
export const readDig = async ({ records }: House, visitId: RecordId<"visit">): Promise<Dig | null> => {
  const visit = await records.one(visitId);
  if (visit === undefined) return null;
  const same = await sameField(records, visit.body.field);
  if (same === undefined) return null;
  const [stripLists, joins, kit, observations, guesses, holes, anywhere] = await Promise.all([
    Promise.all(same.ids.map((field) => records.list({ field, kind: "strip" }))),
    records.joins(),
    records.list({ kind: "kit" }),
    Promise.all(same.ids.map((field) => records.list({ field, kind: "observation" }, { newestFirst: true }))),
    Promise.all(same.ids.map((field) => records.list({ field, kind: "guess" }))),
    holesOfDay(records, visit),
    records.list({ kind: "observation" }, { newestFirst: true, limit: 200 }),
  ]);
  const stripOf = sameStrip(joins);
  const strips = onceEach(stripLists.flat(), stripOf);
  const tests = observations.flat();
  const here = tests.map(({ body }) => body);
  const [spots, at] = await Promise.all([
    readSpots(records, same.ids, strips),
    spotsOf(
      records,
      [...tests, ...anywhere].filter(({ body }) => body.type === "hole"),
    ),
  ]);
  const known = (id: RecordId<"strip"> | undefined): RecordId<"strip"> | null =>
    (id === undefined ? undefined : standsFor(strips, stripOf, id)) ??
    (strips.length === 1 ? (strips[0]?.id ?? null) : null);
  // What was dug on old grass, as grassland, says nothing of the next hole on a strip.
  const onStrips = holes.filter(({ header }) => !onGrass(at, header));
  const last = onStrips.at(-1) ?? null;
  const isHole = (body: Observation): body is HoleHeader => body.type === "hole" && !onGrass(at, body);
  const before = last?.header ?? here.find(isHole) ?? anywhere.map(({ body }) => body).find(isHole);
  return {
    visit,
    field: same.field,
    strips,
    spots,
    templates: kit.filter(({ body }) => body.type === "hole-template"),
    last,
    number: Math.max(0, ...holes.map(({ header }) => header.number)) + 1,
    hemisphere: hemisphereOf(here.map(positionIn).find((at) => at !== null) ?? null),
    guesses: new Map(
      guesses
        .flat()
        .flatMap(({ body }) =>
          body.what === "worms-per-hole" && body.visit === visitId && body.strip !== null
            ? [[standsFor(strips, stripOf, body.strip) ?? body.strip, body.value] as const]
            : [],
        ),
    ),
    dug: new Set(onStrips.map(({ header }) => header.strip)),
    first: choicesOf(before, known),
  };
};

/** Whether a template is still there, or stands there at first anyway. */
export const isTemplate = (
  template: RecordId<"kit"> | null,
  templates: readonly Listed<"kit">[],
  first: Dimensions | null,
): boolean =>
  template === null || template === first?.template || templates.some(({ id }) => id === template);

/** Size, depth and minutes that the choices come to; null while own sizes are not written. */
export const dimensionsOf = ({ method, own }: Choices): Dimensions | null => {
  if (method === null) return own;
  const found = wormMethod(method);
  if (found === undefined) return null;
  return {
    template: null,
    sidesM: [...found.sidesM],
    depthM: found.depthM,
    minutes: found.minutes,
    mustardMin: found.mustard?.minutes ?? null,
  };
};

/** How a method's season lies to a day: null when it states none, or the day falls in it. */
export const seasonBeside = (
  season: Season | null,
  day: string,
  hemisphere: Hemisphere | null,
): { readonly months: readonly number[]; readonly known: boolean } | null => {
  if (season === null) return null;
  if (hemisphere === null) return { months: season.months, known: false };
  const month = Number(day.slice(5, 7));
  if (inSeason(season, { month, hemisphere })) return null;
  const months =
    hemisphere === season.hemisphere ? season.months : season.months.map((one) => ((one + 5) % 12) + 1);
  return { months, known: true };
};

/** Begins the hole, and keeps a guess with it; null, and the reason is shown, when it could not be written. */
export const beginHole = async (
  house: House,
  dig: Dig,
  begin: {
    readonly choices: Choices;
    readonly ground: Pick<HoleHeader, "strip" | "spot">;
    readonly dimensions: Dimensions;
    readonly at: Stood;
    readonly guess: number | null;
  },
): Promise<RecordId<"observation"> | null> => {
  const { choices, ground, dimensions, at, guess } = begin;
  const { wallMs } = readClock();
  const person = house.settings.value.person;
  const shared = { field: dig.field.id, visit: dig.visit.id, strip: ground.strip, person };
  const hole = house.pen.write("observation", {
    type: "hole",
    ...shared,
    ...ground,
    ...dimensions,
    place: choices.place,
    startedAtMs: wallMs,
    method: choices.method,
    landUse: choices.landUse,
    at,
    number: dig.number,
  });
  const commands =
    guess === null
      ? [hole]
      : [house.pen.write("guess", { ...shared, what: "worms-per-hole", value: guess, atMs: wallMs }), hole];
  const written = await house.write(...commands);
  if (written.ok) return hole.id;
  house.tell(written.problem);
  return null;
};
