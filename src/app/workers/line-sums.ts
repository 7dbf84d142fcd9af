/** Sums of single lines, read and added up off the page. */
import type { LineAsked, LineSums } from "../../record/line/sums.ts";
import { ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { readColumns } from "../../store/read.ts";
import { addUp } from "./line-of-field.ts";

/**
 * Adds lines up.
 *
 * @param asked lines in any order; one that nothing was read on yet has empty sums
 * @returns the sums in the order asked for; fails as a whole when a newer app wrote one of them
 */
export const sumsOfLines = async (
  connection: Connection,
  asked: readonly LineAsked[],
): Promise<Result<readonly LineSums[]>> => {
  const columns = await readColumns(
    connection,
    asked.map(({ id }) => id),
  );
  if (!columns.ok) return columns;
  const sums: LineSums[] = [];
  for (const line of asked) {
    const added = addUp(line.id, columns.value.get(line.id), line.frame);
    if (!added.ok) return added;
    sums.push({ id: line.id, ...added.value });
  }
  return ok(sums);
};
