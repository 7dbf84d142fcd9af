/** Where one can go on, and the fields that one may be standing in. */
import type { RecordId } from "../../../record/ids.ts";
import type { House } from "../../parts/house.ts";
import type { Listed, Reader } from "../../parts/reader.ts";
import { allFields, type SameField } from "../../parts/same-field.ts";
import { type ReadLine, readLines } from "../../parts/strip-cover.ts";
import { today } from "../../parts/visits.ts";

/** A line that was begun and not finished. */
export interface OpenLine {
  readonly line: ReadLine;
  readonly field: Listed<"field"> | undefined;
  readonly strip: Listed<"strip"> | undefined;
}

/** A field that is visited today. */
export interface TodayIn {
  readonly field: Listed<"field">;
  readonly visit: RecordId<"visit">;
  readonly lines: number;
}

/** Another field, with the day of its last visit. */
export interface FieldToChoose {
  readonly same: SameField;
  readonly farm: Listed<"farm"> | undefined;
  readonly lastDay: string | null;
}

export interface HomeNow {
  readonly open: readonly OpenLine[];
  readonly today: readonly TodayIn[];
  readonly fields: readonly FieldToChoose[];
}

/** How many of the newest lines are looked through for unfinished ones; older ones stand on their field's page. */
const NEWEST_LINES = 40;

const openLines = async (records: Reader, fields: readonly SameField[]): Promise<readonly OpenLine[]> => {
  const newest = await records.list({ kind: "observation" }, { newestFirst: true, limit: NEWEST_LINES });
  const open = (await readLines(records, newest)).filter(({ finished }) => !finished);
  const strips = await records.many([...new Set(open.map(({ header }) => header.strip))]);
  return open.flatMap((line) => {
    const same = fields.find(({ ids }) => ids.includes(line.header.field));
    // Nobody wants to go on in a field that was deleted.
    if (same === undefined) return [];
    return [{ line, field: same.field, strip: strips.find(({ id }) => id === line.header.strip) }];
  });
};

/** Reads the start of Measure. */
export const readHome = async (records: Reader): Promise<HomeNow> => {
  const [fields, visits, farms] = await Promise.all([
    allFields(records),
    records.list({ kind: "visit" }),
    records.list({ kind: "farm" }),
  ]);
  const now = today();
  const groupOf = new Map(fields.flatMap((same) => same.ids.map((id) => [id, same] as const)));
  const visitToday = new Map<SameField, RecordId<"visit">[]>();
  const lastUse = new Map<SameField, { atMs: number; day: string | null }>(
    fields.map((same) => [same, { atMs: same.field.row.keys.atMs, day: null }]),
  );
  for (const { id, body, row } of visits) {
    const same = groupOf.get(body.field);
    const use = same === undefined ? undefined : lastUse.get(same);
    if (same === undefined || use === undefined) continue;
    use.atMs = Math.max(use.atMs, row.keys.atMs);
    use.day = use.day === null || body.day > use.day ? body.day : use.day;
    if (body.day === now) visitToday.set(same, [...(visitToday.get(same) ?? []), id]);
  }
  const byUse = [...fields].sort((a, b) => (lastUse.get(b)?.atMs ?? 0) - (lastUse.get(a)?.atMs ?? 0));
  const inToday = byUse.filter((same) => visitToday.has(same));
  const [open, todays] = await Promise.all([
    openLines(records, fields),
    Promise.all(inToday.map((same) => todayIn(records, same.field, visitToday.get(same) ?? []))),
  ]);
  return {
    open,
    today: todays.flat(),
    fields: byUse
      .filter((same) => !visitToday.has(same))
      .map((same) => ({
        same,
        farm: farms.find(({ id }) => id === same.field.body.farm),
        lastDay: lastUse.get(same)?.day ?? null,
      })),
  };
};

const todayIn = async (
  records: Reader,
  field: Listed<"field">,
  visits: readonly RecordId<"visit">[],
): Promise<readonly TodayIn[]> => {
  const [visit] = visits;
  if (visit === undefined) return [];
  const lists = await Promise.all(visits.map((one) => records.list<"observation">({ visit: one })));
  return [{ field, visit, lines: lists.flat().filter(({ body }) => body.type === "line").length }];
};

/** Begins to measure in a field that gets its name later, and goes there. */
export const measureNow = async (house: House): Promise<void> => {
  const field = house.pen.write("field", {
    name: "",
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  });
  const visit = house.pen.write("visit", { field: field.id, day: today(), harvestYear: null });
  const written = await house.write(field, visit);
  if (written.ok) house.go({ at: "visit", visit: visit.id });
  else house.tell(written.problem);
};
