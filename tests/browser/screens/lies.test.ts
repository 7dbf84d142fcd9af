/** Where a line or a hole lies, and the rope of a line: corrected on its sheet, and what follows from it. */

import { afterAll, beforeAll, expect, it } from "vitest";
import { NO_STRIP } from "../../../src/record/ground.ts";
import { beginSample, fieldOf, lineOf, marksRead } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { type Stored, storedRecords } from "./on-record.ts";

let phone: OnPhone;
let line = "";
let hole = "";
let onGrass = "";
let grassSpot = "";
let strips: readonly string[] = [];
let ropes: readonly string[] = [];

const farm = () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Long Bottom"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = (name: string) => add("strip", { field, name, done: [], wholeField: false, rep: null });
  const [left, off] = [strip("straw left"), strip("straw off")];
  strips = [left, off];
  const spot = add("spot", { field, strip: null, name: "by the hedge", position: null, oldGrass: false });
  const rope = (name: string, marks: number, spacingM: number) =>
    add("kit", { type: "rope", name, marks, spacingM });
  const [first, longer, other] = [rope("R1", 4, 0.3), rope("R2", 4, 0.5), rope("R3", 6, 0.3)];
  ropes = [first, longer, other];
  line = add("observation", lineOf({ visit, field, strip: left, rope: first }, { spot }), {
    entries: marksRead("rrrb"),
  });
  const grass = add("spot", { field, strip: null, name: "lane verge", position: null, oldGrass: true });
  grassSpot = `#/fields/${field}/spot/${grass}`;
  const holeOn = (ground: { readonly strip: typeof left; readonly spot?: typeof grass }) => ({
    type: "hole" as const,
    visit,
    field,
    ...ground,
    place: null,
    person: null,
    startedAtMs: Date.UTC(2024, 4, 7, 9),
    template: null,
    sidesM: [0.2, 0.2] as [number, number],
    depthM: 0.2,
    method: null,
    landUse: null,
    minutes: null,
    mustardMin: null,
    at: { position: null, why: "not-asked" as const },
    number: 1,
  });
  hole = add("observation", holeOn({ strip: left }));
  onGrass = add("observation", holeOn({ strip: NO_STRIP, spot: grass }));
  return rows();
};

beforeAll(async () => {
  phone = await onPhone(farm());
});
afterAll(() => phone.close());

const body = async (
  id: string,
): Promise<Stored["revs"][number]["body"] & { rope?: string; place?: string }> =>
  (await storedRecords(phone.chromium, "observation")).find((one) => one.id === id)?.revs[0]?.body ?? {};
const text = async () => (await phone.chromium.page.locator("main").textContent()) ?? "";
const keep = () => phone.chromium.page.getByRole("button", { name: "Correct it", exact: true });

it("refuses a rope with another number of marks, and says why", async () => {
  await phone.goTo(`#/line/${line}/sheet`);
  await phone.reads("At the marked spot by the hedge.");
  await phone.touch("Correct strip and rope");
  await phone.touch("R3");
  await phone.reads(
    "This line was counted on a rope with 4 marks, and that one has 6 marks. Choose a rope with 4 marks.",
  );
  expect(await keep().isDisabled()).toBe(true);
});

it("puts a line on another strip, another rope and no marked spot, and its marks stay as they were read", async () => {
  await phone.touch("R2");
  await expect.poll(() => keep().isEnabled()).toBe(true);
  await phone.touch("straw off");
  await phone.touch("not at a marked spot");
  await phone.touch("Correct it");
  await phone.reads("Long Bottom · straw off");
  await expect.poll(text).toContain("What is said of it was last changed");
  await expect.poll(text).not.toContain("by the hedge");
  const kept = await body(line);
  expect([kept.strip, kept.rope, kept.spot]).toEqual([strips[1], ropes[1], undefined]);
  // Three of four marks are covered, whatever the rope.
  await phone.reads("75 %");
});

it("counts the line in its new strip from now on", async () => {
  await phone.touch("All of this day");
  await phone.reads("straw off");
  const strip = phone.chromium.page.locator("section", { hasText: "straw off" }).first();
  await expect.poll(() => strip.textContent()).toContain("75");
});

it("corrects strip and place of a hole", async () => {
  await phone.goTo(`#/hole/${hole}/sheet`);
  await phone.touch("Correct strip and place");
  expect(await phone.chromium.page.getByText("R1").count()).toBe(0);
  await phone.touch("straw off");
  await phone.touch("wheel track");
  await phone.touch("by the hedge");
  await phone.touch("Correct it");
  await phone.reads("At the marked spot by the hedge.");
  const kept = await body(hole);
  expect([kept.strip, kept.place, kept.spot?.startsWith("spot-")]).toEqual([strips[1], "wheel-track", true]);
});

it("corrects the place of a hole on old grass whose spot is deleted, and leaves it on old grass", async () => {
  await phone.goTo(grassSpot);
  await phone.touch("Delete this spot");
  await phone.touch("Yes, delete it");
  await phone.goTo(`#/hole/${onGrass}/sheet`);
  await phone.touch("Correct strip and place");
  await phone.touch("wheel track");
  await phone.touch("Correct it");
  await expect.poll(async () => (await body(onGrass)).place).toBe("wheel-track");
  const kept = await body(onGrass);
  expect([kept.strip, kept.spot]).toEqual([NO_STRIP, grassSpot.split("/").at(-1)]);
});
