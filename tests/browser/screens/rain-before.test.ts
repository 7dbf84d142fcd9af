/** Days since rain among the conditions of rings and holes: proposed from the rain notes, put right in place. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../../src/screens/parts/route.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { entriesAt, holeOf, ringOf, startAt } from "../../bench/seed-rings.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

let phone: OnPhone;
let at: { readonly newRing: string; readonly hole: string; readonly sheets: readonly string[] };
const press = (name: string) => phone.chromium.page.getByRole("button", { name, exact: true }).tap();
const rains = async () =>
  (await storedRecords(phone.chromium, "rain"))
    .filter(({ revs }) => revs[0]?.deleted !== true)
    .map(({ revs }) => revs[0]?.body)
    .map((body) => ({ ...body }) as { readonly day?: string; readonly depthMm?: number })
    .map(({ day, depthMm }) => `${day} ${depthMm}`)
    .sort();

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: true, rep: null });
  const kit = add("kit", { type: "ring", name: "A", insideM: [0.15, 0.15], heightsM: [], outsideM: null });
  add("rain", { field, day: "2024-05-02", depthMm: 4 });
  // After that day: nobody knew of it then.
  add("rain", { field, day: "2024-05-20", depthMm: 9 });
  const on = { visit, field, strip };
  const ring = add("observation", ringOf({ ...on, ring: kit }), { entries: entriesAt([[0, startAt]]) });
  const hole = add("observation", holeOf(on), {
    entries: entriesAt([[0, { type: "worm", from: "soil" }]]),
  });
  at = {
    newRing: href({ at: "ring-new", visit, follows: null }),
    hole: href({ at: "hole", hole }),
    sheets: [href({ at: "ring-sheet", ring }), href({ at: "hole-sheet", hole })],
  };
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

it("proposes the days since rain where a ring is set out, as they were on that day", async () => {
  await phone.goTo(at.newRing);
  // From 2 to 7 May are five days.
  await phone.reads("5 days since rain.");
  await phone.reads("Proposed from the rain notes of this field: 4 mm on 2 May 2024.");
});

it("is put right in place: another day, and a rain that nobody had noted; each can be taken back", async () => {
  await press("Correct this rain");
  await phone.chromium.page.locator(".rain-before input[type=date]").fill("2024-05-04");
  await press("Done");
  await phone.reads("3 days since rain.");
  await expect.poll(rains).toEqual(["2024-05-04 4", "2024-05-20 9"]);
  await press("It rained since");
  await phone.chromium.page.locator(".rain-before input[type=date]").fill("2024-05-06");
  await phone.write("How much rain, in mm?", "12,5");
  await press("Write it down");
  await phone.reads("1 day since rain.");
  await expect.poll(rains).toEqual(["2024-05-04 4", "2024-05-06 12.5", "2024-05-20 9"]);
  await phone.chromium.page.locator(".rain-said").getByRole("button", { name: "Undo" }).tap();
  await phone.reads("3 days since rain.");
  await phone.chromium.page.locator(".rain-said").getByRole("button", { name: "Redo" }).tap();
  await phone.reads("1 day since rain.");
});

it("says the same at the hole, and on both sheets", async () => {
  await phone.goTo(at.hole);
  await phone.chromium.page.locator('[data-opens="numbers"]').tap();
  await phone.chromium.page.locator('[data-opens="conditions"]').first().tap();
  await phone.reads("1 day since rain.");
  for (const sheet of at.sheets) {
    await phone.goTo(sheet);
    await phone.reads("1 day since rain.");
    await phone.reads("Proposed from the rain notes of this field: 12.5 mm on 6 May 2024.");
  }
});
