/** From the touch to the disk, beside a bare strict put of the same run. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../src/screens/parts/route.ts";
import { type ChromiumDriver, startChromium } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { percentile, state } from "./figures.ts";
import { beginSample, fieldOf, lineOf, putRows } from "./seed.ts";
import { slowed } from "./slowed.ts";

const lines = 3;
const marks = 100;
/** Between two touches, in milliseconds: four a second, a quick counter. */
const paceMs = 250;

/** What the page notes of itself, without a change to the app. */
interface Noted {
  /** Monotonic time at which the handlers of each touch began. */
  readonly touches: number[];
  /** Monotonic time at which each strict transaction on entries was complete. */
  readonly commits: number[];
  readonly durabilities: string[];
}

/** The bare put, laid open in the page. */
interface Bare {
  readonly touched: number[];
  readonly put: () => Promise<number>;
}

declare global {
  var noted: Noted | undefined;
  var bare: Bare | undefined;
}

let chromium: ChromiumDriver;
let host: BuiltServer;
let addresses: string[];

beforeAll(async () => {
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  chromium = await startChromium();
  await chromium.context.addInitScript(() => {
    const noted: Noted = { touches: [], commits: [], durabilities: [] };
    globalThis.noted = noted;
    addEventListener(
      "click",
      (event) => {
        if (event.target instanceof Element && event.target.closest("[data-answer]") !== null)
          noted.touches.push(performance.now());
      },
      { capture: true },
    );
    const begin = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (stores, mode, options) {
      const tx = begin.call(this, stores, mode, options);
      if (mode === "readwrite" && tx.objectStoreNames.contains("entries"))
        tx.addEventListener("complete", () => {
          noted.commits.push(performance.now());
          noted.durabilities.push(tx.durability);
        });
      return tx;
    };
  });
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: true, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks, spacingM: 0.15 });
  addresses = Array.from({ length: lines }, () =>
    href({ at: "line", line: add("observation", lineOf({ visit, field, strip, rope })) }),
  );
  await chromium.open(host.url);
  await until(
    "the service worker controls the page",
    () => chromium.run(() => navigator.serviceWorker.controller !== null),
    60_000,
  );
  await putRows(chromium, rows());
  await chromium.reload();
  await slowed(chromium.page);
});

afterAll(async () => {
  await host.close();
  await chromium.close();
});

/** Touches the middle of something as often as a line has marks, blind. */
const tapAgainAndAgain = async (selector: string): Promise<void> => {
  const { page } = chromium;
  const box = await page.locator(selector).first().boundingBox();
  if (box === null) throw new Error(`${selector} has no place`);
  for (let mark = 1; mark <= marks; mark++) {
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    await page.waitForTimeout(paceMs);
  }
};

/** Touches the residue key until the line is full, blind: nothing is asked of the page meanwhile. */
const fillLine = async (address: string): Promise<number[]> => {
  const { page } = chromium;
  await chromium.run((to) => {
    location.hash = to;
  }, address);
  await page.waitForSelector("[data-answer=residue]");
  await page.waitForTimeout(1500);
  await chromium.run(() => {
    for (const list of [globalThis.noted?.touches, globalThis.noted?.commits, globalThis.noted?.durabilities])
      list?.splice(0);
  });
  await tapAgainAndAgain("[data-answer=residue]");
  await until(
    "all marks are on the disk",
    () => chromium.run((all) => (globalThis.noted?.commits.length ?? 0) >= all, marks),
    60_000,
  );
  const noted = await chromium.run(() => {
    const { touches = [], commits = [], durabilities = [] } = globalThis.noted ?? {};
    return { touches, commits, durabilities };
  });
  expect(noted.touches).toHaveLength(marks);
  expect(noted.commits).toHaveLength(marks);
  expect(new Set(noted.durabilities)).toEqual(new Set(["strict"]));
  return noted.touches.map((atMs, index) => (noted.commits[index] ?? Number.NaN) - atMs);
};

