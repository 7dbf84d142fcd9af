/** A file on its way in: what lies in the staging store, and the one place that puts it there. */

import { parseRecord } from "../../record/parse.ts";
import type { RecordState } from "../../record/record.ts";
import type { Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import type { PhotoRow } from "../../store/schema.ts";
import type { Watch } from "./reports.ts";
import type { PreviewTally } from "./tally.ts";

/** Most records, and about the most text, that one transaction of bringing in writes. */
export const BATCH_RECORDS = 200;
export const BATCH_TEXT = 2_000_000;

/** The content of one staged row. */
export type Batch =
  | { readonly type: "records"; readonly records: readonly RecordState[] }
  | { readonly type: "photo"; readonly photo: PhotoRow };

/**
 * The records of a batch as this version of the app knows them: it may have been staged by an older one.
 */
export const recordsOf = (batch: Extract<Batch, { type: "records" }>): RecordState[] =>
  batch.records.flatMap((record) => {
    const read = parseRecord(record);
    return read.ok ? [read.value] : [];
  });

/** Where a file is staged. */
export interface Staging {
  readonly connection: Connection;
  readonly import: string;
  readonly tally: PreviewTally;
  readonly watch: Watch;
  /** Stages one more row. */
  readonly put: (batch: Batch) => Promise<Result<undefined>>;
}
