import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { lineSample } from "./line-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

/** The counting screen without a finger on the glass: a keyboard alone, then a clicker of a few keys. */
const { rows, addresses } = lineSample();
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(rows);
});
afterAll(() => phone.close());

const press = async (...keys: readonly string[]) => {
  for (const key of keys) await phone.chromium.page.keyboard.press(key);
};
const question = () =>
  phone.chromium.run(() => document.querySelector(".running-question")?.textContent ?? "");
const asks = (words: string) => until(`it asks: ${words}`, async () => (await question()) === words);
const focused = () =>
  phone.chromium.run(() => (document.activeElement?.textContent ?? "").replaceAll(/\s+/g, " ").trim());
const focusIsOn = (words: string) =>
  until(`the focus is on: ${words}`, async () => (await focused()) === words);
/** Moves on with Tab until the focus is on the key with these words; a person gives up after forty. */
const tabTo = async (words: string) => {
  for (let steps = 0; steps < 40; steps++) {
    await press("Tab");
    if ((await focused()).startsWith(words)) return;
  }
  throw new Error(`Tab never came to "${words}", it is at "${await focused()}"`);
};
const marks = (words: string) => phone.reads(words);

it("answers with letters and Backspace from the first build on, and Tab with Enter does the same", async () => {
  await phone.goTo(addresses.fifth);
  await asks("What does the raindrop meet at mark 5?");
  await press("r");
  await marks("5 of 20 marks");
  await phone.chromium.page.waitForTimeout(260);
  await press("o");
  await marks("6 of 20 marks");
  await press("Backspace");
  await phone.reads(/Undone: mark 6/);
  await tabTo("Residue");
  // Another key within a quarter of a second is a slip of the hand, and is not taken.
  await phone.chromium.page.waitForTimeout(260);
  await press("Enter");
  await phone.reads("Taken: mark 6: residue, flat");
  await press("Enter");
  await phone.reads("Taken: mark 7: residue, flat");
  await focusIsOn("Residue");
});

it("lets the stance be chosen with the arrow keys, and letters go on answering", async () => {
  await phone.chromium.page.locator(".halves input").first().focus();
  await press("ArrowRight");
  await press("r");
  await phone.reads("Taken: mark 8: residue, standing");
  await press("ArrowLeft");
});

it("goes into a panel and comes back to the key that opened it", async () => {
  await tabTo("Set mark number");
  await press("Enter");
  await focusIsOn("Which number does the rope say?");
  await press("1", "2", "Enter");
  await asks("What does the raindrop meet at mark 12?");
  await focusIsOn("Set mark number");
  await press("Enter");
  await focusIsOn("Which number does the rope say?");
  await press("Escape");
  await focusIsOn("Set mark number");
});

it("corrects a mark, and stands at that mark afterwards", async () => {
  await tabTo("Correct a mark");
  await press("Enter");
  await focusIsOn("Touch a mark to correct it");
  await tabTo("3 residue");
  await press("Enter");
  await focusIsOn("What lies at mark 3?");
  await tabTo("Green");
  await press("Enter");
  await focusIsOn("3 green corrected");
  await tabTo("Done");
  await press("Enter");
  await focusIsOn("Correct a mark");
});

it("ends the line and says so where the focus was lost", async () => {
  await tabTo("Line ends here");
  await press("Enter");
  await asks("The line ended at mark 11.");
  await focusIsOn("The line ended at mark 11.");
  await tabTo("See this line");
  await press("Enter");
  await phone.reads("Ground cover on this line");
});

it("calls misses by number, ends the line with the rest standing, and types the mark beside the switch", async () => {
  await phone.goTo(addresses.misses);
  await asks("Which mark has no residue?");
  await press("7");
  await tabTo("Bare");
  await press("Enter");
  await phone.reads("1 miss called");
  await tabTo("Line ends here");
  await press("Enter");
  await focusIsOn("At which mark does the line end?");
  await phone.chromium.page.locator(".halves input").first().focus();
  await press("ArrowRight", "Backspace", "Backspace", "1", "8");
  await expect
    .poll(() => phone.chromium.run(() => document.querySelector("output")?.textContent?.trim()))
    .toBe("18");
  await tabTo("Done");
  await press("Enter");
  await asks("The line ended at mark 18.");
});

it("teaches a clicker two keys, and counts with them alone", async () => {
  await phone.goTo("#/settings");
  for (const [answer, key, shown] of [
    ["residue", "PageDown", "Page down"],
    ["bare", "Enter", "Enter"],
  ] as const) {
    await phone.chromium.page.getByRole("button", { name: new RegExp(`Teach.*${answer}`, "i") }).click();
    await press(key);
    await phone.chromium.page
      .locator(".said")
      .getByText(new RegExp(`${answer}: ${shown}`, "i"))
      .waitFor();
  }
  await phone.goTo(addresses.counted);
  await asks("What does the raindrop meet at mark 5?");
  // A clicker has no idea of the focus: it may lie on any key, or nowhere.
  await phone.chromium.page.getByRole("button", { name: "Undo", exact: true }).focus();
  await press("PageDown");
  await phone.reads("Taken: mark 5: residue, flat");
  await phone.chromium.page.waitForTimeout(260);
  await press("Enter");
  await phone.reads("Taken: mark 6: bare");
  expect(await phone.chromium.run(() => scrollY)).toBe(0);
  // Held down it answers once.
  await phone.chromium.page.keyboard.down("Enter");
  await phone.chromium.page.keyboard.down("Enter");
  await phone.chromium.page.keyboard.down("Enter");
  await phone.chromium.page.keyboard.up("Enter");
  await phone.reads("Taken: mark 7: bare");
  await asks("What does the raindrop meet at mark 8?");
  // Two keys at once are one answer and a slip.
  await phone.chromium.page.waitForTimeout(260);
  // Sent together: the answer to the first would not come within a quarter of a second everywhere.
  await Promise.all([press("PageDown"), press("Enter")]);
  await phone.reads("Taken: mark 8: residue, flat");
  await asks("What does the raindrop meet at mark 9?");
});

it("takes a clicker's key for no answer while a panel is open, nor once the line is over", async () => {
  await phone.touch("Correct a mark");
  await focusIsOn("Touch a mark to correct it");
  await press("PageDown");
  await press("Escape");
  await asks("What does the raindrop meet at mark 9?");
  await phone.touch("Line ends here");
  await asks("The line ended at mark 8.");
  await press("PageDown", "PageDown");
  await phone.chromium.page.waitForTimeout(300);
  await asks("The line ended at mark 8.");
  expect(await phone.chromium.page.locator(".bar").count()).toBe(0);
});
