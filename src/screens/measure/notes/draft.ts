/**
 * The pen of a note: it writes while somebody types. A note exists from its first character or photo; its
 * words become revisions at pauses and on leaving, not one a key.
 */
import { type ReadonlySignal, signal } from "@preact/signals";
import { readClock } from "../../../device/clock.ts";
import type { Command } from "../../../record/command/command.ts";
import type { RecordId } from "../../../record/ids.ts";
import type { NoteHeader } from "../../../record/kinds/observation.ts";
import type { Stood } from "../../../record/shapes.ts";
import { getMeta, setMeta } from "../../../store/meta.ts";
import type { House } from "../../parts/house.ts";
import { STEPS, type Step, type Steps, stepBack, stepsOf, withStep } from "./steps.ts";

/** Words are written down when nothing was typed for this long, and at the latest after `AT_LATEST_MS`. */
export const PAUSE_MS = 600;
export const AT_LATEST_MS = 2500;

/** So many of the last own writes are known again when they are read late. */
const WORDS_KNOWN = 20;

type NoteId = RecordId<"observation">;

/** What a note that does not exist yet is going to hang on. */
export interface Beginning {
  readonly visit: RecordId<"visit">;
  readonly field: RecordId<"field">;
  readonly spot: RecordId<"spot"> | null;
  /** The strip that stands chosen at first. */
  readonly strip: RecordId<"strip"> | null;
}

/** What the draft begins with. */
export interface DraftStart {
  readonly house: Pick<House, "pen" | "write" | "tell" | "settings" | "records">;
  readonly on: Beginning;
  /** The note, when it exists already. */
  readonly note: { readonly id: NoteId; readonly text: string; readonly strip: NoteHeader["strip"] } | null;
  /** Where somebody stands at this moment. */
  readonly stood: () => Stood;
  /** The note exists now. */
  readonly onBegun: (id: NoteId) => void;
}

/** A note under the pen. */
export interface Draft {
  readonly note: ReadonlySignal<NoteId | null>;
  readonly text: ReadonlySignal<string>;
  readonly strip: ReadonlySignal<NoteHeader["strip"]>;
  /** Everything that stands on the screen is on record. */
  readonly onRecord: ReadonlySignal<boolean>;
  readonly steps: ReadonlySignal<Pick<Steps, "done" | "undone">>;
  readonly type: (text: string) => void;
  readonly chooseStrip: (strip: NoteHeader["strip"]) => Promise<void>;
  /** Writes down what is not yet on record. */
  readonly flush: () => Promise<void>;
  /** Before a camera opens: also a strip that was chosen is written down, so a note may begin without words. */
  readonly rest: () => Promise<void>;
  /** The note, begun now if there is none; null when that could not be written (the reason is shown). */
  readonly ensure: () => Promise<NoteId | null>;
  /** Puts the position. `byItself` for one that came after the note was begun: that is no step to undo. */
  readonly putPosition: (from: Stood, to: Stood, byItself: boolean) => Promise<boolean>;
  readonly photoCame: (photo: RecordId<"photo">, deleted: boolean) => void;
  /** Undoes or redoes the last change and says which; null when there is none or it could not be written. */
  readonly step: (way: "undo" | "redo") => Promise<Step["what"] | null>;
  /** What another window wrote meanwhile, unless something is being typed here. */
  readonly heard: (body: Pick<NoteHeader, "text" | "strip">) => void;
  /** The screen is left: writes the rest, and takes an empty note away that was begun here. */
  readonly leave: () => Promise<void>;
}

// Half of a character, as a keyboard may hand it over for a moment, is no text that a file could carry.
const whole = (text: string): string => text.replaceAll(/\p{Surrogate}/gu, "");

