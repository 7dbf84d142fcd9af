/** The forms of a day in US customary units: every line that is typed names its unit in words. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { HABITS } from "../../src/record/units.ts";
import { dayOf } from "../../src/screens/parts/numbers.ts";
import { href } from "../../src/screens/parts/route.ts";
import { beginSample, fieldOf } from "../bench/seed.ts";
import { type OnPhone, onPhone } from "./screens/on-phone.ts";

const { add, rows } = beginSample();
const field = add("field", fieldOf("Long Bottom"));
add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
const visit = add("visit", { field, day: dayOf(Date.now()), harvestYear: null });
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(rows(), { trade: "us-ca", habits: { ...HABITS.us }, toldLocked: true });
});
afterAll(() => phone.close());

const labels = async (): Promise<string> =>
  (await phone.chromium.page.locator("main label, main legend").allInnerTexts()).join("\n");

it.each([
  ["a line", href({ at: "line-new", visit }), [], "From row to row, in inches"],
  [
    "a ring",
    href({ at: "ring-new", visit, follows: null }),
    ["I have read this", "A"],
    "Your guess, in inches",
  ],
  ["a hole", href({ at: "hole-new", visit }), ["own sizes"], "Depth, in inches"],
  ["rain", href({ at: "field", field }), [/^Rain$/], "How much rain, in inches?"],
  ["a rope", href({ at: "kit" }), ["Add a rope"], "From mark to mark, in inches"],
  ["a bottle", href({ at: "kit" }), ["Add a bottle"], "in US fluid ounces"],
] as const)("%s", async (_, address, keys, words) => {
  await phone.goTo(address);
  for (const key of keys) await phone.touch(key);
  await expect.poll(labels).toContain(words);
  expect(await labels()).not.toMatch(/\bin (in|ft|ac|gal|fl-oz)\b/u);
});

it("a ruler that nobody named reads parts of an inch", async () => {
  await phone.goTo(href({ at: "ring-new", visit, follows: null }));
  await phone.touch("A");
  // 1 mm is 1 / 25.4 in.
  await expect.poll(labels).toContain("steps of 0.0394 in");
  expect(await labels()).not.toMatch(/milli|litre/u);
});

it("a bottle that cannot be is refused in US fluid ounces", async () => {
  await phone.goTo(href({ at: "kit" }));
  await phone.touch("Add a bottle");
  await phone.write("It holds, full to its mark, in US fluid ounces", "0.1");
  await phone.touch("Keep this bottle");
  // 10 mL is 0.338 and 200 L are 6762.8 US fl oz of 29.5735 mL.
  await phone.reads("A bottle holds 0.339 to 6,760 US fluid ounces.");
});
