/**
 * What the day has found. Worked out by hand from what was touched:
 *
 * Cover, ratio estimator over lines of 20 marks (Lohr 1999, Sampling: Design and Analysis, chapter 5), range on
 * the logit scale with Student's t of two degrees of freedom, 4.303 (Korn & Graubard 1999, from memory):
 * north 15, 17 and 16 of 20: 48 of 60 = 80 %; SE² = 3/2 · (1 + 1 + 0) / 60² gives SE = 0.0289, on the logit
 * scale 0.0289 / (0.8 · 0.2) = 0.1804; logit 1.3863 ± 4.303 · 0.1804 is 0.610 to 2.163, and that is 65 to 90 %.
 * South 6, 8 and 7 of 20: 21 of 60 = 35 %; the same SE, on the logit scale 0.0289 / (0.35 · 0.65) = 0.1269;
 * logit −0.6190 ± 4.303 · 0.1269 is −1.165 to −0.073, and that is 24 to 48 %.
 * Their difference by Welch's t (Welch 1947), alike in spread, so with four degrees of freedom, 2.776:
 * 45 ± 2.776 · 100 · √(2 · 0.0289²) = 45 ± 11.3 points.
 *
 * Worms: 12 and 4 in a hole of 0.2 m · 0.2 m = 0.04 m²: 300 and 100 per m².
 * Soaked in: 150 less 98 and 150 less 76 mm; twice 1000 cm³ / (π · 15² cm²) = 2 · 14.15 mm.
 */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Day } from "./day.ts";

const stripOf = ({ chromium: { page } }: Day, name: string) =>
  page.locator("main > section").filter({ has: page.getByRole("heading", { level: 2, name, exact: true }) });

/** What stands on the screen of the day about one strip, without line ends. */
const saidOf = async (day: Day, name: string): Promise<string> =>
  (await stripOf(day, name).allInnerTexts()).join(" ").replaceAll(/\s+/gu, " ");

export const readToday = (today: () => Day): void => {
  it("shows every number of the first strip with unit, samples and range", async () => {
    const { back, reads } = today();
    await back();
    await reads("Today in Long Bottom");
    await stripOf(today(), "north half").getByText("worms per hole so far").waitFor();
    for (const words of [
      "1 note, 1 photo",
      "80 % ground cover so far 65 to 90, 3 lines",
      "12 worms per hole so far too few to give a range, 1 hole",
      "300 per m²",
      "Guessed before the first hole: 8 per hole.",
      "12 found, 12 placed, 0 left",
      "74 mm soaked in after 60 min too few to give a range, 1 ring",
      "Guessed before: 40 mm after 60 min.",
      "52 mm too few to give a range, 1 ring",
      "A burrow in ring A. It counts.",
    ])
      await expect.poll(() => saidOf(today(), "north half")).toContain(words);
  });

  it("shows the same of the second strip, and what was not read", async () => {
    const said = () => saidOf(today(), "south half");
    for (const words of [
      "35 % ground cover so far 24 to 48, 3 lines",
      "4 worms per hole so far too few to give a range, 1 hole",
      "100 per m²",
      "28 mm soaked in after 30 min too few to give a range, 1 ring",
      "not read for so long: ring B",
    ])
      await expect.poll(said).toContain(words);
    expect(await said()).not.toContain("Guessed");
  });
};

export const compare = (today: () => Day): void => {
  it("says first what is unlike, and shows no number yet", async () => {
    const { chromium, reads } = today();
    await stripOf(today(), "north half").getByText("Compare with today's other strips").tap();
    await reads("Like with like first");
    await reads("Ground cover. Not like with like: these were read in different ways.");
    await reads("Soaked in. Not like with like: these were read in different ways.");
    expect(await chromium.page.locator("table.figures, .drawn").count()).toBe(0);
  });

  it("compares when it is told to: what was seen, and that ground and treatment cannot be told apart", async () => {
    const { press, reads } = today();
    await press("Compare anyway");
    await reads("North half: 45 points more ground cover than south half.");
    await reads("These two places differ clearly on this day.");
    await reads(/between 34 and 56 points/);
    await reads("nothing can tell what the ground did from what was done to it");
  });
};

export const handOverPicture = (today: () => Day): void => {
  it("makes one picture with the photo, both numbers and what they do not show, and saves it", async () => {
    const { chromium, back, touch } = today();
    const { page } = chromium;
    await back();
    await touch("One picture to send");
    const says = () => page.locator(".paper-frame img").getAttribute("alt");
    for (const words of [
      "Long Bottom, 12 May 2026",
      "35 % (range 24 to 48, 3 lines)",
      "80 % (range 65 to 90, 3 lines)",
      "What this does not show",
    ])
      await expect.poll(says).toContain(words);
    await expect.poll(() => page.getByLabel(/^Photo of /).isChecked()).toBe(true);
    const saved = page.waitForEvent("download");
    await touch("Save this picture");
    const picture = await saved;
    expect(picture.suggestedFilename()).toBe("mulchmark-long-bottom-2026-05-12.png");
    const bytes = readFileSync(await picture.path());
    // A PNG of 1080 by 1350 (W3C Portable Network Graphics, 5.2 and 11.2.2).
    expect(bytes.subarray(1, 4).toString()).toBe("PNG");
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([1080, 1350]);
  });
};
