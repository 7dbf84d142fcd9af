/** Reads everything of a field that its results rest on: the headers of its tests once, and their entries once. */
import type { Entry } from "../../record/entry.ts";
import { grassOf } from "../../record/ground.ts";
import type { RecordId } from "../../record/ids.ts";
import { joined } from "../../record/joined.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import type { HoleHeader, LineHeader, RingHeader } from "../../record/kinds/observation.ts";
import { shown } from "../../record/record.ts";
import { ok, type Result } from "../../record/result.ts";
import type { TestsOfField } from "../../science/field-results.ts";
import type { Connection } from "../../store/connection.ts";
import { list, listJoins } from "../../store/list.ts";
import { readColumns, readHeaders } from "../../store/read.ts";
import { currentEntries } from "../../store/rows.ts";
import { countOfHole, kitOf, soakingOfRing } from "./holes-rings.ts";
import { addUp } from "./line-of-field.ts";

type Tested = LineHeader | HoleHeader | RingHeader;

interface Header {
  readonly id: RecordId<"observation">;
  readonly header: Tested;
}

const marksOn = (body: Kit | undefined): number => (body?.type === "rope" ? body.marks : 0);

const headersOf = async (
  connection: Connection,
  fields: readonly RecordId<"field">[],
): Promise<Result<readonly Header[]>> => {
  const found: Header[] = [];
  for (const field of fields) {
    const rows = await list(connection, { field, kind: "observation" });
    if (!rows.ok) return rows;
    for (const row of rows.value) {
      const body = shown(row)?.body;
      if (body !== undefined && body.type !== "note") found.push({ id: row.id, header: body });
    }
  }
  return ok(found.sort((a, b) => a.header.startedAtMs - b.header.startedAtMs));
};

const usedBy = (header: Tested): readonly RecordId<"kit">[] =>
  header.type === "line" ? [header.rope] : kitOf(header);

/** What the headers of tests name: the day of each visit, the kit, the marked spots, and which strips are the same. */
const aroundOf = async (connection: Connection, all: readonly Tested[]) => {
  const [visits, kit, spots, joins] = await Promise.all([
    readHeaders(connection, [...new Set(all.map(({ visit }) => visit))]),
    readHeaders(connection, [...new Set(all.flatMap(usedBy))]),
    readHeaders(connection, [...new Set(all.flatMap(({ spot }) => spot ?? []))]),
    listJoins(connection),
  ]);
  if (!visits.ok) return visits;
  if (!kit.ok) return kit;
  if (!spots.ok) return spots;
  if (!joins.ok) return joins;
  return ok({
    dayOf: new Map(visits.value.map((row) => [row.id, shown(row)?.body.day])),
    kitById: new Map<RecordId, Kit | undefined>(kit.value.map((row) => [row.id, shown(row)?.body])),
    grassById: new Map(spots.value.map((row) => [row.id, shown(row)?.body.oldGrass])),
    same: joined(joins.value),
  });
};

/**
 * All tests of a field, each kind oldest first, with the day of their visit. A test whose visit was deleted
 * keeps its day: deleting never takes along what belongs to the deleted. One whose visit is not on this device
 * yet is left out. One at an old-grass spot names that spot: it is part of no strip.
 *
 * @param fields the field first, then all that are the same
 */
export const testsOfField = async (
  connection: Connection,
  fields: readonly RecordId<"field">[],
): Promise<Result<TestsOfField>> => {
  const headers = await headersOf(connection, fields);
  if (!headers.ok) return headers;
  const [around, columns] = await Promise.all([
    aroundOf(
      connection,
      headers.value.map(({ header }) => header),
    ),
    readColumns(
      connection,
      headers.value.map(({ id }) => id),
    ),
  ]);
  if (!around.ok) return around;
  if (!columns.ok) return columns;
  const { dayOf, kitById, grassById, same } = around.value;
  const tests = {
    lines: [] as TestsOfField["lines"][number][],
    holes: [] as TestsOfField["holes"][number][],
    rings: [] as TestsOfField["rings"][number][],
  };
  for (const { id, header } of headers.value) {
    const { visit, place } = header;
    const day = dayOf.get(visit);
    if (day === undefined) continue;
    const ground = {
      day,
      strip: same(header.strip) as RecordId<"strip">,
      oldGrass: grassOf((spot) => grassById.get(spot), header),
      place,
    };
    const packed = columns.value.get(id);
    if (header.type === "line") {
      const ropeMarks = marksOn(kitById.get(header.rope));
      const added = addUp(id, packed, { way: header.way, ropeMarks });
      if (!added.ok) return added;
      const { notRead, unsettled, ...counts } = added.value.tally;
      tests.lines.push({
        ...ground,
        id,
        visit,
        finished: added.value.finished,
        // A mark with two answers is as good as not read until one is chosen.
        counts: { ...counts, notRead: notRead + unsettled },
      });
      continue;
    }
    const entries: Result<readonly Entry[]> =
      packed === undefined ? ok([]) : currentEntries({ id, ...packed });
    if (!entries.ok) return entries;
    if (header.type === "hole")
      tests.holes.push({ ...ground, visit, count: countOfHole(header, entries.value, kitById) });
    else {
      const soaking = soakingOfRing(header, entries.value, kitById);
      tests.rings.push({ ...ground, id, visit, follows: header.follows, soaking });
    }
  }
  return ok(tests);
};
