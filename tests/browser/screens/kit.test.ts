import { afterAll, beforeAll, it } from "vitest";
import { beginSample, fieldOf, lineOf } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "left", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 100, spacingM: 0.3048 });
  add("observation", lineOf({ visit, field, strip, rope }));
  add("observation", lineOf({ visit, field, strip, rope }));
  phone = await onPhone(rows());
  await phone.goTo("#/kit");
});
afterAll(() => phone.close());

it("adds a rope of a usual size in three touches", async () => {
  await phone.touch("Add a rope");
  await phone.touch("100 marks, 15 cm apart");
  await phone.write("Name", "R2");
  await phone.touch("Keep this rope");
  await phone.reads("100 marks, 15 cm apart");
});

it("asks about an odd number and keeps it after yes", async () => {
  await phone.touch("Add a rope");
  await phone.write("Name", "R3");
  await phone.write("How many marks?", "5");
  await phone.write("From mark to mark, in cm", "1,234");
  await phone.touch("Keep this rope");
  await phone.reads("5 marks: is that what you read?");
  await phone.touch("Yes, I read that");
  await phone.touch("1.234 cm");
  await phone.touch("Keep this rope");
  await phone.reads("5 marks, 1.2 cm apart");
});

it("says before a correction how many lines it corrects", async () => {
  await phone.chromium.page.getByRole("button", { name: "Correct R1" }).tap();
  await phone.reads("2 lines were made with this rope.");
  await phone.write("How many marks?", "90");
  await phone.reads("Marks after number 90 will leave the sums of those lines.");
  await phone.touch("Correct this rope and 2 lines");
  await phone.reads("90 marks, 30.5 cm apart");
});

it("asks before it deletes a rope, and says that its lines stay", async () => {
  await phone.chromium.page.getByRole("button", { name: "Correct R1" }).tap();
  await phone.touch("Delete");
  await phone.reads("2 lines made with it stay as they are.");
  await phone.chromium.page.getByRole("button", { name: "Delete" }).last().tap();
  await phone.chromium.page.getByText("90 marks").waitFor({ state: "detached" });
});
