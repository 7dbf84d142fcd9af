/** Where one can go on, and the fields that one may be standing in. */

import { readClock } from "../../../device/clock.ts";
import { valuesOf } from "../../../record/columns.ts";
import type { RecordId } from "../../../record/ids.ts";
import { marksSaid } from "../../../record/line/reading.ts";
import { summariseLine } from "../../../record/line/summary.ts";
import { readColumns } from "../../../store/read.ts";
import { fromHere } from "../../parts/from-here.ts";
import type { House } from "../../parts/house.ts";
import { newField } from "../../parts/new-field.ts";
import { newestOf, type TestOf } from "../../parts/newest-of.ts";
import { spotsOf } from "../../parts/old-grass.ts";
import { type Listed, type Reader, ReadFailed } from "../../parts/reader.ts";
import { allFields, type SameField } from "../../parts/same-field.ts";
import { type ReadLine, readLines } from "../../parts/strip-cover.ts";
import { goesOn, today } from "../../parts/visits.ts";
import type { BegunTest, OpenHole, OpenRing } from "./open-tests.ts";
import type { Counts } from "./words.open.ts";

/** A line that was begun and not finished. */
export interface OpenLine {
  readonly line: ReadLine;
  readonly field: Listed<"field"> | undefined;
  readonly strip: Listed<"strip"> | undefined;
  readonly spot: Listed<"spot"> | undefined;
}

/** A field that is visited today. */
export interface TodayIn {
  readonly field: Listed<"field">;
  readonly visit: RecordId<"visit">;
  /** The day of the visit when it is not today's: it goes on past midnight. */
  readonly begunOn: string | null;
  readonly counts: Counts;
}

/** Another field, with the day of its last visit. */
export interface FieldToChoose {
  readonly same: SameField;
  readonly farm: Listed<"farm"> | undefined;
  readonly lastDay: string | null;
}

export interface HomeNow {
  readonly open: readonly OpenLine[];
  readonly openTests: readonly (OpenHole | OpenRing)[];
  readonly today: readonly TodayIn[];
  readonly fields: readonly FieldToChoose[];
}

/** How many of the newest lines are looked through for unfinished ones; older ones stand on their field's page. */
const NEWEST_LINES = 40;
/** Headers that are looked through for them: a day of rings and holes may lie between. */
const HEADERS = 200;

/**
 * Leaves out lines whose columns already say that they are done: reading every mark of forty lines holds up
 * the first touch on a slow phone, and as a rule only one of them is open.
 */
const notPlainlyFinished = async (
  records: Reader,
  lines: readonly TestOf<"line">[],
): Promise<readonly TestOf<"line">[]> => {
  const [columns, ropes] = await Promise.all([
    readColumns(
      records.connection,
      lines.map(({ id }) => id),
    ),
    records.many([...new Set(lines.map(({ body }) => body.rope))]),
  ]);
  if (!columns.ok) throw new ReadFailed(columns.problem);
  const marksOf = new Map(
    ropes.flatMap(({ id, body }) => (body.type === "rope" ? [[id as string, body.marks] as const] : [])),
  );
  return lines.filter(({ id, body: { way, rope } }) => {
    const packed = columns.value.get(id);
    if (packed === undefined || way === "totals" || valuesOf(packed, "type").includes("set-mark"))
      return true;
    const ropeMarks = marksOf.get(rope) ?? 0;
    const { tally } = summariseLine(packed, { way, ropeMarks });
    return way !== "mark-by-mark" || marksSaid(tally) < ropeMarks || ropeMarks === 0;
  });
};

const openLines = async (records: Reader, fields: readonly SameField[]): Promise<readonly OpenLine[]> => {
  const newest = await newestOf(records, null, "line", { most: NEWEST_LINES, among: HEADERS });
  const open = (await readLines(records, await notPlainlyFinished(records, newest.tests))).filter(
    ({ finished }) => !finished,
  );
  const [strips, spots] = await Promise.all([
    records.many([...new Set(open.map(({ header }) => header.strip))]),
    spotsOf(
      records,
      open.map(({ header }) => ({ body: header })),
    ),
  ]);
  return open.flatMap((line) => {
    const same = fields.find(({ ids }) => ids.includes(line.header.field));
    // Nobody wants to go on in a field that was deleted.
    if (same === undefined) return [];
    const { strip, spot } = line.header;
    return [
      {
        line,
        field: same.field,
        strip: strips.find(({ id }) => id === strip),
        spot: spot === undefined ? undefined : spots.get(spot),
      },
    ];
  });
};

