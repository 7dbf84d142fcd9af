import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { lineSample } from "./line-sample.ts";
import { type OnPhone, onPhone, stepOf } from "./on-phone.ts";

/** The way back from a panel of the counting screen: the phone's own gesture, the panel's key, Escape. */
const { rows, addresses } = lineSample();
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(rows);
});
afterAll(() => phone.close());

const at = () => phone.chromium.run(() => location.hash);
const back = () => phone.chromium.page.goBack();
const question = () => phone.chromium.run(() => document.querySelector(".running-question")?.textContent);
const asks = (words: string) => until(`it asks: ${words}`, async () => (await question()) === words);
const tool = (words: string) => phone.chromium.page.getByRole("button", { name: words, exact: true }).last();

let atLine = 0;

/** Comes to a line from its visit, so that there is something behind it. */
const begin = async (line: string) => {
  await phone.goTo(addresses.visit);
  await phone.chromium.page.locator(".head").getByText("Long Bottom").waitFor();
  await phone.goTo(line);
  await phone.chromium.page.locator(".count").waitFor();
  atLine = await stepOf(phone.chromium);
};

/** One step back from here leads to the visit. */
const leavesAtOnce = async () => {
  await until("the step of the panel is gone", async () => (await stepOf(phone.chromium)) === atLine);
  await back();
  await until("the visit is shown", async () => (await at()) === addresses.visit);
};

const counting = "What does the raindrop meet at mark 5?";

beforeEach(async () => {
  await phone.goTo(addresses.visit);
});

it.each([
  ["counted", "Set mark number", "Which number does the rope say?", counting, "Close"],
  ["counted", "Correct a mark", "Touch a mark to correct it", counting, "Done"],
  ["misses", "Line ends here", "At which mark does the line end?", "Which mark has no residue?", "Close"],
  [
    "twoEnds",
    "1 question has two answers: choose",
    "Two people, two answers",
    "Two people ended this line differently.",
    "Done",
  ],
] as const)(
  "%s, %s: Back closes it, so does its own key, and the line is left as before",
  async (line, key, inside, outside, close) => {
    await begin(addresses[line]);
    await asks(outside);
    await tool(key).tap();
    await asks(inside);
    await back();
    await asks(outside);
    expect(await at()).toBe(addresses[line]);
    for (let times = 0; times < 2; times++) {
      await tool(key).tap();
      await asks(inside);
      await tool(close).tap();
      await asks(outside);
    }
    await tool(key).tap();
    await asks(inside);
    await phone.chromium.page.keyboard.press("Escape");
    await asks(outside);
    await tool(key).tap();
    await asks(inside);
    await phone.chromium.page.getByRole("link", { name: "Back", exact: true }).tap();
    await asks(outside);
    await leavesAtOnce();
  },
);

it("goes from a mark to the list of marks, and from there to the line", async () => {
  await begin(addresses.counted);
  await tool("Correct a mark").tap();
  await phone.touch(/^2 residue/);
  await asks("What lies at mark 2?");
  await back();
  await asks("Touch a mark to correct it");
  await phone.touch(/^3 residue/);
  await asks("What lies at mark 3?");
  await phone.chromium.page.tap("[data-answer=bare]");
  await asks("Touch a mark to correct it");
  await phone.reads("corrected");
  await back();
  await asks(counting);
  await leavesAtOnce();
});

it("opens the same panel again when the page is loaded again inside it", async () => {
  await begin(addresses.fifth);
  await tool("Correct a mark").tap();
  await phone.touch(/^4 bare/);
  await asks("What lies at mark 4?");
  await phone.chromium.reload();
  await asks("What lies at mark 4?");
  await phone.chromium.page.tap("[data-answer=own]");
  await asks("Touch a mark to correct it");
  await tool("Done").tap();
  await asks(counting);
  await leavesAtOnce();
});

it("asks for the mulch thickness as a panel of its own, and touches go on behind it", async () => {
  await begin(addresses.thick);
  await phone.chromium.page.tap("[data-answer=residue]");
  await asks("How thick is the mulch at mark 10?");
  await back();
  await asks("What does the raindrop meet at mark 11?");
  for (let mark = 11; mark <= 20; mark++) {
    await asks(`What does the raindrop meet at mark ${mark}?`);
    await phone.chromium.page.tap("[data-answer=residue]");
  }
  await asks("How thick is the mulch at mark 20?");
  await tool("Skip").tap();
  await asks("All 20 marks are read.");
  await leavesAtOnce();
});
