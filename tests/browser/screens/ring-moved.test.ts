/** A ring that was moved to a new spot: said in its own words, and begun anew there without the old spot. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { entriesAt, levelAt, ringOf, startAt } from "../../bench/seed-rings.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let visit = "";
let ring = "";

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Low Ridge"));
  const today = add("visit", { field, day: dayOf(Date.now()), harvestYear: null });
  const strip = add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  const spot = add("spot", { field, strip, name: "By the hedge", position: null, oldGrass: false });
  const kit = add("kit", { type: "ring", name: "A", insideM: [0.3, null], heightsM: [0.25], outsideM: null });
  const startedAtMs = Date.now() - 30 * 60_000;
  ring = add("observation", ringOf({ visit: today, field, strip, ring: kit }, { spot, startedAtMs }), {
    entries: entriesAt(
      [
        [0, startAt],
        [0, levelAt(100)],
        [10, levelAt(80)],
      ],
      startedAtMs,
    ),
  });
  visit = today;
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

const spotOf = (name: RegExp) => phone.chromium.page.getByRole("radio", { name });

it("asks what now in words of a move", async () => {
  await phone.goTo(`#/ring/${ring}`);
  await phone.touch("Something happened");
  await phone.touch("Moved to a new spot");
  await phone.reads("Ring A was moved. What now?");
  await phone.touch("Set it out at the new spot");
  await phone.reads("Set out at the new spot");
  await phone.reads("What was read of ring A stays with its old spot.");
});

it("does not take the old spot along, and does not speak of a leak", async () => {
  await spotOf(/By the hedge/u).waitFor();
  expect(await spotOf(/By the hedge/u).isChecked()).toBe(false);
  const text = async () => (await phone.chromium.page.locator("#app").textContent()) ?? "";
  expect(await text()).not.toMatch(/leak|one pace away/u);
  await phone.touch("Set it out");
  await phone.reads("Water in? Then start the clock.");
  await phone.goTo(`#/visit/${visit}/rings`);
  await phone.reads("stopped: moved to a new spot");
  await expect.poll(() => phone.chromium.page.locator('[data-ring="A"]').count()).toBe(2);
  expect(await text()).not.toMatch(/starts again|leak/u);
});

it("keeps the old ring with its spot, and the new one is a test of its own", async () => {
  await phone.goTo(`#/ring/${ring}/sheet`);
  await phone.reads("By the hedge");
  const text = (await phone.chromium.page.locator("main").textContent()) ?? "";
  expect(text).not.toContain("goes on at");
});
