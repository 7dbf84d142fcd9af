import type { Locator } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { entriesAt, levelAt, ringOf, startAt } from "../../bench/seed-rings.ts";
import { EXAMPLE } from "../../unit/science/infiltration/published-tests.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

/**
 * The sheet of a ring with the readings of a published test: K. Subramanya, Engineering Hydrology (third
 * edition), worked example. The water stood 150 mm deep at the start.
 */
let phone: OnPhone;
let sheet = "";

const farm = () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  const kit = { type: "ring", name: "A", insideM: [0.3, 0.3], heightsM: [0.25], outsideM: null } as const;
  const ring = add("kit", { ...kit, insideM: [0.3, 0.3], heightsM: [0.25] });
  const levels = EXAMPLE.map(({ atMin, mm }) => [atMin, levelAt(Math.round(1500 - 10 * mm) / 10)] as const);
  const id = add(
    "observation",
    ringOf({ visit, field, strip, ring }, { rimToSoilM: [0.15, 0.15, 0.16, 0.14] }),
    {
      entries: entriesAt([
        [0, startAt],
        [0, levelAt(150)],
        ...levels,
        [131, { type: "stop", why: "done", timed: "now" }],
      ]),
    },
  );
  sheet = `#/ring/${id}/sheet`;
  return rows();
};

beforeAll(async () => {
  phone = await onPhone(farm());
  await phone.goTo(sheet);
  await phone.reads("For the specialist");
});
afterAll(() => phone.close());

/** In the middle of the screen: at its edge the keys that stay under the thumb would lie over it. */
const tapInMiddle = async (what: Locator) => {
  await what.evaluate((element) => element.scrollIntoView({ block: "center" }));
  await what.tap();
};
const open = () => tapInMiddle(phone.chromium.page.locator("summary", { hasText: "For the specialist" }));
const MODELS = /Kostiakov|Philip|Horton|Green and Ampt|AICc|Kfs/u;
const text = async (): Promise<string> => (await phone.chromium.page.locator("main").textContent()) ?? "";

it("keeps the names of models behind a door that is closed at first, and lays no curve before it opens", async () => {
  expect(await text()).not.toMatch(MODELS);
  expect(phone.chromium.page.workers()).toHaveLength(0);
});

it("shows every curve with its unknowns, laid in the worker", async () => {
  await open();
  await phone.reads("These readings speak most for");
  await expect.poll(() => phone.chromium.page.workers()).toHaveLength(1);
  // Independent least squares on the published readings, see tests/reference/subramanya.test.ts.
  for (const [symbol, value] of [
    ["a, mm/h^b", "82.38"],
    ["b", "0.5326"],
    ["S, mm/h^½", "77.4"],
    ["A, mm/h", "4.809"],
    ["f_0, mm/h", "232.1"],
    ["f_c, mm/h", "34.13"],
    ["k, 1/h", "3.944"],
    ["K, mm/h", "6.943"],
    ["M, mm", "432.7"],
  ] as const)
    await expect.poll(text).toContain(`${symbol}${value}`);
  // The free fit has its steady part below 0, so there is none.
  await expect.poll(text).toContain("Not identifiable: the readings hold no steady part");
  // √(2.4009 mm² / (10 − 3)).
  await expect.poll(text).toContain("Left over at a reading, on average: 0.5857 mm, of 10 readings.");
  expect(await text()).not.toMatch(/science\/|undefined|NaN/u);
});

it("gives conductivities with what they rest on, and at 20 °C once the water was measured", async () => {
  // g = 0.316·π·100 mm + 0.184·π·150 mm = 185.98 mm; last three intervals 30.6 mm in 55 min under 41.37 mm of
  // water; K = 33.382/(41.37/185.98 + 1/(0.012·185.98) + 1) = 19.98 mm/h, by hand.
  for (const words of [
    "19.98 mm/h",
    "The rate was not steady yet, so this conductivity reads too high.",
    "There is no first pour of measured water",
  ])
    await expect.poll(text).toContain(words);
  await phone.write("How warm was the water, in °C?", "8");
  await phone.touch("Work it out with these");
  // Water of 8 °C is 1.3826 times as thick as at 20 °C (IAPWS 2008): 19.983 · 1.3826 = 27.63.
  await phone.reads("27.63 mm/h with water of 20 °C");
});

it("keeps the temperature with the test, and shows it again", async () => {
  await phone.chromium.reload();
  await phone.reads("8 °C");
  await open();
  await phone.reads("27.63 mm/h with water of 20 °C");
});

it("goes by another kind of soil when it is chosen", async () => {
  await phone.touch("coarse sand or gravel");
  // 33.382/(41.37/185.98 + 1/(0.036·185.98) + 1) = 24.33, by hand.
  await phone.reads("24.33 mm/h");
});

it("says how it was worked out, and hands a table over", async () => {
  await tapInMiddle(
    phone.chromium.page.getByRole("button", { name: /How this was worked out.*For the specialist/u }),
  );
  await phone.reads("Horton (1940)");
  const download = phone.chromium.page.waitForEvent("download");
  await tapInMiddle(phone.chromium.page.getByRole("button", { name: /table \(CSV\)/u }));
  const file = await (await download).createReadStream();
  let csv = "";
  for await (const chunk of file) csv += String(chunk);
  expect(csv).toMatch(/^\ufeffpart,of,what,value,unit,standard error,said beside it,example\r\n/u);
  expect(csv).toMatch(/curve,horton,f_c,34\.13\d*,mm\/h,[\d.]+,,no\r\n/u);
  expect(csv).toMatch(/conductivity,steady-ring,as measured,24\.3/u);
});
