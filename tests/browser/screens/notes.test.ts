/** Notes with words, photos, a strip and a position, on a phone without signal. */
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { until, untilControlled } from "../drivers/driver.ts";
import { heicHead } from "../picture-samples.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { photoOf, storedRecords } from "./on-record.ts";

let phone: OnPhone;
let visit: RecordId<"visit">;
let photos: { readonly gate: Buffer; readonly rows: Buffer };

const page = () => phone.chromium.page;
const words = () => page().getByRole("textbox", { name: "What do you see here?" });
const press = (name: string | RegExp) => page().getByRole("button", { name, exact: true }).tap();
const thumbs = () => page().locator(".photo-rows img").count();
const thumbsAre = (count: number) =>
  until(`${count} photos are shown`, async () => (await thumbs()) === count);
/** These words stand on the line to write on. */
const standsIn = (text: string) => expect.poll(() => words().inputValue()).toBe(text);
const choose = (...files: readonly { name: string; mimeType: string; buffer: Buffer }[]) =>
  page()
    .locator("input[type=file]:not([capture])")
    .setInputFiles([...files]);
const jpeg = (name: string, buffer: Buffer) => ({ name, mimeType: "image/jpeg", buffer });

const notes = async () =>
  (await storedRecords(phone.chromium, "observation")).filter(({ erased }) => !erased);
const noteNow = async () => {
  const id = new URL(page().url()).hash.split("/")[2];
  const note = (await notes()).find((one) => one.id === id);
  const [revision] = note?.revs ?? [];
  if (revision === undefined) throw new Error("the address names no note");
  return revision;
};
const kept = () =>
  phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const count = await new Promise<number>((resolve) => {
      const request = db.transaction("photos").objectStore("photos").count();
      request.onsuccess = () => resolve(request.result);
    });
    db.close();
    return count;
  });
const isOnRecord = (text: string) =>
  until(`the words on record are "${text}"`, async () => (await noteNow()).body.text === text);

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  for (const name of ["straw left", "straw carried off"])
    add("strip", { field, name, done: [], wholeField: false, rep: null });
  visit = add("visit", { field, day: dayOf(Date.now()), harvestYear: null });
  phone = await onPhone(rows());
  const { context } = phone.chromium;
  await context.grantPermissions(["geolocation"], { origin: new URL(page().url()).origin });
  await context.setGeolocation({ latitude: 52.1, longitude: -1.3, accuracy: 4 });
  // How many addresses of pictures stand at any moment.
  await context.addInitScript(() => {
    const standing = new Set<string>();
    const { createObjectURL, revokeObjectURL } = URL;
    URL.createObjectURL = (made) => {
      const address = createObjectURL.call(URL, made);
      standing.add(address);
      return address;
    };
    URL.revokeObjectURL = (address) => {
      standing.delete(address);
      revokeObjectURL.call(URL, address);
    };
    Reflect.set(window, "addressesStanding", () => standing.size);
  });
  await untilControlled(phone.chromium);
  await phone.chromium.reload();
  photos = { gate: await photoOf(phone.chromium, "#7a5c22"), rows: await photoOf(phone.chromium, "#24512f") };
  await context.setOffline(true);
});
afterAll(() => phone.close());

beforeEach(async () => {
  await phone.goTo("#/measure");
  await phone.reads("Which field are you in?");
});

const addressesStanding = () =>
  phone.chromium.run(() => (Reflect.get(window, "addressesStanding") as () => number)());
const begin = async (text: string) => {
  await phone.goTo(`#/visit/${visit}/new-note`);
  await words().waitFor();
  await words().pressSequentially(text, { delay: 15 });
  await phone.reads("On record.");
};

