/** One ring while it is read: what is on record, what is asked, and what the keys do. */
import { batch, computed, type ReadonlySignal, signal } from "@preact/signals";
import type { Applied } from "../../../record/command/apply.ts";
import type { Entry } from "../../../record/entry.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { OpenLook } from "../../../record/ring/events.ts";
import { readRing } from "../../../record/ring/reading.ts";
import type { House } from "../../parts/house.ts";
import { type DayRing, readRingOf } from "./day.ts";
import { step } from "./hand.ts";
import { lastRise } from "./rose.ts";
import { stageOf } from "./status.ts";

/** What stands in the place of the keys. */
export type Panel =
  | "keys"
  | "start"
  | "level"
  | "pour"
  | "gone"
  | "refill-water"
  | "refill-after"
  | "happened"
  | "lost"
  | "stop"
  | "rose"
  | "doubts"
  | "readings"
  | "correct";

/** What stands on the screen: a panel, or what a ring asks by itself while its keys would stand there. */
export type Shown =
  | { readonly is: Panel }
  | { readonly is: "number"; readonly look: OpenLook }
  | { readonly is: "first-water" };

/** What a ring with its keys asks by itself: the number of a look, or how much water went in first. */
const askedBy = ({ header, reading }: DayRing, later: boolean | null): Shown => {
  const [look] = reading.openLooks;
  const stage = stageOf({ reading });
  // A ring that is over shows its result first; its missing numbers wait for a touch.
  if (look !== undefined && !(later ?? stage === "stopped")) return { is: "number", look };
  const waitsForWater =
    stage === "running" && header.way !== "ruler" && !reading.events.some(({ type }) => type === "pour");
  return waitsForWater && later !== true ? { is: "first-water" } : { is: "keys" };
};

/** What happened last, for the screen and for a screen reader. */
export interface LastAnswer {
  readonly how: "took" | "undone" | "redone";
  readonly entry: Entry;
  readonly count: number;
}

export interface RingModel {
  readonly id: RecordId<"observation">;
  /** undefined while it is looked up, null when it is not on this device. */
  readonly ring: ReadonlySignal<DayRing | null | undefined>;
  readonly panel: ReadonlySignal<Panel>;
  readonly shown: ReadonlySignal<Shown>;
  /** Id of the entry that is corrected. */
  readonly about: ReadonlySignal<string>;
  readonly last: ReadonlySignal<LastAnswer | null>;
  /** The looks that were made behind a refill: of a double ring there may be two. */
  readonly refillLooks: ReadonlySignal<ReadonlySet<string>>;
  readonly open: (panel: Panel, about?: string) => void;
  /** Closes the panel that is open. */
  readonly close: () => void;
  readonly putOff: (later: boolean) => void;
  /** Takes what was written, shows it, and opens what comes next. True when it was written. */
  readonly took: (
    written: Promise<readonly Applied[] | null>,
    next?: Panel,
    how?: LastAnswer["how"],
  ) => Promise<boolean>;
  /** The look before a refill: water is asked for behind its number. */
  readonly refillFrom: ReadonlySignal<string>;
  /** The newest look is the one before a refill. */
  readonly startRefill: () => void;
  readonly refilled: (look: string) => void;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  readonly isWriting: () => boolean;
  readonly refresh: () => Promise<void>;
}

/** Makes the model of one ring. */
export const ringModel = (house: House, id: RecordId<"observation">): RingModel => {
  const ring = signal<DayRing | null | undefined>(undefined);
  const panel = signal<Panel>("keys");
  const about = signal("");
  const last = signal<LastAnswer | null>(null);
  /** The numbers of open looks wait: the keys are shown meanwhile. Null until somebody says so. */
  const later = signal<boolean | null>(null);
  const refillLooks = signal<ReadonlySet<string>>(new Set());
  const refillFrom = signal("");
  const shown = computed((): Shown => {
    const now = ring.value;
    return panel.value !== "keys" || now === null || now === undefined
      ? { is: panel.value }
      : askedBy(now, later.value);
  });
  let writing = 0;

  // Entries are only ever added, so the longer list is the later one even when answers overtake each other.
  const see = (entries: readonly Entry[]): void => {
    const now = ring.value;
    if (now === null || now === undefined || entries.length < now.entries.length) return;
    ring.value = { ...now, entries, reading: readRing(entries) };
  };

  const refresh = async (): Promise<void> => {
    const found = await readRingOf(house.records, id);
    const now = ring.value;
    const longer =
      now !== null && now !== undefined && found !== null && now.entries.length > found.entries.length;
    ring.value = longer ? { ...found, entries: now.entries, reading: now.reading } : found;
  };

  /** The number that was written just now says that the water rose. */
  const hasJustRisen = (done: readonly Applied[]): boolean => {
    const now = ring.value;
    const rise = now === null || now === undefined ? null : lastRise(now);
    return done.some(({ added }) => added.some(({ id: made }) => made === rise?.now.entry.id));
  };

  const took: RingModel["took"] = async (written, next, how = "took") => {
    writing += 1;
    const done = await written.finally(() => {
      writing -= 1;
    });
    if (done === null) return false;
    const latest = done.at(-1);
    if (latest === undefined) return false;
    batch(() => {
      see(latest.record.entries);
      const entry = latest.touched ?? done[0]?.added[0];
      if (entry !== undefined) last.value = { how, entry, count: (last.value?.count ?? 0) + 1 };
      if (how === "took" && (entry?.type === "look" || entry?.type === "start")) later.value = false;
      // Who corrects is not asked again about what was just corrected.
      const asks = how === "took" && panel.value !== "rose" && panel.value !== "correct";
      if (asks && hasJustRisen(done)) panel.value = "rose";
      else if (next !== undefined) panel.value = next;
    });
    return true;
  };

  const stepped = async (op: "undo" | "redo"): Promise<void> => {
    const before = panel.value;
    // A look whose number was taken back asks again only when it is touched: else no second undo could follow.
    later.value = true;
    await took(step(house, id, op), undefined, op === "undo" ? "undone" : "redone");
    panel.value = before;
  };

  return {
    id,
    ring,
    panel,
    shown,
    about,
    last,
    refillLooks,
    refillFrom,
    startRefill: () => {
      refillFrom.value = ring.value?.reading.openLooks.at(-1)?.look.id ?? "";
    },
    open: (next, of = "") => {
      batch(() => {
        panel.value = next;
        about.value = of;
      });
    },
    close: () => {
      panel.value = panel.value === "correct" ? "readings" : "keys";
    },
    putOff: (now) => {
      later.value = now;
    },
    took,
    refilled: (look) => {
      refillLooks.value = new Set(refillLooks.value).add(look);
    },
    undo: () => stepped("undo"),
    redo: () => stepped("redo"),
    isWriting: () => writing > 0,
    refresh,
  };
};
