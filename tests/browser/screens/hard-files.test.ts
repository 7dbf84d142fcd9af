/** Files on a bad day: nothing to copy, a line counted meanwhile, what is no copy, the same file twice. */
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf, lineOf, marksRead, type Rows } from "../../bench/seed.ts";
import type { ChromiumTab } from "../drivers/chromium.ts";
import { handsOn, type OnPhone, onPhone } from "./on-phone.ts";

const sample = (): Rows => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 40, spacingM: 0.3 });
  add("observation", lineOf({ visit, field, strip, rope }), { entries: marksRead("rrb") });
  return rows();
};

let empty: OnPhone;
let there: OnPhone;
let copy: Buffer;

beforeAll(async () => {
  empty = await onPhone();
  there = await onPhone(sample());
});
afterAll(async () => {
  await empty.close();
  await there.close();
});

const choose = async (phone: OnPhone, buffer: Buffer): Promise<void> => {
  await phone.goTo("#/send");
  await phone.reads("Choose a file");
  await phone.chromium.page
    .locator("input[type=file]")
    .setInputFiles({ name: "copy.zip", mimeType: "application/zip", buffer });
};

it("has nothing to copy on an empty device, and says so", async () => {
  await empty.goTo("#/send");
  await empty.reads("There is nothing to copy yet.");
  const make = empty.chromium.page.getByRole("button", { name: "Make a copy" });
  await expect.poll(() => make.isDisabled()).toBe(true);
  await there.goTo("#/send");
  await there.touch("Make a copy");
  await there.reads("Read back and compared: 5 records, 0 photos.");
  const download = there.chromium.page.waitForEvent("download");
  await there.chromium.page.getByRole("button", { name: "Save", exact: true }).tap();
  copy = readFileSync(await (await download).path());
});

it.each([
  ["no bytes at all", () => Buffer.alloc(0)],
  ["a text", () => Buffer.from("soil, mulch, worms")],
  ["a picture", () => Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0])],
  ["the first half of a copy", () => copy.subarray(0, copy.length >> 1)],
  ["a copy without its first bytes", () => copy.subarray(100)],
  [
    "a copy with one byte of its records turned over",
    () => {
      const bent = Buffer.from(copy);
      const middle = bent.indexOf("records") + 60;
      bent[middle] = (bent[middle] ?? 0) ^ 0xff;
      return bent;
    },
  ],
])("takes nothing from %s, and says that nothing was changed", async (_, make) => {
  await choose(empty, make());
  await empty.reads(/Nothing was changed/);
  await empty.reads("There is nothing to copy yet.");
});

it("brings a file in while another window counts on the same line, and loses neither", async () => {
  await choose(empty, copy);
  await empty.reads("Nothing has changed yet.");
  await empty.touch("Bring in");
  await empty.reads(/5 records new, 0 changed, 0 photos/);
  const window: ChromiumTab = await empty.chromium.tab();
  const { page } = window;
  await window.open(`${new URL(empty.chromium.page.url()).origin}/#/measure`);
  await page.locator("a").filter({ hasText: "Top Field" }).first().tap();
  await page.getByText("What does the raindrop meet at mark 4?").waitFor();
  // Two marks more were read on the other device meanwhile.
  await there.goTo("#/measure");
  await there.touch("Top Field");
  await there.reads("What does the raindrop meet at mark 4?");
  for (const mark of [4, 5]) {
    await there.chromium.page.tap('[data-answer="bare"]');
    await there.reads(`Taken: mark ${mark}`);
    await there.chromium.page.waitForTimeout(300);
  }
  await there.goTo("#/send");
  await there.touch("Make a copy");
  await there.reads(/Read back and compared/);
  const download = there.chromium.page.waitForEvent("download");
  await there.chromium.page.getByRole("button", { name: "Save", exact: true }).tap();
  const later = readFileSync(await (await download).path());
  await choose(empty, later);
  await empty.reads("Adds to a record here");
  // Both marks of the file are read here too before it comes in, the others meanwhile.
  for (const mark of [4, 5]) {
    await page.tap('[data-answer="residue"]');
    await handsOn(window).reads(`Taken: mark ${mark}`);
    await page.waitForTimeout(300);
  }
  const counting = (async () => {
    for (let mark = 6; mark <= 9; mark += 1) {
      await page.tap('[data-answer="residue"]');
      await page.waitForTimeout(300);
    }
  })();
  await empty.touch("Bring in");
  await empty.reads(/0 records new, 1 changed/);
  await counting;
  // The marks that both have read are asked about; all others count.
  await page.getByText(/questions? ha(s|ve) two answers/).waitFor();
  await empty.goTo("#/two-versions");
  await empty.reads(/marks? with two answers/);
  await page.close();
});

it("changes nothing by the same file a second time", async () => {
  await choose(empty, copy);
  await empty.reads("Everything in this file is here already.");
  const bringIn = empty.chromium.page.getByRole("button", { name: "Bring in" });
  await expect.poll(() => bringIn.isDisabled()).toBe(true);
  await empty.touch("Leave it");
  await empty.reads("Left. Nothing was changed.");
});
