import type { Database, Upgrade } from "../schema.ts";

/** One step of the database's structure. It only ever adds: an older build may have to read it again. */
export interface Migration {
  /** The version that the database has afterwards. */
  readonly version: number;
  /** Awaits nothing but requests of this transaction. When it throws, the whole upgrade is undone. */
  readonly up: (db: Database, upgrade: Upgrade) => Promise<void>;
}
