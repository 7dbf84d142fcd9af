/** Writing: read, apply and write in one strict transaction, so that no other window comes between. */
import { type Applied, applyCommand } from "../record/command/apply.ts";
import type { Command } from "../record/command/command.ts";
import type { RecordId } from "../record/ids.ts";
import { fieldOf } from "../record/list-keys.ts";
import type { RecordState } from "../record/record.ts";
import { ok, type Result } from "../record/result.ts";
import { commandId } from "./command-id.ts";
import type { Connection } from "./connection.ts";
import { countChange } from "./field-states.ts";
import { dropUnusedPhotos } from "./photos.ts";
import { entriesRow, headerRow, recordOf } from "./rows.ts";
import { inTransaction, type Writing } from "./transaction.ts";

type Written = "records" | "entries" | "fieldStates" | "photos";
type Held = ReadonlyMap<RecordId, RecordState>;

/**
 * Applies commands to the stored records: all of them or none. Commands that were applied before change
 * nothing. Other windows are told which records changed.
 *
 * @returns per command what it did, once it is on the disk; or why the first one that cannot be applied
 * was refused (see `applyCommand`), or what the connection reports
 */
export const applyCommands = async (
  connection: Connection,
  commands: readonly Command[],
): Promise<Result<readonly Applied[]>> => {
  const ids = commands.map(({ id }) => id);
  const mayErase = commands.some(({ op }) => op === "erase");
  const done =
    (await writeFromMemory(connection, commands)) ??
    (await write(connection, ids, mayErase, (held) => applyAll(held, commands)));
  if (!done.ok) return done;
  const { value, last } = done.value;
  const record = value.at(-1)?.record;
  const field = record === undefined ? undefined : fieldOf(record);
  if (record !== undefined && field !== undefined && last !== undefined)
    connection.memory.written = { record, field, last };
  return ok(value);
};

/**
 * Changes several records at once by a pure function of what is stored, for bringing files in. Safe to
 * repeat when the function is.
 *
 * @param ids the records that the function wants to see; it may write no others
 * @param change gets those that exist and returns records to store; one that is as it was is not written
 * @returns ids of what was written, once it is on the disk
 */
export const update = async (
  connection: Connection,
  ids: readonly RecordId[],
  change: (stored: Held) => readonly RecordState[],
): Promise<Result<readonly RecordId[]>> => {
  const asked = new Set(ids);
  const done = await write(connection, ids, true, (held) => {
    const after = change(held);
    // What was not read would overwrite what another window wrote.
    if (after.some(({ id }) => !asked.has(id))) throw new Error("an update may write only what it asked for");
    return ok({ after, value: undefined, last: undefined });
  });
  return done.ok ? ok(done.value.written) : done;
};

interface Outcome<T> {
  readonly after: readonly RecordState[];
  readonly value: T;
  /** Id of what the last command made, when one made anything. */
  readonly last: string | undefined;
}

const applyAll = (held: Held, commands: readonly Command[]): Result<Outcome<readonly Applied[]>> => {
  const now = new Map(held);
  const applied: Applied[] = [];
  let last: string | undefined;
  for (const command of commands) {
    const one = applyCommand(now.get(command.id), command);
    if (!one.ok) return one;
    applied.push(one.value);
    if (one.value.already) continue;
    now.set(command.id, one.value.record);
    last = commandId(command);
  }
  return ok({ after: [...now.values()], value: applied, last });
};

const write = async <T>(
  connection: Connection,
  ids: readonly RecordId[],
  mayErase: boolean,
  change: (held: Held) => Result<Outcome<T>>,
): Promise<Result<Outcome<T> & { readonly written: readonly RecordId[] }>> => {
  const touched: Written[] = ["records", "entries", "fieldStates"];
  // Only erasing drops photos; without them a touch does not wait for a photo that is being kept.
  if (mayErase) touched.push("photos");
  const done = await connection.use((db) =>
    inTransaction(db, touched, "strict", async (tx) => {
      const held = await readHeld(tx, new Set(ids));
      if (!held.ok) return held;
      const changed = change(held.value);
      if (!changed.ok) return changed;
      const { after, last } = changed.value;
      return ok({ ...changed.value, written: await putChanged(tx, held.value, after, last) });
    }),
  );
  if (done.ok && done.value.written.length > 0) connection.announce(done.value.written);
  return done;
};

