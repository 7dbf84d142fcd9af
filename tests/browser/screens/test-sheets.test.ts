/** Photos on the sheets of tests, on the day and on the field page; positions of tests moved by hand. */
import type { Locator } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { sampleFarm } from "../accessibility/sample.ts";
import { until, untilControlled } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { photoOf, storedRecords } from "./on-record.ts";

let phone: OnPhone;
let photos: readonly Buffer[];
const { rows, addresses } = sampleFarm();
const page = () => phone.chromium.page;
const press = (name: string) => page().getByRole("button", { name, exact: true }).tap();
const bytesRead = () => phone.chromium.run(() => Reflect.get(globalThis, "bytesRead") as number);

beforeAll(async () => {
  phone = await onPhone(rows);
  await untilControlled(phone.chromium);
  photos = [];
  for (const colour of ["#7a5c22", "#24512f", "#17507a"])
    photos = [...photos, await photoOf(phone.chromium, colour)];
  await phone.chromium.context.addInitScript(() => {
    Reflect.set(globalThis, "bytesRead", 0);
    const { createObjectURL } = URL;
    URL.createObjectURL = (made) => {
      Reflect.set(globalThis, "bytesRead", (Reflect.get(globalThis, "bytesRead") as number) + 1);
      return createObjectURL.call(URL, made);
    };
  });
  await phone.chromium.context.setOffline(true);
});
afterAll(() => phone.close());

const firstSays = (list: Locator) => list.locator("img").first().getAttribute("alt");

const SHEETS = ["line-sheet", "ring-sheet", "hole-sheet"] as const;

it.each(SHEETS.map((sheet, at) => [sheet, at] as const))(
  "takes a photo on the %s, from the camera and from a file, and keeps it small",
  async (sheet, at) => {
    await phone.goTo(addresses[sheet] ?? "");
    const camera = page().locator("input[type=file][capture=environment]");
    await camera.waitFor({ state: "attached" });
    const file = { name: "a.jpg", mimeType: "image/jpeg", buffer: photos[at] ?? Buffer.from("") };
    await camera.setInputFiles(file);
    await phone.reads("1 photo kept.");
    await page().locator(".photo").scrollIntoViewIfNeeded();
    const picture = page().locator(".photo img");
    await until("it is drawn", () => picture.evaluate((one: HTMLImageElement) => one.naturalWidth === 1600));
    await page().locator("input[type=file]:not([capture])").setInputFiles(file);
    await phone.reads("This picture is here already.");
    await page().locator(".photo").tap();
    const large = page().locator("dialog.full-view");
    await large.waitFor();
    await page().goBack();
    await large.waitFor({ state: "detached" });
    const test = (addresses[sheet] ?? "").split("/")[2];
    const kept = async () =>
      (await storedRecords(phone.chromium, "photo")).filter(({ revs }) => revs[0]?.body.of === test);
    await expect.poll(kept).toHaveLength(1);
  },
);

it("shows all photos of the field newest first, and reads no bytes before one is near", async () => {
  await phone.goTo(addresses["field"] ?? "");
  await phone.chromium.reload();
  const list = page().getByRole("list", { name: "Photos" });
  await list.waitFor({ state: "attached" });
  await until("three photos are listed", async () => (await list.getByRole("button").count()) === 3);
  // Far down the page nothing is read, and the list says all the same what is there.
  expect(await bytesRead()).toBe(0);
  for (const [at, test] of ["Hole", "Ring", "Line"].entries())
    await expect
      .poll(() => list.getByRole("button").nth(at).textContent())
      .toMatch(new RegExp(`^Photo ${at + 1} of 3, .*: ${test}, straw left`));
  await list.scrollIntoViewIfNeeded();
  await until("they are drawn", async () => (await list.locator("img").count()) === 3);
  await expect.poll(bytesRead).toBe(3);
  await expect.poll(() => firstSays(list)).toMatch(/^Photo 1 of 3, .*: Hole, straw left$/);
  const taken = page().locator("input[type=file][capture=environment]");
  await taken.setInputFiles({
    name: "gate.jpg",
    mimeType: "image/jpeg",
    buffer: await photoOf(phone.chromium, "#8c3b14"),
  });
  await until("a photo of the field itself", async () => (await list.locator("img").count()) === 4);
});

