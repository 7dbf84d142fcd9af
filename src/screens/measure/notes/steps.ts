/** What was changed on a note, so that it can be undone and redone, also after a phone threw the page away. */
import type { Json } from "../../../record/canonical.ts";
import { isRecordId, kindOf, type RecordId } from "../../../record/ids.ts";
import type { NoteHeader } from "../../../record/kinds/observation.ts";
import type { MetaKey } from "../../../store/meta.ts";

/** One change: properties of the note as they were and as they became, or a photo that came or went. */
export type Step =
  | { readonly what: "words"; readonly from: string; readonly to: string }
  | { readonly what: "strip"; readonly from: NoteHeader["strip"]; readonly to: NoteHeader["strip"] }
  | { readonly what: "position"; readonly from: NoteHeader["at"]; readonly to: NoteHeader["at"] }
  | { readonly what: "photo"; readonly photo: RecordId<"photo">; readonly deleted: boolean };

/** Changes of one note, oldest first; and what was undone, the first to be redone last. */
export interface Steps {
  readonly note: RecordId<"observation">;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

/** Steps that are kept, and how long they may be together, in UTF-16 code units. */
const MOST_STEPS = 50;
const MOST_LENGTH = 100_000;

const isStep = (step: unknown): step is Step => {
  if (typeof step !== "object" || step === null || !("what" in step)) return false;
  if (step.what === "photo")
    return "photo" in step && typeof step.photo === "string" && "deleted" in step && isPhoto(step.photo);
  if (!("from" in step && "to" in step)) return false;
  if (step.what === "words") return typeof step.from === "string" && typeof step.to === "string";
  return step.what === "strip" || step.what === "position";
};

const isPhoto = (id: string): boolean => isRecordId(id) && kindOf(id) === "photo";

const isSteps = (stored: object): stored is Steps =>
  "note" in stored &&
  typeof stored.note === "string" &&
  "done" in stored &&
  Array.isArray(stored.done) &&
  stored.done.every(isStep) &&
  "undone" in stored &&
  Array.isArray(stored.undone) &&
  stored.undone.every(isStep);

/** The steps of the note that was changed last; those of others are forgotten. */
export const STEPS: MetaKey<Json> = {
  name: "note-steps",
  durability: "relaxed",
  read: (stored) =>
    typeof stored === "object" && stored !== null && isSteps(stored)
      ? (stored as unknown as Json)
      : undefined,
};

/** The steps that are stored, when they are of this note. */
export const stepsOf = (note: RecordId<"observation">, stored: Json | undefined): Steps => {
  const steps = stored as unknown as Steps | undefined;
  return steps?.note === note ? steps : { note, done: [], undone: [] };
};

/** After one more change: nothing can be redone any more, and the oldest steps make room. */
export const withStep = (steps: Steps, step: Step): Steps => {
  let done = [...steps.done, step].slice(-MOST_STEPS);
  while (done.length > 1 && JSON.stringify(done).length > MOST_LENGTH) done = done.slice(1);
  return { ...steps, done, undone: [] };
};

/** The change that an undo or a redo makes now, and the steps after it; null when there is none. */
export const stepBack = (
  steps: Steps,
  way: "undo" | "redo",
): { readonly step: Step; readonly make: Step; readonly after: Steps } | null => {
  const { done, undone } = steps;
  const step = (way === "undo" ? done : undone).at(-1);
  if (step === undefined) return null;
  return way === "undo"
    ? { step, make: turned(step), after: { ...steps, done: done.slice(0, -1), undone: [...undone, step] } }
    : { step, make: step, after: { ...steps, done: [...done, step], undone: undone.slice(0, -1) } };
};

const turned = (step: Step): Step => {
  switch (step.what) {
    case "photo":
      return { ...step, deleted: !step.deleted };
    case "words":
      return { ...step, from: step.to, to: step.from };
    case "strip":
      return { ...step, from: step.to, to: step.from };
    case "position":
      return { ...step, from: step.to, to: step.from };
  }
};
