/** Reads everything of a field that its ground cover rests on. */
import type { RecordId } from "../../record/ids.ts";
import { joined } from "../../record/joined.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import type { LineHeader } from "../../record/kinds/observation.ts";
import { shown } from "../../record/record.ts";
import { ok, type Result } from "../../record/result.ts";
import type { LineOfField } from "../../science/ground-cover/field-cover.ts";
import type { Connection } from "../../store/connection.ts";
import { list, listJoins } from "../../store/list.ts";
import { readColumns, readHeaders } from "../../store/read.ts";
import { addUp } from "./line-of-field.ts";

interface Header {
  readonly id: RecordId<"observation">;
  readonly header: LineHeader;
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
      if (body?.type === "line") found.push({ id: row.id, header: body });
    }
  }
  return ok(found.sort((a, b) => a.header.startedAtMs - b.header.startedAtMs));
};

/**
 * All lines of a field, oldest first, with the day of their visit. A line whose visit was deleted keeps its
 * day: deleting never takes along what belongs to the deleted. One whose visit is not on this device yet is
 * left out.
 *
 * @param fields the field first, then all that are the same
 */
export const linesOfField = async (
  connection: Connection,
  fields: readonly RecordId<"field">[],
): Promise<Result<readonly LineOfField[]>> => {
  const headers = await headersOf(connection, fields);
  if (!headers.ok) return headers;
  const all = headers.value.map(({ header }) => header);
  const [visits, ropes, joins, columns] = await Promise.all([
    readHeaders(connection, [...new Set(all.map(({ visit }) => visit))]),
    readHeaders(connection, [...new Set(all.map(({ rope }) => rope))]),
    listJoins(connection),
    readColumns(
      connection,
      headers.value.map(({ id }) => id),
    ),
  ]);
  if (!visits.ok) return visits;
  if (!ropes.ok) return ropes;
  if (!joins.ok) return joins;
  if (!columns.ok) return columns;
  const dayOf = new Map(visits.value.map((row) => [row.id, shown(row)?.body.day]));
  const marksOf = new Map(ropes.value.map((row) => [row.id, marksOn(shown(row)?.body)]));
  const same = joined(joins.value);
  const lines: LineOfField[] = [];
  for (const { id, header } of headers.value) {
    const { visit, strip, place, rope, way } = header;
    const day = dayOf.get(visit);
    if (day === undefined) continue;
    const ropeMarks = marksOf.get(rope) ?? 0;
    const added = addUp(id, columns.value.get(id), { way, ropeMarks });
    if (!added.ok) return added;
    const { notRead, unsettled, ...counts } = added.value.tally;
    lines.push({
      id,
      visit,
      day,
      strip: same(strip) as RecordId<"strip">,
      place,
      finished: added.value.finished,
      // A mark with two answers is as good as not read until one is chosen.
      counts: { ...counts, notRead: notRead + unsettled },
    });
  }
  return ok(lines);
};
