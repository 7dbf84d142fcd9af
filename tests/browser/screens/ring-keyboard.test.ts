import { afterAll, beforeAll, expect, it } from "vitest";
import { boardSample } from "../../bench/rings-board.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

/** The ring screens without a finger on the glass: the focus goes along with what is asked. */
const { rows, board } = boardSample(Date.now(), 2, 4);
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(rows);
  await phone.goTo(board);
  await phone.chromium.page.locator(".board-row").nth(1).waitFor();
});
afterAll(() => phone.close());

const press = async (...keys: readonly string[]) => {
  for (const key of keys) await phone.chromium.page.keyboard.press(key);
};
const focused = () =>
  phone.chromium.run(() => {
    const { activeElement: on } = document;
    return (on?.getAttribute("aria-label") ?? on?.textContent ?? "").replaceAll(/\s+/g, " ").trim();
  });
const focusIsOn = (words: RegExp) =>
  until(`the focus is on: ${words}`, async () => words.test(await focused()));
/** Moves on with Tab until the focus is on the key with these words; a person gives up after sixty. */
const tabTo = async (words: RegExp) => {
  for (let steps = 0; steps < 60; steps++) {
    await press("Tab");
    if (words.test(await focused())) return;
  }
  throw new Error(`Tab never came to "${words}", it is at "${await focused()}"`);
};

it("goes from number to number on the board, and back to a key of the board", async () => {
  await tabTo(/^Read now: Ring A$/);
  await press("Enter");
  await phone.reads("Write down 1 number");
  await phone.chromium.page.waitForTimeout(300);
  await tabTo(/^Read now: Ring B$/);
  await press("Enter");
  await phone.reads("Write down 2 numbers");
  await tabTo(/^Write down 2 numbers$/);
  await press("Enter");
  await focusIsOn(/^Ring A: how deep was the water/);
  await press("8", "0", "Enter");
  await focusIsOn(/^Ring B: how deep was the water/);
  await press("Escape");
  await focusIsOn(/^Write down 1 number$/);
  await press("Enter");
  await focusIsOn(/^Ring B: how deep was the water/);
  await press("8", "1", "Enter");
  await focusIsOn(/^Read now: Ring [AB]$/);
});

it("closes the numbers of the board by Back before it leaves the board", async () => {
  await press("Enter");
  await tabTo(/^Write down 1 number$/);
  await press("Enter");
  await focusIsOn(/how deep was the water/);
  await phone.chromium.page.goBack();
  await focusIsOn(/^Write down 1 number$/);
  expect(await phone.chromium.run(() => location.hash)).toBe(board);
  await press("Enter");
  await focusIsOn(/how deep was the water/);
  await press("8", "2", "Enter");
  await focusIsOn(/^Read now: Ring [AB]$/);
});

it("asks for the number of a look, and stands at its key again behind it", async () => {
  await phone.chromium.page.locator('[data-ring="A"] a').tap();
  await phone.chromium.page.locator('[data-answer="look"]').waitFor();
  await tabTo(/^Read now$/);
  await press("Enter");
  await focusIsOn(/^Ring A: how deep was the water/);
  await press("7", "9", "Enter");
  await focusIsOn(/^Read now$/);
});

it.each([
  ["Something happened", /^Ring A: what happened/],
  ["Stop", /^Stop ring A/],
  ["Read some minutes ago", /^Ring A: how deep was the water/],
  ["Water gone earlier", /^Ring A: when was the last of the water gone/],
])("goes into the panel of %s and comes back to its key", async (label, question) => {
  await tabTo(new RegExp(`^${label}$`));
  await press("Enter");
  await focusIsOn(question);
  await press("Escape");
  await focusIsOn(new RegExp(`^${label}$`));
});

it("corrects a reading and stands at its row, then at the key of the list", async () => {
  await tabTo(/^All readings$/);
  await press("Enter");
  await focusIsOn(/^Touch a reading to correct it$/);
  await tabTo(/79 mm deep/);
  await press("Enter");
  await focusIsOn(/^Correct: 79 mm deep$/);
  await press("7", "8", "Enter");
  await focusIsOn(/78 mm deep.*79 mm deep/);
  await press("Escape");
  await focusIsOn(/^All readings$/);
});
