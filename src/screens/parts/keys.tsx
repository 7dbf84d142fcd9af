/** Keys, choices and fields to write in: every target is at least 48 px, most are 56. */
import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

/** What a record keeps of a name; the line takes no more, so that nothing typed is refused later. */
const LONGEST_NAME = 200;

type KeyLook = "plain" | "solid" | "straw" | "danger";

/** A key that does something. */
export const Key = (props: {
  readonly onPress: () => void;
  readonly children: ComponentChildren;
  readonly look?: KeyLook;
  readonly off?: boolean;
  readonly left?: boolean;
}) => (
  <button
    type="button"
    class={`key ${props.look ?? "plain"} ${props.left === true ? "left" : ""}`}
    disabled={props.off === true}
    onClick={props.onPress}
  >
    {props.children}
  </button>
);

/** A key that leads to another screen. */
export const LinkKey = (props: {
  readonly to: string;
  readonly children: ComponentChildren;
  readonly look?: KeyLook;
}) => (
  <a class={`key ${props.look ?? "plain"}`} href={props.to}>
    {props.children}
  </a>
);

/** One answer of a choice. */
export interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
  readonly hint?: string;
}

/** One of several, as ticks under a question. */
export const Choice = <T extends string>(props: {
  readonly question: string;
  readonly options: readonly Option<T>[];
  readonly chosen: T | null;
  readonly onChoose: (value: T) => void;
  readonly column?: boolean;
  readonly children?: ComponentChildren;
}) => {
  const group = useId();
  return (
    <fieldset>
      <legend class="question">{props.question}</legend>
      {props.children}
      <div class={`ticks ${props.column === true ? "column" : ""}`}>
        {props.options.map((option) => (
          <label class="tick" key={option.value}>
            <input
              type="radio"
              name={group}
              checked={option.value === props.chosen}
              onChange={() => props.onChoose(option.value)}
            />
            <span>
              {option.label}
              {option.hint === undefined ? null : <small>{option.hint}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
};

/** Yes or no, as a tick with its words. */
export const Tick = (props: {
  readonly label: string;
  readonly hint?: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}) => (
  <label class="tick">
    <input
      type="checkbox"
      checked={props.on}
      onChange={(event) => props.onChange(event.currentTarget.checked)}
    />
    <span>
      {props.label}
      {props.hint === undefined ? null : <small>{props.hint}</small>}
    </span>
  </label>
);

/** A switch with two halves, both always readable. */
export const Halves = <T extends string>(props: {
  readonly label: string;
  readonly options: readonly [Option<T>, Option<T>];
  readonly chosen: T;
  readonly onChoose: (value: T) => void;
}) => {
  const group = useId();
  return (
    <fieldset class="halves">
      <legend class="out-of-sight">{props.label}</legend>
      {props.options.map((option) => (
        <label key={option.value}>
          <input
            class="out-of-sight"
            type="radio"
            name={group}
            checked={option.value === props.chosen}
            onChange={() => props.onChoose(option.value)}
          />
          {option.label}
        </label>
      ))}
    </fieldset>
  );
};

/** A line to write on. `wrong` says in a sentence what cannot be read. */
export const WriteLine = (props: {
  readonly label: string;
  readonly value: string;
  readonly onWrite: (value: string) => void;
  readonly hint?: string;
  readonly wrong?: string | null;
  readonly numeric?: boolean;
}) => {
  const id = useId();
  const wrong = props.wrong ?? null;
  return (
    <label class="write">
      {props.label}
      <input
        type="text"
        value={props.value}
        inputMode={props.numeric === true ? "decimal" : "text"}
        maxLength={LONGEST_NAME}
        autocomplete="off"
        autocapitalize="sentences"
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null && props.hint === undefined ? undefined : id}
        onInput={(event) => props.onWrite(event.currentTarget.value)}
      />
      <span id={id} class={wrong === null ? "aside" : "wrong"}>
        {wrong ?? props.hint ?? null}
      </span>
    </label>
  );
};
