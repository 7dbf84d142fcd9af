/** Small values beside the records: the device's label, settings, the screen to come back to, drafts. */
import type { Json } from "../record/canonical.ts";
import { ok, type Result } from "../record/result.ts";
import type { Connection } from "./connection.ts";
import { inTransaction } from "./transaction.ts";

/**
 * A small value by name.
 *
 * @example
 * const WHERE: MetaKey<string> = {
 *   name: "where",
 *   durability: "relaxed",
 *   read: (stored) => (typeof stored === "string" ? stored : undefined),
 * };
 */
export interface MetaKey<T extends Json> {
  readonly name: string;
  /** `relaxed` for what can be lost with the battery: drafts, settings, where somebody was. */
  readonly durability: "strict" | "relaxed";
  /** Recognises the stored value; undefined for a form of an older app that means nothing any more. */
  readonly read: (stored: Json) => T | undefined;
}

const known = <T extends Json>(key: MetaKey<T>, stored: Json | undefined): T | undefined =>
  stored === undefined ? undefined : key.read(stored);

/** The value, or undefined when there is none that is understood. */
export const getMeta = <T extends Json>(
  connection: Connection,
  key: MetaKey<T>,
): Promise<Result<T | undefined>> =>
  connection.use(async (db) => ok(known(key, await db.get("meta", key.name))));

/** Puts a value in its place; undefined takes it away. */
export const setMeta = <T extends Json>(
  connection: Connection,
  key: MetaKey<T>,
  value: T | undefined,
): Promise<Result<undefined>> =>
  connection.use((db) =>
    inTransaction(db, ["meta"], key.durability, (tx) => {
      if (value === undefined) tx.remove("meta", key.name);
      else tx.put("meta", value, key.name);
      return ok(undefined);
    }),
  );

/**
 * The value that stands, or this one when there is none yet. Two windows that start at the same moment
 * get the same answer.
 *
 * @returns what stands now
 */
export const settleMeta = <T extends Json>(
  connection: Connection,
  key: MetaKey<T>,
  first: T,
): Promise<Result<T>> =>
  connection.use((db) =>
    inTransaction(db, ["meta"], key.durability, async (tx) => {
      const stands = known(key, await tx.get("meta", key.name));
      if (stands === undefined) tx.put("meta", first, key.name);
      return ok(stands ?? first);
    }),
  );
