/** A hole on the screen: what is stored, where somebody stands at it, and which of its counts is meant. */
import type { TemperatureEntry, WetnessEntry } from "../../../record/conditions.ts";
import type { Entry } from "../../../record/entry.ts";
import {
  type FoundEntry,
  LAYERS,
  type Layer,
  type SortedEntry,
  WORM_GROUPS,
  type WormGroup,
} from "../../../record/hole/entries.ts";
import type { HoleReading } from "../../../record/hole/reading.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { HoleTemplate } from "../../../record/kinds/kit.ts";
import type { HoleHeader } from "../../../record/kinds/observation.ts";
import type { House } from "../../parts/house.ts";

/** The hole as it is stored. */
export interface StoredHole {
  readonly header: HoleHeader;
  /** Null when the hole was measured by itself, or its template is not on this device. */
  readonly template: HoleTemplate | null;
  readonly deleted: boolean;
}

/** What the keys do just now: worms into the pot, or out of it into their groups. */
export type Task = "find" | "place";

/** What stands in the place of the keys for a moment. */
export const PANELS = [
  "none",
  "count",
  "numbers",
  "number",
  "people",
  "litres",
  "conditions",
  "temperature",
  "doubts",
] as const;
export type PanelName = (typeof PANELS)[number];

/** A count of the hole: a layer or a group. */
export type Counted = Layer | WormGroup;

/** A panel, and which count or pouring it is about; empty when it is about the whole hole. */
export interface Panel {
  readonly name: PanelName;
  readonly about: string;
}

export const NO_PANEL: Panel = { name: "none", about: "" };

/** Where somebody stands at a hole; the browser keeps it in its history, so that a reload comes back to it. */
export interface Stand {
  readonly panel: Panel;
  readonly layer: Layer;
  readonly task: Task;
}

/** Conditions of an earlier hole, as they were written down there. */
export interface ConditionsBefore {
  readonly temperature: TemperatureEntry | null;
  readonly wetness: WetnessEntry | null;
}

/** An answer that contradicts another one. */
export type Doubtful = FoundEntry | SortedEntry | TemperatureEntry | WetnessEntry;

/** Whether a count is that of a layer. */
export const isLayer = (counted: Counted): counted is Layer =>
  (LAYERS as readonly string[]).includes(counted);

/** The layer that was worked on last; the mulch comes first. */
export const layerOf = (entries: readonly Entry[]): Layer => {
  const last = entries.findLast(({ type }) => AT_A_LAYER.has(type));
  if (last?.type === "worm" || last?.type === "found" || last?.type === "sorting") return last.from;
  return last === undefined ? "mulch" : "mustard-water";
};
const AT_A_LAYER: ReadonlySet<Entry["type"]> = new Set(["worm", "found", "sorting", "mustard"]);

/** What was done last. */
export const taskOf = (entries: readonly Entry[]): Task => {
  const last = entries.findLast(
    ({ type }) => type !== "undo" && type !== "temperature" && type !== "wetness",
  );
  return last?.type === "placed" || last?.type === "sorted" ? "place" : "find";
};

/** One count of a hole. */
export const countedIn = (reading: HoleReading, counted: Counted) =>
  isLayer(counted) ? reading.found[counted] : reading.placed[counted];

/** Whether a text names a count. */
export const isCounted = (text: string): text is Counted =>
  ([...LAYERS, ...WORM_GROUPS] as readonly string[]).includes(text);

/** How many questions of a hole wait for a choice. */
export const doubtsOf = (reading: HoleReading): number =>
  [...LAYERS, ...WORM_GROUPS].filter((counted) => countedIn(reading, counted).inDoubt.length > 0).length +
  Math.min(1, reading.temperaturesInDoubt.length) +
  Math.min(1, reading.wetnessInDoubt.length);

/** The header and template of a hole, or null when it is not on this device. */
export const readStoredHole = async (
  { records }: Pick<House, "records">,
  id: RecordId<"observation">,
): Promise<StoredHole | null> => {
  const hole = await records.one(id);
  if (hole === undefined || hole.body.type !== "hole") return null;
  const kit = hole.body.template === null ? undefined : await records.one(hole.body.template);
  return {
    header: hole.body,
    template: kit?.body.type === "hole-template" ? kit.body : null,
    deleted: hole.deleted,
  };
};
