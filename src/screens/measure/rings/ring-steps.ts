/** Panels of a ring as steps of the browser's history: Back closes the panel before it leaves the ring. */
import { effect } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Panel, RingModel } from "./ring-model.ts";

/** How many steps above the ring itself each panel lies. */
const DEPTH: Readonly<Record<Panel, number>> = {
  keys: 0,
  start: 1,
  level: 1,
  pour: 1,
  gone: 1,
  "refill-water": 1,
  "refill-after": 1,
  happened: 1,
  lost: 1,
  stop: 1,
  rose: 1,
  doubts: 1,
  readings: 1,
  // A reading is corrected from the list of all readings, and leads back there.
  correct: 2,
};

interface Step {
  readonly panel: Panel;
  readonly about: string;
}

const isPanel = (name: unknown): name is Panel => typeof name === "string" && Object.hasOwn(DEPTH, name);

/** The step that the browser stands at; it outlives a reload. */
const stepNow = (): Step => {
  const state: unknown = history.state;
  if (typeof state === "object" && state !== null && "ringPanel" in state && "about" in state) {
    const { ringPanel, about } = state;
    if (isPanel(ringPanel) && typeof about === "string") return { panel: ringPanel, about };
  }
  return { panel: "keys", about: "" };
};

/**
 * Keeps panel and history in step. Closing a panel by a key of its own goes back by its step, so that no step
 * is left over that Back would seem to do nothing at. A page that is loaded again inside a panel opens it
 * again.
 */
export const useRingSteps = (model: RingModel): void => {
  useEffect(() => {
    const at = stepNow();
    if (at.panel !== "keys") model.open(at.panel, at.about);
    // Going back takes a moment; what is asked for meanwhile is looked at when the browser has arrived.
    let going = false;
    const follow = (): void => {
      const panel = model.panel.value;
      const about = model.about.value;
      if (going) return;
      const now = stepNow();
      const up = DEPTH[panel] - DEPTH[now.panel];
      if (up > 0) history.pushState({ ringPanel: panel, about }, "");
      else if (up < 0) {
        going = true;
        history.go(up);
      } else if (panel !== now.panel || about !== now.about)
        history.replaceState(panel === "keys" ? null : { ringPanel: panel, about }, "");
    };
    const stop = effect(follow);
    const arrived = (): void => {
      if (going) {
        going = false;
        follow();
        return;
      }
      const { panel, about } = stepNow();
      model.open(panel, about);
    };
    const onEscape = (event: KeyboardEvent): void => {
      if (event.key !== "Escape" || model.panel.value === "keys") return;
      event.preventDefault();
      model.close();
    };
    addEventListener("popstate", arrived);
    addEventListener("keydown", onEscape);
    return () => {
      stop();
      removeEventListener("popstate", arrived);
      removeEventListener("keydown", onEscape);
    };
  }, [model]);
};
