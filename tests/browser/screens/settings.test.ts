import { afterAll, beforeAll, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
beforeAll(async () => {
  phone = await onPhone();
  await phone.goTo("#/settings");
});
afterAll(() => phone.close());

it("adds who is measuring, corrects the name and forgets the person, after asking once", async () => {
  const { page } = phone.chromium;
  await phone.touch("Add a name");
  await phone.touch("Keep this name");
  await phone.reads("Write a name first.");
  await page.getByRole("textbox", { name: "Name" }).fill("One who counts");
  await phone.touch("Keep this name");
  await phone.touch("Correct this name");
  await page.getByRole("textbox", { name: "Name" }).fill("One who reads");
  await phone.touch("Keep this name");
  await phone.reads("One who reads");
  await phone.touch("Forget this person");
  await phone.reads("Only the number of the record stays.");
  await phone.touch("Forget for good");
  await until("the name is gone", async () => (await page.getByText("One who reads").count()) === 0);
});

it("changes the words of the trade and single units at once", async () => {
  const { page } = phone.chromium;
  await phone.touch("US & Canada");
  await phone.reads("Count rocks as ground cover");
  await phone.touch("Mixed");
  await phone.reads("Each on its own");
  await page.getByRole("group", { name: "areas" }).getByText("hectares").tap();
  await phone.touch("Metric");
  await page.getByText("Each on its own").first().waitFor({ state: "detached" });
});

it("puts on the other theme", async () => {
  await phone.touch("Dusk");
  await until("the page is dusk", () =>
    phone.chromium.run(() => document.documentElement.dataset["theme"] === "dusk"),
  );
});

it("keeps a number only when it can be one", async () => {
  const { page } = phone.chromium;
  await phone.write("Give or take how many points of ground cover?", "0");
  await page.getByRole("button", { name: "Keep this number" }).first().tap();
  await phone.reads("Give or take more than 0 and at most 50 points.");
  await phone.write("Give or take how many points of ground cover?", "7,5");
  await page.getByRole("button", { name: "Keep this number" }).first().tap();
  await until("the number is kept", () =>
    page.getByRole("button", { name: "Keep this number" }).first().isDisabled(),
  );
});

it("takes an own aim that is offered for the one that is offered, with what it is a share of", async () => {
  const { page } = phone.chromium;
  const chosen = (name: RegExp) => page.getByRole("radio", { name, checked: true });
  await phone.touch("My own");
  await phone.write("Ground cover aimed at", "60");
  await page.getByRole("button", { name: "Keep this number" }).nth(1).tap();
  await chosen(/^My own/).waitFor();
  await phone.write("Ground cover aimed at", "30");
  await page.getByRole("button", { name: "Keep this number" }).nth(1).tap();
  await chosen(/^30 % residue after planting/).waitFor();
});

it("teaches a clicker's key to an answer, and says which answer lost it", async () => {
  const { page } = phone.chromium;
  await page.getByRole("button", { name: "Teach a key for Bare" }).tap();
  await phone.reads("Press the key for Bare");
  await page.keyboard.press("PageDown");
  await phone.reads("Bare: Page down");
  await page.getByRole("button", { name: "Teach a key for Green" }).tap();
  await phone.reads("Press the key for Green");
  await page.keyboard.press("PageDown");
  await phone.reads("Green: Page down. Bare: no key now");
  await phone.touch("Back to first letters");
  await until(
    "Bare has a key again",
    async () => (await page.getByText("no key", { exact: true }).count()) === 0,
  );
});

it("says whether this browser keeps the records, and how much room they take", async () => {
  await phone.reads(/This browser (keeps|may clear|makes no promise)/);
  await phone.reads(/used of about/);
});
