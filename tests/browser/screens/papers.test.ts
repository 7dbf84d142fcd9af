/** Earlier results from paper: written down and corrected on the field page, and everywhere said to be from paper. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

let phone: OnPhone;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  phone = await onPhone(rows());
  await phone.goTo(`#/fields/${field}`);
});
afterAll(() => phone.close());

const years = () => phone.chromium.page.locator(".field-years");
const key = (name: string) => years().getByRole("button", { name, exact: true });
const rows = () => years().locator(".from-paper .row").allInnerTexts();
const stored = async () =>
  (await storedRecords(phone.chromium, "earlier"))
    .flatMap(({ revs }) => revs.filter(({ deleted }) => deleted !== true))
    .map(({ body }) => body as unknown as { value: number; samples: number | null; strip: string | null });

it("asks on a field where nothing was measured, and says what is missing only when it is tried", async () => {
  await years().getByText("Nothing measured here yet.").waitFor();
  await key("Earlier result (paper)").tap();
  expect(await years().locator(".wrong").allInnerTexts()).toEqual([]);
  await key("Write it down").tap();
  await years().getByText("Choose a day of the calendar.").waitFor();
  await phone.write("How much was covered, in %?", "120");
  await years().getByText("That is no percentage from 0 to 100.").waitFor();
  expect(await stored()).toEqual([]);
});

it("writes it down under its year, apart and said, and on the timeline", async () => {
  await phone.write("How much was covered, in %?", "31");
  await years().getByLabel("Which day?").fill("2019-05-01");
  await years().locator("label.tick", { hasText: "straw left" }).tap();
  await phone.write("From how many lines, holes or rings? (not needed)", "4");
  await phone.write("Where is it written? (not needed)", "notebook of 2019");
  await key("Write it down").tap();
  await years().getByRole("heading", { name: "2019 by the calendar" }).waitFor();
  await years().getByText("Earlier results from paper").waitFor();
  await years().getByText("Without raw readings behind them: they stand apart and enter no mean.").waitFor();
  await expect
    .poll(async () => (await rows())[0])
    .toMatch(/Ground cover\s+1 May 2019 · 4 samples · notebook of 2019\s+Change\s+31 %/);
  // The timeline is read by itself.
  const noted = () => phone.chromium.page.locator(".timeline > li.paper").allInnerTexts();
  await expect
    .poll(async () => (await noted())[0])
    .toMatch(/^Ground cover, 31 %\s+1 May 2019 · straw left · from paper, no raw readings$/);
});

it("is drawn once there is a second year, and named from paper in the table behind the chart", async () => {
  await key("Earlier result (paper)").tap();
  await phone.write("How much was covered, in %?", "45");
  await years().getByLabel("Which day?").fill("2021-05-01");
  await key("Write it down").tap();
  const chart = years().locator(".years-chart").first();
  await chart.getByText("Show as table").tap();
  await expect
    .poll(async () =>
      (await chart.locator("tbody tr").allInnerTexts()).map((row) => row.replace(/\s+/g, " ")),
    )
    .toEqual([
      "2021 the field, no strip named 45 from paper number of samples not said",
      "2019 straw left 31 from paper 4 samples",
    ]);
  await years().locator(".from-paper .row", { hasText: "1 May 2021" }).tap();
  await key("Delete this").tap();
  await key("Yes, delete it").tap();
  await years().getByRole("heading", { name: "2021 by the calendar" }).waitFor({ state: "detached" });
});

it("corrects it, and another measure begins with an empty line", async () => {
  await years().locator(".from-paper .row").tap();
  await years().locator(".from-paper label.tick", { hasText: "Soaked in after 60 min" }).tap();
  const depth = years().getByRole("textbox", { name: /^How much soaked in within 60 min/ });
  expect(await depth.inputValue()).toBe("");
  await depth.fill("25");
  await phone.write("From how many lines, holes or rings? (not needed)", "");
  await key("Done").tap();
  await expect
    .poll(async () => (await rows())[0])
    .toMatch(
      /Soaked in after 60 min\s+1 May 2019 · number of samples not said · notebook of 2019\s+Change\s+25 mm/,
    );
  expect(await stored()).toMatchObject([{ what: "soaked-in-60-min-mm", value: 25, samples: null }]);
});

it("deletes it after asking once", async () => {
  await years().locator(".from-paper .row").tap();
  await key("Delete this").tap();
  await key("Yes, delete it").tap();
  await years().getByText("Nothing measured here yet.").waitFor();
  await expect.poll(() => phone.chromium.page.locator(".timeline > li.paper").count()).toBe(0);
});
