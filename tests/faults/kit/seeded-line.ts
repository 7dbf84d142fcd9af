import type { ChromiumTab } from "../../browser/drivers/chromium.ts";
import { type Driver, until, untilStarted } from "../../browser/drivers/driver.ts";
import { storedEntries } from "./stored-line.ts";

/** Ids of what was put into the database. */
export interface Seeded {
  readonly field: string;
  readonly visit: string;
  readonly strip: string;
  readonly rope: string;
  readonly line: string;
  /** A ring that was started, and a hole without worms. */
  readonly ring: string;
  readonly hole: string;
}

/**
 * Puts a field, a visit, a strip, a rope, a line without marks, a ring that was started a minute ago and a
 * hole without worms into the database of the app that is
 * open in this page, by the browser's own interface, and takes the first questions as answered. It is
 * sent into pages as text and sees nothing around it. A new method adds its observation here.
 */
export async function putLine(marks: number): Promise<Seeded> {
  const hex = (bytes: number) =>
    [...crypto.getRandomValues(new Uint8Array(bytes))]
      .map((byte) => byte.toString(16).padStart(2, "0"))
      .join("");
  const device = hex(8);
  const actor = hex(8);
  const nowMs = Date.now();
  const rows: object[] = [];
  const put = (kind: string, body: Record<string, unknown>): string => {
    const id = `${kind}-${hex(16)}`;
    const n = rows.length + 1;
    const keys: Record<string, unknown> = { kind, living: 1, atMs: nowMs };
    for (const name of ["field", "visit", "strip"]) {
      if (typeof body[name] === "string") keys[name] = body[name];
    }
    const stamp = { wallMs: nowMs, counter: n, device };
    const revision = { rev: hex(8), dot: [actor, n], seen: [], stamp, author: null, v: 1, body };
    rows.push({ id, erased: false, revs: [revision], keys });
    return id;
  };
  const field = put("field", {
    name: "Low Ridge",
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  });
  const visit = put("visit", { field, day: "2026-10-14", harvestYear: null });
  const strip = put("strip", {
    field,
    name: "straw left",
    done: ["straw-left"],
    wholeField: false,
    rep: null,
  });
  const rope = put("kit", { type: "rope", name: "R1", marks, spacingM: 0.15 });
  const stood = { position: null, why: "not-asked" };
  const line = put("observation", {
    type: "line",
    visit,
    field,
    strip,
    rope,
    way: "mark-by-mark",
    angleToRowsDeg: 45,
    rowSpacingM: null,
    passWidthM: null,
    place: "between-rows",
    start: stood,
    end: stood,
    person: null,
    fifthKey: null,
    askThickness: false,
    startedAtMs: nowMs,
  });
  const letter = put("kit", {
    type: "ring",
    name: "A",
    insideM: [0.15, null],
    heightsM: [],
    outsideM: null,
  });
  const on = { visit, field, strip, place: "between-rows", person: null, startedAtMs: nowMs, at: stood };
  const ring = put("observation", {
    ...on,
    type: "ring",
    ring: letter,
    outer: null,
    ruler: null,
    bottle: null,
    way: "ruler",
    rulerReads: "water-depth",
    mulch: "kept",
    rimToSoilM: [],
    planMin: [5, 10, 20, 30, 60],
    follows: null,
  });
  const hole = put("observation", {
    ...on,
    type: "hole",
    template: null,
    sidesM: [0.2, 0.2],
    depthM: 0.2,
    method: null,
    landUse: "cropland",
    minutes: null,
    mustardMin: null,
    number: 1,
  });
  const started = {
    id: ring,
    count: 1,
    columns: Object.fromEntries(
      Object.entries({
        v: 2,
        id: hex(8),
        n: 1,
        lookedAtMs: nowMs - 60_000,
        enteredAtMs: nowMs - 60_000,
        monoMs: 1000,
        page: hex(8),
        device,
        by: null,
        type: "start",
        timed: "now",
      }).map(([key, all]) => [key, { all }]),
    ),
  };
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open("mulchmark");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const writing = db.transaction(["records", "entries", "meta"], "readwrite");
  for (const row of rows) writing.objectStore("records").put(row);
  writing.objectStore("entries").put(started);
  writing.objectStore("meta").put({ welcomed: true, toldLocked: true }, "settings");
  await new Promise<void>((resolve, reject) => {
    writing.oncomplete = () => resolve();
    writing.onabort = () => reject(writing.error);
  });
  db.close();
  return { field, visit, strip, rope, line, ring, hole };
}

/**
 * Puts a line without marks, and all that it needs, into the database of an open app, which has to be
 * loaded again to see it.
 *
 * @param ropeMarks how many marks the rope has
 */
export async function seedLine(driver: Driver, ropeMarks: number): Promise<Seeded> {
  await untilStarted(driver);
  return driver.run(putLine, ropeMarks);
}

/** Opens the counting screen of a line as somebody does who comes from another screen. */
export async function goToLine(driver: Driver, line: string): Promise<void> {
  await untilStarted(driver);
  await driver.run((id) => {
    location.hash = `#/line/${id}`;
  }, line);
  await untilCounting(driver);
}

/** Opens the screen of a ring or a hole as somebody does who comes from another screen. */
export async function goToTest(driver: Driver, test: "ring" | "hole", id: string): Promise<void> {
  await untilStarted(driver);
  await driver.run((address) => {
    location.hash = address;
  }, `#/${test}/${id}`);
  await until("the key is there", () =>
    driver.run((what) => document.querySelector(`[data-answer=${what}]`) !== null, KEY_OF[test]),
  );
}

/**
 * Makes the first look at a ring, which brings the number pad: from then on the key to look again stays
 * where it is and can be touched blind.
 */
export async function lookFirst(tab: ChromiumTab, ring: string): Promise<void> {
  await tab.page.tap(`[data-answer=${KEY_OF.ring}]`);
  // The start of the ring is the other entry.
  await until("the look is stored", async () => (await storedEntries(tab, ring)).length === 2);
}

/** The key that is touched blind at each test. */
export const KEY_OF = { ring: "look", hole: "worm" } as const;

/** Waits until the counting keys can be touched. */
export function untilCounting(driver: Driver): Promise<void> {
  return until("the counting keys are there", () =>
    driver.run(() => document.querySelector("[data-answer=residue]") !== null),
  );
}

/** How many marks the counting screen says are read. */
export function shownMarks(driver: Driver): Promise<number> {
  return driver.run(() => globalThis.watched?.shown.at(-1)?.marks ?? 0);
}
