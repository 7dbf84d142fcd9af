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

/** How long a tab waits for the newer build to take charge before it reloads all the same. Own choice, no source. */
const overdueMs = 5000;

/**
 * How long nothing was fetched before the newer build is let in. Chromium keeps the build before in charge until a
 * page is loaded again where the newer one is let in while a file is handed out (seen in version 156: in 8 of 10
 * tabs that asked as soon as they were loaded, in none of 12 that waited a second).
 */
const quietMs = 1000;

/** A tab that fetches without end is not waited for longer than this. Own choice, no source. */
const quietAtLatestMs = 5000;

/** Where a tab notes that it asked, while it is loaded again. */
const askedKey = "mulchmark-update-asked";

const state = signal<UpdateState>(startOfUpdates(false));

/** A newer build is on the device, whole, and waits to be taken: offer it. */
export const updateWaiting: ReadonlySignal<boolean> = computed(() => state.value.waiting);

/** It was asked for and is not in charge yet. */
export const updateAsked: ReadonlySignal<boolean> = computed(() => state.value.asked);

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
  const askedBefore = wasAsked();
  registered.addEventListener("waiting", ({ wasWaitingBeforeRegister }) => {
    happened("update-waiting");
    if (askedBefore && wasWaitingBeforeRegister === true) happened("asked-before");
  });
  whenIdle(() => registered.register().then(lookAgainWhenSeen, () => undefined));
}

/**
 * Takes the newer build: this tab reloads as soon as it is in charge, or after five seconds, and then goes on asking
 * once. Other tabs do not reload, they see `changedElsewhere`.
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
  } else if (effect === "reload-asking") {
    noteAsked();
    location.reload();
  } else if (effect === "skip-waiting") {
    void whenQuiet().then(() => {
      workbox?.messageSkipWaiting();
      setTimeout(() => happened("answer-overdue"), overdueMs);
    });
  }
}

/** Resolves once nothing was fetched for a while: at once where that is so already. */
function whenQuiet(): Promise<void> {
  return new Promise((resolve) => {
    const latestMs = performance.now() + quietAtLatestMs;
    let fetchedMs = 0;
    const watch = new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries())
        fetchedMs = Math.max(fetchedMs, startTime + duration);
    });
    // The load of the page itself counts as well.
    for (const type of ["navigation", "resource"]) watch.observe({ type, buffered: true });
    const look = (): void => {
      const leftMs = Math.min(fetchedMs + quietMs, latestMs) - performance.now();
      if (leftMs > 0) {
        setTimeout(look, leftMs);
        return;
      }
      watch.disconnect();
      resolve();
    };
    // What was fetched before is told in a task of its own.
    setTimeout(look, 0);
  });
}

function noteAsked(): void {
  try {
    sessionStorage.setItem(askedKey, "yes");
  } catch {
    // Refused: somebody has to ask again.
  }
}

/** Whether this tab asked before it was loaded again. True once. */
function wasAsked(): boolean {
  try {
    const asked = sessionStorage.getItem(askedKey) !== null;
    sessionStorage.removeItem(askedKey);
    return asked;
  } catch {
    return false;
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
