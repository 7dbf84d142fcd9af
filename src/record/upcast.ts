/**
 * Old bodies become new ones when they are read, one record at a time and always in the same way. The
 * same steps serve database rows and files. An upcast is not a revision: nothing is rewritten for it.
 */

import type { Json } from "./canonical.ts";
import type { Kind } from "./ids.ts";
import { KIND } from "./kinds/all.ts";
import { failed, ok, type Result } from "./result.ts";
import { observationWithMeaning, spotWithMeaning } from "./upcast-positions.ts";

/** Lifts a body of one version to the next. A released step is never changed. */
export type Upcaster = (body: Json) => Json;

/** Per kind the steps from version 1 on: the first lifts 1 to 2. A kind without an entry is at version 1. */
export const UPCASTERS: { readonly [K in Kind]?: readonly Upcaster[] } = {
  // Version 2 has rings, hole templates, bottles and rulers beside ropes; a rope stays what it was.
  kit: [(body) => body],
  // Version 2 has rings, holes and notes beside lines; a line stays what it was. Version 3 says of each position
  // what its radius stands for.
  observation: [(body) => body, observationWithMeaning],
  // Version 2 may name a visible edge. Version 3 says of each position what its radius stands for.
  spot: [(body) => body, spotWithMeaning],
};

const COMPLETED: { readonly [K in Kind]?: Upcaster } = {
  observation: observationWithMeaning,
  spot: spotWithMeaning,
};

/**
 * What a command writes, with what the newest version wants beside it. A command carries no version, and it may
 * have waited in the stash or been put together in a form while the app was updated.
 */
export const completed = (kind: Kind, body: Json): Json => COMPLETED[kind]?.(body) ?? body;

/** Steps for entries, from version 1 on. Version 2 has rings and holes; what was read at a line stays. */
export const ENTRY_UPCASTERS: readonly Upcaster[] = [
  (entry) => ({ ...(entry as { readonly [key: string]: Json }), v: 2 }),
];

/**
 * Lifts an entry to the current version; not yet checked against its schema.
 *
 * @param entry what a file or an old row held, of any form
 */
export const upcastEntry = (entry: Json): Json => {
  const v = typeof entry === "object" && entry !== null && "v" in entry ? entry["v"] : undefined;
  // Anything but a version that was is left for the schema to refuse.
  if (typeof v !== "number" || !Number.isInteger(v) || v < 1) return entry;
  return ENTRY_UPCASTERS.slice(v - 1).reduce<Json>((lifted, step) => step(lifted), entry);
};

/**
 * Lifts a body to the current version of its kind.
 *
 * @returns the body, not yet checked against its schema; `record/from-the-future` with the version it
 * needs when this app is too old for it; `record/not-valid` when a step could not read the body
 */
export const upcast = (kind: Kind, v: number, body: Json): Result<Json> => {
  const current = KIND[kind].version;
  if (v > current) return failed("record/from-the-future", { kind, needs: v, knows: current });
  const steps = (UPCASTERS[kind] ?? []).slice(v - 1);
  try {
    return ok(steps.reduce((lifted, step) => step(lifted), body));
  } catch {
    // Bodies from files are not checked before they are lifted: one bad line must not stop a whole file.
    return failed("record/not-valid", { where: "body", what: `not a ${kind} of version ${v}` });
  }
};
