/** Where a line, ring or hole is made: a strip, a marked spot of it, or old grass, which lies in no strip. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { NO_STRIP } from "../../../src/record/ground.ts";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { placeAt, stand, storedBody } from "./map-sample.ts";
import { type OnPhone, onPhone, standsStill } from "./on-phone.ts";

const { add, rows } = beginSample();
const day = dayOf(Date.now());
const field = add("field", fieldOf("Top Field"));
const visit = add("visit", { field, day, harvestYear: null });
const strip = (name: string) => add("strip", { field, name, done: [], wholeField: false, rep: null });
const [left, off] = [strip("straw left"), strip("straw off")];
add("kit", { type: "rope", name: "R1", marks: 2, spacingM: 0.3 });
add("kit", { type: "ring", name: "A", insideM: [0.3, null], heightsM: [0.25], outsideM: null });
const positionAt = (eastM: number, northM: number) => ({
  ...placeAt(eastM, northM),
  accuracyM: 3,
  accuracyMeans: "not-known" as const,
  spreadM: null,
  fixes: 1,
  how: "standing-still" as const,
  atMs: 0,
});
const stake = add("spot", {
  field,
  strip: left,
  name: "oak stake",
  position: positionAt(100, 50),
  oldGrass: false,
});
const grass = add("spot", {
  field,
  strip: null,
  name: "old pasture",
  position: positionAt(180, 130),
  oldGrass: true,
});
add("spot", {
  field,
  strip: null,
  name: "the gateway edge",
  position: positionAt(10, 10),
  oldGrass: false,
  edge: { between: [left, off], to: null },
});
const bare = add("field", fieldOf("Bare Field"));
const bareVisit = add("visit", { field: bare, day, harvestYear: null });
add("strip", { field: bare, name: "B", done: [], wholeField: false, rep: null });

let phone: OnPhone;
beforeAll(async () => {
  phone = await onPhone(rows());
  await phone.chromium.page.setViewportSize({ width: 390, height: 844 });
});
afterAll(() => phone.close());

const group = (name: string) => phone.chromium.page.getByRole("group", { name });
const expectChosen = (name: string, ...labels: readonly string[]) =>
  expect
    .poll(() => group(name).locator("label:has(input:checked)").allInnerTexts(), {
      message: `chosen in ${name}`,
    })
    .toEqual(labels);
const setOut = async (what: "new-line" | "new-hole" | "new-ring") => {
  await phone.goTo("#/measure");
  await phone.reads("Top Field");
  await phone.goTo(`#/visit/${visit}/${what}`);
  await group("At a marked spot?").waitFor();
};
const idIn = async (part: string): Promise<string> => {
  await phone.chromium.page.waitForURL(new RegExp(`#/${part}/observation-[0-9a-f]+`));
  return /observation-[0-9a-f]+/.exec(phone.chromium.page.url())?.[0] ?? "";
};
const groundOf = async (id: string) => {
  const body = (await storedBody(phone, id)) as unknown as { strip: string; spot?: string };
  return [body.strip, body.spot];
};

it("looks as ever on a field without a marked spot", async () => {
  await phone.goTo(`#/visit/${bareVisit}/new-line`);
  await group("Which strip?").waitFor();
  await phone.reads("How will you count?");
  expect(await group("At a marked spot?").count()).toBe(0);
});

it("offers old grass first, then the other spots, and no edge", async () => {
  await setOut("new-line");
  const texts = () => group("At a marked spot?").locator("label").allInnerTexts();
  await expect
    .poll(async () => (await texts()).map((text) => text.split("\n")[0]))
    .toEqual(["old pasture", "oak stake", "not at a marked spot"]);
  const labels = await texts();
  expect(labels[0]).toContain("old-grass spot, in no strip");
  expect(labels[1]).toContain("on straw left");
  await expectChosen("At a marked spot?", "not at a marked spot");
});

it("fills the strip of a marked spot in one touch, and leaves the spot when another strip is touched", async () => {
  await phone.touch("oak stake");
  await expectChosen("Which strip?", "straw left");
  await group("Which strip?").getByText("straw off").tap();
  await expectChosen("At a marked spot?", "not at a marked spot");
});

it("counts a line on old grass with no strip, and names the spot where its strip would stand", async () => {
  await phone.touch("old pasture");
  await expectChosen("Which strip?");
  await phone.touch("Start counting");
  const line = await idIn("line");
  await phone.reads("Top Field · old pasture, old-grass spot");
  await phone.reads("First line on this old grass.");
  expect(await groundOf(line)).toEqual([NO_STRIP, grass]);
  const residue = phone.chromium.page.locator("[data-answer=residue]");
  await residue.tap();
  await phone.reads("1 of 2");
  await new Promise((resolve) => setTimeout(resolve, 300));
  await residue.tap();
  await phone.reads("Old grass so far: 100 %, 1 line.");
});

it("carries neither the spot nor a strip of it on to the next line", async () => {
  await setOut("new-line");
  await expectChosen("At a marked spot?", "not at a marked spot");
  await expectChosen("Which strip?");
  await phone.touch("oak stake");
  await phone.touch("Start counting");
  const line = await idIn("line");
  await phone.reads("Top Field · straw left, oak stake");
  // Not the line on old grass: it is no line of this strip.
  await phone.reads("First line of this strip.");
  await phone.reads("Line 1");
  expect(await groundOf(line)).toEqual([left, stake]);
  await setOut("new-line");
  await expectChosen("Which strip?", "straw left");
  await expectChosen("At a marked spot?", "not at a marked spot");
});

it("digs a hole on old grass and asks no guess for a strip there", async () => {
  await setOut("new-hole");
  await group("Which strip?").getByText("straw off").tap();
  await phone.reads("Guess first: how many worms");
  await phone.touch("old pasture");
  await phone.chromium.page.getByText("Guess first: how many worms").first().waitFor({ state: "detached" });
  await phone.touch("Start hole 1");
  const hole = await idIn("hole");
  await phone.reads("Top Field · old pasture, old-grass spot");
  expect(await groundOf(hole)).toEqual([NO_STRIP, grass]);
});

it("sets a ring out on old grass, and hands no strip of it on as before", async () => {
  await setOut("new-ring");
  await phone.touch("old pasture");
  await phone.touch("Set it out");
  const ring = await idIn("ring");
  await phone.reads("Top Field · old pasture, old-grass spot");
  expect(await groundOf(ring)).toEqual([NO_STRIP, grass]);
  await setOut("new-ring");
  await phone.touch("As before");
  await expectChosen("Which strip?");
  await expectChosen("At a marked spot?", "not at a marked spot");
});

it("lists what was begun on old grass on the day, and leaves the strips to themselves", async () => {
  await phone.goTo(`#/visit/${visit}`);
  const section = phone.chromium.page.locator("main > section").filter({
    has: phone.chromium.page.getByRole("heading", { level: 2, name: "Old-grass spot: old pasture" }),
  });
  const found = async () => (await section.allInnerTexts())[0];
  await expect.poll(found).toMatch(/Ground cover\s+100 %/);
  for (const words of ["line 1", "Hole 1 · go on", "Ring A · go on"])
    await expect.poll(found).toContain(words);
  await section.getByText("Hole 1").tap();
  await idIn("hole");
});

it("says how far each spot lies once a position is there, and moves no key for it", async () => {
  await phone.chromium.context.grantPermissions(["geolocation"]);
  await phone.goTo("#/measure");
  await phone.goTo(`#/visit/${visit}/new-line`);
  await group("At a marked spot?").waitFor();
  const tops = () =>
    phone.chromium.run(() =>
      [...document.querySelectorAll("main label, main button")].map((one) =>
        Math.round(one.getBoundingClientRect().top),
      ),
    );
  // Until the browser has said that it may be asked, a key to ask for the position stands there.
  await phone.chromium.page.locator(".standing [role=status]").waitFor();
  await standsStill(phone.chromium, "line-new");
  const before = await tops();
  await stand(phone, 182, 130, 4);
  // 2 m east of the old pasture; the stake 82 m west and 80 m south: 115 m by Pythagoras.
  await phone.reads("about 2 m from here: you may be at it");
  await phone.reads(/^.*about 11[45] m from here$/m);
  await expect.poll(tops).toEqual(before);
  await expectChosen("At a marked spot?", "not at a marked spot");
});

it("opens how the way the line lies was looked at, beside what it says against it", async () => {
  await phone.goTo("#/measure");
  await phone.goTo(`#/visit/${bareVisit}/new-line`);
  const { page } = phone.chromium;
  await page.getByRole("textbox", { name: /^Width of one machine pass/ }).fill("6");
  // Two marks 0.3 m apart cross 0.2 m of the 6 m.
  await phone.reads(/does not cross one full machine pass/);
  await phone.touch(/^How this was worked out/);
  await phone.reads("Marks in step with the rows");
});
