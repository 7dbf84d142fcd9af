/** The archive: out of the first phone as a file on disk, and into a second one that has never seen the field. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { canonicalJson } from "../../../src/record/canonical.ts";
import { temporaryFolder } from "../drivers/programs.ts";
import type { Day } from "./day.ts";

const sha256 = (of: string | Uint8Array): string => createHash("sha256").update(of).digest("hex");

/** Everything of a store of the database, by the raw interface; bytes as base64. */
const rowsOf = async ({ chromium }: Day, store: string): Promise<Record<string, unknown>[]> =>
  JSON.parse(
    await chromium.run(async (name) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open("mulchmark");
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      const rows = await new Promise<unknown[]>((resolve, reject) => {
        const asking = db.transaction(name).objectStore(name).getAll();
        asking.onsuccess = () => resolve(asking.result);
        asking.onerror = () => reject(asking.error);
      });
      db.close();
      return JSON.stringify(rows, (_, value) => {
        if (!(value instanceof ArrayBuffer)) return value;
        let text = "";
        for (const byte of new Uint8Array(value)) text += String.fromCharCode(byte);
        return btoa(text);
      });
    }, store),
  );

/** One digest of all records and their entries, in the canonical form of RFC 8785. */
const digestOf = async (day: Day): Promise<string> =>
  sha256(canonicalJson([await rowsOf(day, "records"), await rowsOf(day, "entries")]));

/** Digests of the photos' bytes, in order. */
const photosOf = async (day: Day): Promise<string[]> =>
  (await rowsOf(day, "photos")).map(({ bytes }) => sha256(Buffer.from(String(bytes), "base64"))).sort();

/** Makes a copy and lets the browser save it. */
const makeCopy = async (day: Day, path: string): Promise<string> => {
  const { chromium, touch, press, reads } = day;
  await touch("Send & back up");
  await press("Make a copy");
  // A person, a farm, a field, 3 strips, a visit, 5 pieces of kit; 6 lines, 2 rings, 2 holes, a note; a photo
  // and 2 guesses.
  await reads("Read back and compared: 26 records, 1 photo.");
  const saved = chromium.page.waitForEvent("download");
  await press("Save");
  const file = await saved;
  await file.saveAs(path);
  return file.suggestedFilename();
};

/** What the screen of the day says. */
const visitText = async ({ chromium }: Day): Promise<string | null> => {
  await chromium.page.getByText("Today in Long Bottom").waitFor();
  for (const number of ["300 per m²", "100 per m²", "74 mm", "28 mm"])
    await chromium.page.locator("main").getByText(number).first().waitFor();
  return chromium.page.locator("main").textContent();
};

const compare = async ({ touch, press, reads }: Day): Promise<void> => {
  await touch("Compare with today's other strips");
  await press("Compare anyway");
  await reads("These two places differ clearly on this day.");
};

const mainText = ({ chromium }: Day): Promise<string | null> => chromium.page.locator("main").textContent();

/** Both phones say the same, once the last part of both screens is drawn. */
const expectAlike = (textOf: (day: Day) => Promise<string | null>, there: Day, here: Day): Promise<void> =>
  expect
    .poll(async () => {
      const [said, wanted] = [await textOf(there), await textOf(here)];
      return said === wanted ? "alike" : { said, wanted };
    })
    .toBe("alike");

export const handOver = (here: () => Day, there: () => Day): void => {
  const folder = temporaryFolder("copies");
  const copy = join(folder, "here.zip");

  it("makes a copy and saves it as a file", async () => {
    await here().back();
    expect(await makeCopy(here(), copy)).toBe("mulchmark-2026-05-12.zip");
    expect(existsSync(copy)).toBe(true);
  });

  it("shows on the second phone what the file holds, and changes nothing yet", async () => {
    const { chromium, choose, press, touch, reads, loseSignal } = there();
    await reads("Nothing is sent anywhere.");
    await loseSignal();
    await choose("Metric");
    await press("Add a field");
    await touch("Send & back up");
    await reads("There is nothing to copy yet.");
    await chromium.page.locator("input[type=file]").setInputFiles(copy);
    await reads("Nothing has changed yet.");
    await reads(/by Kim/);
    expect(await rowsOf(there(), "records")).toEqual([]);
  });

  it("brings it in, and holds the same records to the last one, and the same photo", async () => {
    const { press, reads } = there();
    await press("Bring in");
    await reads(/^Brought in .*: 26 records new, 0 changed, 1 photo\.$/);
    expect(await digestOf(there())).toBe(await digestOf(here()));
    const photos = await photosOf(there());
    expect(photos).toHaveLength(1);
    expect(photos).toEqual(await photosOf(here()));
    // The photo's name in the file is the digest of its bytes.
    expect(readFileSync(copy).includes(`photos/${photos[0]}.jpg`)).toBe(true);
  });

  it("shows the same numbers and the photo on its own screens", async () => {
    for (const day of [here(), there()]) {
      await day.touch(/^Measure$/);
      await day.touch("Long Bottom");
    }
    // Parts further down come when the first are drawn.
    await expectAlike(visitText, there(), here());
    // The photo stands among those of the day too: this is the row of the note.
    await there().chromium.page.locator("a", { hasText: "Slaked crust by the gate." }).tap();
    const photo = there().chromium.page.locator(".photo-rows img");
    await photo.waitFor();
    expect(
      await photo.evaluate((img: HTMLImageElement) => img.decode().then(() => img.naturalWidth > 0)),
    ).toBe(true);
    await there().back();
    await compare(there());
    await compare(here());
    await expectAlike(mainText, there(), here());
  });

  it("makes a copy of its own that says the same of its records", async () => {
    const back = join(folder, "there.zip");
    await makeCopy(there(), back);
    const recordsOf = (path: string) =>
      /"recordsDigest":\s*"([0-9a-f]{64})"/.exec(readFileSync(path, "latin1"))?.[1];
    expect(recordsOf(back)).toMatch(/^[0-9a-f]{64}$/);
    expect(recordsOf(back)).toBe(recordsOf(copy));
  });
};
