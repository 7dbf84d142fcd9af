/** Photos and notes of a marked spot: made on its page, and called by its name in lists. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type MapSample, mapSample } from "./map-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { photoOf, storedRecords } from "./on-record.ts";

let phone: OnPhone;
let sample: MapSample;
beforeAll(async () => {
  sample = mapSample();
  phone = await onPhone(sample.rows);
});
afterAll(() => phone.close());

const page = () => phone.chromium.page;
const rowsOf = (heading: string) =>
  page()
    .locator("section", { has: page().getByRole("heading", { name: heading, exact: true }) })
    .locator("li");
const spotPage = () => `#/fields/${sample.field}/spot/${sample.spot}`;

it("keeps a photo of the spot, and shows it among those of its field under the spot's name", async () => {
  await phone.goTo(spotPage());
  await page()
    .locator("input[type=file]:not([capture])")
    .setInputFiles([
      { name: "oak.jpg", mimeType: "image/jpeg", buffer: await photoOf(phone.chromium, "#7a5c22") },
    ]);
  await phone.reads("1 photo kept.");
  const [photo] = await storedRecords(phone.chromium, "photo");
  expect(photo?.revs[0]?.body.of).toBe(sample.spot);
  await phone.goTo(`#/fields/${sample.field}`);
  // A picture is opened only where it can be seen.
  await page().getByRole("list", { name: "Photos" }).scrollIntoViewIfNeeded();
  await page()
    .getByRole("img", { name: /Marked spot: by the oak$/ })
    .waitFor();
});

it("begins today's visit for a note, which hangs on the spot and on its strip", async () => {
  const before = (await storedRecords(phone.chromium, "visit")).length;
  await phone.goTo(spotPage());
  await phone.touch("Write a note here");
  await phone.reads("At the marked spot by the oak");
  await page().getByRole("textbox", { name: "What do you see here?" }).fill("Slaked crust");
  await page().waitForURL(/#\/note\//);
  await phone.reads("On record.");
  const visits = await storedRecords(phone.chromium, "visit");
  expect(visits).toHaveLength(before + 1);
  const note = (await storedRecords(phone.chromium, "observation")).find(
    ({ revs }) => revs[0]?.body.text === "Slaked crust",
  )?.revs[0]?.body;
  expect(note?.spot).toBe(sample.spot);
  expect(note?.visit).not.toBe(sample.visit);
  expect(visits.map(({ id }) => id)).toContain(note?.visit);
  await expect.poll(() => page().getByRole("radio", { name: "straw left" }).isChecked()).toBe(true);
});

it("goes on with today's visit, and says the spot beside the words in the list of the day", async () => {
  const before = (await storedRecords(phone.chromium, "visit")).length;
  await phone.goTo(spotPage());
  await expect.poll(() => rowsOf("Notes").count()).toBe(1);
  await phone.touch("Write a note here");
  await page().getByRole("textbox", { name: "What do you see here?" }).fill("Fewer cracks now");
  await page().waitForURL(/#\/note\//);
  await phone.reads("On record.");
  expect(await storedRecords(phone.chromium, "visit")).toHaveLength(before);
  await page().locator("a.back").tap();
  await expect.poll(() => rowsOf("Notes").count()).toBe(2);
  for (const text of await rowsOf("Notes").allTextContents()) expect(text).toMatch(/ · by the oak$/);
  await phone.goTo(spotPage());
  await expect.poll(() => rowsOf("Notes").first().textContent()).toContain("Fewer cracks now");
});

it("keeps what was typed of the spot while a note is written", async () => {
  await phone.write("What is it called?", "by the old oak");
  await phone.touch("Write a note here");
  await phone.reads("At the marked spot by the oak");
  await page().goBack();
  await expect
    .poll(() => page().getByRole("textbox", { name: "What is it called?" }).inputValue())
    .toBe("by the old oak");
});
