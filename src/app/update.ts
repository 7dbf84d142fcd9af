import { computed, type ReadonlySignal, signal } from "@preact/signals";
import { Workbox } from "workbox-window";
import {
  isLookDue,
  nextOfUpdates,
  startOfUpdates,
  type UpdateEffect,
  type UpdateEvent,
  type UpdateState,
} from "./update-state.ts";

/** How long a tab waits for the newer build to take charge before it reloads all the same. */
const overdueMs = 5000;

const state = signal<UpdateState>(startOfUpdates(false));

/** A newer build is on the device, whole, and waits to be taken: offer it. */
export const updateWaiting: ReadonlySignal<boolean> = computed(() => state.value.waiting);

/** Another tab took a newer build: say so and offer to reload; never reload by itself. */
export const changedElsewhere: ReadonlySignal<boolean> = computed(() => state.value.changedElsewhere);

/** A part of the app could not be fetched: offer to reload; never reload by itself. */
export const chunkMissing: ReadonlySignal<boolean> = computed(() => state.value.chunkMissing);

let workbox: Workbox | undefined;

/**
 * Registers the service worker once the page has loaded and is idle, and starts watching for newer
 * builds. Never throws and never holds anything up: without service workers, or when the host cannot
 * be reached, the app runs as it is. To be called once, at the start.
 */
export function watchForUpdates(): void {
  window.addEventListener("vite:preloadError", () => happened("chunk-missing"));
  if (!("serviceWorker" in navigator)) {
    return;
  }
  state.value = startOfUpdates(navigator.serviceWorker.controller !== null);
  // Not left to the library, which listens only after the registration: a change between the two
  // would go unseen, and the tab would run an old build without a word.
  navigator.serviceWorker.addEventListener("controllerchange", () => happened("controller-changed"));
  const registered = new Workbox("./sw.js", { scope: "./" });
  workbox = registered;
  registered.addEventListener("waiting", () => happened("update-waiting"));
  whenIdle(() => registered.register().then(lookAgainWhenSeen, () => undefined));
}

/**
 * Takes the newer build: this tab reloads as soon as it is in charge, or after five seconds. Other
 * tabs do not reload, they see `changedElsewhere`.
 */
export function takeUpdate(): void {
  happened("take-asked");
}

function happened(event: UpdateEvent): void {
  const step = nextOfUpdates(state.value, event);
  state.value = step.state;
  carryOut(step.effect);
}

function carryOut(effect: UpdateEffect): void {
  if (effect === "reload") {
    location.reload();
  } else if (effect === "skip-waiting") {
    workbox?.messageSkipWaiting();
    setTimeout(() => happened("answer-overdue"), overdueMs);
  }
}

/** Looks for a newer build when the page becomes visible again, at most once an hour. */
function lookAgainWhenSeen(): void {
  // Registering has just looked.
  let lastLookMs = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && isLookDue(lastLookMs, Date.now())) {
      lastLookMs = Date.now();
      // Without signal the look fails: the next one comes by itself.
      workbox?.update().catch(() => undefined);
    }
  });
}

/** Runs a step after the page has loaded and when nothing else is to be done; at once where the browser has no idle callback (Safari). */
function whenIdle(step: () => unknown): void {
  const soon = () => {
    if ("requestIdleCallback" in window) {
      requestIdleCallback(step, { timeout: 2000 });
    } else {
      setTimeout(step, 0);
    }
  };
  if (document.readyState === "complete") {
    soon();
  } else {
    window.addEventListener("load", soon, { once: true });
  }
}
