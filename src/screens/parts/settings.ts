/** What a person chose for this device. Stored values never change with it. */

import type { KeyMeaning } from "../../device/keys.ts";
import type { Json } from "../../record/canonical.ts";
import type { Cover } from "../../record/entry.ts";
import type { RecordId } from "../../record/ids.ts";
import { HABITS, type UnitHabits } from "../../record/units.ts";
import type { MetaKey } from "../../store/meta.ts";
import type { CautionsRead } from "./cautions-due.ts";
import type { Trade } from "./trade.ts";

export type Theme = "auto" | "daylight" | "dusk";

/** What a taught key of a keyboard or clicker does on a line. */
export type LineAnswer = Cover | "undo";

export interface Settings {
  /** The first questions were answered. */
  readonly welcomed: boolean;
  readonly language: "en";
  readonly trade: Trade;
  readonly habits: UnitHabits;
  readonly theme: Theme;
  readonly person: RecordId<"person"> | null;
  readonly vibrate: boolean;
  readonly sound: boolean;
  /** Sound when the reading of a ring is due. */
  readonly alarm: boolean;
  /** It was said that a locked phone cannot ring. */
  readonly toldLocked: boolean;
  /** Cautions of rings and holes that were read on this device. */
  readonly cautionsRead: CautionsRead;
  /** Keys of a keyboard or clicker, by what they answer. */
  readonly clicker: readonly KeyMeaning<LineAnswer>[];
  /** Count stones as ground cover. */
  readonly stonesCount: boolean;
  /** Give or take this many points of ground cover. */
  readonly marginPoints: number;
  /** Ground cover in percent that is enough for the purpose; null for none. */
  readonly targetPercent: number | null;
  /** When a copy last left this device, in wall milliseconds. */
  readonly copiedAtMs: number | null;
  /** What everything in that copy added up to, so that a clock set wrong cannot hide what is new. */
  readonly copiedSum: number | null;
}

/** Keys that a keyboard answers with from the first build: the first letters, and Backspace to undo. */
export const FIRST_CLICKER: Settings["clicker"] = [
  { answer: "residue", key: "r", code: "KeyR" },
  { answer: "bare", key: "b", code: "KeyB" },
  { answer: "green", key: "g", code: "KeyG" },
  { answer: "stone", key: "s", code: "KeyS" },
  { answer: "own", key: "o", code: "KeyO" },
  { answer: "undo", key: "Backspace", code: "Backspace" },
];

export const FIRST_SETTINGS: Settings = {
  welcomed: false,
  language: "en",
  trade: "uk-ie",
  habits: HABITS.metric,
  theme: "auto",
  person: null,
  vibrate: true,
  sound: false,
  alarm: true,
  toldLocked: false,
  cautionsRead: {},
  clicker: FIRST_CLICKER,
  stonesCount: false,
  marginPoints: 5,
  targetPercent: 75,
  copiedAtMs: null,
  copiedSum: null,
};

type StoredSettings = Partial<Settings> & { readonly [key: string]: Json };

/** What the person chose; a value that an older app did not have is taken from the first settings. */
export const SETTINGS: MetaKey<StoredSettings> = {
  name: "settings",
  durability: "relaxed",
  read: (stored) =>
    typeof stored === "object" && stored !== null && !Array.isArray(stored)
      ? (stored as StoredSettings)
      : undefined,
};
