/** From the touch to the disk, beside a bare strict put of the same run. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../src/screens/parts/route.ts";
import { type ChromiumDriver, startChromium } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { percentile, state } from "./figures.ts";
import { beginSample, fieldOf, lineOf, putRows } from "./seed.ts";
import { slowed } from "./slowed.ts";

const lines = 2;
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

/** What the bare puts took. */
interface Bare {
  readonly took: number[];
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
  addresses = Array.from({ length: 2 * lines }, () =>
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

/** Bare strict puts that a touch is held against, on the same page, at the same pace, by a touch too. */
const BARES = {
  /** A few bytes, committed at once: the least that a browser can be asked for. */
  smallest: { marks: 0, commits: true },
  /** As large as the row that a touch writes when its line is half full, committed at once. */
  "as large": { marks: 50, commits: true },
} as const;
type BareName = keyof typeof BARES;

/** Lays a key over the question above the keys, where the app answers nothing; it does a bare strict put. */
const layOutBare = (kind: { readonly marks: number; readonly commits: boolean }): Promise<void> =>
  chromium.run(async ({ marks: many, commits }) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open("bare", 1);
      request.onupgradeneeded = () => request.result.createObjectStore("rows", { keyPath: "id" });
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const each = (value: (mark: number) => string | number) => ({
      each: Array.from({ length: many }, (_, mark) => value(mark)),
    });
    const columns = {
      id: each((mark) => mark.toString(16).padStart(16, "0")),
      n: each((mark) => mark + 1),
      mark: each((mark) => mark + 1),
      lookedAtMs: each((mark) => 1.7e12 + mark),
      enteredAtMs: each((mark) => 1.7e12 + mark),
      monoMs: each((mark) => mark * 1000),
      cover: { all: "residue" },
    };
    const row = many === 0 ? { id: "bare", value: 1 } : { id: "bare", count: many, columns };
    const took: number[] = [];
    globalThis.bare = { took };
    const key = document.createElement("button");
    key.className = "key bare";
    Object.assign(key.style, { position: "fixed", top: "0", left: "0", width: "120px", zIndex: "9" });
    document.body.append(key);
    key.addEventListener("click", () => {
      const begunMs = performance.now();
      const tx = db.transaction("rows", "readwrite", { durability: "strict" });
      tx.objectStore("rows").put(row);
      if (commits) tx.commit();
      tx.oncomplete = () => took.push(performance.now() - begunMs);
    });
  }, kind);

const barePuts = async (name: BareName): Promise<number[]> => {
  await layOutBare(BARES[name]);
  await tapAgainAndAgain(".bare");
  await until(
    "all bare rows are on the disk",
    () => chromium.run((all) => (globalThis.bare?.took.length ?? 0) >= all, marks),
    60_000,
  );
  return chromium.run(() => {
    for (const key of document.querySelectorAll(".bare")) key.remove();
    return globalThis.bare?.took ?? [];
  });
};

it.each([1, 4])(
  "has a mark on the disk in little more than a bare strict put, slowed %d times",
  async (slower) => {
    await slowed(chromium.page, slower);
    const touches: number[] = [];
    const bare: Record<BareName, number[]> = { smallest: [], "as large": [] };
    // Taken in turn, so that what else the machine does falls on all of them.
    for (const address of addresses.splice(0, lines)) {
      touches.push(...(await fillLine(address)));
      for (const name of Object.keys(BARES) as BareName[]) bare[name].push(...(await barePuts(name)));
    }
    const touch = percentile(touches, 0.95);
    const at = `${slower}x`;
    state({ name: `touch to committed, median, ${at}`, value: percentile(touches, 0.5), unit: "ms" });
    state({ name: `touch to committed, p95, ${at}`, value: touch, unit: "ms", bound: 50 });
    const late = touches.filter((_, index) => index % marks >= marks - 20);
    state({
      name: `touch to committed, marks 81 to 100, p95, ${at}`,
      value: percentile(late, 0.95),
      unit: "ms",
    });
    for (const name of Object.keys(BARES) as BareName[]) {
      const [half, put] = [percentile(bare[name], 0.5), percentile(bare[name], 0.95)];
      state({ name: `bare strict put, ${name}, median, ${at}`, value: half, unit: "ms" });
      state({ name: `bare strict put, ${name}, p95, ${at}`, value: put, unit: "ms" });
      state({
        name: `touch against bare put, ${name}, medians, ${at}`,
        value: percentile(touches, 0.5) / half,
        unit: "times",
      });
      state({ name: `touch against bare put, ${name}, p95, ${at}`, value: touch / put, unit: "times" });
    }
    expect(touch).toBeLessThanOrEqual(50);
  },
);
