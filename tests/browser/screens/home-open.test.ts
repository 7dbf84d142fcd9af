/** The start of Measure on a day of rings and holes: what runs there and what is not over. */
import { afterAll, beforeAll, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { entriesAt, holeOf, ringOf, startAt } from "../../bench/seed-rings.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

const MINUTE_MS = 60_000;
const nowMs = Date.now();
const ago = (minutes: number) => ({ startedAtMs: nowMs - minutes * MINUTE_MS });

let phone: OnPhone;
let visit: RecordId<"visit">;
let hole: RecordId<"observation">;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  visit = add("visit", { field, day: dayOf(nowMs), harvestYear: null });
  const strip = add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  const on = { visit, field, strip };
  const letter = (name: string) =>
    add("kit", { type: "ring", name, insideM: [0.15, null], heightsM: [0.12], outsideM: null });
  const ring = (name: string, minutes: number, said: Parameters<typeof entriesAt>[0]) =>
    add(
      "observation",
      { ...ringOf({ ...on, ring: letter(name) }), ...ago(minutes) },
      { entries: entriesAt(said, nowMs - minutes * MINUTE_MS, name.toLowerCase()) },
    );
  ring("A", 40, [[1, startAt]]);
  ring("B", 38, []);
  ring("C", 36, [
    [1, startAt],
    [20, { type: "stop", why: "done", timed: "now" }],
  ]);
  // Two days and more: nobody reads it any more.
  ring("D", 3 * 24 * 60, [[1, startAt]]);
  const dig = (number: number, minutes: number, said: Parameters<typeof entriesAt>[0]) =>
    add(
      "observation",
      { ...holeOf(on, { number }), ...ago(minutes) },
      { entries: entriesAt(said, nowMs - minutes * MINUTE_MS, String(number)) },
    );
  dig(1, 20, [
    [1, { type: "worm", from: "soil" }],
    [2, { type: "closed" }],
  ]);
  hole = dig(2, 10, [
    [1, { type: "worm", from: "mulch" }],
    [2, { type: "worm", from: "soil" }],
  ]);
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

it("says how many holes and rings there are today where no line was counted", async () => {
  // Ring D too was written down on this visit, whatever its clock said.
  await phone.reads("2 holes, 4 rings today");
  expect(await phone.chromium.page.getByText("nothing measured yet").count()).toBe(0);
});

it("lists the hole that is not closed and the rings that were not ended, newest first", async () => {
  const rows = phone.chromium.page.locator(".go-on li");
  await expect.poll(() => rows.count()).toBe(2);
  await expect
    .poll(() => rows.first().textContent())
    .toMatch(/^Long Bottom · straw lefthole 2 · 2 worms so far · begun .* · go on$/);
  await expect
    .poll(() => rows.last().textContent())
    .toMatch(/^Long Bottomrings A and B · 1 running · 1 waiting to start · begun .* · go on$/);
  const to = (at: number) => rows.nth(at).locator("a").getAttribute("href");
  expect([await to(0), await to(1)]).toEqual([`#/hole/${hole}`, `#/visit/${visit}/rings`]);
});

it("forgets the hole once it is closed", async () => {
  await phone.touch("hole 2");
  await phone.touch("Close the hole");
  await phone.reads("Hole 2 is closed.");
  await phone.goTo("#/measure");
  await expect.poll(() => phone.chromium.page.locator(".go-on li").count()).toBe(1);
});
