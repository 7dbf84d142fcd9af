/** Where the focus goes on the counting screen when what it stood on goes away. */
import { useEffect } from "preact/hooks";
import { focusOn, type PanelFocus, QUESTION, usePanelFocus } from "../../parts/panel-focus.ts";
import type { Asking, LineModel } from "./model.ts";
import { DEPTH } from "./panel-steps.ts";

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

const focus = (model: LineModel): PanelFocus<Asking> => ({
  now: () => model.asking.value,
  same: Object.is,
  depth: (panel) => DEPTH[panel],
  opener: (panel) => openerOf(model, panel),
});

/**
 * Moves the focus along with panels. When the line is over its keys are gone; the focus goes to the words that
 * say so, never to a key, or an Enter meant for the last mark would leave the line.
 */
export const useLineFocus = (model: LineModel): void => {
  usePanelFocus(model, focus);
  const over = model.over.value;
  useEffect(() => {
    const { activeElement } = document;
    if (over && (activeElement === document.body || activeElement?.matches(":disabled") === true))
      focusOn(QUESTION);
  }, [over]);
};
