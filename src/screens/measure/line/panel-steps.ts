/** Panels as steps of the browser's history: Back closes the panel that is open before it leaves the line. */
import { effect } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Asking, LineModel } from "./model.ts";

/** How many steps above the line itself each panel lies. */
export const DEPTH: Readonly<Record<Asking, number>> = {
  marks: 0,
  "set-mark": 1,
  "end-at": 1,
  rope: 1,
  thickness: 1,
  doubts: 1,
  // A mark is corrected from the list of all marks, and leads back there.
  correct: 2,
};

interface Step {
  readonly panel: Asking;
  readonly mark: number;
}

const isPanel = (name: unknown): name is Asking => typeof name === "string" && name in DEPTH;

/** The step that the browser stands at; it outlives a reload. */
const stepNow = (): Step => {
  const state: unknown = history.state;
  if (typeof state === "object" && state !== null && "panel" in state && "mark" in state) {
    const { panel, mark } = state;
    if (isPanel(panel) && typeof mark === "number") return { panel, mark };
  }
  return { panel: "marks", mark: 0 };
};

/**
 * Keeps panel and history in step. Opening a panel adds a step; closing it by a key of its own goes back by
 * it, so that no step is left over that Back would seem to do nothing at. A page that is loaded again
 * inside a panel opens it again.
 */
export const usePanelSteps = (model: LineModel): void => {
  useEffect(() => {
    const at = stepNow();
    if (at.panel !== "marks") model.ask(at.panel, at.mark);
    // Going back takes a moment; what is asked for meanwhile is looked at when the browser has arrived.
    let going = false;
    const follow = (): void => {
      const panel = model.asking.value;
      const mark = model.correcting.value;
      if (going) return;
      const now = stepNow();
      const up = DEPTH[panel] - DEPTH[now.panel];
      if (up > 0) history.pushState({ panel, mark }, "");
      else if (up < 0) {
        going = true;
        history.go(up);
      } else if (panel !== now.panel || (panel !== "marks" && mark !== now.mark))
        history.replaceState({ panel, mark }, "");
    };
    const stop = effect(follow);
    const arrived = (): void => {
      if (going) {
        going = false;
        follow();
        return;
      }
      const { panel, mark } = stepNow();
      model.ask(panel, mark);
    };
    const closeByKey = (event: KeyboardEvent): void => {
      if (event.key !== "Escape" || model.asking.value === "marks") return;
      event.preventDefault();
      model.leavePanel();
    };
    addEventListener("popstate", arrived);
    addEventListener("keydown", closeByKey);
    return () => {
      stop();
      removeEventListener("popstate", arrived);
      removeEventListener("keydown", closeByKey);
    };
  }, [model]);
};
