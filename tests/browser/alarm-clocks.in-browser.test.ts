import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { openClaims } from "../../src/device/claims.ts";
import { type ClockReading, readClock, watchPauses } from "../../src/device/clock.ts";
import { watchUntouched } from "../../src/device/screen-on.ts";
import { BEHIND_MS, everyFewSeconds, everySecond, tellNow } from "../../src/device/ticker.ts";

let stop = new AbortController();
beforeEach(() => {
  stop = new AbortController();
});
afterEach(() => {
  stop.abort();
  vi.restoreAllMocks();
  localStorage.clear();
});

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const become = (state: DocumentVisibilityState): void => {
  vi.spyOn(document, "visibilityState", "get").mockReturnValue(state);
  document.dispatchEvent(new Event("visibilitychange"));
};
const pageNow = (): string => readClock().pageId;

describe("a page in sight", () => {
  it("has one id as long as it is seen", async () => {
    const first = pageNow();
    await wait(30);
    expect(pageNow()).toBe(first);
  });

  it("has another one after it was hidden, and another at each look while it is", () => {
    const seen: string[] = [pageNow()];
    become("hidden");
    seen.push(pageNow(), pageNow());
    become("visible");
    const back = pageNow();
    seen.push(back);
    expect(new Set(seen).size).toBe(4);
    expect(pageNow()).toBe(back);
  });

  it.each(["freeze", "resume"])("has another one after %s, even when nobody saw it hidden", (type) => {
    const before = pageNow();
    document.dispatchEvent(new Event(type));
    expect(pageNow()).not.toBe(before);
    document.dispatchEvent(new Event("resume"));
  });

  it("has another one when it comes back from the browser's store of pages", () => {
    const before = pageNow();
    window.dispatchEvent(new PageTransitionEvent("pagehide", { persisted: true }));
    window.dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true }));
    expect(pageNow()).not.toBe(before);
    expect(pageNow()).toBe(pageNow());
  });

  it("is told of a pause with the last moment of the old clock and the first of the new one", () => {
    const before = pageNow();
    const told: [ClockReading, ClockReading][] = [];
    watchPauses((last, first) => told.push([last, first]), stop.signal);
    become("hidden");
    become("visible");
    expect(told).toHaveLength(2);
    expect(told[0]?.[0].pageId).toBe(before);
    // Nothing that was read while it was hidden shares a clock with anything else.
    expect(new Set(told.flat().map(({ pageId }) => pageId)).size).toBe(4);
    expect(told[1]?.[1].pageId).toBe(pageNow());
    stop.abort();
    become("hidden");
    become("visible");
    expect(told).toHaveLength(2);
  });

  it("changes its id before anybody else hears of the same event", () => {
    const before = pageNow();
    let during = before;
    document.addEventListener(
      "visibilitychange",
      () => {
        during = pageNow();
      },
      { signal: stop.signal, capture: true },
    );
    become("hidden");
    become("visible");
    expect(during).not.toBe(before);
    expect(during).toBe(pageNow());
  });
});

describe("the ticker", () => {
  it("tells everybody at the full second with one timer", async () => {
    const timers = vi.spyOn(globalThis, "setTimeout");
    const told: number[] = [];
    for (let ring = 0; ring < 5; ring++)
      everySecond(({ wallMs }) => ring === 0 && told.push(wallMs % 1000), stop.signal);
    const mine = () => timers.mock.calls.filter(([, ms]) => typeof ms === "number" && ms > 400).length;
    await vi.waitFor(() => expect(told).toHaveLength(3), { timeout: 6000 });
    expect(mine()).toBe(4);
    for (const one of told) expect(one).toBeLessThan(300);
  });

  it("rests while nobody looks, and tells at once when the page comes back", async () => {
    let told = 0;
    everySecond(() => {
      told += 1;
    }, stop.signal);
    become("hidden");
    const before = told;
    await wait(2200);
    expect(told).toBe(before);
    become("visible");
    expect(told).toBe(before + 1);
    await vi.waitFor(() => expect(told).toBe(before + 2), { timeout: 5000 });
  });

  it("rests for five seconds where full minutes are shown, and goes by the quickest of its listeners", async () => {
    const timers = vi.spyOn(globalThis, "setTimeout");
    const told: number[] = [];
    everyFewSeconds(({ wallMs }) => told.push(wallMs % 5000), stop.signal);
    const waits = () =>
      timers.mock.calls.flatMap(([, ms]) => (typeof ms === "number" && ms > 400 ? [ms] : []));
    expect(waits()).toHaveLength(1);
    await vi.waitFor(() => expect(told).toHaveLength(1), { timeout: 10_000 });
    // However late it came: the next one is meant for just behind the next five seconds.
    expect((waits().at(-1) ?? 0) + (told[0] ?? 0)).toBe(5000 + BEHIND_MS);
    everySecond(() => undefined, stop.signal);
    expect(waits().at(-1)).toBeLessThan(1600);
    await vi.waitFor(() => expect(told).toHaveLength(3), { timeout: 6000 });
  });

  it("tells at once what becomes due between two ticks", () => {
    let told = 0;
    everyFewSeconds(() => {
      told += 1;
    }, stop.signal);
    tellNow();
    expect(told).toBe(1);
  });

  it("ends with the last listener", async () => {
    let told = 0;
    everySecond(() => {
      told += 1;
    }, stop.signal);
    stop.abort();
    await wait(1500);
    expect(told).toBe(0);
  });
});

