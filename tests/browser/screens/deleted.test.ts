import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf, lineOf, marksRead } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add(
    "strip",
    { field, name: "straw off", done: [], wholeField: false, rep: null },
    { deleted: true },
  );
  const rope = add("kit", { type: "rope", name: "R1", marks: 10, spacingM: 0.3 });
  const other = marksRead("rr").map((entry, at) => ({ ...entry, id: `${"f".repeat(15)}${at}` }));
  add("observation", lineOf({ visit, field, strip, rope }), { entries: [...marksRead("rb"), ...other] });
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

it("keeps what was deleted long ago behind a key, and lists what stayed without it", async () => {
  await phone.goTo("#/deleted");
  await phone.reads("Nothing was deleted in the last 30 days.");
  await phone.reads("straw off · Top Field (strip) is deleted; 1 record of it stayed.");
  await phone.touch("Show 1 older");
  await phone.reads(/deleted .*2024/);
});

it("brings it back, and nothing is left without its place", async () => {
  await phone.touch("Bring back");
  await phone.reads("Nothing is deleted.");
  expect(await phone.chromium.page.getByText("Left without what they belong to").count()).toBe(0);
});

it("lists what was deleted just now at once", async () => {
  await phone.goTo("#/kit");
  await phone.chromium.page.getByRole("button", { name: "Correct R1" }).tap();
  await phone.touch("Delete");
  await phone.chromium.page.getByRole("button", { name: "Delete" }).last().tap();
  await phone.reads("No rope or tape yet.");
  await phone.goTo("#/deleted");
  await phone.reads("R1");
  await phone.touch("Bring back");
  await phone.reads("Nothing is deleted.");
});

it("leads from a mark with two answers to its line", async () => {
  await phone.goTo("#/send");
  await phone.touch("Two versions");
  await phone.reads("1 mark with two answers");
  await phone.touch("Top Field");
  await phone.chromium.page.waitForURL(/#\/line\/observation-/);
});