/** Takes up the pen. */
export const newDraft = ({ house, on, note: before, stood, onBegun }: DraftStart): Draft => {
  const note = signal<NoteId | null>(before?.id ?? null);
  const text = signal(before?.text ?? "");
  const strip = signal<NoteHeader["strip"]>(before === null ? on.strip : before.strip);
  const onRecord = signal(true);
  const steps = signal<Pick<Steps, "done" | "undone">>({ done: [], undone: [] });
  let saved = text.value;
  let ours: readonly string[] = [saved];
  let stripChosen = false;
  let begunHere = false;
  let everFilled = false;
  let left = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitingSinceMs: number | null = null;
  // One write after the other: a revision that overtook the one before would bring old words back.
  let last: Promise<unknown> = Promise.resolve();

  const inOrder = <T>(job: () => Promise<T>): Promise<T> => {
    const mine = last.then(job, job);
    last = mine;
    return mine;
  };
  const written = async (command: Command): Promise<boolean> => {
    const done = await house.write(command);
    if (!done.ok) house.tell(done.problem);
    return done.ok;
  };
  const keepSteps = (next: Pick<Steps, "done" | "undone">): void => {
    steps.value = next;
    if (note.value === null) return;
    const stored = { note: note.value, ...next };
    void setMeta(house.records.connection, STEPS, stored as never);
  };
  const addStep = (step: Step): void => {
    if (note.value !== null) keepSteps(withStep({ note: note.value, ...steps.value }, step));
  };
  const saveAs = (words: string): void => {
    saved = words;
    ours = [...ours, words].slice(-WORDS_KNOWN);
  };
  const judge = (): void => {
    onRecord.value = text.value === saved;
  };
  const begin = (): Promise<NoteId | null> =>
    inOrder(async () => {
      if (note.value !== null) return note.value;
      const words = whole(text.value);
      const command = house.pen.write("observation", {
        type: "note",
        visit: on.visit,
        field: on.field,
        strip: strip.value,
        text: words,
        at: stood(),
        person: house.settings.value.person,
        startedAtMs: readClock().wallMs,
        ...(on.spot === null ? {} : { spot: on.spot }),
      });
      if (!(await written(command))) return null;
      begunHere = true;
      saveAs(words);
      note.value = command.id;
      judge();
      if (words !== "") {
        everFilled = true;
        addStep({ what: "words", from: "", to: words });
      }
      // A photo may be ready only after the screen was left; nobody is led back for it.
      if (!left) onBegun(command.id);
      return command.id;
    });
  const writeWords = (): Promise<void> =>
    inOrder(async () => {
      const words = whole(text.value);
      if (note.value === null || words === saved) return judge();
      const from = saved;
      if (!(await written(house.pen.change(note.value, { text: words })))) return;
      saveAs(words);
      if (words !== "") everFilled = true;
      addStep({ what: "words", from, to: words });
      judge();
    });
  const stopWaiting = (): void => {
    clearTimeout(timer);
    timer = undefined;
    waitingSinceMs = null;
  };
  const flush = async (): Promise<void> => {
    stopWaiting();
    if (note.value === null && text.value !== "") await begin();
    await writeWords();
  };
  const wait = (): void => {
    const { monoMs } = readClock();
    waitingSinceMs ??= monoMs;
    clearTimeout(timer);
    const left = waitingSinceMs + AT_LATEST_MS - monoMs;
    timer = setTimeout(() => void flush(), Math.max(0, Math.min(PAUSE_MS, left)));
  };
  const put = async (step: Step): Promise<boolean> => {
    const id = note.value;
    if (id === null) return false;
    if (step.what === "photo")
      return written(step.deleted ? house.pen.remove(step.photo) : house.pen.restore(step.photo));
    if (step.what === "position") return written(house.pen.change(id, { at: step.to }));
    if (step.what === "strip") {
      if (!(await written(house.pen.change(id, { strip: step.to })))) return false;
      strip.value = step.to;
      return true;
    }
    if (!(await written(house.pen.change(id, { text: step.to })))) return false;
    saveAs(step.to);
    text.value = step.to;
    judge();
    return true;
  };

  if (before !== null)
    void getMeta(house.records.connection, STEPS).then((stored) => {
      // A change that was made meanwhile must not be forgotten for those of before.
      const nothingYet = steps.value.done.length + steps.value.undone.length === 0;
      if (stored.ok && nothingYet) steps.value = stepsOf(before.id, stored.value);
    });

  return {
    note,
    text,
    strip,
    onRecord,
    steps,
    type: (next) => {
      const first = note.value === null && text.value === "";
      text.value = next;
      judge();
      // The first character is written at once: from then on there is a note.
      if (first && next !== "") void begin().then(() => text.value === saved || wait());
      else wait();
    },
    chooseStrip: async (next) => {
      const from = strip.value;
      stripChosen = true;
      if (from === next) return;
      strip.value = next;
      if (note.value === null) return;
      const kept = await inOrder(() => put({ what: "strip", from, to: next }));
      if (kept) addStep({ what: "strip", from, to: next });
      else strip.value = from;
    },
    flush,
    rest: async () => {
      if (note.value === null && stripChosen) await begin();
      await flush();
    },
    ensure: async () => note.value ?? (await begin()),
    putPosition: async (from, to, byItself) => {
      const kept = await inOrder(() => put({ what: "position", from, to }));
      if (kept && !byItself) addStep({ what: "position", from, to });
      return kept;
    },
    photoCame: (photo, deleted) => {
      everFilled = true;
      addStep({ what: "photo", photo, deleted });
    },
    step: async (way) => {
      // What is being typed is a change too, and the last one.
      await flush();
      const id = note.value;
      const next = id === null ? null : stepBack({ note: id, ...steps.value }, way);
      if (next === null || !(await inOrder(() => put(next.make)))) return null;
      keepSteps({ done: next.after.done, undone: next.after.undone });
      return next.step.what;
    },
    heard: (body) => {
      // Words of our own may be read late: taken for news they would put old words back under the typing hand.
      const isNews = body.text !== saved && !ours.includes(body.text);
      if (isNews && text.value === saved && timer === undefined) {
        saveAs(body.text);
        text.value = body.text;
      }
      if (body.strip !== strip.value) strip.value = body.strip;
    },
    leave: async () => {
      left = true;
      await flush();
      const { value } = note;
      const empty = begunHere && !everFilled && saved === "" && text.value === "";
      if (value === null || !empty) return;
      // A photo that is still being made small begins a note of its own.
      note.value = null;
      begunHere = false;
      await inOrder(() => written(house.pen.erase(value)));
    },
  };
};
