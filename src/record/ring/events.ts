/** What a ring's entries say, one type per thing that was read. */
import type { Entry, UndoEntry } from "../entry.ts";
import type { RecordId } from "../ids.ts";
import type { RingClock } from "./clock.ts";
import type {
  GoneEntry,
  HappenedEntry,
  Happening,
  InRing,
  LevelEntry,
  LookEntry,
  PourEntry,
  RulerReads,
  StartEntry,
  StopEntry,
} from "./entries.ts";

/** When something was looked at. */
export interface RingMoment {
  /**
   * Since the start by the clock that nobody can set, where it can be told; else by the wall clock. Without a
   * start: since the first thing that was read. Below 0: before the start.
   */
  readonly sinceStartMs: number;
  /** By the wall clock, for showing. */
  readonly lookedAtMs: number;
  /** Wall clock and page clock differ by more than two seconds. */
  readonly clocksApart: boolean;
  /** The moment was typed or reckoned back, or the number came long after it. */
  readonly enteredLater: boolean;
  readonly by: RecordId<"person"> | null;
}

interface Read<E> {
  readonly id: string;
  readonly ring: InRing;
  readonly moment: RingMoment;
  /** It stands in the place of an earlier answer. */
  readonly corrected: boolean;
  readonly entry: E;
}

/** Water poured in from a measured bottle. */
export interface PourRead extends Read<PourEntry> {
  readonly type: "pour";
  readonly cubicMetres: number;
}

/** A level that the ruler showed. */
export interface LevelRead extends Read<LevelEntry> {
  readonly type: "level";
  /** Metres of water, or metres from the rim down to it. */
  readonly levelM: number;
  readonly reads: RulerReads;
  readonly afterRefill: boolean;
}

/** The last of the water is gone. */
export interface GoneRead extends Read<GoneEntry> {
  readonly type: "gone";
}

/** Something that says how much water there was. */
export type RingEvent = PourRead | LevelRead | GoneRead;

/** Two answers to one look, from two phones; neither counts until one is chosen. */
export interface RingDoubt {
  readonly look: LookEntry;
  readonly ring: InRing;
  readonly moment: RingMoment;
  readonly answers: readonly (LevelEntry | GoneEntry)[];
}

/** *Read now* was touched and the number is still missing. */
export interface OpenLook {
  readonly look: LookEntry;
  readonly moment: RingMoment;
}

/** Something that happened to the ring. */
export interface HappeningRead {
  readonly what: Happening;
  /** Of a reading that was missed or taken out: of which ring. */
  readonly ring: InRing;
  readonly words: string;
  readonly moment: RingMoment;
  readonly corrected: boolean;
  readonly entry: HappenedEntry;
}

/** The beginning or the end of the test. */
export interface RingEnd<E extends StartEntry | StopEntry> {
  readonly entry: E;
  readonly moment: RingMoment;
}

/** What the entries of a ring say. */
export interface RingReading {
  readonly start: RingEnd<StartEntry> | null;
  /** Starts by two phones that lie more than two seconds apart, else empty; the first one counts. */
  readonly startsInDoubt: readonly StartEntry[];
  /** Pours, levels and *gone*, those that count, in order of the moment they were looked at. */
  readonly events: readonly RingEvent[];
  readonly inDoubt: readonly RingDoubt[];
  readonly openLooks: readonly OpenLook[];
  readonly happenings: readonly HappeningRead[];
  readonly stop: RingEnd<StopEntry> | null;
  /** What Undo and Redo would do now. */
  readonly undoable: Entry | null;
  readonly redoable: UndoEntry | null;
  /** How many entries count, undo entries left out. */
  readonly living: number;
  /** For `elapsedNow` and `nextDue`. */
  readonly clock: RingClock;
}
