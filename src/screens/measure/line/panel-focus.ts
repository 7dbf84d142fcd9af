/** Where the focus goes on the counting screen when what it stood on goes away. */
import { effect } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Asking, LineModel } from "./model.ts";
import { DEPTH } from "./panel-steps.ts";

const QUESTION = ".running-question";

/** The key that opened a panel, to come back to when it closes. */
const openerOf = (model: LineModel, panel: Asking): string => {
  switch (panel) {
    case "correct":
      return `[data-mark="${model.correcting.value}"]`;
    case "thickness": {
      const entry = model.last.value?.entry;
      return entry?.type === "mark" ? `[data-answer="${entry.cover}"]` : QUESTION;
    }
    default:
      return `[data-opens="${panel}"]`;
  }
};

const focusOn = (selector: string): void => {
  // The keys of the next panel stand there once it is drawn.
  requestAnimationFrame(() => {
    // On a small phone one of two keys that open the same panel is not shown.
    const found = [...document.querySelectorAll<HTMLElement>(selector)].find((one) => one.checkVisibility());
    (found ?? document.querySelector<HTMLElement>(QUESTION))?.focus();
  });
};

/**
 * Moves the focus along with panels: into one that opens, back to its key when it closes. Without this a
 * keyboard stands at the top of the page again after every panel, and a screen reader says nothing. When the
 * line is over its keys are gone; the focus goes to the words that say so, never to a key, or an Enter meant
 * for the last mark would leave the line.
 */
export const usePanelFocus = (model: LineModel): void => {
  useEffect(() => {
    let before = model.asking.peek();
    return effect(() => {
      const now = model.asking.value;
      const from = before;
      before = now;
      if (now !== from) focusOn(DEPTH[now] > DEPTH[from] ? QUESTION : openerOf(model, from));
    });
  }, [model]);
  const over = model.over.value;
  useEffect(() => {
    const { activeElement } = document;
    if (over && (activeElement === document.body || activeElement?.matches(":disabled") === true))
      focusOn(QUESTION);
  }, [over]);
};
