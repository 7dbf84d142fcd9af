/** Old grass on the page of a field, in the findings and on a line's own sheet: the yardstick, and part of no strip. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../../src/screens/parts/route.ts";
import { beginSample, fieldOf, lineOf, marksRead, sampleStartMs } from "../../bench/seed.ts";
import { type DaySample, daySample } from "./day-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let sample: DaySample;
beforeAll(async () => {
  // Every test on old grass names the strip "straw left" here, as older records may.
  sample = daySample();
  phone = await onPhone(sample.rows);
});
afterAll(() => phone.close());

it("stands by itself among the results of the year, below the strips and out of their numbers", async () => {
  await phone.goTo(`#/fields/${sample.field}`);
  const years = phone.chromium.page.locator(".field-years");
  await years.getByRole("heading", { name: "Old-grass spot, Orchard corner" }).waitFor();
  await years.getByText("The farm's own yardstick: it is part of no strip.").waitFor();
  const headings = () => years.getByRole("heading", { level: 4 }).allInnerTexts();
  await expect.poll(async () => (await headings()).at(-1)).toBe("Old-grass spot, Orchard corner");
  const names = await headings();
  const texts = await years.locator(".found-day").allInnerTexts();
  const [strip = "", grass = ""] = [texts[names.indexOf("straw left")], texts.at(-1)];
  // 16, 17, 18 and 15 of 20 marks: 66 of 80. 14, 11 and 17 worms. ∛(70 × 88 × 61) = 72.2 mm.
  expect(strip).toMatch(/Ground cover\n\d+ to \d+ · 4 lines\n83 %/);
  expect(strip).toMatch(/3 holes\n.*\n14/);
  expect(strip).toMatch(/3 rings\n.*\n.*\n72 mm/);
  // 20 and 19 of 20 marks: 39 of 40. One hole of 31 worms, one ring of 95 mm.
  expect(grass).toMatch(/Ground cover\ntoo few to give a range · 2 lines\n98 %/);
  expect(grass).toMatch(/1 hole\n.*\n31/);
  expect(grass).toContain("95 mm");
  await years.locator(".found-day").last().getByText("Ground cover").tap();
  await phone.reads("Old-grass spot: Orchard corner");
});

it("stands below the strips in the findings, and takes no part in what is said of them", async () => {
  await phone.goTo("#/findings");
  await phone.touch("Show as table");
  // One table for each of the three tests.
  const rows = () => phone.chromium.page.locator("tbody tr").allInnerTexts();
  await expect.poll(rows).toHaveLength(9);
  const cells = await rows();
  expect(cells[0]).toMatch(/straw left\s+83 %/);
  expect(cells[2]).toMatch(/Old-grass spot, Orchard corner\s+98 %\s+too few to give a range, 2 lines/);
  expect(cells[5]).toMatch(/Old-grass spot, Orchard corner\s+775\s+too few to give a range, 1 hole/);
  expect(cells[8]).toMatch(/Old-grass spot, Orchard corner\s+95 mm\s+too few to give a range, 1 ring/);
  await phone.reads("The old-grass spot is the farm's own yardstick, and part of no strip.");
});

it("says on the sheet of a line where it lies, and how the old grass stands so far", async () => {
  await phone.goTo(`#/visit/${sample.visit}`);
  const section = phone.chromium.page.locator("main > section").filter({
    has: phone.chromium.page.getByRole("heading", { level: 2, name: "Old-grass spot: Orchard corner" }),
  });
  await section.getByText("line 2").tap();
  await phone.reads("Long Bottom · Orchard corner, old-grass spot");
  await phone.reads("Old grass so far: 98 %, 2 lines. Too few to give a range.");
});

it("says the day of a yardstick of another day, and keeps what was measured there when the spot is deleted", async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const [older, newer] = ["2023-05-07", "2024-05-07"].map((day) =>
    add("visit", { field, day, harvestYear: null }),
  );
  if (older === undefined || newer === undefined) throw new Error("no visits");
  const strip = add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 10, spacingM: 0.3 });
  const spot = add(
    "spot",
    { field, strip: null, name: "Orchard corner", position: null, oldGrass: true },
    { deleted: true },
  );
  const line = (visit: typeof older, letters: string, minute: number, more: { spot?: typeof spot } = {}) =>
    add(
      "observation",
      lineOf({ visit, field, strip, rope }, { startedAtMs: sampleStartMs + minute * 60_000, ...more }),
      {
        entries: marksRead(letters),
      },
    );
  line(older, "rrrrrrrrrb", 1, { spot });
  line(newer, "rrrrbbbbbb", 2);
  // Begun on old grass on the newer day and not finished: the yardstick stays the one of the year before.
  line(newer, "rrr", 3, { spot });
  const other = await onPhone(rows());
  await other.goTo("#/findings");
  await other.touch("Show as table");
  const cells = () => other.chromium.page.locator("tbody tr").allInnerTexts();
  // 4 of 10 marks on the strip, 9 of 10 on old grass.
  await expect.poll(async () => (await cells())[0]).toMatch(/A\s+40 %/);
  expect((await cells())[1]).toMatch(/Old-grass spot, Orchard corner \(7 May 2023\)\s+90 %/);
  await other.goTo(href({ at: "visit", visit: newer }));
  await other.reads("On the old-grass spot: 90 % ground cover (7 May 2023).");
  await other.reads("line 1 · go on");
  await other.close();
});
