/** Keyboards and Bluetooth clickers. A clicker is a keyboard with few keys, and each make sends others. */
import { failed, ok, type Result } from "../record/result.ts";

/** A key as the browser names it: what it writes, and where it lies. Either may be empty on phones. */
export interface KeyPress {
  readonly key: string;
  readonly code: string;
}

/** What one key answers. */
export interface KeyMeaning<Answer extends string> extends KeyPress {
  readonly answer: Answer;
}

/** A press with what else decides whether it counts; a `KeyboardEvent` is one. */
export interface KeySignal extends KeyPress {
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
  readonly isComposing: boolean;
}

const nameless = new Set(["", "Unidentified", "Process", "Dead"]);
const helperKeys = new Set([
  "Shift",
  "Control",
  "Alt",
  "AltGraph",
  "Meta",
  "CapsLock",
  "NumLock",
  "ScrollLock",
  "Fn",
  "FnLock",
]);

const sameKey = (a: KeyPress, b: KeyPress): boolean =>
  !nameless.has(a.key) && a.key.toLowerCase() === b.key.toLowerCase();
const sameCode = (a: KeyPress, b: KeyPress): boolean => a.code !== "" && a.code === b.code;

/**
 * The answer of a press, or null when it has none. What the key writes counts before where it lies, so
 * that "r" stays "r" on every keyboard; where it lies helps when another alphabet is switched on. Capital
 * and small letters are the same (Caps Lock).
 *
 * @example
 * answerOf([{ key: "r", code: "", answer: "residue" }], { key: "R", code: "KeyR" }) // => "residue"
 */
export const answerOf = <Answer extends string>(
  meanings: readonly KeyMeaning<Answer>[],
  press: KeyPress,
): Answer | null => {
  const found =
    meanings.find((meaning) => sameKey(meaning, press) && sameCode(meaning, press)) ??
    meanings.find((meaning) => sameKey(meaning, press)) ??
    meanings.find((meaning) => sameCode(meaning, press));
  return found?.answer ?? null;
};

/**
 * Whether a press can be an answer at all: no shortcut with Ctrl, Alt or Meta, no half-composed letter, no
 * helper key alone, and it has a name. Shift is allowed: French keyboards write digits with it.
 */
export const isPlainPress = (press: KeySignal): boolean =>
  !press.ctrlKey &&
  !press.altKey &&
  !press.metaKey &&
  !press.isComposing &&
  !helperKeys.has(press.key) &&
  !(nameless.has(press.key) && press.code === "");

const NO_TEXT_INPUTS = new Set([
  "button",
  "checkbox",
  "color",
  "file",
  "image",
  "radio",
  "range",
  "reset",
  "submit",
]);

/** Whether keys belong to what is being written there. */
const writesText = (target: EventTarget | null): boolean => {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return !NO_TEXT_INPUTS.has(target.type);
  return (
    target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || target.isContentEditable
  );
};

// The inside of a component with a shadow tree is only seen in the path.
const targetOf = (event: Event): EventTarget | null => event.composedPath()[0] ?? event.target;

/**
 * Listens to keys until `signal` ends it. A key held down answers once. A key with a meaning does nothing
 * else: else Page Down of a clicker would scroll the keys away, and Enter would press the key touched last.
 *
 * @param meaningsNow asked at each press, so that a key taught meanwhile counts at once
 * @param onAnswer gets the answer and when the key went down (same clock as `performance.now()`)
 * @example
 * listenForKeys(() => settings.keys, (answer) => take(answer), signal);
 */
export const listenForKeys = <Answer extends string>(
  meaningsNow: () => readonly KeyMeaning<Answer>[],
  onAnswer: (answer: Answer, atMs: number) => void,
  signal: AbortSignal,
): void => {
  if (typeof window === "undefined" || signal.aborted) return;
  const meaningOf = (event: KeyboardEvent): Answer | null =>
    isPlainPress(event) && !writesText(targetOf(event)) ? answerOf(meaningsNow(), event) : null;

  window.addEventListener(
    "keydown",
    (event) => {
      const answer = meaningOf(event);
      if (answer === null) return;
      event.preventDefault();
      if (!event.repeat) onAnswer(answer, event.timeStamp);
    },
    { signal },
  );
  // The space bar presses a button when it comes up again.
  window.addEventListener("keyup", (event) => meaningOf(event) !== null && event.preventDefault(), {
    signal,
  });
};

/**
 * Waits for the next key, to teach it an answer. While it waits, keys answer nothing else; Tab still moves
 * on, so that the way out of the screen stays open to a keyboard.
 *
 * @returns the key, or `device/key-not-taught` when `signal` ended the waiting
 * @example
 * const taught = await teachKey(signal);
 */
export const teachKey = (signal: AbortSignal): Promise<Result<KeyPress>> =>
  new Promise((resolve) => {
    const stop = new AbortController();
    const finish = (result: Result<KeyPress>): void => {
      stop.abort();
      resolve(result);
    };
    if (typeof window === "undefined" || signal.aborted) {
      finish(failed("device/key-not-taught"));
      return;
    }
    signal.addEventListener("abort", () => finish(failed("device/key-not-taught")), { signal: stop.signal });
    window.addEventListener(
      "keydown",
      (event) => {
        if (event.repeat || event.key === "Tab" || !isPlainPress(event)) return;
        event.preventDefault();
        event.stopImmediatePropagation();
        finish(ok({ key: event.key, code: event.code }));
      },
      { signal: stop.signal, capture: true },
    );
  });
