/**
 * What was typed into a form and not kept yet, by the address of its page and the name of the form. It lies in
 * the small store of this window: it outlives a reload, a way back and a page that the phone threw away while
 * its camera was open. Where the browser refuses that store, forms are as forgetful as ever.
 */
import { DATABASE_NAME } from "../../store/schema.ts";
import { openStash, smallStores } from "../../store/stash.ts";

const PREFIX = "mulchmark-typed";

/** Answers by their names; only those that differ from what stood there at first. */
export type Answers = Readonly<Record<string, unknown>>;

interface Stored {
  /** What the form was filled from. */
  readonly base: string;
  readonly answers: Answers;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isStored = (value: unknown): value is Stored =>
  isRecord(value) && typeof value["base"] === "string" && isRecord(value["answers"]);

/** The key of a form on the page that is open now. */
export const typedKey = (form: string): string => `${PREFIX} ${location.hash} ${form}`;

/** What was typed before; null when nothing was, or into a form that was filled from something else. */
export const readTyped = (key: string, base: string): Answers | null => {
  try {
    const stored: unknown = JSON.parse(sessionStorage.getItem(key) ?? "null");
    return isStored(stored) && stored.base === base ? stored.answers : null;
  } catch {
    // Refused, or not ours: the form begins as it would.
    return null;
  }
};

/** Keeps what is typed; without answers there is nothing to keep. */
export const writeTyped = (key: string, base: string, answers: Answers): void => {
  try {
    if (Object.keys(answers).length === 0) sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, JSON.stringify({ base, answers } satisfies Stored));
  } catch {
    // Refused or full: it stands on the screen, and is lost with it.
  }
};

/** Forgets what was typed into a form of this page; for what it corrects is no more. */
export const forgetTyped = (form: string): void => writeTyped(typedKey(form), "", {});

/** How many times touches were put by, to be written once the page is loaded again. */
export const waitingForReload = (): number => openStash(DATABASE_NAME, smallStores()).waiting().length;

/**
 * The forms of this page that something was typed into, by what follows the beginning of their names: such a
 * form is opened again with its page.
 */
export const typedHere = (beginning: string): readonly string[] => {
  try {
    const start = typedKey(beginning);
    return Array.from({ length: sessionStorage.length }, (_, at) => sessionStorage.key(at) ?? "")
      .filter((key) => key.startsWith(start))
      .map((key) => key.slice(start.length))
      .sort();
  } catch {
    return [];
  }
};

/**
 * Whether a value that was read may stand in the place of another: an app that was updated meanwhile may ask
 * otherwise. Where one of the two says nothing, the other may be anything.
 *
 * @param optional names that may be left out wherever they stand
 * @example
 * isAlike({ typed: "12", confirmed: false }, { typed: "", confirmed: false }) // => true
 */
export const isAlike = (value: unknown, first: unknown, optional: readonly string[] = []): boolean => {
  if (first === null || value === null) return value !== undefined;
  if (Array.isArray(first) || Array.isArray(value)) return Array.isArray(first) && Array.isArray(value);
  if (isRecord(first))
    return (
      isRecord(value) &&
      Object.entries(first).every(
        ([name, one]) => (optional.includes(name) && !(name in value)) || isAlike(value[name], one, optional),
      )
    );
  return typeof value === typeof first;
};
