import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { yearsSample } from "./years-sample.ts";

let phone: OnPhone;
const sample = yearsSample();

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await phone.goTo(`#/fields/${sample.field}`);
  await timeline().getByText("No rain noted yet.").waitFor();
});
afterAll(() => phone.close());

const timeline = () => phone.chromium.page.locator(".field-timeline");
const rows = () => timeline().locator(".timeline > li").allInnerTexts();
const touch = (name: string | RegExp) => timeline().getByRole("button", { name }).first().tap();

it("writes an event down in one touch, under today and the whole field", async () => {
  await timeline().getByText("Touch what was done: today, whole field.").waitFor();
  await touch("Harvested");
  await timeline()
    .getByText(/^Written down: Harvested, .*, whole field\.$/)
    .waitFor();
  // The words stand as soon as it is kept; the list follows when the store has been read again.
  await expect.poll(async () => (await rows())[0]).toMatch(/^Harvested\n/);
  // Visits stand on the same axis.
  expect((await rows())[1]).toMatch(/^Visit\n7 May 2024/);
});

it("takes back and does again, in words", async () => {
  await touch(/^Undo: Harvested/);
  await timeline()
    .getByText(/^Taken back: Harvested/)
    .waitFor();
  await expect.poll(async () => (await rows())[0]).toMatch(/^Visit/);
  await touch(/^Redo: Harvested/);
  await expect.poll(async () => (await rows())[0]).toMatch(/^Harvested/);
});

it("writes under another day and one strip, and takes words", async () => {
  await touch("Another day or strip");
  await timeline().locator("label.tick", { hasText: "another day" }).tap();
  await timeline().getByLabel("Which day?").fill("2024-04-02");
  await timeline().locator("label.tick", { hasText: "Straw left" }).tap();
  await timeline().getByText("Touch what was done: 2 Apr 2024, Straw left.").waitFor();
  await touch("Tilled");
  await timeline().getByText("Written down: Tilled, 2 Apr 2024, Straw left.").waitFor();
  await touch("Correct it or add words");
  await phone.write("In your own words (may stay empty)", "shallow, once");
  await touch("Done");
  await timeline().getByText("2 Apr 2024 · Straw left · shallow, once").waitFor();
  // Between the visits of 2024 and 2023.
  const all = await rows();
  const at = all.findIndex((row) => row.startsWith("Tilled"));
  expect(all[at - 1]).toMatch(/^Visit\n7 May 2024/);
  expect(all[at + 1]).toMatch(/^Visit\n7 May 2023/);
});

it("corrects what stands there, and takes the correction back", async () => {
  await timeline().locator(".timeline button.row", { hasText: "Tilled" }).tap();
  await timeline().locator("label.tick", { hasText: "Grazed" }).tap();
  await touch("Done");
  await timeline().getByText("Corrected: Grazed, 2 Apr 2024, Straw left.").waitFor();
  await touch(/^Undo: Grazed/);
  await timeline().locator(".timeline", { hasText: "Tilled" }).waitFor();
});

it("asks once before it deletes, and brings it back", async () => {
  await timeline().locator(".timeline button.row", { hasText: "Tilled" }).tap();
  await touch("Delete this");
  await timeline().getByText("30 days under Deleted records").waitFor();
  await touch("Yes, delete it");
  await timeline().getByText("Deleted: Tilled, 2 Apr 2024, Straw left.").waitFor();
  await until("it is in no row", async () => !(await rows()).some((row) => row.startsWith("Tilled")));
  await touch(/^Undo: Tilled/);
  await timeline().locator(".timeline", { hasText: "Tilled" }).waitFor();
});

it("notes rain and counts the days since", async () => {
  await timeline().locator("label.tick", { hasText: "yesterday" }).tap();
  await touch("Rain");
  await phone.write("How much rain, in mm?", "500");
  await touch("Write it down");
  // More than a gauge shows in most years is asked about once.
  await timeline().getByText("500 mm: is that what you read?").waitFor();
  await phone.write("How much rain, in mm?", "12,5");
  await touch("Write it down");
  await timeline()
    .getByText(/^1 day since the last rain noted: 12\.5 mm on /)
    .waitFor();
});

it("says after spraying that the label tells when the field may be entered", async () => {
  await timeline().locator("label.tick", { hasText: "today" }).tap();
  await touch("Sprayed");
  const caution = timeline().getByRole("alert");
  await caution.getByText("Sprayed today").waitFor();
  const [said] = await caution.allInnerTexts();
  expect(said).toContain("The label is the rule");
  expect(said).toContain("Local codes");
});

it("keeps all of it, and the keys are large enough for a thumb", async () => {
  await phone.chromium.reload();
  await timeline().locator(".timeline", { hasText: "12.5 mm" }).waitFor();
  const small = await timeline()
    .locator("button, a")
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height).filter((high) => high < 48));
  expect(small).toEqual([]);
});

it("reads and writes rain in inches for a person who does", async () => {
  const inches = await onPhone(sample.rows, {
    habits: { ...(await import("../../../src/record/units.ts")).HABITS.us },
  });
  try {
    await inches.goTo(`#/fields/${sample.field}`);
    const own = inches.chromium.page.locator(".field-timeline");
    await own.getByRole("button", { name: "Rain" }).tap();
    await inches.write("How much rain, in inches?", "0.5");
    await own.getByRole("button", { name: "Write it down" }).tap();
    await own.getByText("Rain noted today: 0.5 in.").waitFor();
  } finally {
    await inches.close();
  }
});