/** Somebody else wrote to the field since this window did. */
class Outdated extends Error {}

/**
 * Touch after touch goes to one line, whose entries grow. What this window wrote last is taken for what is
 * stored, and the write is begun without reading it again; it is called off, inside the same transaction,
 * when the state of the field is not the one that this window left. One way to the disk and back is saved,
 * which on a slow phone is half of the time from touch to disk.
 *
 * @returns undefined when the rows have to be read
 */
const writeFromMemory = async (
  connection: Connection,
  commands: readonly Command[],
): Promise<Result<Outcome<readonly Applied[]>> | undefined> => {
  const remembered = connection.memory.written;
  if (remembered === undefined || commands.length === 0) return undefined;
  const { record, field, last } = remembered;
  if (commands.some(({ id, op }) => id !== record.id || op === "erase")) return undefined;
  const held = new Map([[record.id, record]]);
  const reading = commands.every(({ op }) => op === "append" || op === "undo" || op === "redo");
  const touched: Written[] = reading ? ["entries", "fieldStates"] : ["records", "entries", "fieldStates"];
  try {
    const done = await connection.use((db) =>
      inTransaction(db, touched, "strict", async (tx) => {
        // Asked first, so that the browser looks it up while the command is applied.
        const state = tx.get("fieldStates", field);
        const changed = applyAll(held, commands);
        // Why a command is refused is said by what is stored, not by what is remembered.
        if (!changed.ok) {
          await state;
          throw new Outdated();
        }
        const written = await putChanged(tx, held, changed.value.after, changed.value.last);
        const found = await state;
        if (found?.last !== last || found.updates !== 0) throw new Outdated();
        return ok({ ...changed.value, written });
      }),
    );
    if (done.ok && done.value.written.length > 0) connection.announce(done.value.written);
    return done;
  } catch (error) {
    delete connection.memory.written;
    if (error instanceof Outdated) return undefined;
    throw error;
  }
};

const readHeld = async (tx: Writing<Written>, ids: ReadonlySet<RecordId>): Promise<Result<Held>> => {
  const rows = await Promise.all(
    [...ids].map((id) => Promise.all([tx.get("records", id), tx.get("entries", id)] as const)),
  );
  const held = new Map<RecordId, RecordState>();
  for (const [header, entries] of rows) {
    const record = recordOf(header, entries);
    if (!record.ok) return record;
    if (record.value !== undefined) held.set(record.value.id, record.value);
  }
  return ok(held);
};

const sameItems = (a: readonly unknown[] | undefined, b: readonly unknown[]): boolean =>
  a !== undefined && a.length === b.length && a.every((item, index) => item === b[index]);

/** Writes what differs: a touch on a line rewrites its entries and leaves its header alone. */
const putChanged = async (
  tx: Writing<Written>,
  held: Held,
  after: readonly RecordState[],
  last: string | undefined,
): Promise<readonly RecordId[]> => {
  const written: RecordId[] = [];
  const touched: RecordState[] = [];
  const erased: RecordState[] = [];
  for (const record of after) {
    const before = held.get(record.id);
    const headerStays = before?.erased === record.erased && sameItems(before.revs, record.revs);
    const entriesStay = sameItems(before?.entries ?? [], record.entries);
    if (headerStays && entriesStay) continue;
    written.push(record.id);
    touched.push(record);
    if (before !== undefined) touched.push(before);
    if (record.erased && before !== undefined) erased.push(before);
    if (!headerStays) tx.put("records", headerRow(record));
    if (entriesStay) continue;
    if (record.entries.length === 0) tx.remove("entries", record.id);
    else tx.put("entries", entriesRow(record, before?.entries));
  }
  if (erased.length > 0) await dropUnusedPhotos(tx, erased);
  await countChange(tx, touched, last);
  return written;
};
