/** Panels as steps of the browser's history: Back closes the panel that is open before it leaves the hole. */
import { effect } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { LAYERS } from "../../../record/hole/entries.ts";
import type { HoleModel } from "./model.ts";
import { NO_PANEL, PANELS, type PanelName, type Stand } from "./stand.ts";

/** How many steps above the hole itself each panel lies. */
const DEPTH: Readonly<Record<PanelName, number>> = {
  none: 0,
  count: 1,
  numbers: 1,
  people: 1,
  litres: 1,
  conditions: 1,
  doubts: 1,
  // Both lead back to the panel that they were opened from.
  number: 2,
  temperature: 2,
};

const oneOf = <T extends string>(all: readonly T[], text: unknown): T | undefined =>
  all.find((one) => one === text);

/** Where the browser stands; it outlives a reload. Null on a step that was not made here. */
const standNow = (): Stand | null => {
  const state: unknown = history.state;
  if (typeof state !== "object" || state === null) return null;
  const { panel, about, layer, task } = state as { readonly [name: string]: unknown };
  const name = oneOf(PANELS, panel);
  const at = oneOf(LAYERS, layer);
  const doing = oneOf(["find", "place"] as const, task);
  if (name === undefined || at === undefined || doing === undefined || typeof about !== "string") return null;
  return { panel: { name, about }, layer: at, task: doing };
};

/**
 * Keeps hole and history in step. Opening a panel adds a step; closing it by a key of its own goes back by
 * it, so that no step is left over that Back would seem to do nothing at. A page that is loaded again
 * comes back to the same layer, the same task and the same panel.
 */
export const usePanelSteps = (model: HoleModel): void => {
  useEffect(() => {
    const at = standNow();
    if (at !== null) model.standAt(at);
    // Going back takes a moment; what is asked for meanwhile is looked at when the browser has arrived.
    let going = false;
    const follow = (): void => {
      const panel = model.panel.value;
      const layer = model.layer.value;
      const task = model.task.value;
      // Before the entries are read nobody knows where work stopped.
      if (going || model.stored.value === undefined) return;
      const now = standNow();
      const state = { panel: panel.name, about: panel.about, layer, task };
      const up = DEPTH[panel.name] - DEPTH[now?.panel.name ?? "none"];
      if (up > 0) history.pushState(state, "");
      else if (up < 0) {
        going = true;
        history.go(up);
      } else if (
        now === null ||
        now.panel.name !== panel.name ||
        now.panel.about !== panel.about ||
        now.layer !== layer ||
        now.task !== task
      )
        history.replaceState(state, "");
    };
    const stop = effect(follow);
    const arrived = (): void => {
      if (going) {
        going = false;
        follow();
        return;
      }
      const { name, about } = standNow()?.panel ?? NO_PANEL;
      model.open(name, about);
    };
    const leaveByKey = (event: KeyboardEvent): void => {
      if (event.key !== "Escape" || model.panel.value.name === "none") return;
      event.preventDefault();
      model.leave();
    };
    addEventListener("popstate", arrived);
    addEventListener("keydown", leaveByKey);
    return () => {
      stop();
      removeEventListener("popstate", arrived);
      removeEventListener("keydown", leaveByKey);
    };
  }, [model]);
};

/**
 * Moves the focus along with panels: into one that opens, back to its key when it closes. Without this a
 * keyboard stands at the top of the page again after every panel, and a screen reader says nothing.
 */
export const usePanelFocus = (model: HoleModel): void => {
  useEffect(() => {
    let before = model.panel.peek();
    return effect(() => {
      const now = model.panel.value;
      const from = before;
      before = now;
      if (now.name === from.name) return;
      const opener = from.name === "number" ? `[data-count="${from.about}"]` : `[data-opens="${from.name}"]`;
      const target = DEPTH[now.name] > DEPTH[from.name] ? ".running-question" : opener;
      // The keys of the next panel stand there once it is drawn.
      requestAnimationFrame(() => {
        const found = document.querySelector<HTMLElement>(target);
        (found ?? document.querySelector<HTMLElement>(".running-question"))?.focus();
      });
    });
  }, [model]);
};
