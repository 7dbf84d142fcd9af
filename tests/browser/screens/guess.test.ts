/** The guess of ground cover before the first line of a strip: kept beside the result, and it never holds up. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

const QUESTION = "Guess first: how much of the ground is covered, in %?";

let phone: OnPhone;
let visit = "";

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  for (const name of ["straw left", "straw off"])
    add("strip", { field, name, done: [], wholeField: false, rep: null });
  add("spot", { field, strip: null, name: "lane verge", position: null, oldGrass: true });
  add("kit", { type: "rope", name: "R1", marks: 4, spacingM: 0.3 });
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

const asked = () => phone.chromium.page.getByRole("textbox", { name: QUESTION });
const start = () => phone.chromium.page.getByRole("button", { name: "Start counting", exact: true });
const guesses = () => storedRecords(phone.chromium, "guess");
const newLine = async () => {
  await phone.goTo(`#/visit/${visit}`);
  await phone.goTo(`#/visit/${visit}/new-line`);
  await phone.reads("Stand still at the start of the line");
};

it("asks once a strip is chosen, and says of what is no share that the line begins without it", async () => {
  await newLine();
  expect(await asked().count()).toBe(0);
  await phone.touch("straw left");
  await asked().fill("140");
  await phone.reads("That is no percentage from 0 to 100.");
  await phone.reads("What stands as the guess is no percentage from 0 to 100: the line begins without it.");
  expect(await start().isEnabled()).toBe(true);
  await asked().fill("45 %");
  await expect.poll(() => phone.chromium.page.getByText("no percentage").count()).toBe(0);
});

it("does not ask of old grass, which lies in no strip", async () => {
  await phone.touch("lane verge");
  await expect.poll(() => asked().count()).toBe(0);
  await phone.touch("not at a marked spot");
  await phone.touch("straw left");
  await expect.poll(() => asked().inputValue()).toBe("45 %");
});

it("keeps it with the line, says it beside the result, and asks no second time", async () => {
  await start().tap();
  await phone.reads("What does the raindrop meet at mark 1?");
  const [kept] = await guesses();
  expect(kept?.revs[0]?.body).toMatchObject({ what: "ground-cover-percent", value: 45, visit });
  for (const _ of [1, 2, 3, 4]) {
    await phone.chromium.page.tap("[data-answer=residue]");
    await phone.chromium.page.waitForTimeout(400);
  }
  await phone.goTo(`#/visit/${visit}`);
  await phone.reads("Guessed before: 45 %.");
  await newLine();
  await phone.touch("straw left");
  await phone.reads("Guessed on this strip: 45 % ground cover.");
  expect(await asked().count()).toBe(0);
});

it("never holds up: it is skipped by what is no share, and is no guess any more after the first line", async () => {
  await phone.touch("straw off");
  await expect.poll(() => asked().count()).toBe(1);
  await asked().fill("about half");
  await start().tap();
  await phone.reads("What does the raindrop meet at mark 1?");
  expect(await guesses()).toHaveLength(1);
  await newLine();
  await phone.touch("straw off");
  expect(await asked().count()).toBe(0);
});
