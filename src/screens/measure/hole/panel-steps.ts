/** The panels of a hole as steps of the browser's history. */
import { LAYERS } from "../../../record/hole/entries.ts";
import { type PanelFocus, usePanelFocus } from "../../parts/panel-focus.ts";
import { type PanelSteps, useSteps } from "../../parts/panel-steps.ts";
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

const steps = (model: HoleModel): PanelSteps<Stand> => ({
  now: () => {
    const stand = { panel: model.panel.value, layer: model.layer.value, task: model.task.value };
    // Before the entries are read nobody knows where work stopped.
    return model.stored.value === undefined ? null : stand;
  },
  kept: standNow,
  depth: (stand) => DEPTH[stand?.panel.name ?? "none"],
  same: (a, b) =>
    a.panel.name === b.panel.name &&
    a.panel.about === b.panel.about &&
    a.layer === b.layer &&
    a.task === b.task,
  state: ({ panel, layer, task }) => ({ panel: panel.name, about: panel.about, layer, task }),
  begin: (stand) => {
    if (stand !== null) model.standAt(stand);
  },
  arrive: (stand) => {
    const { name, about } = stand?.panel ?? NO_PANEL;
    model.open(name, about);
  },
  leave: model.leave,
});

/** Keeps the panels, the layer and the task of a hole in step with the browser's history. */
export const usePanelSteps = (model: HoleModel): void => useSteps(model, steps);

const focus = (model: HoleModel): PanelFocus<Stand["panel"]> => ({
  now: () => model.panel.value,
  same: (a, b) => a.name === b.name,
  depth: ({ name }) => DEPTH[name],
  opener: ({ name, about }) => (name === "number" ? `[data-count="${about}"]` : `[data-opens="${name}"]`),
});

/** Moves the focus along with the panels of a hole. */
export const useHoleFocus = (model: HoleModel): void => usePanelFocus(model, focus);
