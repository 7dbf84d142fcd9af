/** Today in this field: every strip with cover, worms and soak-in, and the farm's own yardstick beside it. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { href } from "../../../src/screens/parts/route.ts";
import { type DaySample, daySample } from "./day-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let sample: DaySample;
const strip = (name: string) =>
  phone.chromium.page.locator("main > section").filter({
    has: phone.chromium.page.getByRole("heading", { level: 2, name, exact: true }),
  });
const says = (name: string, words: string | RegExp) => strip(name).getByText(words).first().waitFor();

beforeAll(async () => {
  sample = daySample({ day: dayOf(Date.now()), photos: true });
  phone = await onPhone(sample.rows);
  await phone.goTo(href({ at: "visit", visit: sample.visit }));
  await phone.reads("Today in Long Bottom");
});
afterAll(() => phone.close());

it("shows cover, worms and soak-in of a strip with unit, samples, range and guess", async () => {
  // 66 of 80 marks, not the 20 and 19 of 20 that lie on the old-grass spot.
  await says("straw left", "83");
  await says("straw left", "Guessed before: 60 %.");
  await says("straw left", /3 holes/);
  await says("straw left", "soaked in after 60 min");
  // (70 · 88 · 61)^(1/3) = 72.2 by hand: geometric, because rings lie around their middle like multiples.
  await says("straw left", "72");
  await says("straw left", /^\d+ to \d+ mm, 3 rings$/);
  await says("straw left", "Guessed before: 25 mm after 60 min.");
  await says("straw left", "A burrow in ring B. It counts.");
});

it("gives no range below three rings", async () => {
  await says("straw left", "too few to give a range, 2 rings");
});

it("counts notes and photos on the strip they belong to", async () => {
  await says("carried off", "1 note, 1 photo");
  await says("straw left", "1 photo");
});

it("keeps the old-grass spot apart and shows it beside every strip", async () => {
  await says("carried off", /^On the old-grass spot: 98 % ground cover, 31 worms per hole, 95 mm soaked in/);
  await says("Old-grass spot: Orchard corner", "too few to give a range, 2 lines");
  // 14, 11 and 17 worms: a mean of 14 by hand, without the 31 of the old-grass spot.
  await says("straw left", /^14$/);
});

it("opens how the soak-in was worked out right under it, and closes it again", async () => {
  const key = strip("straw left").getByRole("button", { name: /How this was worked out ?: Soaked in/ });
  await key.tap();
  await says("straw left", "Sources");
  const formulas = () => strip("straw left").locator(".formula").count();
  await expect.poll(formulas).toBeGreaterThan(0);
  await key.tap();
  await expect.poll(formulas).toBe(0);
});

it("leads from a ring to its sheet, and from the cover to how it was worked out with the same number", async () => {
  await strip("straw left").locator("a.row").filter({ hasText: "Ring C" }).tap();
  await phone.reads("Ring figures are for comparing places");
  await phone.chromium.page.goBack();
  await strip("straw left").locator("a.strip-figure").tap();
  await phone.reads("83");
  await phone.chromium.page.goBack();
});

it("compares with the other strips of the day in one touch", async () => {
  await strip("straw left").getByText("Compare with today's other strips").tap();
  await phone.reads("Like with like first");
  const address = await phone.chromium.run(() => location.hash);
  expect(address).toBe(href({ at: "side-by-side", visit: sample.visit, strip: sample.left }));
});
