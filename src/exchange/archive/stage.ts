/** Reads a file and lays it beside the records. Nothing here changes a record. */
import { kindOf, type RecordId } from "../../record/ids.ts";
import type { Photo } from "../../record/kinds/photo.ts";
import type { RecordState } from "../../record/record.ts";
import { type Failed, failed, ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { setImport, stage } from "../../store/staging.ts";
import { parseLine } from "../format/line.ts";
import type { Manifest } from "../format/manifest.ts";
import { RECORDS } from "../format/names.ts";
import { compareRecordIds } from "../format/order.ts";
import { compareWithStored } from "../merge/compare.ts";
import { partLines } from "./lines.ts";
import { type OpenVolume, openVolume } from "./open.ts";
import type { Preview, Watch } from "./reports.ts";
import { stagePhotos } from "./stage-photos.ts";
import { BATCH_RECORDS, BATCH_TEXT, type Staging } from "./staging.ts";
import { storedRecords } from "./stored.ts";
import { beginTally } from "./tally.ts";

const fromTheFuture = ({ problem }: Failed, { appVersion }: Manifest): Failed =>
  failed("exchange/from-the-future", { what: "record", app: appVersion, ...problem.facts });

/** Compares a batch with what is stored and stages what would change something. */
const stageBatch = async (staging: Staging, batch: readonly RecordState[]): Promise<Failed | undefined> => {
  const stored = await storedRecords(
    staging.connection,
    batch.map(({ id }) => id),
  );
  if (!stored.ok) return stored;
  const changing: RecordState[] = [];
  for (const record of batch) {
    const comparison = compareWithStored(stored.value.get(record.id), record);
    if (comparison.tooLarge) {
      staging.tally.refuse(record.id, { code: "exchange/record-too-large", facts: { id: record.id } });
      continue;
    }
    staging.tally.compared(comparison);
    // What changes nothing now never will: records only ever grow.
    if (comparison.is !== "same") changing.push(record);
  }
  if (changing.length === 0) return undefined;
  const put = await staging.put({ type: "records", records: changing });
  return put.ok ? undefined : put;
};

/** Reads the records of volume 1. @returns digests of the photos that they speak of */
const stageRecords = async (volume: OpenVolume, staging: Staging): Promise<Result<ReadonlySet<string>>> => {
  const listed = volume.files.find(({ name }) => name === RECORDS);
  if (listed === undefined) return ok(new Set());
  const { manifest } = volume;
  const of = manifest.kinds.reduce((sum, { count }) => sum + count, 0);
  const photos = new Set<string>();
  let batch: RecordState[] = [];
  let text = 0;
  let last: RecordId | undefined;

  const flush = async (done: number): Promise<Failed | undefined> => {
    const problem = batch.length === 0 ? undefined : await stageBatch(staging, batch);
    batch = [];
    text = 0;
    staging.watch.onProgress({ step: "reading", done, of });
    return problem;
  };
  const lines = partLines(async (line, number) => {
    if (staging.watch.signal.aborted) return failed("exchange/stopped");
    const read = parseLine(line);
    if (!read.ok) {
      if (read.problem.code === "record/from-the-future") return fromTheFuture(read, manifest);
      staging.tally.refuse(`${RECORDS}:${number}`, read.problem);
      return undefined;
    }
    const record = read.value;
    // Sorted lines name no record twice; a record in two batches would be counted as two.
    if (last !== undefined && compareRecordIds(last, record.id) >= 0)
      return failed("exchange/damaged", { what: "order", file: RECORDS });
    last = record.id;
    if (kindOf(record.id) === "photo") for (const { body } of record.revs) photos.add((body as Photo).sha256);
    batch.push(record);
    text += line.length;
    return batch.length >= BATCH_RECORDS || text >= BATCH_TEXT ? flush(number) : undefined;
  });
  const done = await volume.read(listed, lines.take);
  if (!done.ok) return done;
  const problem = lines.end() ?? (await flush(of));
  return problem ?? ok(photos);
};

/** Texts and views are read too: a file that is damaged anywhere is refused before anything is believed. */
const checkOthers = async ({ files, read }: OpenVolume): Promise<Failed | undefined> => {
  for (const listed of files) {
    if (listed.name === RECORDS || listed.name.startsWith("photos/")) continue;
    const done = await read(listed, () => undefined);
    if (!done.ok) return done;
  }
  return undefined;
};

/**
 * Reads a file and stages what it would bring.
 *
 * @param id a new random id, under which the file waits
 * @returns the preview; else why the whole file is refused (see `openVolume`), `exchange/stopped`,
 * `exchange/volume-1-first`, or what the store says. The caller then clears what was staged.
 */
export const stageFile = async (
  connection: Connection,
  id: string,
  file: File,
  watch: Watch,
): Promise<Result<Preview>> => {
  const begun = await setImport(connection, { id, state: "staged", about: null });
  if (!begun.ok) return begun;
  const opened = await openVolume(file);
  if (!opened.ok) return opened;
  const volume = opened.value;
  let rows = 0;
  const staging: Staging = {
    connection,
    import: id,
    tally: beginTally(),
    watch,
    put: (batch) => stage(connection, [{ import: id, n: rows++, value: batch }]),
  };
  const problem = await checkOthers(volume);
  if (problem !== undefined) return problem;
  const named = await stageRecords(volume, staging);
  if (!named.ok) return named;
  const photos = await stagePhotos(volume, staging, named.value);
  if (!photos.ok) return photos;
  const { madeAtMs, madeBy = null } = volume.manifest;
  const preview: Preview = {
    import: id,
    file: { name: file.name, byteCount: file.size, madeAtMs, madeBy },
    ...staging.tally.counts(),
  };
  const set = await setImport(connection, {
    id,
    state: "staged",
    about: {
      name: file.name,
      new: preview.records.new,
      changed: preview.records.changed,
      photos: preview.photos.new,
      rows,
    },
  });
  return set.ok ? ok(preview) : set;
};
