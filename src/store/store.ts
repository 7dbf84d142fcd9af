/** The store as a page uses it: touches in order, and none lost when the database goes away. */
import { ok, type Result } from "../record/result.ts";
import { dropBallast } from "./ballast.ts";
import { type Connection, connect } from "./connection.ts";
import type { Tell } from "./notice.ts";
import { type Answer, orderedQueue, type Queue, type Touch } from "./queue.ts";
import { replay } from "./replay.ts";
import { DATABASE_NAME } from "./schema.ts";
import { openStash, type Stash, smallStores } from "./stash.ts";
import { applyCommands } from "./write.ts";

/** The database as screens use it. Reading functions take it as their connection. */
export interface Store extends Connection {
  /**
   * Applies commands in the order of touches: all or none, and only once they are on the disk is there an
   * answer.
   *
   * @returns per command what it did; `store/queue-full`, `store/quota`, `store/gone`,
   * `store/newer-window`, or why a command was refused (see `applyCommand`)
   */
  readonly run: (touch: Touch) => Promise<Answer>;
}

/** What the store needs from the page. */
export interface StoreSettings {
  readonly tell: Tell;
  /** Loads the page again; asked for when only that can bring the database back. */
  readonly reload: () => void;
  readonly name?: string;
}

/** Pauses before the same touch is tried again after the ballast was given up, in milliseconds. */
const RETRY_AFTER_MS = [0, 250, 1000];

/**
 * Opens the store, and first of all writes what an earlier page could not.
 *
 * @returns the store; or why not: `store/from-the-future` (has, knows), `store/upgrade-failed` (from, to,
 * what), `store/quota`, `store/gone` (then a reload was asked for or the values not saved were told)
 * @example
 * const store = await openStore({ tell: show, reload: () => location.reload() });
 */
export const openStore = async (settings: StoreSettings): Promise<Result<Store>> => {
  const { tell, name = DATABASE_NAME } = settings;
  const stash = openStash(name, smallStores());
  let queue: Queue | undefined;
  let given: Answer | undefined;
  const onGone = (): void => {
    if (given !== undefined) return;
    given = { ok: false, problem: { code: "store/gone", facts: {} } };
    rescue(settings, stash, queue?.pending() ?? []);
  };
  const connected = await connect({ tell, name, onGone });
  if (!connected.ok) {
    if (connected.problem.code === "store/gone") onGone();
    return connected;
  }
  const connection = connected.value;
  const apply = (touch: Touch): Promise<Answer> => applyWithRoom(connection, tell, touch);
  const replayed = await replay(stash, apply, tell);
  if (!replayed.ok) {
    connection.close();
    return replayed;
  }
  const touches = orderedQueue(apply, tell);
  queue = touches;
  restWithPage(connection);
  return ok({
    ...connection,
    // Once the database is given up, a touch written after all would overtake those that wait.
    run: (touch) => (given === undefined ? touches.run(touch) : Promise.resolve(given)),
  });
};

/** Keeps what is not written and loads the page again; or stops, when that has just been tried. */
const rescue = ({ tell, reload }: StoreSettings, stash: Stash, pending: readonly Touch[]): void => {
  if (stash.keep(pending) && stash.mayReload(Date.now())) {
    reload();
    return;
  }
  const kept = stash.waiting().flatMap(({ touches }) => touches);
  const texts = new Set(kept.map((touch) => JSON.stringify(touch)));
  const unkept = pending.filter((touch) => !texts.has(JSON.stringify(touch)));
  tell({ type: "gone", commands: [...kept, ...unkept].flat() });
};

/** A full device refuses even a small record: gives the ballast up and tries the same touch again. */
const applyWithRoom = async (connection: Connection, tell: Tell, touch: Touch): Promise<Answer> => {
  let answer = await applyCommands(connection, touch);
  if (!isFull(answer)) return answer;
  const pauses = (await dropBallast(connection)) ? RETRY_AFTER_MS : [0];
  for (const pauseMs of pauses) {
    // Some browsers count the room as free only a moment later.
    await new Promise((resolve) => setTimeout(resolve, pauseMs));
    answer = await applyCommands(connection, touch);
    if (!isFull(answer)) break;
  }
  tell({ type: "storage-full" });
  return answer;
};

const isFull = (answer: Answer): boolean => !answer.ok && answer.problem.code === "store/quota";

/** A page that rests with an open database is thrown out of the browser's memory of pages. */
const restWithPage = (connection: Connection): void => {
  addEventListener("pagehide", ({ persisted }) => {
    if (persisted) connection.suspend();
  });
  addEventListener("pageshow", ({ persisted }) => {
    if (persisted) connection.resume();
  });
};
