import { afterAll, beforeAll, expect, it } from "vitest";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
beforeAll(async () => {
  phone = await onPhone();
});
afterAll(() => phone.close());

it("measures at once, names the field later, and finds it under today", async () => {
  await phone.reads("No field yet.");
  await phone.touch("Measure now, name the field later");
  await phone.reads("Today in a field not named yet");
  await phone.write("What is this field called?", "Low Ridge");
  await phone.touch("Keep this name");
  await phone.reads("Today in Low Ridge");
  await phone.goTo("#/measure");
  await phone.reads("nothing measured yet today");
  await phone.touch("Low Ridge");
  await phone.reads("Today in Low Ridge");
});

it("asks whether a field of the same name is the same one, and puts both together", async () => {
  await phone.goTo("#/measure");
  await phone.touch("Measure now, name the field later");
  await phone.reads("Today in a field not named yet");
  await phone.write("What is this field called?", "low ridge");
  await phone.touch("Keep this name");
  await phone.reads("Is it the same field?");
  await phone.touch("Yes, it is Low Ridge");
  await phone.reads("Today in Low Ridge");
  await phone.goTo("#/measure");
  await phone.reads("Which field are you in?");
  await phone.reads("nothing measured yet today");
  await expect.poll(() => phone.chromium.page.locator(".rows > li").count()).toBe(1);
});

it("makes the field one strip, which stands chosen for its first line and its first hole", async () => {
  const strips = phone.chromium.page.getByRole("group", { name: "Which strip?" }).getByRole("radio");
  const address = () => phone.chromium.run(() => location.hash);
  await phone.touch("Low Ridge");
  await phone.reads("Today in Low Ridge");
  const visit = await address();
  for (const test of ["new-line", "new-hole"]) {
    await phone.goTo(`${visit}/${test}`);
    // Two fields were begun and joined: the whole of one is the whole of the other.
    await expect
      .poll(() => strips.evaluateAll((all) => all.map((one) => (one as HTMLInputElement).checked)))
      .toEqual([true]);
    await expect
      .poll(() => strips.first().evaluate((one) => one.closest("label")?.textContent))
      .toBe("whole field");
  }
  await phone.goTo("#/measure");
});

it("takes the harvest year of the visit, and asks before it keeps an odd one", async () => {
  await phone.touch("Low Ridge");
  await phone.touch("Say the harvest year");
  await phone.write("The year of the harvest", "1950");
  await phone.touch("Done");
  await phone.reads("is that what you mean?");
  const year = String(new Date().getFullYear());
  await phone.write("The year of the harvest", year);
  await phone.touch("Done");
  await phone.touch("Change");
  const line = phone.chromium.page.getByLabel("The year of the harvest");
  await expect.poll(() => line.inputValue()).toBe(year);
});
