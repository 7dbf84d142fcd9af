/** How a ring stood: asked where it is read, used in the sums, corrected later and visibly, with its kit. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../../src/screens/parts/route.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { entriesAt, levelAt, ringOf, startAt } from "../../bench/seed-rings.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

let phone: OnPhone;
let visit = "";
let sheet = "";
let pourSheet = "";

const farm = () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const on = { visit: visit as `visit-${string}`, field };
  const strip = add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  add("strip", { field, name: "straw off", done: [], wholeField: false, rep: null });
  add("spot", { field, strip: null, name: "By the hedge", position: null, oldGrass: false });
  const [a, b] = ["A", "B"].map((name) =>
    add("kit", { type: "ring", name, insideM: [0.3, 0.3], heightsM: [0.25], outsideM: null }),
  );
  if (a === undefined || b === undefined) throw new Error("no rings");
  const read = (mm: number) => ({ ...levelAt(mm), reads: "down-from-rim" as const });
  const one = add("observation", ringOf({ ...on, strip, ring: a }, { rulerReads: "down-from-rim" }), {
    entries: entriesAt([
      [0, startAt],
      [0, read(50)],
      [10, read(70)],
      [20, read(80)],
      [30, read(90)],
      [40, read(100)],
      [41, { type: "stop", why: "done", timed: "now" }],
    ]),
  });
  const pour = { type: "pour", ring: "inner", value: 1000, unit: "mL", typed: "1000", timed: "now" } as const;
  const two = add("observation", ringOf({ ...on, strip, ring: b }, { way: "measured-pour" }), {
    entries: entriesAt(
      [
        [0, startAt],
        [0, pour],
        [6, { type: "gone", ring: "inner", timed: "now" }],
        [7, { type: "stop", why: "done", timed: "now" }],
      ],
      undefined,
      "f",
    ),
  });
  sheet = `#/ring/${one}/sheet`;
  pourSheet = `#/ring/${two}/sheet`;
  return rows();
};

beforeAll(async () => {
  phone = await onPhone(farm());
});
afterAll(() => phone.close());

const text = async () =>
  ((await phone.chromium.page.locator("main").textContent()) ?? "").replaceAll("\u00a0", " ");
const focused = () =>
  phone.chromium.run(
    () => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.textContent ?? "",
  );
const middle = async (name: string) => {
  const key = phone.chromium.page.getByRole("button", { name, exact: true });
  await key.evaluate((element) => element.scrollIntoView({ block: "center" }));
  await key.tap();
};
const conductivity = async () => {
  const door = phone.chromium.page.locator("summary", { hasText: "For the specialist" });
  await door.evaluate((element) => element.scrollIntoView({ block: "center" }));
  await door.tap();
  await phone.reads("Conductivity of the soil full of water");
};

it("asks from the rim to the ground where it is read, and says what for", async () => {
  await phone.goTo(`#/visit/${visit}/new-ring`);
  await phone.reads("From the rim down to the ground, at four places");
  const order = () =>
    phone.chromium.run(() =>
      [...document.querySelectorAll("legend, h2")].map((one) => one.textContent ?? ""),
    );
  await expect
    .poll(async () => {
      const asked = await order();
      return asked[asked.findIndex((one) => one.includes("What does the ruler show?")) + 1];
    })
    .toContain("From the rim down");
  await phone.touch("down from the rim");
  await phone.reads("Without it what soaked in still counts, but nobody knows how deep the water stood.");
  await phone.reads("By the hedge");
});

it("says on the sheet that it is missing, and takes it later", async () => {
  await phone.goTo(sheet);
  await phone.reads("not measured: drops count, but not how deep the water stood");
  await conductivity();
  await expect.poll(text).toContain("How deep the water stood was not read.");
  await middle("Correct how it stood");
  await until("the focus is in the form", async () => (await focused()) === "Correct how it stood");
  for (const [place, cm] of [
    [1, "15"],
    [2, "15"],
    [3, "16"],
    [4, "14"],
  ] as const)
    await phone.write(`Place ${place}, in cm`, cm);
  await phone.reads("The ring stands 100 mm in the ground. Highest and lowest differ by 20 mm.");
  await phone.touch("Correct it");
  await phone.reads("15 cm, 15 cm, 16 cm, 14 cm; 15 cm in the middle");
  await until("the focus is back on its key", async () => (await focused()) === "Correct how it stood");
  await phone.reads(/Last corrected/u);
});

it("takes the depth of the water from it", async () => {
  // Last three intervals of 10 min: levels 70, 80, 90 and 100 mm below a rim 150 mm over the ground, so 80, 70,
  // 60 and 50 mm deep, 65 mm on average; 60 mm/h; g = 0.316·π·100 + 0.184·π·150 = 185.98 mm;
  // K = 60/(65/185.98 + 1/(0.012·185.98) + 1) = 33.38 mm/h, by hand.
  await phone.reads("33.38 mm/h");
  await expect.poll(text).not.toContain("How deep the water stood was not read.");
});

it("corrects strip, place, mulch and marked spot", async () => {
  await middle("Correct how it stood");
  await phone.touch("straw off");
  await phone.touch("wheel track");
  await phone.touch("mulch removed");
  await phone.touch("By the hedge");
  await phone.touch("Correct it");
  await phone.reads("Long Bottom · straw off");
  for (const words of ["wheel track", "mulch removed", "By the hedge"])
    await expect.poll(text).toContain(words);
});

it("takes a ring away from a marked spot again", async () => {
  const spot = async () =>
    (await storedRecords(phone.chromium, "observation")).find(({ id }) => sheet.includes(id))?.revs[0]?.body
      .spot;
  expect(await spot()).toMatch(/^spot-/);
  await middle("Correct how it stood");
  await phone.touch("not at a marked spot");
  await phone.touch("Correct it");
  await expect.poll(spot).toBeUndefined();
  await expect.poll(text).not.toContain("By the hedge");
});

it("corrects how wet the ground was and how it was read, and keeps what was said before", async () => {
  const radio = (name: string) => phone.chromium.page.getByRole("radio", { name, exact: true });
  await middle("Correct how it stood");
  await expect.poll(() => radio("moist").count()).toBe(1);
  await radio("moist").check({ force: true });
  await radio("depth of the water").check({ force: true });
  await phone.touch("Correct it");
  await phone.reads("moist");
  await phone.reads("ruler in the ring, depth of the water");
  // What was read down from the rim stays so.
  await expect.poll(text).toContain("70 mm down from the rim");
  await middle("Correct how it stood");
  await radio("wet").check({ force: true });
  await phone.touch("kept at one level");
  await phone.touch("Correct it");
  await phone.reads("kept at one level, depth of the water");
  const said = await phone.chromium.page.locator(".sheet-two", { hasText: "read by" }).textContent();
  expect(said).toMatch(/groundwet/u);
});

it("takes its position afterwards, standing there", async () => {
  const { context, page } = phone.chromium;
  await context.grantPermissions(["geolocation"], { origin: new URL(page.url()).origin });
  await middle("Take the position here");
  await phone.reads("Stand still beside the ring");
  // The browser stamps it with the moment it is set; the app takes none that is older than ten seconds.
  await context.setGeolocation({ latitude: 52.0007, longitude: 0.5012, accuracy: 4 });
  await middle("Use this position");
  await phone.reads(/Measured standing still, within about 4 m/u);
  await phone.reads("52.000700, 0.501200");
});

it("goes by a ring that was corrected in the kit, and says so on its test", async () => {
  await phone.goTo(pourSheet);
  // 1 L on 30 cm across: 1000 / (π · 15²) cm = 14.15 mm.
  await phone.reads("706.9 cm²");
  await expect.poll(text).toContain("14 mm");
  expect(await text()).not.toContain("was corrected after this test");
  await phone.goTo(href({ at: "kit" }));
  await phone.touch("Add a ring");
  await until("the focus is in the form", async () => (await focused()) === "Add a ring");
  await phone.chromium.page.keyboard.press("Escape");
  await phone.touch("Close");
  await phone.chromium.page.getByRole("button", { name: "Correct ring B" }).tap();
  await phone.write("1. Inside edge to inside edge, in cm", "20");
  await phone.write("2. The same at right angles, in cm", "20");
  await phone.touch("Correct this ring and 1 ring test");
  await phone.reads("20 cm inside");
  await phone.goTo(pourSheet);
  // 1 L on 20 cm across: 1000 / (π · 10²) cm = 31.83 mm.
  await phone.reads("314.2 cm²");
  await expect.poll(text).toContain("32 mm");
  await phone.reads("Ring B was corrected after this test");
});
