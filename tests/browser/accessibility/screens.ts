/** What the tests of all screens share: a browser on the sample farm, and what it sees of a screen. */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { putRows } from "../../bench/seed.ts";
import { type ChromiumDriver, startChromium } from "../drivers/chromium.ts";
import { untilControlled } from "../drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";
import { handsOn, standsStill } from "../screens/on-phone.ts";
import { watchCanvases } from "./canvases.ts";
import { watchMoves } from "./moves.ts";
import type { SampleFarm } from "./sample.ts";
import { wholeFarm } from "./sample-whole.ts";

/** A phone on the sample farm. */
export interface OnFarm {
  readonly chromium: ChromiumDriver;
  readonly host: BuiltServer;
  readonly addresses: SampleFarm["addresses"];
  /** Opens a screen by its name and waits until it stands still. */
  readonly show: (screen: string) => Promise<void>;
  /** The same, with the app started anew at its address. */
  readonly startAt: (screen: string) => Promise<void>;
  /** Leaves what stands on the screen, and puts the store back as it was when the app was started. */
  readonly begin: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Starts the app on the sample farm in one of the themes. */
export const onFarm = async (theme: "daylight" | "dusk"): Promise<OnFarm> => {
  const host: BuiltServer = await serveBuilt({ directory: builtFolder, under: "/" });
  const chromium = await startChromium();
  const { rows, addresses } = wholeFarm();
  await chromium.open(host.url);
  // Left before it is installed, the page would take an error of the half-done installation along.
  await untilControlled(chromium);
  await putRows(chromium, rows, { theme });
  await watchCanvases(chromium);
  await watchMoves(chromium);
  await chromium.reload();
  const putBack = await keepStore(chromium);
  const addressOf = (screen: string): string => {
    const address = addresses[screen];
    if (address === undefined) throw new Error(`There is no screen "${screen}"`);
    return address;
  };
  return {
    chromium,
    host,
    begin: async () => {
      await handsOn(chromium).goTo("#/welcome");
      await putBack();
    },
    addresses,
    show: async (screen) => {
      await handsOn(chromium).goTo(addressOf(screen));
      await standsStill(chromium, screen);
    },
    startAt: async (screen) => {
      await handsOn(chromium).goTo(addressOf(screen));
      await chromium.reload();
      await standsStill(chromium, screen);
    },
    close: async () => {
      await host.close();
      await chromium.close();
    },
  };
};

/** What lies in the store, and how it is put back. */
const keepStore = async (chromium: ChromiumDriver): Promise<() => Promise<void>> => {
  const kept = await chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve) => {
        request.onsuccess = () => resolve(request.result);
      });
    const all: Record<string, [IDBValidKey | null, unknown][]> = {};
    for (const name of db.objectStoreNames) {
      const store = db.transaction(name).objectStore(name);
      const [keys, rows] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
      all[name] = rows.map((row, at) => [store.keyPath === null ? (keys[at] ?? null) : null, row]);
    }
    db.close();
    return JSON.stringify(all);
  });
  return () =>
    chromium.run(async (text) => {
      const all: Record<string, [IDBValidKey | null, unknown][]> = JSON.parse(text);
      const db = await new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open("mulchmark");
        request.onsuccess = () => resolve(request.result);
      });
      const tx = db.transaction([...db.objectStoreNames], "readwrite");
      for (const [name, rows] of Object.entries(all)) {
        const store = tx.objectStore(name);
        store.clear();
        for (const [key, row] of rows) store.put(row, key ?? undefined);
      }
      await new Promise<void>((resolve, reject) => {
        tx.oncomplete = () => resolve();
        tx.onabort = () => reject(tx.error);
      });
      db.close();
      sessionStorage.clear();
      return undefined;
    }, kept);
};

