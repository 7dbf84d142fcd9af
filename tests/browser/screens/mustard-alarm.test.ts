/** The end of a wait for worms, while another screen is open. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { heardAt, watchAlarms } from "../../faults/kit/alarm-watch.ts";
import { holeOf } from "../../unit/screens/kit-samples.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let hole: string;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field", add("farm", { name: "Hill" })));
  const strip = add("strip", { field, name: "left", done: [], wholeField: false, rep: null });
  const visit = add("visit", { field, day: dayOf(Date.now()), harvestYear: null });
  hole = add(
    "observation",
    holeOf({
      visit,
      field,
      strip,
      template: null,
      sidesM: [0.2, 0.2],
      number: 2,
      mustardMin: 0.5,
      startedAtMs: Date.now(),
    }),
  );
  phone = await onPhone(rows());
  await watchAlarms(phone.chromium.context);
  await phone.chromium.reload();
});
afterAll(() => phone.close());

const bar = () => phone.chromium.page.locator("a.next-reading");

it("rings once and stands in the bar, until something is written down at the hole", async () => {
  await phone.goTo(`#/hole/${hole}`);
  await phone.touch("mustard water");
  await phone.chromium.page.locator("[data-answer=pour]").tap();
  await phone.reads("Look for worms until");
  // The hole tells of its own mustard water.
  expect(await bar().count()).toBe(0);
  await phone.goTo("#/fields");
  await bar().waitFor();
  expect(await bar().textContent()).toMatch(/^Hole 2\d\d:\d\din less than a minute$/);
  expect(await heardAt(phone.chromium)).toEqual([]);
  await until("the wait is over", async () =>
    /^Hole 2\d\d:\d\dlook for worms$/.test((await bar().textContent()) ?? ""),
  );
  await until("it is heard", async () => (await heardAt(phone.chromium)).length === 1);
  await expect
    .poll(() => phone.chromium.page.locator("p.out-of-sight[role=status]").textContent())
    .toMatch(/^\d\d:\d\d: hole 2, look for worms now\.$/);
  await bar().tap();
  await phone.chromium.page.locator(".count.hole").waitFor();
  expect(await bar().count()).toBe(0);
  await phone.touch("Close the hole");
  await phone.reads("Hole 2 is closed.");
  await phone.goTo("#/fields");
  await phone.reads("Top Field");
  // The bar hears of it by itself, a moment after the hole.
  await expect.poll(() => bar().count()).toBe(0);
  expect(await heardAt(phone.chromium)).toHaveLength(1);
});
