/** A phone that will not keep its screen on, and a bell that waits for a touch: said where something runs. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { holeOf, ringOf } from "../../unit/screens/kit-samples.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone, standsStill } from "./on-phone.ts";

declare global {
  /** Whether the phone of this test grants a lit screen. */
  var grantsLit: boolean;
}

let phone: OnPhone;
let visit: string;
let ring: string;
let hole: string;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field", add("farm", { name: "Hill" })));
  const strip = add("strip", { field, name: "left", done: [], wholeField: false, rep: null });
  const on = { visit: add("visit", { field, day: dayOf(Date.now()), harvestYear: null }), field, strip };
  const letter = add("kit", { type: "ring", name: "A", insideM: [0.3, 0.3], heightsM: [], outsideM: null });
  const begunMs = Date.now() - 60_000;
  const moment = {
    v: 2 as const,
    n: 1,
    lookedAtMs: begunMs,
    enteredAtMs: begunMs,
    monoMs: 0,
    page: "e".repeat(16),
    device: "d".repeat(16),
    by: null,
  };
  ring = add("observation", ringOf({ ...on, ring: letter, startedAtMs: begunMs, planMin: [300] }), {
    entries: [{ ...moment, id: "1".padStart(16, "0"), type: "start", timed: "now" }],
  });
  hole = add("observation", holeOf({ ...on, template: null, sidesM: [0.2, 0.2], startedAtMs: begunMs }));
  visit = on.visit;
  phone = await onPhone(rows(), { toldLocked: true });
  await phone.chromium.context.addInitScript(() => {
    globalThis.grantsLit = false;
    const lock = Object.assign(new EventTarget(), { release: () => Promise.resolve() });
    const request = () =>
      globalThis.grantsLit ? Promise.resolve(lock) : Promise.reject(new DOMException("", "NotAllowedError"));
    Object.defineProperty(navigator.wakeLock, "request", { value: request });
  });
  await phone.goTo(`#/visit/${visit}/rings`);
  await phone.chromium.reload();
});
afterAll(() => phone.close());

const head = () => phone.chromium.page.locator(".head p").textContent();
const words = () => phone.chromium.page.locator(".screen-words, .screen-dark").allTextContents();
/** Where every key of the screen stands. */
const keys = () =>
  phone.chromium.run(() =>
    [
      ...document.querySelectorAll(
        ".head a, nav a, main a, main button, .tools button, .foot .key, .count-keys button",
      ),
    ].map((one) => Math.round(one.getBoundingClientRect().top)),
  );
/** From now on the phone grants it, and a touch that hits nothing asks for it anew. */
const grant = () =>
  phone.chromium.run(() => {
    globalThis.grantsLit = true;
    document.body.dispatchEvent(new PointerEvent("pointerup", { bubbles: true }));
  });

const REFUSED =
  "This phone will not keep its screen on just now, perhaps to save its battery. It cannot ring once the screen is off: read by the clock.";

it("says on the board that the screen may go dark, until the phone grants it, and moves nothing", async () => {
  await expect.poll(head).toBe("screen may go dark");
  await standsStill(phone.chromium, "rings");
  expect(await words()).toEqual([REFUSED]);
  const before = await keys();
  expect(before.length).toBeGreaterThan(3);
  await grant();
  await expect.poll(words).toEqual([]);
  await expect.poll(head).toBe("a locked phone cannot ring");
  expect(await keys()).toEqual(before);
});

it("says it at a ring that runs, and moves nothing", async () => {
  await phone.goTo(`#/ring/${ring}`);
  await phone.chromium.reload();
  await standsStill(phone.chromium, "ring");
  await expect.poll(words).toEqual(["The screen may go dark, and then it cannot ring: read by the clock."]);
  const before = await keys();
  await grant();
  await expect.poll(words).toEqual([]);
  expect(await keys()).toEqual(before);
});

it("says it in a few words at an open hole, and moves nothing", async () => {
  await phone.goTo(`#/hole/${hole}`);
  await phone.chromium.reload();
  await standsStill(phone.chromium, "hole");
  await expect.poll(words).toEqual(["screen may go dark"]);
  const before = await keys();
  await grant();
  await expect.poll(words).toEqual([]);
  expect(await keys()).toEqual(before);
});

it("does not say it of figures that are read from a few steps away", async () => {
  await phone.goTo(`#/visit/${visit}/big-figures`);
  await phone.chromium.reload();
  await phone.reads("Touch anywhere to leave");
  expect(await words()).toEqual([]);
});

it("says on the board, where no bar is, that the bell is silent until touched", async () => {
  const { chromium } = phone;
  await phone.goTo(`#/visit/${visit}/rings`);
  // The driver's own questions count as touches; these do not.
  const session = await chromium.context.newCDPSession(chromium.page);
  const says = async (): Promise<string> => {
    const { result } = await session.send("Runtime.evaluate", {
      expression: "document.querySelector('.head p')?.textContent ?? ''",
      userGesture: false,
    });
    return String(result.value);
  };
  await session.send("Page.reload");
  await until("it says so", async () => (await says()) === "silent until touched");
  await chromium.page.touchscreen.tap(200, 30);
  await until("it is no longer silent", async () => (await says()) === "screen may go dark");
});
