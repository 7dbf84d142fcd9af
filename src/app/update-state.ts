/** What this tab knows about newer builds of the app. */
export interface UpdateState {
  /** The page is in the hands of a service worker: false on a first visit, until it takes over. */
  readonly controlled: boolean;
  /** A newer build is complete on the device and waits to be taken. */
  readonly waiting: boolean;
  /** This tab has asked to take it and waits. */
  readonly asked: boolean;
  /** It was asked for before this tab was loaded again, which did not bring it. */
  readonly askedBefore: boolean;
  /** Another tab took a newer build, this one still runs the build before. */
  readonly changedElsewhere: boolean;
  /** A part of the app that is fetched when first needed could not be had. */
  readonly chunkMissing: boolean;
}

/** What can happen to a tab while builds change. */
export type UpdateEvent =
  | "update-waiting"
  | "take-asked"
  | "asked-before"
  | "controller-changed"
  | "answer-overdue"
  | "chunk-missing";

/** What the tab has to do after an event: at most one thing. */
export type UpdateEffect =
  | "none"
  | "skip-waiting"
  | "reload"
  /** Loads the tab again, which is to go on asking then. */
  | "reload-asking";

/** The state and what to do about it. */
export interface UpdateStep {
  readonly state: UpdateState;
  readonly effect: UpdateEffect;
}

/**
 * The state a tab starts in.
 *
 * @param controlled whether a service worker was in charge when the page was opened
 */
export function startOfUpdates(controlled: boolean): UpdateState {
  return {
    controlled,
    waiting: false,
    asked: false,
    askedBefore: false,
    changedElsewhere: false,
    chunkMissing: false,
  };
}

/**
 * The next state of a tab. A tab reloads only when it has asked for a newer build: a reload that
 * nobody asked for would come in the middle of a count. Where the browser leaves the build before in charge it
 * is loaded again once and goes on asking; then somebody has to ask anew.
 *
 * @example
 * nextOfUpdates(startOfUpdates(true), "controller-changed").state.changedElsewhere; // true
 */
export function nextOfUpdates(state: UpdateState, event: UpdateEvent): UpdateStep {
  switch (event) {
    case "update-waiting":
      return { state: { ...state, waiting: true }, effect: "none" };
    case "take-asked":
      return {
        state: { ...state, asked: true },
        // Nothing waits any more when another tab took it first: this tab has only to catch up.
        effect: state.asked ? "none" : state.waiting ? "skip-waiting" : "reload",
      };
    case "asked-before":
      return state.waiting && !state.asked
        ? { state: { ...state, asked: true, askedBefore: true }, effect: "skip-waiting" }
        : { state, effect: "none" };
    case "controller-changed":
      return controllerChanged(state);
    case "answer-overdue":
      if (!state.asked) return { state, effect: "none" };
      return state.askedBefore
        ? { state: { ...state, asked: false, askedBefore: false }, effect: "none" }
        : { state, effect: "reload-asking" };
    case "chunk-missing":
      return { state: { ...state, chunkMissing: true }, effect: "none" };
  }
}

function controllerChanged(state: UpdateState): UpdateStep {
  const after = { ...state, controlled: true, waiting: false };
  if (state.asked) {
    return { state: after, effect: "reload" };
  }
  // The very first worker takes charge of a page that it was built with: nothing has changed.
  return {
    state: { ...after, changedElsewhere: state.controlled || state.changedElsewhere },
    effect: "none",
  };
}

/** How long a tab leaves between two looks for a newer build: common practice, no source. */
export const hourMs = 3_600_000;

/**
 * Whether a tab that became visible looks for a newer build now: at most once an hour. A clock that
 * was set back counts as due, so that it cannot put the look off for years.
 *
 * @param lastLookMs wall time of the last look, milliseconds
 * @param nowMs wall time now, milliseconds
 * @example
 * isLookDue(0, 3_600_000); // true
 */
export function isLookDue(lastLookMs: number, nowMs: number): boolean {
  return nowMs < lastLookMs || nowMs - lastLookMs >= hourMs;
}