it("begins with the first character, keeps the keyboard, and writes at pauses, not at every key", async () => {
  await phone.goTo(`#/visit/${visit}`);
  await phone.touch("Write a note");
  await words().waitFor();
  expect(await notes()).toEqual([]);
  await words().press("W");
  await page().waitForURL(/#\/note\//);
  await expect.poll(() => words().evaluate((area) => area === document.activeElement)).toBe(true);
  await words().pressSequentially("ater stands in the wheel tracks.", { delay: 10 });
  // The position comes while somebody is still writing; the app takes none that is older than ten seconds.
  await phone.chromium.context.setGeolocation({ latitude: 52.1, longitude: -1.3, accuracy: 4 });
  await isOnRecord("Water stands in the wheel tracks.");
  await expect.poll(async () => (await noteNow()).body.at?.position?.latitudeDeg).toBeCloseTo(52.1, 6);
  const { dot } = await noteNow();
  await phone.chromium.reload();
  await standsIn("Water stands in the wheel tracks.");
  expect((await noteNow()).dot).toEqual(dot);
  expect(dot[1]).toBeLessThan(8);
});

it("loses nothing when the screen is left in the middle of a word", async () => {
  await begin("Slaked crust");
  await words().pressSequentially(" near the gate", { delay: 0 });
  const address = new URL(page().url()).hash;
  await page().locator("a.back").tap();
  await phone.reads("Slaked crust near the gate");
  await phone.goTo(address);
  await isOnRecord("Slaked crust near the gate");
});

it("undoes and redoes the last change and says which, also after the page was loaded again", async () => {
  await begin("Two worms");
  await words().pressSequentially(" and a mouse", { delay: 5 });
  await isOnRecord("Two worms and a mouse");
  await phone.touch("straw carried off");
  await until("the strip is on record", async () => (await noteNow()).body.strip !== null);
  await phone.chromium.reload();
  await words().waitFor();
  await press("Undo");
  await phone.reads("Undone: the choice of the strip");
  await expect.poll(async () => (await noteNow()).body.strip).toBeNull();
  await press("Undo");
  await phone.reads("Undone: what was written last");
  const onRecord = async () => (await noteNow()).body.text ?? "";
  await expect.poll(async () => (await onRecord()).length).toBeLessThan(21);
  const before = await onRecord();
  expect("Two worms and a mouse".startsWith(before)).toBe(true);
  await standsIn(before);
  await press("Redo");
  await isOnRecord("Two worms and a mouse");
});

it("makes a photo small, keeps it once, and shows it with the note's words", async () => {
  await begin("Straw lies in a swath");
  await choose(jpeg("gate.jpg", photos.gate));
  await thumbsAre(1);
  await phone.reads("1 photo kept.");
  const image = page().locator(".photo-rows img");
  await expect.poll(() => image.getAttribute("alt")).toMatch(/^Photo 1 of 1, .*: Straw lies in a swath$/);
  await until("the picture is drawn", () => image.evaluate((one: HTMLImageElement) => one.naturalWidth > 0));
  expect(await image.evaluate((one: HTMLImageElement) => [one.naturalWidth, one.naturalHeight])).toEqual([
    1600, 1200,
  ]);
  const bytes = await kept();
  await choose(jpeg("again.jpg", photos.gate));
  await phone.reads("This picture is here already.");
  await choose(jpeg("gate.jpg", photos.gate), jpeg("rows.jpg", photos.rows));
  await thumbsAre(2);
  await expect.poll(kept).toBe(bytes + 1);
});

it("opens a photo large; Back closes it, so does the key, and a page loaded again shows it again", async () => {
  await begin("Open large");
  await choose(jpeg("gate.jpg", photos.gate));
  await thumbsAre(1);
  const large = page().locator("dialog.full-view");
  await page().locator(".photo").tap();
  await large.waitFor();
  await large.locator(".full-view-foot").getByText("Open large").waitFor();
  await phone.chromium.reload();
  await large.waitFor();
  await page().goBack();
  await large.waitFor({ state: "detached" });
  await standsIn("Open large");
  await page().locator(".photo").tap();
  await large.getByRole("button", { name: "Close" }).tap();
  await large.waitFor({ state: "detached" });
  await page().locator(".photo").tap();
  await page().keyboard.press("Escape");
  await large.waitFor({ state: "detached" });
});

it("is gone, and the step with it, when the browser itself closes a large photo", async () => {
  await begin("Closed from outside");
  await choose(jpeg("gate.jpg", photos.gate));
  await thumbsAre(1);
  const large = page().locator("dialog.full-view");
  await page().locator(".photo").tap();
  await large.waitFor();
  // As a gesture of the system closes it: nobody on the page is asked.
  await large.evaluate((one: HTMLDialogElement) => one.close());
  await large.waitFor({ state: "detached" });
  await until("its step is gone", () => phone.chromium.run(() => history.state === null));
  await standsIn("Closed from outside");
  for (let time = 0; time < 5; time += 1) {
    await page().locator(".photo").tap();
    await large.waitFor();
    await page().goBack();
    await large.waitFor({ state: "detached" });
  }
  // Two hurried touches on its key go back by one step, not by two.
  await page().locator(".photo").tap();
  await large.waitFor();
  await large
    .getByRole("button", { name: "Close" })
    .evaluate((key: HTMLElement) => [key.click(), key.click()].length);
  await large.waitFor({ state: "detached" });
  await until("its step is gone", () => phone.chromium.run(() => history.state === null));
  await standsIn("Closed from outside");
});

it("takes the addresses of its pictures back when they are no longer shown", async () => {
  await expect.poll(addressesStanding).toBe(0);
  await begin("Addresses");
  await choose(jpeg("gate.jpg", photos.gate), jpeg("rows.jpg", photos.rows));
  await thumbsAre(2);
  await expect.poll(addressesStanding).toBe(2);
  // The page of the day would show them again.
  await phone.goTo("#/measure");
  await phone.reads("Which field are you in?");
  await expect.poll(addressesStanding).toBe(0);
});

it("deletes a photo after asking, and brings it back", async () => {
  await begin("Deleted photo");
  await choose(jpeg("gate.jpg", photos.gate));
  await thumbsAre(1);
  await page().locator(".photo").tap();
  await press("Delete this photo");
  await page().locator("dialog").getByRole("button", { name: "Delete", exact: true }).tap();
  await phone.reads("Photo deleted.");
  await thumbsAre(0);
  await page().locator(".photo-gone button").tap();
  await thumbsAre(1);
  await press("Undo");
  await phone.reads("Undone: the photo");
  await thumbsAre(0);
  await press("Redo");
  await thumbsAre(1);
});

it("says in plain words why a file is not kept, and the note goes on", async () => {
  await begin("Refused");
  await choose({ name: "rows.txt", mimeType: "image/png", buffer: Buffer.from("rows and rows") });
  await phone.reads("This file is no picture that this browser can open. It was not kept.");
  await choose({ name: "a.heic", mimeType: "image/heic", buffer: Buffer.from(heicHead()) });
  await phone.reads("This picture is in the HEIC format");
  await choose(jpeg("gate.jpg", photos.gate), jpeg("a.jpg", Buffer.from("no")));
  await phone.reads("1 photo kept. This file is no picture");
  await words().press("!");
  await isOnRecord("Refused!");
});

it("refuses a photo on a full device, and words go on", async () => {
  await begin("Full");
  await phone.chromium.run(() => {
    StorageManager.prototype.estimate = () => Promise.resolve({ quota: 100_000_000, usage: 99_000_000 });
  });
  await choose(jpeg("gate.jpg", photos.gate));
  await phone.reads("This device has no room left. Readings are still taken; photos are not.");
  await words().pressSequentially(" device");
  await isOnRecord("Full device");
  expect(await thumbs()).toBe(0);
  await phone.chromium.reload();
});

it("has everything on record before the camera opens, and comes back to the same screen", async () => {
  await phone.goTo(`#/visit/${visit}/new-note`);
  await words().waitFor();
  await phone.touch("straw left");
  const opened = page().waitForEvent("filechooser");
  await press("Take a photo");
  await opened;
  const address = new URL(page().url()).hash;
  expect(address).toMatch(/^#\/note\//);
  expect((await noteNow()).body.strip).not.toBeNull();
  await words().pressSequentially("Edge", { delay: 0 });
  const again = page().waitForEvent("filechooser");
  await press("Take a photo");
  const chooser = await again;
  expect((await noteNow()).body.text).toBe("Edge");
  // The phone throws the page away behind the camera, and the browser opens it anew.
  await phone.chromium.reload();
  expect(new URL(page().url()).hash).toBe(address);
  await standsIn("Edge");
  await expect.poll(() => page().getByRole("radio", { name: "straw left" }).isChecked()).toBe(true);
  expect(chooser.isMultiple()).toBe(false);
  const camera = page().locator("input[type=file][capture=environment]");
  await camera.setInputFiles(jpeg("gate.jpg", photos.gate));
  await thumbsAre(1);
});

it("begins a note with a photo alone", async () => {
  const before = (await notes()).length;
  await phone.goTo(`#/visit/${visit}/new-note`);
  await words().waitFor();
  await page().locator("input[capture]").setInputFiles(jpeg("rows.jpg", photos.rows));
  await thumbsAre(1);
  await expect.poll(async () => (await notes()).length).toBe(before + 1);
  expect((await noteNow()).body.text).toBe("");
  await page().locator("a.back").tap();
  await phone.reads("No words");
});

it("leaves no empty note behind", async () => {
  const before = (await notes()).length;
  await phone.goTo(`#/visit/${visit}/new-note`);
  await words().waitFor();
  await phone.touch("straw left");
  const opened = page().waitForEvent("filechooser");
  await press("Take a photo");
  await opened;
  await page().waitForURL(/#\/note\//);
  await page().locator("a.back").tap();
  await until("the empty note is gone", async () => (await notes()).length === before);
});

it("says when the picture is not on this device", async () => {
  await begin("Missing");
  await choose(jpeg("gate.jpg", photos.gate));
  await thumbsAre(1);
  await phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const tx = db.transaction("photos", "readwrite");
    tx.objectStore("photos").clear();
    await new Promise<void>((resolve) => {
      tx.oncomplete = () => resolve();
    });
    db.close();
  });
  await phone.chromium.reload();
  await phone.reads("The picture is not on this device.");
});

it("moves the position by hand, keeps the measured one, undoes, and puts it back", async () => {
  await begin("Moved");
  // The position comes while somebody is still writing.
  await phone.chromium.context.setGeolocation({ latitude: 52.1, longitude: -1.3, accuracy: 4 });
  await until("a position is on record", async () => (await noteNow()).body.at?.position != null);
  const where = async () => (await noteNow()).body.at?.position;
  await phone.chromium.reload();
  await press("Move the position");
  await press("1 m north");
  await phone.reads("Moved by hand, 1 m from where it was measured.");
  await phone.touch("10 m");
  await press("10 m north");
  await phone.reads("Moved by hand, 11 m from where it was measured.");
  // One degree of latitude at 52° is 111.26 km (WGS 84; NGA, "Length of a degree", from memory): 11 m is 0.0000989°.
  await expect.poll(async () => (await where())?.latitudeDeg).toBeCloseTo(52.1 + 11 / 111_260, 6);
  expect((await where())?.movedFrom).toMatchObject({ latitudeDeg: 52.1, how: "standing-still" });
  await press("Undo the last move");
  await phone.reads("Moved by hand, 1 m from where it was measured.");
  await press("Type degrees");
  await phone.write("Latitude in degrees (south is below zero)", "53");
  await phone.write("Longitude in degrees (west is below zero)", "-1.3");
  await press("Put it there");
  await phone.reads(/That is 100,\d\d\d m away. Is it meant\?/);
  await phone.write("Latitude in degrees (south is below zero)", "abc");
  await press("Put it there");
  await phone.reads("Write degrees with a decimal mark");
  await press("Back to where it was measured");
  await phone.reads(/Measured standing still, within about 4 m/);
  await expect.poll(where).toMatchObject({ latitudeDeg: 52.1, how: "standing-still" });
});

it("deletes the note after asking, and brings it back with its photos", async () => {
  await begin("To be deleted");
  await choose(jpeg("rows.jpg", photos.rows));
  await thumbsAre(1);
  const address = new URL(page().url()).hash;
  await press("Delete this note");
  await press("Delete");
  // The note's own heading says "Write a note" too.
  await page().getByRole("link", { name: "Write a note" }).waitFor();
  await page().getByText("To be deleted").first().waitFor({ state: "detached" });
  // Among what was deleted a note is known by its words.
  await phone.goTo("#/deleted");
  await phone.reads(/To be deleted/);
  await phone.goTo(address);
  await press("Bring the note back");
  await standsIn("To be deleted");
  await thumbsAre(1);
});

it("lists the notes of the day with their first words and photos", async () => {
  await phone.goTo(`#/visit/${visit}`);
  const row = page().locator(".row").filter({ hasText: "To be deleted" });
  await row.getByText("1 photo").waitFor();
  await row.tap();
  await standsIn("To be deleted");
});
