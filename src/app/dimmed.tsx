/** A screen that stays on all day must not eat the battery: dark when nobody has touched it for a minute. */
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import { watchUntouched } from "../device/screen-on.ts";

/** Own choice, no source. */
const DIM_AFTER_MS = 60_000;
/** A finger that slides makes no click: then the screen is given back this long after it is lifted. */
const LIFTED_MS = 400;

/**
 * Whether the screen is to be dimmed, and what lights it.
 *
 * @param wanted false takes the dimming away at once
 */
export const useDimmed = (wanted: boolean): { readonly dimmed: boolean; readonly wake: () => void } => {
  const [dimmed, setDimmed] = useState(false);
  const touched = useRef<() => void>(() => undefined);
  useEffect(() => {
    if (!wanted) return;
    const stop = new AbortController();
    // The touch that lights the screen is taken by the dark one, which goes when the finger is lifted.
    touched.current = watchUntouched(
      DIM_AFTER_MS,
      (state) => state !== "glass" && setDimmed(state === "untouched"),
      stop.signal,
    );
    return () => {
      stop.abort();
      touched.current = () => undefined;
      setDimmed(false);
    };
  }, [wanted]);
  const wake = useCallback(() => {
    touched.current();
    setDimmed(false);
  }, []);
  return { dimmed: dimmed && wanted, wake };
};

/**
 * The dark screen with the next reading in figures that are read from a few steps away. It takes the whole
 * first touch, from finger down to finger up, so that no key below is hit by somebody who only looks.
 */
export const Dimmed = (props: {
  readonly letter: string;
  readonly clock: string;
  readonly when: string;
  readonly hint: string;
  readonly onWake: () => void;
}) => {
  const [touched, setTouched] = useState(false);
  const lifted = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(lifted.current), []);
  const lift = () => {
    lifted.current = setTimeout(props.onWake, LIFTED_MS);
  };
  return (
    // The bar behind it says the same to a screen reader.
    <div
      class={`dimmed ${touched ? "touched" : ""}`}
      aria-hidden="true"
      onPointerDown={() => setTouched(true)}
      onPointerUp={lift}
      onPointerCancel={lift}
      onClick={props.onWake}
    >
      <p class="dimmed-letter">{props.letter}</p>
      <p class="dimmed-clock">{props.clock}</p>
      <p class="dimmed-when">{props.when}</p>
      <p class="dimmed-hint">{props.hint}</p>
    </div>
  );
};
