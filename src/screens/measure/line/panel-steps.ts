/** The panels of a line as steps of the browser's history. */
import { type PanelSteps, useSteps } from "../../parts/panel-steps.ts";
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

const steps = (model: LineModel): PanelSteps<Step> => ({
  now: () => ({ panel: model.asking.value, mark: model.correcting.value }),
  kept: stepNow,
  depth: (step) => DEPTH[step?.panel ?? "marks"],
  same: (a, b) => a.panel === b.panel && (a.panel === "marks" || a.mark === b.mark),
  state: (step) => step,
  begin: (step) => {
    if (step !== null && step.panel !== "marks") model.ask(step.panel, step.mark);
  },
  arrive: (step) => model.ask(step?.panel ?? "marks", step?.mark ?? 0),
  leave: model.leavePanel,
});

/** Keeps the panels of a line and the browser's history in step. */
export const usePanelSteps = (model: LineModel): void => useSteps(model, steps);
