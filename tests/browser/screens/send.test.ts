import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf, lineOf, marksRead, type Rows } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

/** A field with a line of three marks, on two devices alike. */
const sample = (): Rows => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "left", done: ["straw-left"], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 10, spacingM: 0.3 });
  add("observation", lineOf({ visit, field, strip, rope }), { entries: marksRead("rrb") });
  return rows();
};

let here: OnPhone;
let there: OnPhone;
beforeAll(async () => {
  here = await onPhone(sample());
  there = await onPhone(sample());
});
afterAll(async () => {
  await here.close();
  await there.close();
});

const rename = async (phone: OnPhone, name: string): Promise<void> => {
  await phone.goTo("#/kit");
  await phone.touch("Correct");
  await phone.reads("1 line was made with this rope.");
  await phone.write("Name", name);
  await phone.touch("Correct this rope and 1 line");
  await phone.reads(name);
};

interface Chosen {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}
const choose = async (phone: OnPhone, file: Chosen): Promise<void> => {
  await phone.goTo("#/send");
  await phone.reads("Choose a file");
  await phone.chromium.page.locator("input[type=file]").setInputFiles(file);
};

let copy: Chosen;

it("makes a copy in two touches: read back and compared, then saved", async () => {
  await rename(there, "R1 there");
  await there.goTo("#/send");
  await there.reads("No copy has left this device yet.");
  await there.reads("5 records are on this device.");
  await there.touch("Make a copy");
  await there.reads("Read back and compared: 5 records, 0 photos.");
  const [download] = await Promise.all([
    there.chromium.page.waitForEvent("download"),
    there.chromium.page.getByRole("button", { name: "Save", exact: true }).tap(),
  ]);
  await there.reads("The browser has it now.");
  await there.reads("Nothing new since.");
  copy = {
    name: download.suggestedFilename(),
    mimeType: "application/zip",
    buffer: readFileSync(await download.path()),
  };
  expect(copy.name).toMatch(/^mulchmark-\d{4}-\d\d-\d\d\.zip$/);
});

it("changes nothing for a foreign or a damaged file, and says so", async () => {
  await choose(here, { ...copy, buffer: Buffer.from("not a copy") });
  await here.reads("This is not a Mulchmark file. Nothing was changed.");
  const cut = copy.buffer.subarray(0, copy.buffer.length - 200);
  await choose(here, { ...copy, buffer: cut });
  await here.reads(/Nothing was changed/);
});

it("shows what a file would do, and leaves it without a trace", async () => {
  await rename(here, "R1 here");
  await choose(here, copy);
  await here.reads("Nothing has changed yet.");
  await here.reads("Two versions side by side");
  await here.touch("Leave it");
  await here.reads("Left. Nothing was changed.");
  await here.goTo("#/two-versions");
  await here.reads("No record has two versions, and no mark has two answers.");
});

/** How many results of fields are kept. */
const keptResults = (phone: OnPhone): Promise<number> =>
  phone.chromium.run(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("mulchmark");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const counting = opening.result.transaction("summaries").objectStore("summaries").count();
          counting.onsuccess = () => resolve(counting.result);
          opening.result.close();
        };
      }),
  );

it("brings it in; both versions stand side by side until one is kept", async () => {
  await choose(here, copy);
  expect(await keptResults(here)).toBe(0);
  await here.touch("Bring in");
  await here.reads(/Brought in .*: 0 records new, 1 changed, 0 photos\./);
  // Ground cover, and holes with rings, of its one field: whoever opens it finds them worked out.
  await expect.poll(() => keptResults(here)).toBe(2);
  await here.goTo("#/two-versions");
  await here.reads("R1 here");
  await here.reads("R1 there");
  await here.chromium.page
    .locator("tfoot td")
    .nth(
      await here.chromium.run(() =>
        [...document.querySelectorAll("tbody td")].findIndex((td) => td.textContent === "R1 there"),
      ),
    )
    .getByRole("button")
    .tap();
  await here.reads("No record has two versions, and no mark has two answers.");
  await here.goTo("#/kit");
  await here.reads("R1 there");
});

it("says of a file that was brought in before that all of it is here", async () => {
  await choose(here, copy);
  await here.reads("Everything in this file is here already.");
});
