import { afterAll, beforeAll, expect, it } from "vitest";
import { type OnPhone, onPhone } from "./on-phone.ts";

/** Cold wet hands, small phones, long names and stale addresses: what must not break the first line. */
let phone: OnPhone;
const longName = "dung and moss and old maize cobs everywhere";

beforeAll(async () => {
  phone = await onPhone();
});
afterAll(() => phone.close());

const inSight = (selector: string) =>
  phone.chromium.run((what) => {
    const box = document.querySelector(what)?.getBoundingClientRect();
    const around = document.querySelector(what)?.parentElement?.getBoundingClientRect();
    if (box === undefined || around === undefined) return false;
    return box.height > 0 && box.top >= 0 && box.bottom <= Math.min(innerHeight, around.bottom) + 1;
  }, selector);

it("says so at addresses of what is not there, and leads back", async () => {
  const none = "0".repeat(32);
  for (const [address, words] of [
    [`#/visit/visit-${none}/new-line`, "This visit is not on this device."],
    [`#/line/observation-${none}`, "This line is not on this device."],
    [`#/fields/field-${none}`, "This field is not on this device."],
  ] as const) {
    await phone.goTo(address);
    await phone.reads(words);
    const back = phone.chromium.page.getByRole("link", { name: "Back", exact: true });
    await expect.poll(() => back.count()).toBe(1);
  }
  await phone.goTo("#/measure");
});

it("keeps a name of 200 characters and takes no more", async () => {
  await phone.touch("Measure now, name the field later");
  await phone.reads("Count a line");
  const name = phone.chromium.page.getByRole("textbox", { name: "What is this field called?" });
  await name.focus();
  await phone.chromium.page.keyboard.insertText("<b>".repeat(100));
  await expect.poll(() => name.inputValue()).toHaveLength(200);
  await phone.touch("Keep this name");
  await phone.reads("<b><b>");
});

it("writes one strip when its key is touched twice, and leaves the rope's form open", async () => {
  await phone.touch("Count a line");
  await phone.reads("Which strip?");
  // The field began as one strip, the whole of it.
  await phone.reads("whole field");
  await phone.touch("Add a strip");
  await phone.write("Name of the strip", "north strip");
  await phone.chromium.run(() => {
    const press = (text: string) =>
      [...document.querySelectorAll("button")].find((one) => one.textContent === text)?.click();
    press("Done");
    press("Done");
    press("Add a rope");
  });
  await phone.reads("north strip");
  await phone.write("Name", "R1");
  await phone.write("How many marks?", "100");
  await phone.write("From mark to mark", "12,5");
  await phone.touch("Keep this rope");
  await phone.reads("100 marks");
  const strips = phone.chromium.page.getByRole("group", { name: "Which strip?" }).getByRole("radio");
  await expect.poll(() => strips.count()).toBe(2);
});

it("keeps question, result and correcting in sight on small phones, with a long name on the fifth key", async () => {
  await phone.write("A fifth key of your own", longName);
  await phone.touch("Start counting");
  await phone.reads("What does the raindrop meet at mark 1?");
  await phone.chromium.page.tap('[data-answer="residue"]');
  await phone.reads("Taken: mark 1");
  for (const [width, height] of [
    [390, 844],
    [390, 664],
    [360, 640],
    [844, 390],
  ] as const) {
    await phone.chromium.page.setViewportSize({ width, height });
    for (const part of [".running-question", ".running .figure", ".rope-key"])
      await expect.poll(() => inSight(part), { message: `${part} at ${width} x ${height}` }).toBe(true);
    const heights = () =>
      phone.chromium.run(() =>
        ["bare", "own"].map((one) => document.querySelector(`[data-answer="${one}"]`)?.clientHeight ?? 0),
      );
    await expect.poll(async () => new Set(await heights()).size).toBe(1);
  }
  await phone.chromium.page.setViewportSize({ width: 390, height: 664 });
  await phone.touch("Correct a mark");
  await phone.reads("Touch a mark to correct it");
});
