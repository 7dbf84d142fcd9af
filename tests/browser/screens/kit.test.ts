import { afterAll, beforeAll, it } from "vitest";
import { beginSample, fieldOf, lineOf } from "../../bench/seed.ts";
import { ringOf } from "../../unit/screens/kit-samples.ts";
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
  const ring = add("kit", { type: "ring", name: "A", insideM: [0.3, null], heightsM: [], outsideM: null });
  add("observation", ringOf({ visit, field, strip, ring }));
  const person = add("person", { name: "Kim" });
  phone = await onPhone(rows(), { person });
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

const letterIs = (letter: string) =>
  phone.chromium.page.waitForFunction(
    (wanted) => document.querySelector<HTMLInputElement>(".kit-form input")?.value === wanted,
    letter,
  );

it("proposes the next letter for a ring, says that it is out of round, and keeps it", async () => {
  await phone.touch("Add a ring");
  await letterIs("B");
  await phone.write("1. Inside edge to inside edge, in cm", "30");
  await phone.write("2. The same at right angles, in cm", "31");
  await phone.reads("The two measures differ by 3.3 %");
  await phone.write("Place 1", "20");
  await phone.write("Place 3", "20.2");
  await phone.touch("Keep this ring");
  await phone.reads("30 cm by 31 cm inside");
  await phone.reads("20.1 cm high");
  await phone.touch("Add a ring");
  await letterIs("C");
});

it("asks about an odd ring, refuses an impossible one, and keeps what stands in the form meanwhile", async () => {
  await phone.write("1. Inside edge to inside edge, in cm", "1");
  await phone.touch("Keep this ring");
  await phone.reads("A ring is 2 to 300 cm across.");
  await phone.write("1. Inside edge to inside edge, in cm", "3");
  await phone.touch("Keep this ring");
  await phone.reads("3 cm: is that what you read?");
  await phone.write("1. Inside edge to inside edge, in cm", "50");
  await phone.write("4. Outside edge to outside edge, in cm", "49");
  await phone.touch("Keep this ring");
  await phone.reads("The outside of a ring is wider than its inside.");
  await phone.write("4. Outside edge to outside edge, in cm", "");
  await phone.touch("Keep this ring");
  await phone.reads("50 cm inside");
});

it("says before a correction of a ring what it corrects, and on its row when and by whom it was", async () => {
  await phone.chromium.page.getByRole("button", { name: "Correct ring A" }).tap();
  await phone.reads("1 ring test was made with this ring.");
  await phone.write("1. Inside edge to inside edge, in cm", "30.4");
  await phone.touch("Correct this ring and 1 ring test");
  await phone.reads("30.4 cm inside");
  await phone.reads(/Last corrected .* by Kim/);
});

it("keeps hole templates, bottles and rulers", async () => {
  await phone.touch("Add a hole template");
  await phone.write("Name", "frame");
  await phone.write("One side, in cm", "20");
  await phone.touch("Keep this hole template");
  await phone.reads("20 cm by 20 cm");
  await phone.touch("Add a bottle");
  await phone.write("Name", "jug");
  await phone.write("It holds, full to its mark, in mL", "444");
  await phone.touch("Keep this bottle");
  await phone.reads("holds 444 mL");
  await phone.touch("Add a ruler");
  await phone.touch("5 mm");
  await phone.write("Name", "steel");
  await phone.touch("Keep this ruler");
  await phone.reads("reads steps of 5 mm");
});
