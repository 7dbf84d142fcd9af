import type { RecordId } from "../../record/ids.ts";
import { href } from "./route.ts";

/** The address of the first of these visits; where one measures when there is none. */
export const toVisit = ([visit]: readonly RecordId<"visit">[]): string =>
  href(visit === undefined ? { at: "measure" } : { at: "visit", visit });
