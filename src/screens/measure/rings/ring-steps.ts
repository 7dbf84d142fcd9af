/** The panels of a ring as steps of the browser's history. */
import { type PanelFocus, usePanelFocus } from "../../parts/panel-focus.ts";
import { type PanelSteps, useSteps } from "../../parts/panel-steps.ts";
import type { Panel, RingModel, Shown } from "./ring-model.ts";

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

const steps = (model: RingModel): PanelSteps<Step> => ({
  now: () => ({ panel: model.panel.value, about: model.about.value }),
  kept: stepNow,
  depth: (step) => DEPTH[step?.panel ?? "keys"],
  same: (a, b) => a.panel === b.panel && a.about === b.about,
  state: ({ panel, about }) => (panel === "keys" ? null : { ringPanel: panel, about }),
  begin: (step) => {
    if (step !== null && step.panel !== "keys") model.open(step.panel, step.about);
  },
  arrive: (step) => model.open(step?.panel ?? "keys", step?.about ?? ""),
  leave: model.close,
});

/** Keeps the panels of a ring and the browser's history in step. */
export const useRingSteps = (model: RingModel): void => useSteps(model, steps);

interface Stand {
  readonly shown: Shown;
  readonly about: string;
}

const nameOf = ({ shown, about }: Stand): string => {
  if (shown.is === "number") return `number ${shown.look.look.id}`;
  return shown.is === "correct" ? `correct ${about}` : shown.is;
};

const focus = (model: RingModel): PanelFocus<Stand> => ({
  now: () => ({ shown: model.shown.value, about: model.about.value }),
  same: (a, b) => nameOf(a) === nameOf(b),
  depth: ({ shown }) => (shown.is === "number" || shown.is === "first-water" ? 1 : DEPTH[shown.is]),
  opener: ({ shown, about }) => {
    switch (shown.is) {
      case "number":
      case "first-water":
        return '.count-keys [data-answer="look"]';
      case "correct":
        // What was corrected stands in a row of its own, with what stood there before.
        return `[data-reading="${about}"], [data-was~="${about}"]`;
      case "refill-water":
      case "refill-after":
        return '[data-opens="refill"]';
      default:
        return `[data-opens="${shown.is}"]`;
    }
  },
});

/** Moves the focus along with what a ring asks: into a panel that opens, back to its key when it closes. */
export const useRingFocus = (model: RingModel): void => usePanelFocus(model, focus);
