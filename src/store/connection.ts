/** A connection to the database that comes back by itself once. Works in pages and in workers. */
import { type Failed, failed, ok, type Result } from "../record/result.ts";
import { type Changes, openChanges } from "./changes.ts";
import { isGone, isQuota } from "./errors.ts";
import { MIGRATIONS } from "./migrations/all.ts";
import type { Migration } from "./migrations/migration.ts";
import type { Tell } from "./notice.ts";
import { type Lifecycle, openDatabase } from "./open.ts";
import type { Remembered } from "./remembered.ts";
import { DATABASE_NAME, type Database } from "./schema.ts";

/**
 * Pause before the database is opened once more, in milliseconds: Chromium refuses to open it in the very
 * moment in which it closed a connection by itself (seen when the browser's data was cleared).
 */
const REOPEN_AFTER_MS = 100;

/** Does something with the open database. It may run a second time, so it must be safe to repeat. */
export type Job<T> = (db: Database) => Promise<Result<T>>;

/** The database as everything in this room uses it. */
export interface Connection extends Pick<Changes, "announce" | "subscribe"> {
  readonly name: string;
  /**
   * Runs a job. When the connection was lost, the database is opened once more and the job runs again.
   *
   * @returns what the job returned; or `store/gone`, `store/quota`, `store/newer-window`,
   * `store/closed`, or what opening reports
   */
  readonly use: <T>(job: Job<T>) => Promise<Result<T>>;
  /** `isFull`: no room was left at the last attempt, and photos are refused until there is. */
  readonly room: { isFull: boolean };
  /** What this window wrote last, so that the next touch on the same line need not read it again. */
  readonly memory: { written?: Remembered };
  /** Lets go of the database while the page rests in the browser's memory of pages. */
  readonly suspend: () => void;
  readonly resume: () => void;
  readonly close: () => void;
}

/** Where the connection reports to, and what it opens. */
export interface ConnectionSettings {
  readonly tell: Tell;
  /** The database cannot be reached, and opening it once more did not help. */
  readonly onGone?: () => void;
  readonly name?: string;
  readonly migrations?: readonly Migration[];
}

/**
 * Connects to the database.
 *
 * @returns the connection; or why it cannot be opened (see `openDatabase`)
 * @example
 * const connection = await connect({ tell: (notice) => show(notice) });
 */
export const connect = async (settings: ConnectionSettings): Promise<Result<Connection>> => {
  const { tell, onGone, name = DATABASE_NAME, migrations = MIGRATIONS } = settings;
  const changes = openChanges(name);
  const room = { isFull: false };
  const memory: Connection["memory"] = {};
  // Another window wrote to the line that is remembered: a write begun from memory would be called off.
  changes.subscribe((changed) => {
    const id = memory.written?.record.id;
    if (id !== undefined && (changed === "everything" || changed.includes(id))) delete memory.written;
  });
  let current: Promise<Result<Database>> | undefined;
  let closedFor: Failed | undefined;
  let resting: { readonly until: Promise<void>; readonly end: () => void } | undefined;

  const reach = (afterMs: number): Promise<Result<Database>> => {
    const forget = (): void => {
      if (current === mine) current = undefined;
    };
    const lifecycle: Lifecycle = {
      tell,
      onVersionChange: (db, deleted) => {
        db.close();
        forget();
        if (deleted) return;
        closedFor = failed("store/newer-window");
        tell({ type: "newer-window" });
      },
      onLost: () => {
        if (current === mine) void reach(REOPEN_AFTER_MS);
        // Somebody may have cleared the browser's data: what is shown may be there no longer.
        changes.announceHere("everything");
        // Finds out at once whether the database can be reached, so that the next touch need not.
        void use(() => Promise.resolve(ok(undefined)));
      },
    };
    const open = async (): Promise<Result<Database>> => {
      if (afterMs > 0) await new Promise((resolve) => setTimeout(resolve, afterMs));
      try {
        const opened = await openDatabase(name, migrations, lifecycle);
        if (!opened.ok) forget();
        else if (current !== mine) opened.value.close();
        return opened;
      } catch (error) {
        forget();
        throw error;
      }
    };
    const mine = open();
    current = mine;
    return mine;
  };
  const letGo = (): void => {
    const before = current;
    current = undefined;
    void before?.then((opened) => opened.ok && opened.value.close());
  };
  const afterError = (error: unknown, used: Promise<Result<Database>>): Failed | "lost" => {
    if (isQuota(error)) {
      room.isFull = true;
      return failed("store/quota");
    }
    if (!isGone(error)) throw error;
    if (current === used) {
      letGo();
      if (resting === undefined && closedFor === undefined) void reach(REOPEN_AFTER_MS);
    }
    return "lost";
  };
  const attempt = async <T>(job: Job<T>): Promise<Result<T> | "lost"> => {
    if (resting !== undefined) await resting.until;
    if (closedFor !== undefined) return closedFor;
    const reached = current ?? reach(0);
    const opened = await reached;
    if (!opened.ok) return opened;
    try {
      return await job(opened.value);
    } catch (error) {
      return afterError(error, reached);
    }
  };
  const use = async <T>(job: Job<T>): Promise<Result<T>> => {
    let answer = await attempt(job);
    if (answer === "lost") answer = await attempt(job);
    if (answer === "lost") answer = closedFor ?? failed("store/gone");
    if (!answer.ok && answer.problem.code === "store/gone") onGone?.();
    return answer;
  };

  const opened = await reach(0);
  if (!opened.ok) {
    changes.close();
    return opened;
  }
  return ok({
    name,
    use,
    room,
    memory,
    announce: changes.announce,
    subscribe: changes.subscribe,
    suspend: () => {
      if (resting !== undefined) return;
      let end = (): void => undefined;
      const until = new Promise<void>((resolve) => {
        end = resolve;
      });
      resting = { until, end };
      letGo();
      changes.close();
    },
    resume: () => {
      if (resting === undefined) return;
      changes.reopen();
      resting.end();
      resting = undefined;
      changes.announceHere("everything");
    },
    close: () => {
      closedFor = failed("store/closed");
      letGo();
      changes.close();
    },
  });
};
