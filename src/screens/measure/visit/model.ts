/** A visit: the strips of one field on one day, with their lines. */
import type { RecordId } from "../../../record/ids.ts";
import type { Place } from "../../../record/shapes.ts";
import type { House } from "../../parts/house.ts";
import { countsOf } from "../../parts/line-counts.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { onceEach, type SameField, sameField, sameStrip } from "../../parts/same-field.ts";
import type { Settings } from "../../parts/settings.ts";
import {
  coverOfLines,
  type ReadLine,
  readLines,
  type StripCover,
  type SummedLine,
} from "../../parts/strip-cover.ts";
import { goesOn, today, visitsOf } from "../../parts/visits.ts";
import { farApartM } from "./far-apart.ts";

/** A line with its place in the order of its strip on this day, from 1. */
export interface NumberedLine {
  readonly line: SummedLine;
  readonly index: number;
}

/** A strip that was measured on this visit. */
export interface StripNow {
  readonly id: RecordId<"strip">;
  readonly strip: Listed<"strip"> | undefined;
  readonly cover: StripCover<SummedLine>;
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
  /** The strip of the newest line first. */
  readonly strips: readonly StripNow[];
  /** Strips without a line; holes and rings may lie there. */
  readonly without: readonly Listed<"strip">[];
  readonly rings: number;
  readonly holes: number;
  /** How far a line of this day lies from every other line of the field; null when none lies far. */
  readonly farM: number | null;
}

const numbered = (lines: readonly SummedLine[]): readonly NumberedLine[] =>
  lines.map((line, at) => ({ line, index: at + 1 })).reverse();

const stripsOf = (
  lines: readonly SummedLine[],
  strips: readonly Listed<"strip">[],
  stripOf: (id: RecordId<"strip">) => RecordId<"strip">,
  settings: Settings,
): readonly StripNow[] => {
  const groups = new Map<RecordId<"strip">, SummedLine[]>();
  for (const line of lines) {
    const id = stripOf(line.header.strip);
    const group = groups.get(id);
    if (group === undefined) groups.set(id, [line]);
    else group.push(line);
  }
  const newestOf = (own: readonly SummedLine[]): number => own.at(-1)?.header.startedAtMs ?? 0;
  return [...groups]
    .sort(([, a], [, b]) => newestOf(b) - newestOf(a))
    .map(([id, own]) => ({
      id,
      strip: strips.find((strip) => strip.id === id),
      cover: coverOfLines(own, settings),
      lines: numbered(own),
      places: [...new Set(own.map(({ header }) => header.place))],
    }));
};

/** Lines of these visits, oldest first. */
export const linesOfVisits = async (
  records: Reader,
  visits: readonly Pick<Listed<"visit">, "id">[],
): Promise<readonly ReadLine[]> => {
  const lists = await Promise.all(visits.map(({ id }) => records.list<"observation">({ visit: id })));
  const observations = lists.flat().filter(({ body }) => body.type === "line");
  const lines = await readLines(records, observations);
  return [...lines].sort((a, b) => a.header.startedAtMs - b.header.startedAtMs);
};

/** The same with their sums alone, added up off the page. */
const summedLines = async (
  { records, results }: Pick<House, "records" | "results">,
  tests: readonly Listed<"observation">[],
): Promise<readonly SummedLine[]> => {
  const headers = tests
    .flatMap(({ id, body }) => (body.type === "line" ? [{ id, header: body }] : []))
    .sort((a, b) => a.header.startedAtMs - b.header.startedAtMs);
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
  const visit = await records.one(id);
  const same = visit === undefined ? undefined : await sameField(records, visit.body.field);
  if (visit === undefined || same === undefined) return null;
  const { day } = visit.body;
  const [all, joins, when, ...lists] = await Promise.all([
    visitsOf(records, same.ids),
    records.joins(),
    whenIs(records, visit),
    ...same.ids.map((field) => records.list({ field, kind: "strip" })),
  ]);
  const others = all.filter((one) => one.body.day === day && one.id !== id);
  const visits = [visit, ...others];
  const stripOf = sameStrip(joins);
  const tests = (
    await Promise.all(visits.map((one) => records.list<"observation">({ visit: one.id })))
  ).flat();
  const lines = await summedLines(house, tests);
  const living = onceEach(lists.flat(), stripOf);
  const used = new Set(lines.map(({ header }) => stripOf(header.strip)));
  const [strips, farM] = await Promise.all([
    records.many([...used]),
    farApartM(
      records,
      same.ids,
      lines.map(({ id, header }) => ({ id, header })),
    ),
  ]);
  return {
    visit,
    when,
    same,
    visits,
    harvestYear: visits.find(({ body }) => body.harvestYear !== null)?.body.harvestYear ?? null,
    strips: stripsOf(lines, strips, stripOf, settings),
    without: living.filter((strip) => !used.has(stripOf(strip.id))),
    rings: tests.filter(({ body }) => body.type === "ring").length,
    holes: tests.filter(({ body }) => body.type === "hole").length,
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

/** Says that two fields are the same; what was measured in one then stands with the other. */
export const joinFields = async (
  house: House,
  from: RecordId<"field">,
  to: RecordId<"field">,
): Promise<void> => {
  const written = await house.write(house.pen.write("join", { from, to }));
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
