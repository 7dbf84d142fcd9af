/** A double ring from the set-out to its sheet: both rings read at once, refilled, and told apart. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { answerOnPad, type OnPhone, onPhone, passMinutes } from "./on-phone.ts";

let phone: OnPhone;
let board = "";

const beginsMs = new Date().setHours(9, 0, 0, 0);

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Low Ridge"));
  const visit = add("visit", { field, day: dayOf(beginsMs), harvestYear: null });
  add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  add("kit", { type: "ring", name: "A", insideM: [0.3, null], heightsM: [0.25], outsideM: 0.31 });
  add("kit", { type: "ring", name: "O", insideM: [0.6, null], heightsM: [0.25], outsideM: null });
  board = `#/visit/${visit}/rings`;
  phone = await onPhone(rows());
  await phone.chromium.page.clock.install({ time: beginsMs });
  await phone.chromium.reload();
});
afterAll(() => phone.close());

const key = (name: string) => phone.chromium.page.getByRole("button", { name, exact: true }).first();
/** What the clock of the page says. */
const nowMs = () => phone.chromium.run(() => Date.now());
const answer = (digits: string) => answerOnPad(phone.chromium.page, digits);
const inner = /^Ring A: how deep was the water at/u;
const outer = /^Ring A, outer ring: how deep was the water at/u;

it("is set out with the ring around it", async () => {
  await phone.goTo(board);
  await phone.touch("Set out a ring");
  await phone.touch("with ring O around it");
  await phone.touch("straw left");
  await phone.touch("Set it out");
  await phone.reads("Water in? Then start the clock.");
});

it("asks for the inner ring alone, and takes the first level of the outer one too", async () => {
  await key("Start").tap();
  await phone.reads(inner);
  await key("Read outer ring").tap();
  await phone.reads("2 numbers wait, the oldest first.");
  await answer("100");
  await phone.reads(outer);
  await answer("90");
  await phone.reads("Taken: outer ring, 90 mm deep");
});

it("keeps the moment of the outer ring, and leaves the reading of the plan due", async () => {
  await passMinutes(phone.chromium.page, 10);
  await key("Read outer ring").tap();
  await phone.reads(outer);
  await answer("60");
  await phone.reads(/was due at/u);
  await key("Read now").tap();
  await phone.reads(inner);
  await answer("80");
  await phone.reads(/Next reading/u);
  await phone.reads("soaked in after 10 min");
});

it("reads both behind a refill, and neither level counts as soaked in", async () => {
  await key("Refill").tap();
  await answer("80");
  await key("Not measured").tap();
  await phone.reads("water in? Read the level right away.");
  const readMs = await nowMs();
  await key("Read outer ring").tap();
  await key("Read now").tap();
  await phone.reads(outer);
  const added = phone.chromium.page.getByRole("checkbox", { name: "Water was added before this reading" });
  await expect.poll(() => added.isChecked()).toBe(true);
  await answer("95");
  await phone.reads(inner);
  await expect.poll(() => added.isChecked()).toBe(true);
  await answer("100");
  // Ten minutes from reading to reading, whatever the hands took in between.
  await passMinutes(phone.chromium.page, Math.max(0, 10 - ((await nowMs()) - readMs) / 60_000));
  await key("Read now").tap();
  await answer("84");
  await key("Read outer ring").tap();
  await answer("71");
  await phone.reads("Taken: outer ring, 71 mm deep");
});

it("stands on the sheet: which ring was read, what soaked in between them, and both compared", async () => {
  await key("Sheet").tap();
  await phone.reads("between the rings against inside");
  const rows = async () =>
    (await phone.chromium.page.locator(".ring-table tbody tr").allInnerTexts()).map((row) =>
      row.replaceAll(/\s+/gu, " "),
    );
  // Inside 20 and 16 mm; between the rings 30 and 24 mm: 54 / 36 = 1.5 times.
  await expect.poll(rows).toContainEqual(expect.stringMatching(/60 mm deep outer ring 30 1[78]\d$/u));
  await expect.poll(rows).toContainEqual(expect.stringMatching(/71 mm deep outer ring 54 14\d$/u));
  await phone.reads("1.5 times");
});

it("counts the water of both rings", async () => {
  await phone.goTo(board);
  // Inside 7.0686 dm²: 1 dm and 0.2 dm. Between them 20.7267 dm²: 0.9 dm and 0.35 dm. Together 34.39 L.
  await phone.reads("Poured: about 34.4 L");
});
