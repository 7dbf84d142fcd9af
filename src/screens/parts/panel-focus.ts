/** Where the focus goes when a panel of a running test opens or closes. */
import { effect, untracked } from "@preact/signals";
import { useEffect } from "preact/hooks";

/** The question of what stands open; it takes the focus without being a key. */
export const QUESTION = ".running-question";

/** What a test says of its panels. `S` tells one of them from another. */
export interface PanelFocus<S> {
  /** What stands open, read from signals. */
  readonly now: () => S;
  readonly same: (a: S, b: S) => boolean;
  /** How many steps above the test itself it lies; 0 for its keys. */
  readonly depth: (stand: S) => number;
  /** The key that opened it, as a selector. */
  readonly opener: (left: S) => string;
}

/** Moves the focus once what is drawn next stands there; to the question where nothing of it is shown. */
export const focusOn = (selector: string): void => {
  requestAnimationFrame(() => {
    // On a small phone one of two keys that open the same panel is not shown.
    const shown = (of: string) =>
      [...document.querySelectorAll<HTMLElement>(of)].find((one) => one.checkVisibility());
    (shown(selector) ?? shown(QUESTION))?.focus();
  });
};

/**
 * Moves the focus along with panels: into one that opens, back to its key when it closes. Without this a
 * keyboard stands at the top of the page again after every panel, and a screen reader says nothing.
 *
 * @param of makes what the model says of its panels; asked once for each model
 */
export const usePanelFocus = <M, S>(model: M, of: (model: M) => PanelFocus<S>): void => {
  useEffect(() => {
    const { now, same, depth, opener } = of(model);
    let before: S | undefined;
    return effect(() => {
      const from = before;
      const stand = now();
      before = stand;
      if (from === undefined || same(stand, from)) return;
      const opens = depth(stand) > 0 && depth(stand) >= depth(from);
      focusOn(opens ? QUESTION : untracked(() => opener(from)));
    });
  }, [model, of]);
};
