/** A visit: the strips of one field on one day, with their lines. */
import type { RecordId } from "../../../record/ids.ts";
import type { Place } from "../../../record/shapes.ts";
import type { House } from "../../parts/house.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { type SameField, sameField, sameStrip } from "../../parts/same-field.ts";
import type { Settings } from "../../parts/settings.ts";
import { coverOfLines, type ReadLine, readLines, type StripCover } from "../../parts/strip-cover.ts";
import { today, visitsOf } from "../../parts/visits.ts";

/** A line with its place in the order of its strip on this day, from 1. */
export interface NumberedLine {
  readonly line: ReadLine;
  readonly index: number;
}

/** A strip that was measured on this visit. */
export interface StripNow {
  readonly id: RecordId<"strip">;
  readonly strip: Listed<"strip"> | undefined;
  readonly cover: StripCover;
  /** Newest first. */
  readonly lines: readonly NumberedLine[];
  /** The places that lines lie at, each once; null where it was not said. */
  readonly places: readonly (Place | null)[];
}

export interface VisitNow {
  readonly visit: Listed<"visit">;
  readonly isToday: boolean;
  readonly same: SameField;
  /** Every visit of the field on this day. */
  readonly visits: readonly Listed<"visit">[];
  readonly harvestYear: number | null;
  /** The strip of the newest line first. */
  readonly strips: readonly StripNow[];
  readonly without: readonly Listed<"strip">[];
}

const numbered = (lines: readonly ReadLine[]): readonly NumberedLine[] =>
  lines.map((line, at) => ({ line, index: at + 1 })).reverse();

const stripsOf = (
  lines: readonly ReadLine[],
  strips: readonly Listed<"strip">[],
  stripOf: (id: RecordId<"strip">) => RecordId<"strip">,
  settings: Settings,
): readonly StripNow[] => {
  const groups = new Map<RecordId<"strip">, ReadLine[]>();
  for (const line of lines) {
    const id = stripOf(line.header.strip);
    groups.set(id, [...(groups.get(id) ?? []), line]);
  }
  const newestOf = (own: readonly ReadLine[]): number => own.at(-1)?.header.startedAtMs ?? 0;
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

/** Reads a visit; null when it is not on this device. */
export const readVisit = async (
  records: Reader,
  settings: Settings,
  id: RecordId<"visit">,
): Promise<VisitNow | null> => {
  const visit = await records.one(id);
  const same = visit === undefined ? undefined : await sameField(records, visit.body.field);
  if (visit === undefined || same === undefined) return null;
  const { day } = visit.body;
  const [all, joins, ...lists] = await Promise.all([
    visitsOf(records, same.ids),
    records.joins(),
    ...same.ids.map((field) => records.list({ field, kind: "strip" })),
  ]);
  const others = all.filter((one) => one.body.day === day && one.id !== id);
  const visits = [visit, ...others];
  const stripOf = sameStrip(joins);
  const lines = await linesOfVisits(records, visits);
  const living = lists.flat().filter((strip) => stripOf(strip.id) === strip.id);
  const used = new Set(lines.map(({ header }) => stripOf(header.strip)));
  const strips = await records.many([...used]);
  return {
    visit,
    isToday: day === today(),
    same,
    visits,
    harvestYear: visits.find(({ body }) => body.harvestYear !== null)?.body.harvestYear ?? null,
    strips: stripsOf(lines, strips, stripOf, settings),
    without: living.filter((strip) => !used.has(strip.id)),
  };
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
