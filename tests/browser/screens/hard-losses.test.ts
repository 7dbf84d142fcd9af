/** What was deleted, what was joined: nothing vanishes, and everything comes back. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf, lineOf, marksRead } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let at: Record<"visit" | "field" | "line" | "workedOut", string>;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  add("field", fieldOf("Low Ridge"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "north", done: [], wholeField: false, rep: null });
  const south = add("strip", { field, name: "south", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 4, spacingM: 0.3 });
  const line = add("observation", lineOf({ visit, field, strip, rope }), { entries: marksRead("rrrb") });
  add("observation", lineOf({ visit, field, strip: south, rope }), { entries: marksRead("rbbb") });
  at = {
    visit: `#/visit/${visit}`,
    field: `#/fields/${field}`,
    line: `#/line/${line}/sheet`,
    workedOut: `#/worked-out/${strip}/${visit}`,
  };
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

const bringBack = async (what: string) => {
  await phone.goTo("#/deleted");
  await phone.reads("Deleted records");
  const key = phone.chromium.page.getByRole("button", { name: `Bring back: ${what}`, exact: true });
  await key.first().tap();
  await key.first().waitFor({ state: "detached" });
};

it("reads lines as before after their rope was deleted", async () => {
  await phone.goTo("#/kit");
  await phone.chromium.page.getByRole("button", { name: "Correct R1" }).tap();
  await phone.touch("Delete");
  await phone.reads("2 lines made with it stay as they are.");
  await phone.chromium.page.getByRole("button", { name: "Delete" }).last().tap();
  await phone.reads("No rope or tape yet.");
  await phone.goTo(at.visit);
  await phone.reads("4 marks");
  await phone.goTo(at.line);
  await phone.reads("Ground cover on this line");
  await phone.goTo(at.workedOut);
  await phone.reads("How this was worked out");
  await phone.goTo(`${at.visit}/new-line`);
  await phone.reads("Choose a strip and a rope first.");
  await bringBack("R1");
  await phone.goTo(`${at.visit}/new-line`);
  await phone.reads("R1");
});

it("keeps the lines of a deleted strip, and calls it deleted", async () => {
  await phone.goTo(at.field);
  await phone.touch("Change a strip");
  await phone.touch("north");
  await phone.touch("Delete this strip");
  await phone.touch("Yes, delete it");
  await phone.reads("north (deleted)");
  await phone.goTo(at.visit);
  await phone.reads("north (deleted)");
  await phone.reads("75 %");
  await bringBack("north · Top Field");
  await phone.goTo(at.visit);
  await phone.chromium.page.getByRole("heading", { name: "north", exact: true }).waitFor();
});

it("shows a visit of a deleted field as it was, offers no new line there, and leads to where it lies", async () => {
  await phone.goTo(at.field);
  await phone.touch("Delete this field");
  await phone.touch("Yes, delete it");
  await phone.reads("Low Ridge");
  await phone.goTo(at.visit);
  await phone.reads("This field was deleted. What was measured here stays on record.");
  await phone.reads("75 %");
  expect(await phone.chromium.page.getByText("Measure here today").count()).toBe(0);
  for (const [address, words] of [
    [at.line, "Ground cover on this line"],
    [at.workedOut, "How this was worked out"],
    ["#/findings", "Findings"],
    ["#/measure", "Which field are you in?"],
    [at.field, "This field was deleted. It lies under Deleted records."],
  ] as const) {
    await phone.goTo(address);
    await phone.reads(words);
  }
  await bringBack("Top Field");
  await phone.goTo(at.field);
  await phone.reads("north");
  await phone.reads("75 %");
});

it("says of two strips that they are the same, reads them as one, and takes that apart again", async () => {
  await phone.touch("Two strips are the same");
  const group = (question: string) => phone.chromium.page.getByRole("group", { name: question });
  await group("Which strip is the same as another one?").getByText("south").tap();
  await group("Under which one do both stand from now on?").getByText("north").tap();
  await phone.touch("Yes, they are the same");
  await phone.reads("south is the same as north");
  await phone.reads("50 %");
  await phone.goTo(at.visit);
  await phone.reads("2 lines");
  const south = phone.chromium.page.getByRole("heading", { name: "south", exact: true });
  await expect.poll(() => south.count()).toBe(0);
  await phone.goTo(at.field);
  await phone.touch("Take apart");
  await phone.reads("75 %");
  await phone.reads("25 %");
});

it("deletes strips together that are the same, and loses neither when one of them comes back", async () => {
  await phone.touch("Two strips are the same");
  const group = (question: string) => phone.chromium.page.getByRole("group", { name: question });
  await group("Which strip is the same as another one?").getByText("south").tap();
  await group("Under which one do both stand from now on?").getByText("north").tap();
  await phone.touch("Yes, they are the same");
  await phone.reads("south is the same as north");
  await phone.touch("Change a strip");
  await phone.touch("north");
  await phone.touch("Delete this strip");
  await phone.touch("Yes, delete it");
  await phone.reads("No strip yet.");
  await bringBack("south · Top Field");
  await phone.goTo(at.field);
  await phone.reads("50 %");
  await phone.chromium.page.locator(".row b").getByText("south", { exact: true }).first().waitFor();
  await bringBack("north · Top Field");
  await phone.goTo(at.field);
  await phone.chromium.page.locator(".row b").getByText("north", { exact: true }).first().waitFor();
  await phone.touch("Take apart");
  await phone.reads("25 %");
});

it("says of two fields that they are the same, and takes that apart again", async () => {
  await phone.touch("This field is the same as another one");
  const others = phone.chromium.page.getByRole("group", {
    name: "Under which field do both stand from now on?",
  });
  // Fields of one name are told apart by their farm, their area and their last visit.
  await others.getByText("Farm not said · not measured yet").waitFor();
  await others.getByText("Low Ridge").tap();
  await phone.touch("Yes, they are the same");
  await phone.reads("Top Field is the same as Low Ridge");
  await phone.goTo("#/fields");
  await phone.reads("last visit 7 May 2024");
  const fields = phone.chromium.page.locator(".rows > li");
  await expect.poll(() => fields.count()).toBe(1);
  await phone.touch("Low Ridge");
  await phone.touch("Take apart");
  await phone.goTo("#/fields");
  await phone.reads("not measured yet");
  await expect.poll(() => fields.count()).toBe(2);
});
