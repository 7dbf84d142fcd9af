/** Opens the database and brings its structure up to date. */
import { openDB } from "idb";
import { failed, ok, type Result } from "../record/result.ts";
import { isFromTheFuture, isGone, isQuota } from "./errors.ts";
import type { Migration } from "./migrations/migration.ts";
import type { Tell } from "./notice.ts";
import type { Database, Stores, Upgrade } from "./schema.ts";

/** How long another window may hold up the upgrade before it is said, in milliseconds. */
const BLOCKED_AFTER_MS = 1000;

/** What happens to an open database later. */
export interface Lifecycle {
  readonly tell: Tell;
  /** Another window wants to upgrade or delete: this connection must close now. */
  readonly onVersionChange: (db: Database, deleted: boolean) => void;
  /** The browser closed the connection by itself. */
  readonly onLost: (db: Database) => void;
}

/**
 * Opens the database, upgrading it step by step where it is older.
 *
 * @returns the open database; or why not, and then nothing was touched: `store/from-the-future` (has,
 * knows), `store/upgrade-failed` (from, to, what), `store/quota`, `store/gone`
 */
export const openDatabase = async (
  name: string,
  migrations: readonly Migration[],
  lifecycle: Lifecycle,
): Promise<Result<Database>> => {
  const knows = migrations.length;
  let upgrading: { from: number; error: unknown } | undefined;
  let blockedTimer: ReturnType<typeof setTimeout> | undefined;
  const upgrade = async (db: Database, from: number, tx: Upgrade): Promise<void> => {
    clearTimeout(blockedTimer);
    upgrading = { from, error: undefined };
    tx.done.catch(() => undefined); // told by the request to open
    try {
      for (const migration of migrations.slice(from)) await migration.up(db, tx);
    } catch (error) {
      // The library lets a rejected upgrade commit half done; and an upgrade may have aborted already.
      upgrading = { from, error };
      abortQuietly(tx);
    }
  };
  try {
    const db: Database = await openDB<Stores>(name, knows, {
      upgrade: (opened, from, _to, tx) => void upgrade(opened, from, tx),
      blocked: () => {
        blockedTimer = setTimeout(() => lifecycle.tell({ type: "blocked" }), BLOCKED_AFTER_MS);
      },
    });
    db.addEventListener("versionchange", (event) => lifecycle.onVersionChange(db, event.newVersion === null));
    db.addEventListener("close", () => lifecycle.onLost(db));
    return ok(db);
  } catch (error) {
    if (isFromTheFuture(error)) return failed("store/from-the-future", { knows, ...(await versionOf(name)) });
    if (isQuota(error)) return failed("store/quota");
    if (upgrading !== undefined && upgrading.error !== undefined)
      return failed("store/upgrade-failed", {
        from: upgrading.from,
        to: knows,
        what: String(upgrading.error),
      });
    if (isGone(error)) return failed("store/gone");
    throw error;
  } finally {
    clearTimeout(blockedTimer);
  }
};

const abortQuietly = (tx: Upgrade): void => {
  try {
    tx.abort();
  } catch {
    // It had ended already.
  }
};

/** The version of a database that this app is too old for, for the sentence on the screen. */
const versionOf = async (name: string): Promise<{ has: number } | Record<string, never>> => {
  try {
    // Without a version the database is opened as it is.
    const db = await openDB(name);
    const has = db.version;
    db.close();
    return { has };
  } catch {
    return {};
  }
};
