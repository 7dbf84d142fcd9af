import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { ringOf } from "../../unit/screens/kit-samples.ts";
import { type OnPhone, onPhone, standsStill } from "./on-phone.ts";

const today = dayOf(Date.now());

let phone: OnPhone;
/** Addresses of the three set-outs of a visit on a new field, and of one on another field of its farm. */
let line: string;
let hole: string;
let ring: string;
let secondField: string;
/** And of one on a field of another farm. */
let otherFarm: string;
let otherFarmLine: string;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const other = add("field", fieldOf("Far End", add("farm", { name: "Other" })));
  const otherVisit = add("visit", { field: other, day: today, harvestYear: null });
  const farm = add("farm", { name: "Hill" });
  const field = add("field", fieldOf("Top Field", farm));
  const strip = add("strip", { field, name: "left", done: [], wholeField: false, rep: null });
  add("event", { field, strip: null, day: today, what: "sprayed", words: "" });
  const second = add("field", fieldOf("Low Field", farm));
  add("strip", { field: second, name: "all", done: [], wholeField: true, rep: null });
  const visit = add("visit", { field, day: today, harvestYear: null });
  const kit = add("kit", { type: "ring", name: "A", insideM: [0.3, 0.3], heightsM: [], outsideM: null });
  const moment = {
    v: 2 as const,
    lookedAtMs: Date.now(),
    enteredAtMs: Date.now(),
    monoMs: 0,
    page: "e".repeat(16),
    device: "d".repeat(16),
    by: null,
  };
  add("observation", ringOf({ visit, field, strip, ring: kit, startedAtMs: Date.now() }), {
    entries: [
      {
        ...moment,
        id: "1".padStart(16, "0"),
        n: 1,
        type: "pour",
        ring: "inner",
        value: 12,
        unit: "L",
        typed: "12",
        timed: "now",
      },
    ],
  });
  // A note of an earlier visit says nothing of what lies below: nobody dug for it.
  const noteVisit = add("visit", { field: second, day: today, harvestYear: null });
  add("observation", {
    type: "note",
    visit: noteVisit,
    field: second,
    strip: null,
    text: "wet corner",
    at: { position: null, why: "not-asked" },
    person: null,
    startedAtMs: Date.now(),
  });
  const secondVisit = add("visit", { field: second, day: today, harvestYear: null });
  add("kit", { type: "rope", name: "rope", marks: 50, spacingM: 0.3 });
  phone = await onPhone(rows());
  line = `#/visit/${visit}/new-line`;
  hole = `#/visit/${visit}/new-hole`;
  ring = `#/visit/${visit}/new-ring`;
  otherFarmLine = `#/visit/${otherVisit}/new-line`;
  otherFarm = `#/visit/${otherVisit}/new-ring`;
  secondField = `#/visit/${secondVisit}/new-hole`;
});
afterAll(() => phone.close());

const said = (): Promise<string[]> => phone.chromium.page.locator(".cautions li b").allInnerTexts();

it("says before a line when the field was sprayed, and never holds anyone up", async () => {
  await phone.goTo(line);
  await phone.reads("Before you walk in");
  // Nobody digs for a line: nothing is said of cables, lightning or lifting.
  await expect.poll(said).toEqual([expect.stringMatching(/^Sprayed on /)]);
  await phone.reads("The label is the rule");
  await phone.touch("Start counting");
  await phone.chromium.page.locator(".count-keys").waitFor();
});

it("draws no form before its cautions, which would push it down under a finger", async () => {
  await phone.chromium.page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (document.querySelector("main input") === null) return;
      watch.disconnect();
      Object.assign(globalThis, { first: document.querySelector("main .cautions") !== null });
    });
    watch.observe(document, { subtree: true, childList: true });
  });
  for (const address of [line, hole, ring]) {
    await phone.goTo(address);
    await phone.chromium.reload();
    await phone.chromium.page.locator("main .cautions").waitFor();
    expect(await phone.chromium.page.evaluate(() => Reflect.get(globalThis, "first"))).toBe(true);
  }
});

it("says before a hole what to mind on this ground, and never holds anyone up", async () => {
  await phone.goTo(hole);
  await phone.reads("I have read this");
  // The ring of this same visit is no reason to keep still about what lies below.
  await expect.poll(async () => (await said())[0]).toBe("Buried cables, pipes and drains");
  expect((await said())[1]).toMatch(/^Sprayed on /);
  await phone.reads("Mustard water");
  await phone.reads("The label is the rule");
  await phone.reads("Local codes, the law and licensed practice come first");
  await phone.reads("Poured today so far: 12 L. That was 12 kg to carry.");
});

it("is silent about what was read, at the other test and after a start, and says what is new", async () => {
  await phone.touch("I have read this");
  await phone.chromium.page.locator(".cautions").waitFor({ state: "detached" });
  await phone.goTo(ring);
  await phone.reads("What does the ruler show?");
  await standsStill(phone.chromium, "ring-new");
  // No hole is driven in.
  expect(await said()).toEqual(["Driving a ring in"]);
  await phone.chromium.reload();
  await phone.reads("What does the ruler show?");
  await phone.goTo(secondField);
  await phone.reads("I have read this");
  await expect.poll(said).toEqual(["Buried cables, pipes and drains"]);
});

it("asks for clean boots, spade and rings on a field of another farm, once", async () => {
  await phone.goTo(otherFarmLine);
  await expect.poll(said).toEqual(["Clean boots, spade and rings"]);
  await phone.goTo(otherFarm);
  await phone.reads("You come from another farm.");
  await expect
    .poll(said)
    .toEqual(["Buried cables, pipes and drains", "Clean boots, spade and rings", "Driving a ring in"]);
  await phone.touch("I have read this");
  await phone.chromium.page.locator(".cautions").waitFor({ state: "detached" });
  // Coming with a rope is the same coming.
  await phone.goTo(otherFarmLine);
  await phone.reads("How will you count?");
  await standsStill(phone.chromium, "line-new");
  expect(await said()).toEqual([]);
});