it("shows the photos of the day on the day, first taken first", async () => {
  await phone.goTo(addresses["visit"] ?? "");
  const list = page().getByRole("list", { name: "Photos" });
  await list.waitFor({ state: "attached" });
  await list.scrollIntoViewIfNeeded();
  await until("they are drawn", async () => (await list.locator("img").count()) === 3);
  await expect.poll(() => firstSays(list)).toMatch(/^Photo 1 of 3, .*: Line, straw left$/);
});

it.each([
  ["line-sheet", "start", "Put the start by hand", "Move the start"],
  ["ring-sheet", "at", "Put a position by hand", "Move the position"],
  ["hole-sheet", "at", "Put a position by hand", "Move the position"],
] as const)("puts and moves the position on the %s, and undoes it", async (sheet, which, put, moved) => {
  await phone.goTo(addresses[sheet] ?? "");
  const where = async () => {
    const test = (addresses[sheet] ?? "").split("/")[2];
    const one = (await storedRecords(phone.chromium, "observation")).find(({ id }) => id === test);
    return one?.revs[0]?.body[which]?.position ?? null;
  };
  await press(put);
  await phone.write("Latitude in degrees (south is below zero)", "52.0005");
  await phone.write("Longitude in degrees (west is below zero)", "0.501");
  await press("Put it there");
  await phone.reads("Put there by hand.");
  await expect.poll(where).toMatchObject({ latitudeDeg: 52.0005, how: "by-hand" });
  await press("1 m north");
  // One degree of latitude at 52° is 111.26 km (WGS 84; from memory).
  await until(
    "it is one metre north",
    async () => Math.abs(((await where())?.latitudeDeg ?? 0) - 52.0005 - 1 / 111_260) < 1e-7,
  );
  await press("Undo the last move");
  await until("it is back", async () => (await where())?.latitudeDeg === 52.0005);
  await press("Close");
  await page().getByRole("button", { name: moved, exact: true }).waitFor();
});

it("keeps the measured position of a hole that is moved by hand", async () => {
  const { context } = phone.chromium;
  await context.grantPermissions(["geolocation"], { origin: new URL(page().url()).origin });
  await phone.goTo(addresses["hole-sheet"] ?? "");
  await phone.chromium.reload();
  await press("Take the position here");
  await page().getByRole("button", { name: "Use this position", exact: true }).waitFor();
  // The browser stamps it with the moment it is set; the app takes none that is older than ten seconds.
  await context.setGeolocation({ latitude: 52.0007, longitude: 0.5012, accuracy: 4 });
  await page().getByRole("button", { name: "Use this position", exact: true }).tap();
  await phone.reads(/Measured standing still, within about 4 m/);
  await press("Move the position");
  await phone.touch("10 m");
  await press("10 m east");
  await phone.reads("Moved by hand, 10 m from where it was measured.");
  const test = (addresses["hole-sheet"] ?? "").split("/")[2];
  const where = async () => {
    const one = (await storedRecords(phone.chromium, "observation")).find(({ id }) => id === test);
    return one?.revs[0]?.body.at?.position;
  };
  await expect
    .poll(where)
    .toMatchObject({ how: "by-hand", movedFrom: { latitudeDeg: 52.0007, how: "standing-still" } });
});

it("says on a line that its rope was corrected after it", async () => {
  await phone.goTo(addresses["line-sheet"] ?? "");
  await phone.reads("Ground cover on this line");
  await phone.reads("What lay at the marks");
  expect(await page().getByText("was corrected after this test").count()).toBe(0);
  await phone.goTo("#/kit");
  await page().getByRole("button", { name: "Correct R1" }).tap();
  await phone.write("From mark to mark, in cm", "31");
  await phone.touch(/^Correct this rope and/u);
  await phone.reads("31 cm apart");
  await phone.goTo(addresses["line-sheet"] ?? "");
  await phone.reads(/R1 was corrected after this test/u);
});
