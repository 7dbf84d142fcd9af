/** How safe the records are: how many there are, how many no copy holds yet, and what waits to be settled. */
import { valuesOf } from "../../record/columns.ts";
import { isDemoId } from "../../record/demo-mark.ts";
import { KINDS } from "../../record/ids.ts";
import type { HeaderRow } from "../../store/schema.ts";
import type { Listed, Reader } from "../parts/reader.ts";
import { columnsOf, doubtfulLines } from "./doubts.ts";

export interface SafetyStatus {
  /** Records on this device, deleted ones too. */
  readonly all: number;
  /** Records written down or changed since the last copy, by this device's clock; all of them without one. */
  readonly since: number;
  /** Rises with every record, version and reading; what a clock says plays no part. */
  readonly sum: number;
  readonly deleted: number;
  /** Records with several versions, and lines with two answers. */
  readonly unsettled: number;
}

const revisedSince = (row: HeaderRow, sinceMs: number): boolean =>
  row.revs.some(({ stamp }) => stamp.wallMs > sinceMs);

const sumOf = (row: HeaderRow): number =>
  row.revs.reduce((sum, { dot, seen }) => sum + dot[1] + seen.reduce((before, [, n]) => before + n, 0), 1);

/** Every living record, kind by kind. */
export const readLiving = async (records: Reader): Promise<readonly Listed[]> =>
  (await Promise.all(KINDS.map((kind) => records.list({ kind })))).flat();

/** No copy holds the example farm, so it is not counted among what a copy should hold. */
const ownAmong = <L extends Pick<Listed, "id">>(all: readonly L[]): readonly L[] =>
  all.filter(({ id }) => !isDemoId(id));

/** Reads the status. */
export const readStatus = async (records: Reader, copiedAtMs: number | null): Promise<SafetyStatus> => {
  const [everyLiving, everyDeleted, everyLine] = await Promise.all([
    readLiving(records),
    records.deleted(),
    records.list({ kind: "observation" }),
  ]);
  const [living, deleted, lines] = [ownAmong(everyLiving), ownAmong(everyDeleted), ownAmong(everyLine)];
  const columns = await columnsOf(records, lines);
  const enteredSince = (id: Listed["id"], sinceMs: number): boolean => {
    const packed = columns.get(id);
    return packed !== undefined && valuesOf(packed, "enteredAtMs").some((atMs) => Number(atMs) > sinceMs);
  };
  const all = [...living, ...deleted];
  return {
    all: all.length,
    since:
      copiedAtMs === null
        ? all.length
        : all.filter(({ id, row }) => revisedSince(row, copiedAtMs) || enteredSince(id, copiedAtMs)).length,
    sum:
      all.reduce((sum, { row }) => sum + sumOf(row), 0) +
      [...columns.values()].reduce((sum, { count }) => sum + count, 0),
    deleted: everyDeleted.length,
    unsettled: living.filter(({ versions }) => versions > 1).length + doubtfulLines(lines, columns).length,
  };
};
