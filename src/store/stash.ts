/**
 * Touches that could not be written because the database went away. They wait in the page's two small
 * stores for the reload. Pages only: workers have neither.
 */
import type { Command } from "../record/command/command.ts";
import { isRecordId } from "../record/ids.ts";
import { commandId } from "./command-id.ts";
import type { Touch } from "./queue.ts";

/** No second reload within this time, in milliseconds: a database that stays away must not loop. */
const NO_RELOAD_WITHIN_MS = 60_000;

/** The two stores; both, because either may be refused or emptied. */
export type SmallStores = readonly Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">[];

/** Touches that one page kept at one moment. */
export interface Kept {
  readonly key: string;
  readonly touches: readonly Touch[];
}

/** Where touches wait. */
export interface Stash {
  /** Keeps touches; false when neither store took them, and then a reload would lose them. */
  readonly keep: (touches: readonly Touch[]) => boolean;
  /** Touches that wait, in order, also those of other windows, each under the key it was kept by. */
  readonly waiting: () => readonly Kept[];
  /** Takes away what was kept under a key. */
  readonly drop: (key: string) => void;
  /** Notes a reload; false when there was one within the last minute, or when it cannot be noted. */
  readonly mayReload: (nowMs: number) => boolean;
}

/** The page's small stores; none where the browser refuses them. */
export const smallStores = (): SmallStores =>
  [() => sessionStorage, () => localStorage].flatMap((store) => {
    try {
      return [store()];
    } catch {
      return [];
    }
  });

/** Opens the stash of one database. */
export const openStash = (name: string, stores: SmallStores): Stash => {
  const prefix = `${name}-not-saved:`;
  const reloadKey = `${name}-reloaded-at-ms`;
  const keysIn = (store: SmallStores[number]): string[] =>
    Array.from({ length: store.length }, (_, index) => store.key(index) ?? "")
      .filter((key) => key.startsWith(prefix))
      .sort();
  return {
    keep: (touches) => {
      if (touches.length === 0) return true;
      // Named after its first command, so that two windows do not overwrite each other.
      const first = touches[0]?.[0];
      const key = prefix + (first === undefined ? "" : commandId(first));
      const text = JSON.stringify(touches);
      return stores.filter((store) => tried(() => store.setItem(key, text))).length > 0;
    },
    waiting: () => {
      const texts = new Map<string, string>();
      for (const store of stores) for (const key of keysIn(store)) texts.set(key, store.getItem(key) ?? "");
      return [...texts].map(([key, text]) => ({ key, touches: touchesIn(text) }));
    },
    drop: (key) => {
      for (const store of stores) tried(() => store.removeItem(key));
    },
    mayReload: (nowMs) => {
      // The first store that can be written is this window's own where there is one.
      for (const store of stores) {
        const before = Number(store.getItem(reloadKey) ?? Number.NaN);
        // A clock that was set back gives a negative time; it counts as recent only within the minute.
        if (Math.abs(nowMs - before) < NO_RELOAD_WITHIN_MS) return false;
        if (tried(() => store.setItem(reloadKey, String(nowMs)))) return true;
      }
      return false;
    },
  };
};

const tried = (write: () => void): boolean => {
  try {
    write();
    return true;
  } catch {
    return false; // full or refused
  }
};

const touchesIn = (text: string): readonly Touch[] => {
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray(value) ? value.filter(isTouch) : [];
  } catch {
    return []; // not ours, or cut off
  }
};

const isTouch = (value: unknown): value is Touch => Array.isArray(value) && value.every(isCommand);

const isCommand = (value: unknown): value is Command =>
  typeof value === "object" &&
  value !== null &&
  "op" in value &&
  "id" in value &&
  typeof value.id === "string" &&
  isRecordId(value.id);
