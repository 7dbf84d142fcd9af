/** The lines of a visit that lie on the same ground: on one strip, or on old grass, which lies in none. */
import type { LineHeader } from "../../record/kinds/observation.ts";
import { stripName } from "./names.ts";
import type { LinesOfGround } from "./old-grass.ts";
import type { Reader } from "./reader.ts";

/** The lines on the ground of this one, itself among them. */
export const linesOfGround = async (records: Reader, header: LineHeader): Promise<LinesOfGround> => {
  const all = (await records.list({ visit: header.visit, kind: "observation" })).filter(
    ({ body }) => body.type === "line",
  );
  // Loaded where a marked spot is in play alone: the first test screen does without it.
  if (all.some(({ body }) => body.spot !== undefined))
    return (await import("./old-grass.ts")).linesAmong(records, all, header);
  return { lines: all.filter(({ body }) => body.strip === header.strip), oldGrass: false, nameOf: stripName };
};
