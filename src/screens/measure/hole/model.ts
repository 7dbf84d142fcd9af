/** A spade hole while it is worked on: what is on record, and the commands behind the keys. */
import { batch, computed, type ReadonlySignal, signal } from "@preact/signals";
import { isWetGlass, type KeyTouch } from "../../../device/glass.ts";
import type { Applied } from "../../../record/command/apply.ts";
import type { Append, Command, Draft } from "../../../record/command/command.ts";
import type { Entry } from "../../../record/entry.ts";
import { LAYERS, type Layer, type WormGroup } from "../../../record/hole/entries.ts";
import { type HoleReading, readHole, type Wetness } from "../../../record/hole/reading.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { ReadNumber } from "../../../record/number.ts";
import type { House } from "../../parts/house.ts";
import { chosenDraft, countDraft, temperatureDraft, wetnessDraft } from "./drafts.ts";
import {
  type ConditionsBefore,
  type Counted,
  type Doubtful,
  layerOf,
  NO_PANEL,
  type Panel,
  type PanelName,
  readStoredHole,
  type Stand,
  type StoredHole,
  type Task,
  taskOf,
} from "./stand.ts";

/** What happened last, for the flash and for a screen reader. */
export interface LastEntry {
  readonly how: "took" | "undone" | "redone";
  readonly entry: Entry;
  /** Counts up, so that the same answer twice flashes twice. */
  readonly count: number;
}

export interface HoleModel {
  /** undefined while it is looked up, null when it is not on this device. */
  readonly stored: ReadonlySignal<StoredHole | null | undefined>;
  readonly entries: ReadonlySignal<readonly Entry[]>;
  readonly reading: ReadonlySignal<HoleReading>;
  readonly panel: ReadonlySignal<Panel>;
  readonly layer: ReadonlySignal<Layer>;
  readonly task: ReadonlySignal<Task>;
  readonly last: ReadonlySignal<LastEntry | null>;
  readonly open: (name: PanelName, about?: string) => void;
  /** Closes the panel that is open. */
  readonly leave: () => void;
  /** Comes back to where somebody stood. */
  readonly standAt: (stand: Stand) => void;
  /** Goes on with another layer; whoever sorts here goes along. */
  readonly lookAt: (layer: Layer) => Promise<void>;
  readonly turnTo: (task: Task) => void;
  /** One more worm into the pot. `touchedAtMs` is the event's time stamp, for the wet-glass rule. */
  readonly worm: (touchedAtMs: number) => Promise<void>;
  /** One worm out of the pot. */
  readonly place: (group: WormGroup, touchedAtMs: number) => Promise<void>;
  /** A number in the place of what was counted there. */
  readonly countAtOnce: (counted: Counted, read: ReadNumber) => Promise<void>;
  /** So many people sort this layer from now on; nobody is a pause. */
  readonly sort: (people: number) => Promise<void>;
  /** Mustard water is in the hole. How much, and on second thought how much of an earlier pouring. */
  readonly pour: () => Promise<void>;
  readonly pouredLitres: (pouring: string, litres: number | null) => Promise<void>;
  readonly temperature: (read: ReadNumber, unit: "C" | "F") => Promise<void>;
  readonly wetness: (is: Wetness) => Promise<void>;
  /** Temperature and wetness as they were at another hole. */
  readonly conditionsAs: (before: ConditionsBefore) => Promise<void>;
  /** Two phones gave two answers: this one counts from now on, the others stay on record. */
  readonly choose: (answer: Doubtful) => Promise<void>;
  readonly close: () => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  /** A touch of this window is on its way to the disk; its answer tells what is stored, others' touches too. */
  readonly isWriting: () => boolean;
  /** Reads the hole again; called when another window changed it. */
  readonly refresh: () => Promise<void>;
}

