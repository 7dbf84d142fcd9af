/**
 * Watches the app from inside its page. The function is sent as text and stands at the head of the app's
 * own start script (see `watchedBuild`), so it runs in every engine, offline too, and under the policy.
 */

/** One read-write transaction of the page, as the browser was asked for it and as it answered. */
export interface WatchedWrite {
  readonly stores: readonly string[];
  /** What was asked for, null when nothing was; and what the transaction says of itself. */
  readonly asked: string | null;
  readonly durability: string;
  /** Milliseconds since the page began; `doneAtMs` is null while it is open and when it was aborted. */
  readonly begunAtMs: number;
  doneAtMs: number | null;
  /** Name of the error that it was aborted with. */
  aborted: string | null;
}

/** What the watch has seen in this page so far. */
export interface PageWatch {
  /** When each touch reached an answer key, milliseconds since the page began. */
  readonly touches: number[];
  readonly writes: WatchedWrite[];
  /** How many marks the counting screen says are read (at rings and holes: entries), whenever that changed. */
  readonly shown: { readonly marks: number; readonly atMs: number }[];
  /** Every text that stood in a bar. */
  readonly bars: string[];
}

declare global {
  var watched: PageWatch | undefined;
}

/** What the page posts to its host as soon as it shows it. */
export interface Shown {
  readonly line: string;
  readonly marks: number;
  /** Tells this page from the one before a reload: when it began, milliseconds since 1970. */
  readonly page: number;
}

/** Path, below the app's own folder, that the page posts `Shown` to. */
export const SHOWN_PATH = "shown";

/** Runs in the page before the app. Sees nothing around it: everything that it needs stands inside. */
export function watchPage(): void {
  const watch: PageWatch = { touches: [], writes: [], shown: [], bars: [] };
  globalThis.watched = watch;

  const begin = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...given: Parameters<typeof begin>) {
    const transaction = begin.apply(this, given);
    if (transaction.mode === "readwrite") {
      const write: WatchedWrite = {
        stores: [...transaction.objectStoreNames],
        asked: given[2]?.durability ?? null,
        durability: transaction.durability,
        begunAtMs: performance.now(),
        doneAtMs: null,
        aborted: null,
      };
      watch.writes.push(write);
      transaction.addEventListener("complete", () => {
        write.doneAtMs = performance.now();
      });
      transaction.addEventListener("abort", () => {
        write.aborted = transaction.error?.name ?? "AbortError";
      });
    }
    return transaction;
  };

  addEventListener(
    "click",
    ({ target }) => {
      if (target instanceof Element && target.closest("[data-answer]") !== null) {
        watch.touches.push(performance.now());
      }
    },
    { capture: true },
  );

  const look = () => {
    for (const bar of document.querySelectorAll(".bar p")) {
      const said = bar.textContent ?? "";
      if (!watch.bars.includes(said)) {
        watch.bars.push(said);
      }
    }
    // Rings and holes say how many entries count beside what they show.
    const living = document.querySelector("[data-living]")?.getAttribute("data-living");
    const digits = document.querySelector(".running-question")?.textContent?.replace(/\D/g, "") ?? "";
    if (living == null && digits === "") {
      return;
    }
    // The question names the mark that comes next as long as the rope's pointer stands somewhere.
    const marks =
      living == null
        ? Number(digits) - (document.querySelector(".rope-here") === null ? 0 : 1)
        : Number(living);
    if (marks === (watch.shown.at(-1)?.marks ?? -1)) {
      return;
    }
    watch.shown.push({ marks, atMs: performance.now() });
    const line = location.hash.split("/")[2] ?? "";
    const body = JSON.stringify({ line, marks, page: performance.timeOrigin });
    fetch("./shown", { method: "POST", keepalive: true, body }).catch(() => undefined);
  };
  new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true });
}
