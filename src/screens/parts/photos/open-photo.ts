/** Which photo is open, as a step of the browser's history: Back closes it, a page loaded again shows it again. */
import { type Signal, signal } from "@preact/signals";
import { useState } from "preact/hooks";
import { type PanelSteps, useSteps } from "../panel-steps.ts";

/** The id of the open photo, or null. */
type Open = Signal<string | null>;

interface Step {
  readonly photo: string | null;
}

/** The photo at which the browser's history stands; it outlives a reload. */
const stepNow = (): Step => {
  const state: unknown = history.state;
  const photo = typeof state === "object" && state !== null && "photo" in state ? state.photo : null;
  return { photo: typeof photo === "string" ? photo : null };
};

const steps = (open: Open): PanelSteps<Step> => ({
  now: () => ({ photo: open.value }),
  kept: stepNow,
  depth: (step) => (step === null || step.photo === null ? 0 : 1),
  same: (a, b) => a.photo === b.photo,
  state: (step) => (step.photo === null ? null : step),
  begin: (step) => {
    open.value = step?.photo ?? null;
  },
  arrive: (step) => {
    open.value = step?.photo ?? null;
  },
  leave: () => {
    open.value = null;
  },
});

/** The open photo: written to, it opens or closes one, and history follows. */
export const useOpenPhoto = (): Open => {
  const [open] = useState(() => signal(stepNow().photo));
  useSteps(open, steps);
  return open;
};