/** Makes the model of one hole. */
export const holeModel = (house: House, id: RecordId<"observation">): HoleModel => {
  const stored = signal<StoredHole | null | undefined>(undefined);
  const entries = signal<readonly Entry[]>([]);
  const panel = signal<Panel>(NO_PANEL);
  const layer = signal<Layer>("mulch");
  const task = signal<Task>("find");
  const last = signal<LastEntry | null>(null);
  const reading = computed(() => readHole(entries.value));
  let stands = false;
  let lastTouch: KeyTouch | null = null;
  let writing = 0;

  // Entries are only ever added, so the longer list is the later one even when answers overtake each other.
  const see = (now: readonly Entry[]) => {
    if (now.length >= entries.value.length) entries.value = now;
  };

  const refresh = async (): Promise<void> => {
    const [hole, now] = await Promise.all([readStoredHole(house, id), house.records.entries([id])]);
    batch(() => {
      see(hole === null ? [] : (now.get(id) ?? []));
      // Where nobody knows better, work goes on where it stopped.
      if (!stands && stored.value === undefined) {
        layer.value = layerOf(entries.value);
        task.value = taskOf(entries.value);
      }
      stored.value = hole;
    });
  };

  const write = async (how: LastEntry["how"], ...commands: readonly Command[]): Promise<boolean> => {
    if (commands.length === 0) return true;
    writing += 1;
    const done = await house.write(...commands);
    writing -= 1;
    if (!done.ok) {
      house.tell(done.problem);
      return false;
    }
    const applied: Applied | undefined = done.value.at(-1);
    if (applied === undefined) return true;
    const entry = applied.touched ?? applied.added[0];
    batch(() => {
      see(applied.record.entries);
      if (entry !== undefined) last.value = { how, entry, count: (last.value?.count ?? 0) + 1 };
    });
    return true;
  };

  const append = (draft: Draft, lookedAtMs?: number): Append => {
    const at = house.pen.moment();
    return {
      op: "append",
      id,
      frame: null,
      at: lookedAtMs === undefined ? at : { ...at, lookedAtMs },
      draft,
    };
  };
  const took = (...drafts: readonly Draft[]): Promise<boolean> =>
    write("took", ...drafts.map((draft) => append(draft)));

  const tooSoon = (key: string, touchedAtMs: number): boolean => {
    const now: KeyTouch = { key, atMs: touchedAtMs };
    if (isWetGlass(lastTouch, now)) return true;
    lastTouch = now;
    return false;
  };

  /** People who sort a layer with this phone now. */
  const peopleAt = (at: Layer): number =>
    reading.value.sorting[at]
      .filter(({ lastedMs, began }) => lastedMs === null && began.device === house.device)
      .reduce((sum, { people }) => sum + people, 0);

  const open = (name: PanelName, about = ""): void => {
    panel.value = { name, about };
  };
  const leave = (): void => {
    const { name } = panel.value;
    if (name === "number") open("numbers");
    else if (name === "temperature") open("conditions");
    else panel.value = NO_PANEL;
  };

  return {
    stored,
    entries,
    reading,
    panel,
    layer,
    task,
    last,
    open,
    leave,
    refresh,
    isWriting: () => writing > 0,
    standAt: (stand) => {
      stands = true;
      batch(() => {
        panel.value = stand.panel;
        layer.value = stand.layer;
        task.value = stand.task;
      });
    },
    lookAt: async (next) => {
      const before = layer.value;
      batch(() => {
        layer.value = next;
        task.value = "find";
      });
      if (next === before || next === "mustard-water" || before === "mustard-water") return;
      const people = peopleAt(before);
      if (people > 0)
        await took({ type: "sorting", people: 0, from: before }, { type: "sorting", people, from: next });
    },
    turnTo: (next) => {
      task.value = next;
    },
    worm: async (touchedAtMs) => {
      if (!tooSoon("worm", touchedAtMs)) await took({ type: "worm", from: layer.value });
    },
    place: async (group, touchedAtMs) => {
      if (!tooSoon(group, touchedAtMs)) await took({ type: "placed", group });
    },
    countAtOnce: async (counted, read) => {
      const { value, typed, unusual } = read;
      if (
        await took(countDraft(reading.value, counted, { count: value, typed, unusual: unusual.length > 0 }))
      )
        leave();
    },
    sort: async (people) => {
      const here = layer.value;
      // Nobody sorts two layers at once.
      const pauses = LAYERS.filter((other) => other !== here && peopleAt(other) > 0).map(
        (from): Draft => ({ type: "sorting", people: 0, from }),
      );
      await took(...pauses, { type: "sorting", people, from: here });
      if (panel.value.name === "people") leave();
    },
    pour: async () => {
      const pauses = LAYERS.filter((other) => peopleAt(other) > 0).map(
        (from): Draft => ({ type: "sorting", people: 0, from }),
      );
      await took(...pauses, { type: "mustard", litres: null });
    },
    pouredLitres: async (pouring, litres) => {
      const before = reading.value.mustard.find(({ entry }) => entry.id === pouring)?.entry;
      if (before === undefined) return;
      // How much was poured is another question than when: the moment stays.
      const draft: Draft = { type: "mustard", litres, replaces: [before.id] };
      if (await write("took", append(draft, before.lookedAtMs))) leave();
    },
    temperature: async ({ value, typed, unusual }, unit) => {
      const odd = unusual.length === 0 ? {} : { unusual: true as const };
      if (await took(temperatureDraft(reading.value, { value, unit, typed, ...odd }))) leave();
    },
    wetness: async (is) => {
      await took(wetnessDraft(reading.value, is));
    },
    conditionsAs: async ({ temperature, wetness }) => {
      await took(
        ...(temperature === null ? [] : [temperatureDraft(reading.value, temperature)]),
        ...(wetness === null ? [] : [wetnessDraft(reading.value, wetness.is)]),
      );
    },
    choose: async (answer) => {
      await took(chosenDraft(reading.value, answer));
    },
    close: async () => {
      await took({ type: "closed" });
    },
    undo: async () => {
      await write("undone", { op: "undo", id, at: house.pen.moment() });
    },
    redo: async () => {
      await write("redone", { op: "redo", id, at: house.pen.moment() });
    },
  };
};