/**
 * Strict puts of a small row into a small database of its own, on the same page and at the same pace: once
 * by themselves, once each as the answer to a touch on the question above the keys, where the app answers
 * nothing. Only the second has what every touch brings along (the finger on the glass, a frame drawn).
 */
const barePuts = async (): Promise<{ readonly idle: number[]; readonly touched: number[] }> => {
  await chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open("bare", 1);
      request.onupgradeneeded = () => request.result.createObjectStore("rows", { keyPath: "id" });
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    // As large as the row that a touch writes when its line is half full: 50 marks in columns.
    const each = (value: (mark: number) => string | number) => ({
      each: Array.from({ length: 50 }, (_, mark) => value(mark)),
    });
    const row = {
      id: "bare",
      count: 50,
      columns: {
        id: each((mark) => mark.toString(16).padStart(16, "0")),
        n: each((mark) => mark + 1),
        mark: each((mark) => mark + 1),
        lookedAtMs: each((mark) => 1.7e12 + mark),
        enteredAtMs: each((mark) => 1.7e12 + mark),
        monoMs: each((mark) => mark * 1000),
        cover: { all: "residue" },
      },
    };
    globalThis.bare = {
      touched: [],
      put: async () => {
        const begunMs = performance.now();
        const tx = db.transaction("rows", "readwrite", { durability: "strict" });
        tx.objectStore("rows").put(row);
        await new Promise((resolve, reject) => {
          tx.oncomplete = resolve;
          tx.onabort = () => reject(tx.error);
        });
        return performance.now() - begunMs;
      },
    };
    const key = document.createElement("button");
    key.className = "key bare";
    Object.assign(key.style, { position: "fixed", top: "0", left: "0", width: "120px", zIndex: "9" });
    document.body.append(key);
    key.addEventListener("click", async () => {
      const tookMs = await globalThis.bare?.put();
      if (tookMs !== undefined) globalThis.bare?.touched.push(tookMs);
    });
  });
  const idle = await chromium.run(
    async (count, pauseMs) => {
      const took: number[] = [];
      while (took.length < count) {
        await new Promise((resolve) => setTimeout(resolve, pauseMs));
        took.push((await globalThis.bare?.put()) ?? Number.NaN);
      }
      return took;
    },
    marks / 2,
    paceMs,
  );
  await tapAgainAndAgain(".bare");
  await until(
    "all bare rows are on the disk",
    () => chromium.run((all) => (globalThis.bare?.touched.length ?? 0) >= all, marks),
    60_000,
  );
  return { idle, touched: await chromium.run(() => globalThis.bare?.touched ?? []) };
};

it("has a mark on the disk in little more than a bare strict put", async () => {
  const touches: number[] = [];
  const idle: number[] = [];
  const bare: number[] = [];
  // Taken in turn, so that what else the machine does falls on both.
  for (const address of addresses) {
    touches.push(...(await fillLine(address)));
    const puts = await barePuts();
    idle.push(...puts.idle);
    bare.push(...puts.touched);
  }
  const [touch, put] = [percentile(touches, 0.95), percentile(bare, 0.95)];
  state({ name: "touch to committed, median, 4x", value: percentile(touches, 0.5), unit: "ms" });
  state({ name: "touch to committed, p95, 4x", value: touch, unit: "ms", bound: 50 });
  const late = touches.filter((_, index) => index % marks >= marks - 20);
  state({ name: "touch to committed, marks 81 to 100, p95, 4x", value: percentile(late, 0.95), unit: "ms" });
  state({ name: "bare strict put by a touch, median, 4x", value: percentile(bare, 0.5), unit: "ms" });
  state({ name: "bare strict put by a touch, p95, 4x", value: put, unit: "ms" });
  state({ name: "bare strict put on an idle page, p95, 4x", value: percentile(idle, 0.95), unit: "ms" });
  state({
    name: "touch against bare put by a touch, p95, 4x",
    value: touch / put,
    unit: "times",
    bound: 1.5,
  });
  expect(touch).toBeLessThanOrEqual(50);
  expect(touch / put).toBeLessThanOrEqual(1.5);
});
