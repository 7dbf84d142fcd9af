/** Lines that lie behind many newer rings: on the field's page, among what is unfinished, and as the last line. */
import { afterAll, beforeAll, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf, lineOf, marksRead } from "../../bench/seed.ts";
import { ringOf } from "../../bench/seed-rings.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let some: RecordId<"field">;
let many: RecordId<"field">;
let visit: RecordId<"visit">;

const morningMs = Date.now() - 6 * 3_600_000;
const page = () => phone.chromium.page;
const lines = () => page().locator('a.row[href^="#/line/"]');
const linesAre = (count: number) =>
  until(`${count} lines are listed`, async () => (await lines().count()) === count);

beforeAll(async () => {
  const { add, rows } = beginSample();
  const rope = add("kit", { type: "rope", name: "R1", marks: 4, spacingM: 0.3 });
  const ring = add("kit", { type: "ring", name: "A", insideM: [0.3, null], heightsM: [], outsideM: null });
  const HOUR_MS = 3_600_000;
  /** A field with so many lines, the last of them not finished, and after them so many rings. */
  const fieldWith = (name: string, atMs: number, counts: { lines: number; rings: number }) => {
    const field = add("field", fieldOf(name));
    const strip = add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
    const on = { field, strip, visit: add("visit", { field, day: dayOf(morningMs), harvestYear: null }) };
    for (let at = 1; at <= counts.lines; at++)
      add("observation", lineOf({ ...on, rope }, { startedAtMs: atMs + at * 1000, place: "wheel-track" }), {
        entries: marksRead(at === counts.lines ? "rr" : "rrbb"),
      });
    for (let at = 0; at < counts.rings; at++)
      add("observation", ringOf({ ...on, ring }, { startedAtMs: atMs + HOUR_MS + at }));
    return on;
  };
  many = fieldWith("Long Bottom", morningMs, { lines: 3, rings: 600 }).field;
  ({ field: some, visit } = fieldWith("Top Field", morningMs + 2 * HOUR_MS, { lines: 14, rings: 100 }));
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

it("lists twelve lines and then the rest, however many rings are newer", async () => {
  await phone.goTo(`#/fields/${some}`);
  await linesAre(12);
  await phone.touch("Show 12 more");
  await linesAre(14);
  expect(await page().getByRole("button", { name: "Show 12 more" }).count()).toBe(0);
});

it("looks through some hundred headers, and through more when it is asked", async () => {
  await phone.goTo(`#/fields/${many}`);
  await page().getByRole("heading", { name: "Lines", exact: true }).waitFor();
  expect(await lines().count()).toBe(0);
  await phone.touch("Show 12 more");
  await linesAre(3);
  await until(
    "there is nothing more to show",
    async () => (await page().getByRole("button", { name: "Show 12 more" }).count()) === 0,
  );
});

it("lays the next line like the last one, though rings were begun since", async () => {
  await phone.goTo(`#/visit/${visit}/new-line`);
  await page().getByRole("radio", { name: "wheel track" }).waitFor({ state: "attached" });
  await expect.poll(() => page().getByRole("radio", { name: "wheel track" }).isChecked()).toBe(true);
});

it("offers to go on with a line that was left unfinished before the rings", async () => {
  await phone.goTo("#/measure");
  const unfinished = page().locator('a[href^="#/line/"]');
  await until("one line is offered", async () => (await unfinished.count()) === 1);
  expect(await unfinished.first().textContent()).toContain("Top Field");
});