/** A target on the screen that is smaller than it should be. */
export interface Target {
  readonly what: string;
  /** It is a key that counts. */
  readonly counts: boolean;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Every target that can be seen. A tick or a half of a switch is touched at its label. */
export const targets = (chromium: ChromiumDriver): Promise<Target[]> =>
  chromium.run(() => {
    const found = new Set<Element>();
    for (const one of document.querySelectorAll(
      "a[href], button, input, textarea, select, summary, [role=button], [role=link], [tabindex='0']",
    ))
      found.add(one.matches("input[type=radio], input[type=checkbox]") ? (one.closest("label") ?? one) : one);
    return [...found]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest(".out-of-sight"))
      .map((one) => {
        const { width, height } = one.getBoundingClientRect();
        const what = `${one.tagName} ${one.className} "${(one.textContent ?? "").trim().slice(0, 40)}"`;
        const counts = one.matches(".answer");
        return { what, counts, widthPx: Math.round(width * 10) / 10, heightPx: Math.round(height * 10) / 10 };
      });
  });

/** What reaches beyond the right edge of the screen; empty when nothing can be scrolled sideways. */
export const overflowing = (chromium: ChromiumDriver): Promise<string[]> =>
  chromium.run(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const beyond = [...document.querySelectorAll("#app *")].filter(
      (one) =>
        one.checkVisibility() &&
        !one.closest(".out-of-sight") &&
        // A map is drawn beyond its own edge and cut off there; the strip of open holes scrolls by itself.
        !one.matches(".leaflet-container *, .open-holes *") &&
        one.getBoundingClientRect().right > clientWidth + 0.5,
    );
    return scrollWidth > clientWidth || beyond.length > 0
      ? [
          `${scrollWidth} px of ${clientWidth} px`,
          ...beyond.slice(0, 3).map((one) => one.outerHTML.slice(0, 120)),
        ]
      : [];
  });

/** Which part of the height is covered by what is stuck to the edges of the screen. */
export const covered = (chromium: ChromiumDriver): Promise<number> =>
  chromium.run(() => {
    const stuck = [...document.querySelectorAll(".foot, .foot .actions, .bars, .next-reading")].filter(
      (one) => ["sticky", "fixed"].includes(getComputedStyle(one).position) && one.checkVisibility(),
    );
    const heights = stuck.map((one) => one.getBoundingClientRect().height);
    return heights.reduce((sum, one) => sum + one, 0) / innerHeight;
  });

const axeSource = readFileSync(
  resolve(import.meta.dirname, "../../../node_modules/axe-core/axe.min.js"),
  "utf8",
);

/** What the checker of accessibility says of a screen. */
export interface Audit {
  /** What is wrong in earnest, one line for each rule and element. */
  readonly faults: readonly string[];
  /** What it cannot judge by itself: the rule, why not, and the element. */
  readonly open: readonly { readonly rule: string; readonly why: string; readonly html: string }[];
}

/** Asks the checker of accessibility about the screen. */
export const audit = async (chromium: ChromiumDriver, only: readonly string[] = []): Promise<Audit> => {
  // Put in by the browser's own debugger, which the policy does not bind; nothing is loaded by the page.
  if (!(await chromium.run(() => Reflect.has(globalThis, "axe")))) await chromium.page.evaluate(axeSource);
  return chromium.run(async (rules) => {
    const axe: unknown = Reflect.get(globalThis, "axe");
    const { violations, incomplete } = await (
      axe as { run: (where: Document, options: object) => Promise<AxeAnswer> }
    ).run(document, {
      rules: { "color-contrast-enhanced": { enabled: true } },
      resultTypes: ["violations", "incomplete"],
      ...(rules.length === 0 ? {} : { runOnly: [...rules] }),
    });
    const shortly = (html: string): string => html.slice(0, 160);
    return {
      faults: violations
        .filter(({ impact }) => impact === "serious" || impact === "critical")
        .flatMap(({ id, help, nodes }) => nodes.map(({ html }) => `${id}: ${help}: ${shortly(html)}`)),
      open: incomplete.flatMap(({ id, nodes }) =>
        nodes.map(({ html, any }) => ({
          rule: id,
          why: any.map(({ data }) => data?.messageKey ?? "").find((one) => one !== "") ?? "",
          html: shortly(html),
        })),
      ),
    };
  }, only);
};

interface AxeFinding {
  readonly id: string;
  readonly impact: string | null;
  readonly help: string;
  readonly nodes: readonly {
    readonly html: string;
    readonly any: readonly { readonly data: { readonly messageKey?: string } | null }[];
  }[];
}

interface AxeAnswer {
  readonly violations: readonly AxeFinding[];
  readonly incomplete: readonly AxeFinding[];
}
