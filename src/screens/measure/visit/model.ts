/** A visit: the strips of one field on one day, with what was measured there. */
import type { RecordId } from "../../../record/ids.ts";
import type { Place } from "../../../record/shapes.ts";
import type { House } from "../../parts/house.ts";
import { onGrass, spotsOf } from "../../parts/old-grass.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { onceEach, type SameField } from "../../parts/same-field.ts";
import type { Settings } from "../../parts/settings.ts";
import { type ReadLine, readLines, type SummedLine } from "../../parts/strip-cover.ts";
import { goesOn, today } from "../../parts/visits.ts";
import { type DayStrip, readDay, type Yardstick } from "./day-strips.ts";
import { farApartM } from "./far-apart.ts";

/** A line with its place in the order of its strip on this day, from 1. */
export interface NumberedLine {
  readonly line: SummedLine;
  readonly index: number;
}

/** A strip that was measured on this visit. */
export interface StripNow extends DayStrip {
  /** Newest first. */
  readonly lines: readonly NumberedLine[];
  /** The places that lines lie at, each once; null where it was not said. */
  readonly places: readonly (Place | null)[];
}

/** How the day of a visit lies to today: still measured on past midnight, over, or still to come. */
export type VisitWhen = "today" | "goes-on" | "over" | "ahead";

export interface VisitNow {
  readonly visit: Listed<"visit">;
  readonly when: VisitWhen;
  readonly same: SameField;
  /** Every visit of the field on this day. */
  readonly visits: readonly Listed<"visit">[];
  readonly harvestYear: number | null;
  /** The strip that was measured last first. */
  readonly strips: readonly StripNow[];
  /** Strips of the field that nobody has measured on this day. */
  readonly without: readonly Listed<"strip">[];
  readonly yardstick: Yardstick | null;
  /** Something was measured on old grass on this day. */
  readonly onGrass: boolean;
  /** The first taken first. */
  readonly photos: readonly Listed<"photo">[];
  /** Rings of the day, those at the old-grass spot too: they stand on the same board. */
  readonly rings: number;
  /** How far a line of this day lies from every other line of the field; null when none lies far. */
  readonly farM: number | null;
}

/** The lines of one ground with their numbers, newest first. */
export const numbered = (lines: readonly SummedLine[]): readonly NumberedLine[] =>
  lines.map((line, at) => ({ line, index: at + 1 })).reverse();

/** Lines of the strips on these visits, oldest first; those at the old-grass spot belong to no strip. */
export const linesOfVisits = async (
  records: Reader,
  visits: readonly Pick<Listed<"visit">, "id" | "body">[],
): Promise<readonly ReadLine[]> => {
  const lists = await Promise.all(visits.map(({ id }) => records.list({ visit: id, kind: "observation" })));
  const all = lists.flat().filter(({ body }) => body.type === "line");
  const spots = await spotsOf(records, all);
  const observations = all.filter(({ body }) => !onGrass(spots, body));
  const lines = await readLines(records, observations);
  return [...lines].sort((a, b) => a.header.startedAtMs - b.header.startedAtMs);
};

const whenIs = async (records: Reader, visit: Listed<"visit">): Promise<VisitWhen> => {
  const now = today();
  const { day } = visit.body;
  if (day === now) return "today";
  if (await goesOn(records, visit, now)) return "goes-on";
  return day > now ? "ahead" : "over";
};

/** Reads a visit; null when it is not on this device. */
export const readVisit = async (
  house: Pick<House, "records" | "results">,
  settings: Settings,
  id: RecordId<"visit">,
): Promise<VisitNow | null> => {
  const { records } = house;
  const day = await readDay(house, settings, id);
  const visit = day?.visits[0];
  if (day === null || visit === undefined) return null;
  const { same, visits, stripOf } = day;
  const lines = day.strips.flatMap(({ cover }) => cover.lines);
  const [when, farM, ...lists] = await Promise.all([
    whenIs(records, visit),
    farApartM(
      records,
      same.ids,
      lines.map(({ id: line, header }) => ({ id: line, header })),
    ),
    ...same.ids.map((field) => records.list({ field, kind: "strip" })),
  ]);
  const begun = day.yardstick?.today;
  const used = new Set(day.strips.map((one) => one.id));
  return {
    visit,
    when,
    same,
    visits,
    harvestYear: visits.find(({ body }) => body.harvestYear !== null)?.body.harvestYear ?? null,
    strips: day.strips.map((one) => ({
      ...one,
      lines: numbered(one.cover.lines),
      places: [...new Set(one.cover.lines.map(({ header }) => header.place))],
    })),
    without: onceEach(lists.flat(), stripOf).filter((strip) => !used.has(stripOf(strip.id))),
    yardstick: day.yardstick,
    onGrass: begun !== undefined && begun.lines.length + begun.holes.length + begun.rings.length > 0,
    photos: day.photos,
    rings: day.strips.reduce((sum, { soak }) => sum + soak.rings.length, 0) + (begun?.rings.length ?? 0),
    farM,
  };
};

/** Corrects the day of a visit, and of every other one that it is shown together with. */
export const correctDay = async (
  house: House,
  visits: readonly Listed<"visit">[],
  day: string,
): Promise<boolean> => {
  const written = await house.write(...visits.map(({ id }) => house.pen.change(id, { day })));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};

/** Gives the field its name. */
export const nameField = async (house: House, field: RecordId<"field">, name: string): Promise<void> => {
  const written = await house.write(house.pen.change(field, { name: name.trim() }));
  if (!written.ok) house.tell(written.problem);
};

/** The one strip that is the whole field; null when there is none, or more than one. */
const wholeFieldOf = async (records: Reader, field: RecordId<"field">): Promise<RecordId<"strip"> | null> => {
  const strips = await records.list({ field, kind: "strip" });
  const [whole, ...more] = strips.filter(({ body }) => body.wholeField && body.name === "");
  return whole === undefined || more.length > 0 ? null : whole.id;
};

/**
 * Says that two fields are the same; what was measured in one then stands with the other. The whole of one is
 * then the whole of the other.
 */
export const joinFields = async (
  house: House,
  from: RecordId<"field">,
  to: RecordId<"field">,
): Promise<void> => {
  const [own, other] = await Promise.all([from, to].map((field) => wholeFieldOf(house.records, field)));
  const written = await house.write(
    house.pen.write("join", { from, to }),
    ...(own == null || other == null ? [] : [house.pen.write("join", { from: own, to: other })]),
  );
  if (!written.ok) house.tell(written.problem);
};

/** Says to which harvest the visits of a day belong. */
export const sayHarvestYear = async (
  house: House,
  visits: readonly Listed<"visit">[],
  harvestYear: number | null,
): Promise<boolean> => {
  const written = await house.write(...visits.map(({ id }) => house.pen.change(id, { harvestYear })));
  if (!written.ok) house.tell(written.problem);
  return written.ok;
};
