/** A line being counted: what is on record, and the commands behind the keys. */
import { batch, computed, type ReadonlySignal, signal } from "@preact/signals";
import { isWetGlass, type KeyTouch } from "../../../device/glass.ts";
import type { Applied } from "../../../record/command/apply.ts";
import type { Command, Draft } from "../../../record/command/command.ts";
import type { Cover, Entry, Stance, ThicknessEntry, TotalsEntry } from "../../../record/entry.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { Rope } from "../../../record/kinds/kit.ts";
import type { LineHeader } from "../../../record/kinds/observation.ts";
import type { EndEntry } from "../../../record/line/entries.ts";
import { lineFinished } from "../../../record/line/finished.ts";
import { type LineReading, readLine } from "../../../record/line/reading.ts";
import type { ReadNumber } from "../../../record/number.ts";
import type { Result } from "../../../record/result.ts";
import type { House } from "../../parts/house.ts";

/** The line as it is stored. */
export interface StoredLine {
  readonly header: LineHeader;
  readonly rope: Rope;
  readonly deleted: boolean;
}

/** What the keys ask for just now, below the question. */
export type Asking = "marks" | "set-mark" | "end-at" | "rope" | "correct" | "thickness" | "doubts";

/** What happened last, for the flash and for a screen reader. */
export interface LastAnswer {
  readonly how: "took" | "undone" | "redone";
  readonly entry: Entry;
  /** Counts up, so that the same answer twice flashes twice. */
  readonly count: number;
}

export interface LineModel {
  /** undefined while it is looked up, null when it is not on this device. */
  readonly stored: ReadonlySignal<StoredLine | null | undefined>;
  readonly reading: ReadonlySignal<LineReading | undefined>;
  readonly entries: ReadonlySignal<readonly Entry[]>;
  readonly asking: ReadonlySignal<Asking>;
  /** The mark that is being corrected. */
  readonly correcting: ReadonlySignal<number>;
  readonly stance: ReadonlySignal<Stance>;
  readonly last: ReadonlySignal<LastAnswer | null>;
  readonly finished: ReadonlySignal<boolean>;
  /** Nothing is left to count mark by mark, finished or not: ends and totals in doubt wait for a choice. */
  readonly over: ReadonlySignal<boolean>;
  readonly ask: (what: Asking, mark?: number) => void;
  /** Closes the panel that is open. */
  readonly leavePanel: () => void;
  readonly setStance: (stance: Stance) => void;
  /** A touch on an answer key. `touchedAtMs` is the event's time stamp, for the wet-glass rule. */
  readonly touch: (cover: Cover, touchedAtMs: number) => Promise<void>;
  readonly miss: (mark: number, cover: Cover) => Promise<void>;
  /** Chooses one of two answers for a mark. */
  readonly settle: (mark: number, cover: Cover, stance: Stance) => Promise<void>;
  readonly correct: (mark: number, cover: Cover, stance: Stance) => Promise<void>;
  readonly setMark: (mark: number) => Promise<void>;
  readonly thickness: (mark: number, read: ReadNumber, unit: "mm" | "in") => Promise<void>;
  readonly totals: (sums: Omit<Extract<Draft, { type: "totals" }>, "type" | "replaces">) => Promise<void>;
  /** Two phones gave two answers: this one counts from now on, the others stay on record. */
  readonly choose: (answer: ThicknessEntry | TotalsEntry | EndEntry) => Promise<void>;
  readonly endHere: () => Promise<void>;
  readonly endAt: (mark: number) => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  /** A touch of this window is on its way to the disk; its answer tells what is stored, others' marks too. */
  readonly isWriting: () => boolean;
  /** Reads the line again; called when another window changed it. */
  readonly refresh: () => Promise<void>;
}

/** Marks between two questions for the mulch thickness. */
const THICKNESS_EVERY = 10;

