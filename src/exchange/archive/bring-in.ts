/**
 * Brings a staged file in. The row `accepted` is on the disk before the first record changes; from then
 * on it is finished, after a kill at the next start. Each batch is merged with what is stored at that
 * moment inside the transaction that writes it, so capture goes on meanwhile and loses nothing; doing a
 * batch twice is doing it once.
 */
import type { Json } from "../../record/canonical.ts";
import { failed, ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { putPhoto } from "../../store/photos.ts";
import type { ImportRow, StagedRow } from "../../store/schema.ts";
import { dropStaged, listImports, readStaged, removeImport, setImport } from "../../store/staging.ts";
import { update } from "../../store/write.ts";
import { compareWithStored } from "../merge/compare.ts";
import type { BroughtIn, Watch } from "./reports.ts";
import { type Batch, recordsOf } from "./staging.ts";

type OnProgress = Watch["onProgress"];

const whole = (about: Json, key: string): number => {
  const value: unknown = typeof about === "object" && about !== null ? Reflect.get(about, key) : undefined;
  return typeof value === "number" ? value : 0;
};

const summary = ({ id, about }: ImportRow): BroughtIn => {
  const name: unknown = typeof about === "object" && about !== null ? Reflect.get(about, "name") : "";
  return {
    import: id,
    name: typeof name === "string" ? name : "",
    new: whole(about, "new"),
    changed: whole(about, "changed"),
    photos: whole(about, "photos"),
  };
};

const bringBatch = async (connection: Connection, { value }: StagedRow): Promise<Result<unknown>> => {
  const batch = value as Batch;
  if (batch.type === "photo") return putPhoto(connection, batch.photo);
  const records = recordsOf(batch);
  return update(
    connection,
    records.map(({ id }) => id),
    (stored) =>
      records
        .map((record) => compareWithStored(stored.get(record.id), record))
        .filter(({ is, tooLarge }) => is !== "same" && !tooLarge)
        .map(({ merged }) => merged),
  );
};

const rollForward = async (
  connection: Connection,
  accepted: ImportRow,
  onProgress: OnProgress,
): Promise<Result<BroughtIn>> => {
  const of = whole(accepted.about, "rows");
  for (;;) {
    const next = await readStaged(connection, accepted.id, 0, 1);
    if (!next.ok) return next;
    const [row] = next.value;
    if (row === undefined) break;
    const done = await bringBatch(connection, row);
    if (!done.ok) return done;
    const dropped = await dropStaged(connection, accepted.id, row.n + 1);
    if (!dropped.ok) return dropped;
    onProgress({ step: "bringing-in", done: row.n + 1, of });
  }
  const removed = await removeImport(connection, accepted.id);
  return removed.ok ? ok(summary(accepted)) : removed;
};

/**
 * Accepts a staged file and brings it in. Run it under the lock of files.
 *
 * @returns what was brought in; `exchange/not-staged` when no such file waits, or what the store says
 * (then the rest is brought in by `finishImports`)
 */
export const bringIn = async (
  connection: Connection,
  id: string,
  onProgress: OnProgress,
): Promise<Result<BroughtIn>> => {
  const imports = await listImports(connection);
  if (!imports.ok) return imports;
  const staged = imports.value.find((row) => row.id === id);
  // Without its summary a file was not read to the end.
  if (staged === undefined || staged.about === null) return failed("exchange/not-staged");
  const accepted: ImportRow = { ...staged, state: "accepted" };
  const set = await setImport(connection, accepted);
  return set.ok ? rollForward(connection, accepted, onProgress) : set;
};

/**
 * Finishes what was accepted when the app was closed or killed. Run it under the lock of files.
 *
 * @returns what was finished now, file by file
 */
export const finishImports = async (
  connection: Connection,
  onProgress: OnProgress,
): Promise<Result<readonly BroughtIn[]>> => {
  const imports = await listImports(connection);
  if (!imports.ok) return imports;
  const finished: BroughtIn[] = [];
  for (const row of imports.value.filter(({ state }) => state === "accepted")) {
    const done = await rollForward(connection, row, onProgress);
    if (!done.ok) return done;
    finished.push(done.value);
  }
  return ok(finished);
};