describe("who sounds a reading", () => {
  /** Names are kept for the life of a page: each test takes its own. */
  const fresh = (): string => `ring-${crypto.randomUUID()} 5`;

  it("is one of several that ask at once, and nobody ever again", async () => {
    const id = fresh();
    const pages = Array.from({ length: 5 }, () => openClaims(() => true));
    const answers = await Promise.all(pages.map((claim) => claim(id)));
    expect(answers.filter((mine) => mine)).toHaveLength(1);
    expect(await openClaims(() => true)(id)).toBe(false);
  });

  it("is one that would be heard, before one that would not", async () => {
    const id = fresh();
    const mute = openClaims(() => false)(id);
    expect(await openClaims(() => true)(id)).toBe(true);
    expect(await mute).toBe(false);
    expect(await openClaims(() => false)(fresh())).toBe(true);
  });

  it("is another one when the first was stopped with the lock in its hand", async () => {
    const id = fresh();
    await new Promise<void>((taken) => {
      void navigator.locks.request(`mulchmark-sounded:${id} 0`, () => {
        taken();
        return new Promise<never>(() => undefined);
      });
    });
    const askedMs = performance.now();
    const answers = await Promise.all([openClaims(() => true)(id), openClaims(() => true)(id)]);
    expect(answers.filter((mine) => mine)).toHaveLength(1);
    expect(performance.now() - askedMs).toBeLessThan(2000);
  });

  it("is remembered when all pages are gone, for some days", async () => {
    localStorage.setItem("mulchmark-sounded:ring-x 5", String(Date.now() - 3_600_000));
    localStorage.setItem("mulchmark-sounded:ring-x 10", String(Date.now() - 4 * 86_400_000));
    localStorage.setItem("mulchmark-sounded:ring-x 15", "no time");
    expect(await openClaims(() => true)("ring-x 5")).toBe(false);
    expect(localStorage.getItem("mulchmark-sounded:ring-x 10")).toBeNull();
    expect(localStorage.getItem("mulchmark-sounded:ring-x 15")).toBeNull();
  });

  it("is this page where the browser keeps nothing", async () => {
    vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
      throw new DOMException("", "QuotaExceededError");
    });
    vi.spyOn(Storage.prototype, "getItem").mockImplementation(() => {
      throw new DOMException("", "SecurityError");
    });
    expect(await openClaims(() => true)(fresh())).toBe(true);
  });
});

/** Long beside what a busy machine adds to a wait. */
const UNTOUCHED_MS = 1000;

describe("a screen that nobody touches", () => {
  it("is told of once, and again at the touch that ends it", async () => {
    const states: string[] = [];
    watchUntouched(UNTOUCHED_MS, (state) => states.push(state), stop.signal);
    await wait(0.6 * UNTOUCHED_MS);
    document.body.dispatchEvent(new PointerEvent("pointerdown", { bubbles: true }));
    await wait(0.6 * UNTOUCHED_MS);
    expect(states).toEqual([]);
    await vi.waitFor(() => expect(states).toEqual(["untouched"]), { timeout: 4 * UNTOUCHED_MS });
    document.body.dispatchEvent(new PointerEvent("pointerdown", { bubbles: true }));
    expect(states).toEqual(["untouched", "glass"]);
    await vi.waitFor(() => expect(states).toHaveLength(3), { timeout: 4 * UNTOUCHED_MS });
    document.body.dispatchEvent(new KeyboardEvent("keydown", { key: "r", bubbles: true }));
    expect(states).toEqual(["untouched", "glass", "untouched", "key"]);
  });

  it("counts an alarm as a touch", async () => {
    const states: string[] = [];
    const touch = watchUntouched(UNTOUCHED_MS, (state) => states.push(state), stop.signal);
    await wait(0.6 * UNTOUCHED_MS);
    touch();
    await wait(0.6 * UNTOUCHED_MS);
    expect(states).toEqual([]);
    stop.abort();
    await wait(1.2 * UNTOUCHED_MS);
    expect(states).toEqual([]);
  });
});
