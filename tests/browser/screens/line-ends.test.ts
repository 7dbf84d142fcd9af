import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { lineSample } from "./line-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

/** Lines that end in an odd way, and what a screen reader is told. */
const { rows, addresses } = lineSample();
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(rows);
});
afterAll(() => phone.close());

const key = (name: string) => phone.chromium.page.getByRole("button", { name, exact: true });
const spoken = () =>
  phone.chromium.run(() => document.querySelector("p[aria-live=polite]")?.textContent ?? "");

it("says of a line that was ended before its first mark that nothing was read, and lets one go on", async () => {
  await phone.goTo("#/measure");
  await phone.reads("Nothing was read on this line.");
  await phone.goTo(`${addresses.unread}/sheet`);
  await phone.reads("Nothing was read on this line.");
  await phone.reads("This line is not finished and has no part in its strip yet.");
  expect(await phone.chromium.page.locator("#app .big").count()).toBe(0);
  await phone.touch("Go on counting");
  await phone.chromium.page.locator(".count").waitFor();
  await key("Go on counting").tap();
  await phone.reads("What does the raindrop meet at mark 1?");
  await phone.chromium.page.tap("[data-answer=bare]");
  await phone.reads("1 of 20 marks");
  await key("Undo").tap();
  await phone.reads("0 of 20 marks");
});

it("deletes a line that nothing was read on from where it stands", async () => {
  await key("Line ends here").tap();
  await phone.reads("Nothing was read on this line.");
  await key("Delete this line").tap();
  await key("Delete").tap();
  await until("the visit is shown", async () => {
    return (await phone.chromium.run(() => location.hash)) === addresses.visit;
  });
  await phone.goTo(addresses.unread);
  await phone.reads("This line was deleted.");
});

it("asks which of two ends stands, and counts nothing of the line in its strip before", async () => {
  await phone.goTo(addresses.twoEnds);
  await phone.reads("Two people ended this line differently.");
  await phone.goTo(`${addresses.twoEnds}/sheet`);
  await phone.reads("This line is not finished and has no part in its strip yet.");
  await phone.goTo("#/two-versions");
  await phone.touch("two ends of the line");
  await key("1 question has two answers: choose").tap();
  await phone.reads("Two answers for where the line ends: which one?");
  await key("line ends at mark 6").tap();
  await phone.reads("Nothing is open any more.");
  await key("Done").tap();
  await phone.reads("The line ended at mark 6.");
  // Of the first six marks four are residue: 67 %.
  await phone.reads("6 of 20 marks");
  await expect.poll(() => phone.chromium.run(() => document.querySelector(".big")?.textContent)).toBe("67 %");
});

it("tells a screen reader the same twice, and nothing any more on the next screen", async () => {
  await phone.goTo(addresses.counted);
  await phone.chromium.page.locator("[data-answer=bare]").waitFor();
  await phone.chromium.run(() => {
    const said: string[] = [];
    Object.assign(globalThis, { said });
    const region = document.querySelector("p[aria-live=polite]");
    if (region === null) return;
    new MutationObserver(() => said.push(region.textContent ?? "")).observe(region, {
      childList: true,
      characterData: true,
      subtree: true,
    });
  });
  for (let times = 0; times < 2; times++) {
    await key("Correct a mark").tap();
    await phone.touch(/^2 /);
    await phone.chromium.page.tap("[data-answer=green]");
    await phone.reads("Touch a mark to correct it");
    await key("Done").tap();
    await phone.reads("What does the raindrop meet at mark 5?");
  }
  const said = () => phone.chromium.run(() => Reflect.get(globalThis, "said") as string[]);
  await expect
    .poll(async () => (await said()).map((text) => text.trim()))
    .toEqual(["Taken: mark 2: green", "Taken: mark 2: green"]);
  await phone.goTo(addresses.visit);
  await until("nothing is said any more", async () => (await spoken()) === "");
});
