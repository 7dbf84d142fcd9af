import type { Seeded } from "./seeded-line.ts";
import type { StoredEntry } from "./stored-line.ts";

/**
 * A page that touches its own keys, for a browser that is started without any driver. It is sent as text
 * and stands before the app in its start script; `putLine` and
 * `readEntries` are put there by the same means.
 */

/** What the page tells its host. */
export interface OwnCount {
  /** `touched` after each touch, `counted` once it has counted on after everything. */
  readonly what: "touched" | "counted";
  readonly line: string;
  /** Times that the page was loaded, the load that put the line there included. */
  readonly loads: number;
  /** Touches before the reload that the app asks for, and after it. */
  readonly touched: number;
  readonly touchedAfter: number;
  /** Touches that had been made when the app put those not yet written aside; null when it never did. */
  readonly touchedBeforeStash: number | null;
  /** With `counted`: what lies in the database then. */
  readonly entries?: readonly StoredEntry[];
}

/** Path, below the app's own folder, that the page posts `OwnCount` to. */
export const OWN_COUNT_PATH = "own-count";

declare global {
  var putLine: ((marks: number) => Promise<Seeded>) | undefined;
  /** Which test is counted, and by which key. */
  var counted: { readonly test: "line" | "ring" | "hole"; readonly key: string } | undefined;
  var readEntries: ((line: string) => Promise<StoredEntry[]>) | undefined;
}

/** Loads, puts a line there, loads again, counts it until the app reloads or enough is counted, counts on. */
export async function countByItself(): Promise<void> {
  const { test, key } = globalThis.counted ?? { test: "line", key: "residue" };
  const most = 80;
  const everyMs = 100;
  const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  const untilThere = async (selector: string) => {
    while (document.querySelector(selector) === null) await wait(50);
  };
  // The name of a window outlives its page and needs no process but its own.
  const state = {
    line: "",
    loads: 0,
    touched: 0,
    touchedAfter: 0,
    touchedBeforeStash: null as number | null,
    ...JSON.parse(window.name || "{}"),
  };
  const keep = () => {
    window.name = JSON.stringify(state);
  };
  state.loads++;
  keep();
  const tell = (what: string, entries?: readonly StoredEntry[]) =>
    fetch("./own-count", { method: "POST", body: JSON.stringify({ what, ...state, entries }) }).catch(
      () => undefined,
    );
  const put = Storage.prototype.setItem;
  Storage.prototype.setItem = function (key, value) {
    if (key.includes("-not-saved:")) {
      state.touchedBeforeStash = state.touched;
      keep();
    }
    put.call(this, key, value);
  };
  const touch = (name: "touched" | "touchedAfter") => {
    document.querySelector<HTMLElement>(`[data-answer=${key}]`)?.click();
    state[name]++;
    keep();
  };

  await untilThere("#app > *");
  if (state.loads === 1) {
    state.line = (await globalThis.putLine?.(1000))?.[test] ?? "";
    keep();
    location.hash = `#/${test}/${state.line}`;
    location.reload();
    return;
  }
  await untilThere(`[data-answer=${key}]`);
  while (state.loads === 2 && state.touched < most) {
    touch("touched");
    void tell("touched");
    await wait(everyMs);
  }
  await wait(3000);
  for (let n = 0; n < 10; n++) {
    touch("touchedAfter");
    await wait(everyMs);
  }
  await wait(2000);
  await tell("counted", await globalThis.readEntries?.(state.line));
}
