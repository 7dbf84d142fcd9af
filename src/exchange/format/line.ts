/** Records as lines of `records.ndjson`. */
import { canonicalJson } from "../../record/canonical.ts";
import { parseRecord } from "../../record/parse.ts";
import type { RecordState } from "../../record/record.ts";
import { failed, type Result } from "../../record/result.ts";
import { beginDigest } from "./digest.ts";
import { compareRecordIds } from "./order.ts";

/**
 * The line of one record: canonical JSON and a line feed.
 *
 * @example
 * import { erasedRecord } from "../../record/record.ts";
 * recordLine(erasedRecord("farm-00000000000000000000000000000001"))
 * // => '{"entries":[],"erased":true,"id":"farm-00000000000000000000000000000001","revs":[]}\n'
 */
export const recordLine = (record: RecordState): string => `${canonicalJson(record)}\n`;

/**
 * Reads one line that somebody else wrote.
 *
 * @param line without its line feed
 * @returns the record; or why not: `exchange/not-json`, or what `parseRecord` says
 */
export const parseLine = (line: string): Result<RecordState> => {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return failed("exchange/not-json");
  }
  return parseRecord(value);
};

/**
 * The canonical digest: SHA-256 over the lines of all records in their one order. Two devices that hold
 * the same records have the same digest.
 *
 * @param records in any order
 * @returns 64 hexadecimal digits
 */
export const digestOfRecords = (records: Iterable<RecordState>): string => {
  const digest = beginDigest();
  for (const record of [...records].sort((a, b) => compareRecordIds(a.id, b.id)))
    digest.add(recordLine(record));
  return digest.hex();
};
