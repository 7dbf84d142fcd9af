import { afterAll, beforeAll, expect, it } from "vitest";
import { type OnPhone, onPhone, placeAtRest } from "./on-phone.ts";
import { yearsSample } from "./years-sample.ts";

let phone: OnPhone;
const sample = yearsSample();

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await phone.goTo(`#/fields/${sample.field}`);
});
afterAll(() => phone.close());

const years = () => phone.chromium.page.locator(".field-years");

it("stands the newest year open, a year that nobody said under its calendar year, others under their keys", async () => {
  await years().getByRole("heading", { name: "2024 by the calendar" }).waitFor();
  await years().getByText("The harvest year was not said for these days.").waitFor();
  await years().getByRole("button", { name: "Show harvest year 2023" }).waitFor();
  await years().getByRole("button", { name: "Show harvest year 2022" }).waitFor();
});

it("gives every number its unit, its samples and its range", async () => {
  const days = years().locator(".found-day");
  await days.first().waitFor();
  const [text = ""] = await days.allInnerTexts();
  // 14, 15 and 16 of 20 marks: 45 of 60. 14, 16 and 18 worms in holes of 20 × 20 cm: 16 a hole, 400 per m².
  expect(text).toMatch(/Ground cover\n\d+ to \d+ · 3 lines\n75 %/);
  expect(text).toMatch(/Worms per hole\n\d+ to \d+ · 3 holes\n400 per m² · \d+ to \d+/);
  // 0.7, 0.8 and 0.9 mm a minute for 60 minutes: ∛(42 × 48 × 54) = 47.7 mm.
  expect(text).toMatch(
    /Soaked in after 60 min\n\d+ to \d+ · 3 rings\nafter 30 min: 24 mm · \d+ to \d+ · 3 rings\n48 mm/,
  );
});

it("draws earlier results from paper apart, and says so", async () => {
  await years().getByRole("button", { name: "Show 2019 by the calendar" }).tap();
  const paper = years().locator(".from-paper");
  await paper.getByText("Earlier results from paper").waitFor();
  await expect
    .poll(async () => (await paper.allInnerTexts())[0])
    .toMatch(/1 May 2019 · 4 samples · notebook of 2019\nChange\n22 %/);
});

it("draws a chart for each measure once it comes near, and says a touched point in words", async () => {
  const charts = years().locator(".years-chart");
  await expect.poll(() => charts.count()).toBe(3);
  await charts.first().scrollIntoViewIfNeeded();
  await charts.first().locator("canvas").waitFor();
  // The newest value of the first strip, 75 of 100, found by trying where it must stand.
  const over = charts.first().locator(".u-over");
  await over.waitFor();
  const box = await placeAtRest(over);
  // Years from 2018.6 to 2024.4, the first of two strips half a step to the left.
  const x = ((2024 - 0.05 - 2018.6) / (2024.4 - 2018.6)) * box.width;
  await over.tap({ position: { x, y: 0.25 * box.height } });
  await charts
    .first()
    .getByText(/Straw left, harvest year 2024 · 75 % · \d+ to \d+ · 3 lines/)
    .waitFor();
});

it("has the same values as a table", async () => {
  const chart = years().locator(".years-chart").first();
  await chart.getByText("Show as table").tap();
  const lines = () => chart.locator("tbody tr").allInnerTexts();
  await expect.poll(lines).toHaveLength(7);
  const rows = await lines();
  expect(rows[0]).toMatch(/^2024\s+Straw left\s+75\s+\d+ to \d+\s+3 lines$/);
  expect(rows.at(-1)).toMatch(/^2019\s+Straw left\s+22\s+from paper\s+4 samples$/);
});

it("draws worms per hole when asked", async () => {
  await years().getByText("per hole", { exact: true }).first().tap();
  await years().locator("figcaption", { hasText: "Worms per hole" }).waitFor();
});

it("draws again in the colours of the other theme", async () => {
  const canvas = years().locator(".years-chart canvas").first();
  const paint = () => canvas.evaluate((one) => (one as HTMLCanvasElement).toDataURL());
  await canvas.scrollIntoViewIfNeeded();
  const daylight = await paint();
  await phone.chromium.page.emulateMedia({ colorScheme: "dark" });
  await expect.poll(paint).not.toBe(daylight);
  await phone.chromium.page.emulateMedia({ colorScheme: "light" });
});

it("keeps within the screen of a phone", async () => {
  const { page } = phone.chromium;
  await page.setViewportSize({ width: 390, height: 844 });
  const wide = () => phone.chromium.run(() => document.documentElement.scrollWidth);
  await expect.poll(wide).toBeLessThanOrEqual(390);
});