/** Makes the model of one line. */
export const lineModel = (house: House, id: RecordId<"observation">): LineModel => {
  const stored = signal<StoredLine | null | undefined>(undefined);
  const entries = signal<readonly Entry[]>([]);
  const asking = signal<Asking>("marks");
  const correcting = signal(0);
  const stance = signal<Stance>("flat");
  const last = signal<LastAnswer | null>(null);
  let lastTouch: KeyTouch | null = null;
  let writing = 0;

  const frame = computed(() => {
    const line = stored.value;
    return line === undefined || line === null
      ? undefined
      : { way: line.header.way, ropeMarks: line.rope.marks };
  });
  const reading = computed(() =>
    frame.value === undefined ? undefined : readLine(entries.value, frame.value),
  );
  const finished = computed(() => {
    const now = reading.value;
    const line = frame.value;
    return now !== undefined && line !== undefined && lineFinished(now, line);
  });

  const over = computed(() => {
    const now = reading.value;
    if (now === undefined) return false;
    const asksForTotals = frame.value?.way === "totals";
    return asksForTotals || finished.value || now.endedAt !== null || now.endsInDoubt.length > 0;
  });

  // Entries are only ever added, so the longer list is the later one even when answers overtake each other.
  const see = (now: readonly Entry[]) => {
    if (now.length >= entries.value.length) entries.value = now;
  };

  const refresh = async (): Promise<void> => {
    const [line, now] = await Promise.all([readStoredLine(house, id), house.records.entries([id])]);
    batch(() => {
      stored.value = line;
      see(line === null ? [] : (now.get(id) ?? []));
    });
  };

  const write = async (command: Command, how: LastAnswer["how"]): Promise<void> => {
    writing += 1;
    const done: Result<readonly Applied[]> = await house.write(command);
    writing -= 1;
    if (!done.ok) {
      house.tell(done.problem);
      return;
    }
    const [applied] = done.value;
    if (applied === undefined) return;
    const entry = applied.touched ?? applied.added[0];
    batch(() => {
      see(applied.record.entries);
      if (entry !== undefined) last.value = { how, entry, count: (last.value?.count ?? 0) + 1 };
    });
  };

  const append = (draft: Draft): Promise<void> => {
    const line = frame.value;
    if (line === undefined) return Promise.resolve();
    return write({ op: "append", id, frame: line, at: house.pen.moment(), draft }, "took");
  };
  const step = (op: "undo" | "redo"): Promise<void> => {
    if (frame.value === undefined) return Promise.resolve();
    return write({ op, id, at: house.pen.moment() }, op === "undo" ? "undone" : "redone");
  };
  const markDraft = (mark: number | "next", cover: Cover, lies: Stance): Draft =>
    cover === "residue" ? { type: "mark", mark, cover, stance: lies } : { type: "mark", mark, cover };

  const askThicknessWhenDue = (): void => {
    const entry = last.value?.entry;
    if (stored.value?.header.askThickness !== true || entry?.type !== "mark" || last.value?.how !== "took")
      return;
    if (entry.mark % THICKNESS_EVERY === 0 && reading.value?.thickness.has(entry.mark) === false) {
      correcting.value = entry.mark;
      asking.value = "thickness";
    }
  };

  return {
    stored,
    reading,
    entries,
    asking,
    correcting,
    stance,
    last,
    finished,
    over,
    refresh,
    isWriting: () => writing > 0,
    ask: (what, mark) => {
      batch(() => {
        asking.value = what;
        if (mark !== undefined) correcting.value = mark;
      });
    },
    leavePanel: () => {
      asking.value = asking.value === "correct" ? "rope" : "marks";
    },
    setStance: (lies) => {
      stance.value = lies;
    },
    touch: async (cover, touchedAtMs) => {
      const now: KeyTouch = { key: cover, atMs: touchedAtMs };
      if (isWetGlass(lastTouch, now)) return;
      lastTouch = now;
      await append(markDraft("next", cover, stance.value));
      askThicknessWhenDue();
    },
    miss: (mark, cover) => append(markDraft(mark, cover, stance.value)),
    settle: (mark, cover, lies) => append(markDraft(mark, cover, lies)),
    correct: async (mark, cover, lies) => {
      await append(markDraft(mark, cover, lies));
      asking.value = "rope";
    },
    setMark: async (mark) => {
      await append({ type: "set-mark", mark });
      asking.value = "marks";
    },
    thickness: async (mark, read, unit) => {
      await append({
        type: "thickness",
        mark,
        value: read.value,
        unit,
        typed: read.typed,
        ...(read.unusual.length === 0 ? {} : { unusual: true as const }),
      });
      asking.value = "marks";
    },
    totals: (sums) => append({ type: "totals", ...sums }),
    choose: (answer) => {
      if (answer.type === "totals") {
        const { flat, standing, bare, green, stone, own } = answer;
        return append({ type: "totals", flat, standing, bare, green, stone, own });
      }
      if (answer.type === "end") {
        const { mark, rest } = answer;
        return append({ type: "end", mark, ...(rest === undefined ? {} : { rest }) });
      }
      const { mark, value, unit, typed } = answer;
      const unusual = answer.unusual === undefined ? {} : { unusual: answer.unusual };
      return append({ type: "thickness", mark, value, unit, typed, ...unusual });
    },
    endHere: () => append({ type: "end", mark: "here" }),
    endAt: async (mark) => {
      await append({ type: "end", mark, rest: stance.value });
      asking.value = "marks";
    },
    undo: () => step("undo"),
    redo: () => step("redo"),
  };
};

/** The header and rope of a line, or null when it is not on this device. */
export const readStoredLine = async (
  { records }: Pick<House, "records">,
  id: RecordId<"observation">,
): Promise<StoredLine | null> => {
  const line = await records.one(id);
  if (line === undefined || line.body.type !== "line") return null;
  const rope = await records.one(line.body.rope);
  if (rope === undefined || rope.body.type !== "rope") return null;
  return { header: line.body, rope: rope.body, deleted: line.deleted };
};
