/** An own number pad: the phone's keyboard covers half the screen and jumps. A real keyboard works too. */
import type { ComponentChildren } from "preact";
import { useLayoutEffect } from "preact/hooks";
import { useHouse } from "./house.ts";
import "./number-pad.css";

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

/** A shortcut, or writing; a switch beside the pad is an input too, and takes no digits. */
const isForOthers = ({ target, ctrlKey, altKey, metaKey }: KeyboardEvent): boolean =>
  ctrlKey || altKey || metaKey || (target instanceof HTMLInputElement && target.type !== "radio");

/** Digits under the thumb; what was typed so far stands above and is the person's text, not a number yet. */
export const NumberPad = (props: {
  readonly typed: string;
  readonly onType: (typed: string) => void;
  /** Allow a decimal mark. */
  readonly decimals?: boolean;
  readonly unit?: string;
  readonly label: string;
  /** A key in the corner that the decimal mark leaves free. */
  readonly corner?: ComponentChildren;
  /** Pressed Enter on a real keyboard. */
  readonly onEnter?: () => void;
}) => {
  const { words } = useHouse();
  const { typed, onType, decimals, onEnter } = props;
  const add = (piece: string) => {
    if (typed.length < 12) onType(typed + piece);
  };
  // Before the next key, not after the next frame: fast digits would be added to what stood there before.
  useLayoutEffect(() => {
    const press = (event: KeyboardEvent) => {
      const { target } = event;
      if (isForOthers(event)) return;
      if (/^[0-9]$/.test(event.key) || (decimals === true && /^[.,]$/.test(event.key)))
        onType(typed + event.key);
      else if (event.key === "Backspace") onType(typed.slice(0, -1));
      else if (event.key === "Enter" && !(target instanceof HTMLButtonElement)) onEnter?.();
      else return;
      event.preventDefault();
    };
    document.addEventListener("keydown", press);
    return () => document.removeEventListener("keydown", press);
  }, [typed, onType, decimals, onEnter]);
  return (
    <fieldset class="pad">
      <legend class="out-of-sight">{props.label}</legend>
      <output class="pad-typed" aria-live="polite">
        {typed === "" ? "\u2013" : typed}
        {props.unit === undefined ? null : <small> {props.unit}</small>}
      </output>
      <div class="pad-keys">
        {DIGITS.map((digit) => (
          <button type="button" class="key" key={digit} onClick={() => add(digit)}>
            {digit}
          </button>
        ))}
        {decimals === true ? (
          <button
            type="button"
            class="key"
            onClick={() => add(words.value.pad.decimalMark)}
            aria-label={words.value.pad.decimal}
          >
            {words.value.pad.decimalMark}
          </button>
        ) : (
          (props.corner ?? <span />)
        )}
        <button type="button" class="key" onClick={() => add("0")}>
          0
        </button>
        <button
          type="button"
          class="key"
          onClick={() => onType(typed.slice(0, -1))}
          aria-label={words.value.pad.eraseLast}
        >
          <svg
            viewBox="0 0 40 40"
            width="30"
            height="30"
            fill="none"
            stroke="currentColor"
            stroke-width="3.5"
            stroke-linejoin="round"
            aria-hidden="true"
          >
            <path d="M3 20 13 8h24v24H13ZM19 15l10 10M29 15 19 25" />
          </svg>
        </button>
      </div>
    </fieldset>
  );
};
