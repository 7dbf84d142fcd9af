import type { Migration } from "./migration.ts";
import { version1 } from "./version-1.ts";

/** Every step from an empty database on, without gaps; the last one is the version that this app knows. */
export const MIGRATIONS: readonly Migration[] = [version1];