/** No ring and no hole lasts two days: an older one was left without an end (own choice, no source). */
const LASTS_AT_MOST_MS = 2 * 86_400_000;
/** Headers read at once: most starts of a day need no more. */
const PART = 40;

/** Rings and holes that were begun lately, newest first. */
const begunLately = async (records: Reader): Promise<readonly BegunTest[]> => {
  const { wallMs } = readClock();
  const begun: BegunTest[] = [];
  let last: Listed<"observation"> | undefined;
  do {
    const part: readonly Listed<"observation">[] = await records.list(
      { kind: "observation" },
      { newestFirst: true, limit: PART, ...(last === undefined ? {} : { after: last.row }) },
    );
    begun.push(
      ...part.filter((one): one is BegunTest => one.body.type === "ring" || one.body.type === "hole"),
    );
    last = part.length === PART ? part.at(-1) : undefined;
  } while (last !== undefined && wallMs - last.row.keys.atMs < LASTS_AT_MOST_MS);
  return begun.filter(({ body }) => wallMs - body.startedAtMs < LASTS_AT_MOST_MS);
};

/** Those that are not over. Their readings and the code for them are asked for only when there are any. */
const openTests = async (records: Reader, fields: readonly SameField[]): Promise<HomeNow["openTests"]> => {
  const begun = await begunLately(records);
  if (begun.length === 0) return [];
  // The code is gone when another window took a newer build: the start must come all the same.
  const reading = await import("./open-tests.ts").catch(() => null);
  return reading === null ? [] : reading.unfinished(records, fields, begun);
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
  const visitToday = new Map<SameField, Listed<"visit">[]>();
  const lastUse = new Map<SameField, { atMs: number; day: string | null }>(
    fields.map((same) => [same, { atMs: same.field.row.keys.atMs, day: null }]),
  );
  const going = await Promise.all(visits.map((visit) => goesOn(records, visit, now)));
  for (const [at, visit] of visits.entries()) {
    const { body, row } = visit;
    const same = groupOf.get(body.field);
    const use = same === undefined ? undefined : lastUse.get(same);
    if (same === undefined || use === undefined) continue;
    use.atMs = Math.max(use.atMs, row.keys.atMs);
    use.day = use.day === null || body.day > use.day ? body.day : use.day;
    if (body.day === now || going[at] === true)
      visitToday.set(same, [...(visitToday.get(same) ?? []), visit]);
  }
  const byUse = [...fields].sort((a, b) => (lastUse.get(b)?.atMs ?? 0) - (lastUse.get(a)?.atMs ?? 0));
  const inToday = byUse.filter((same) => visitToday.has(same));
  const [open, tests, todays] = await Promise.all([
    openLines(records, fields),
    openTests(records, fields),
    Promise.all(inToday.map((same) => todayIn(records, same.field, visitToday.get(same) ?? [], now))),
  ]);
  return {
    open,
    openTests: tests,
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
  all: readonly Listed<"visit">[],
  now: string,
): Promise<readonly TodayIn[]> => {
  const ofToday = all.filter(({ body }) => body.day === now);
  const visits = ofToday.length > 0 ? ofToday : all;
  const [visit] = visits;
  if (visit === undefined) return [];
  const lists = await Promise.all(visits.map(({ id }) => records.list({ visit: id, kind: "observation" })));
  const { day } = visit.body;
  const count = (type: "line" | "hole" | "ring"): number =>
    lists.flat().filter(({ body }) => body.type === type).length;
  return [
    {
      field,
      visit: visit.id,
      begunOn: day === now ? null : day,
      counts: { lines: count("line"), holes: count("hole"), rings: count("ring") },
    },
  ];
};

/** Begins to measure in a field that gets its name later, and goes there. */
export const measureNow = async (house: House): Promise<void> => {
  const { field, commands } = newField(house.pen);
  const visit = house.pen.write("visit", { field, day: today(), harvestYear: null });
  const go = fromHere(house.go);
  const written = await house.write(...commands, visit);
  if (written.ok) go({ at: "visit", visit: visit.id });
  else house.tell(written.problem);
};
