/** The one panel of the board, for the numbers that are missing: a step of the browser's history. */
import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { type PanelFocus, usePanelFocus } from "../../parts/panel-focus.ts";
import { type PanelSteps, useSteps } from "../../parts/panel-steps.ts";
import type { BoardModel } from "./board-model.ts";
import { type LookOnBoard, openLooksOf } from "./open-looks.ts";

export interface BoardPanel {
  /** Numbers of open looks are written down just now. */
  readonly writing: Signal<boolean>;
  /** All open looks of the day, the oldest first. */
  readonly open: ReadonlySignal<readonly LookOnBoard[]>;
}

/** Makes it, closed. */
export const boardPanel = ({ rings }: Pick<BoardModel, "rings">): BoardPanel => ({
  writing: signal(false),
  open: computed(() => openLooksOf(rings.value.map(({ ring }) => ring.value))),
});

const steps = ({ writing }: BoardPanel): PanelSteps<boolean> => ({
  now: () => writing.value,
  kept: () => {
    const state: unknown = history.state;
    return typeof state === "object" && state !== null && "boardPanel" in state;
  },
  depth: (open) => (open === true ? 1 : 0),
  same: Object.is,
  state: (open) => (open ? { boardPanel: true } : null),
  begin: (open) => {
    writing.value = open === true;
  },
  arrive: (open) => {
    writing.value = open === true;
  },
  leave: () => {
    writing.value = false;
  },
});

/** Keeps the panel and the browser's history in step. */
export const useBoardSteps = (panel: BoardPanel): void => useSteps(panel, steps);

/** The look whose number is asked for; empty while the board itself stands there. */
const focus = ({ writing, open }: BoardPanel): PanelFocus<string> => ({
  now: () => (writing.value ? (open.value[0]?.look.look.id ?? "") : ""),
  same: Object.is,
  depth: (look) => (look === "" ? 0 : 1),
  opener: () => (open.value.length > 0 ? '[data-opens="numbers"]' : ".board-row button"),
});

/** Moves the focus into the panel, on to the next number, and back to its key or to the ring that is read next. */
export const useBoardFocus = (panel: BoardPanel): void => usePanelFocus(panel, focus);
