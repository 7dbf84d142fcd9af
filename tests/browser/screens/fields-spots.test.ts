/** Marked spots: taken standing still, moved by hand with the measured place kept, edges between two strips. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { type MapSample, mapSample, placeAt, stand, storedBody } from "./map-sample.ts";
import { type OnPhone, onPhone, placeAtRest } from "./on-phone.ts";

let phone: OnPhone;
let sample: MapSample;
beforeAll(async () => {
  sample = mapSample();
  phone = await onPhone(sample.rows);
  await phone.chromium.context.grantPermissions(["geolocation"]);
});
afterAll(() => phone.close());

interface Kept {
  readonly name: string;
  readonly oldGrass: boolean;
  readonly position: {
    readonly latitudeDeg: number;
    readonly how: string;
    readonly accuracyM: number | null;
    readonly movedFrom?: { readonly latitudeDeg: number; readonly how: string };
  } | null;
  readonly edge?: { readonly between: readonly (string | null)[]; readonly to: object | null };
}
const spotNow = async (id: string) => (await storedBody(phone, id)) as unknown as Kept;
const spotNamed = async (name: string): Promise<Kept> => {
  const ids = await phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const keys = await new Promise<IDBValidKey[]>((resolve) => {
      const request = db.transaction("records").objectStore("records").getAllKeys();
      request.onsuccess = () => resolve(request.result);
    });
    db.close();
    return keys.map(String).filter((key) => key.startsWith("spot-"));
  });
  for (const id of ids) {
    const body = await spotNow(id);
    if (body.name === name) return body;
  }
  throw new Error(`no spot ${name}`);
};

it("marks an old-grass spot where one stands still", async () => {
  await phone.goTo(`#/fields/${sample.field}`);
  await phone.touch("Mark a spot");
  await phone.write("What is it called?", "lane verge");
  await phone.touch("old-grass spot");
  await stand(phone, 190, 20, 5);
  await phone.touch("Stand still at the place");
  await phone.reads(/Position within about 5 m/);
  await phone.touch("It is here");
  await phone.reads("measured standing still, within about 5 m");
  await phone.touch("Keep this spot");
  await phone.reads("lane verge");
  await expect.poll(async () => (await spotNamed("lane verge")).oldGrass).toBe(true);
  const kept = await spotNamed("lane verge");
  expect(kept.position?.how).toBe("standing-still");
  expect(kept.position?.latitudeDeg).toBeCloseTo(placeAt(190, 20).latitudeDeg, 6);
});

it("moves a spot on the map, keeps where it was measured, and puts it back", async () => {
  const { page } = phone.chromium;
  await phone.touch("by the oak");
  await phone.touch("Move it on the map");
  const sign = page.locator(".ground .sign").first();
  const { y } = await placeAtRest(sign);
  await page.locator(".ground .leaflet-container").focus();
  await page.keyboard.press("ArrowUp");
  await until("the map moves", async () => Math.abs(((await sign.boundingBox())?.y ?? y) - y) > 5);
  await placeAtRest(sign);
  await phone.touch("Put it at the cross");
  await phone.reads(/moved by hand, \d+ m north of where it was measured/);
  await phone.touch("Keep this spot");
  await phone.reads("Marked spots");
  const measured = placeAt(20, 100).latitudeDeg;
  await expect.poll(async () => (await spotNow(sample.spot)).position?.how).toBe("by-hand");
  const moved = await spotNow(sample.spot);
  expect(moved.position?.accuracyM).toBeNull();
  expect(moved.position?.latitudeDeg).toBeGreaterThan(measured);
  expect(moved.position?.movedFrom?.latitudeDeg).toBeCloseTo(measured, 9);
  await phone.touch("by the oak");
  await phone.touch("Put it back where it was measured");
  await phone.reads("measured standing still, within about 4 m");
  await phone.touch("Keep this spot");
  await phone.reads("Marked spots");
  await expect.poll(async () => (await spotNow(sample.spot)).position?.movedFrom).toBeUndefined();
  const back = await spotNow(sample.spot);
  expect(back.position?.latitudeDeg).toBeCloseTo(measured, 9);
});

it("marks a visible edge between two strips, and asks for two that differ", async () => {
  const { page } = phone.chromium;
  await phone.touch("Mark a spot");
  await phone.write("What is it called?", "combine pass");
  await phone.touch("visible edge");
  const side = (question: string, strip: string) =>
    page.locator("fieldset", { hasText: question }).locator("label", { hasText: strip }).tap();
  await side("What lies on one side?", "straw left");
  await side("And on the other side?", "straw left");
  await phone.reads("Both sides are the same strip.");
  await side("And on the other side?", "straw off");
  await phone.touch("Keep this spot");
  await phone.reads("combine pass");
  await expect.poll(async () => (await spotNamed("combine pass")).position).toBeNull();
  const kept = await spotNamed("combine pass");
  expect(new Set(kept.edge?.between).size).toBe(2);
});

it("makes a visible edge a plain spot again, and keeps the rest of it", async () => {
  const { page } = phone.chromium;
  await phone.touch("combine pass");
  await phone.touch("the same place every season");
  await phone.touch("Keep this spot");
  await phone.reads("Marked spots");
  await expect.poll(async () => (await spotNamed("combine pass")).edge).toBeUndefined();
  await page.reload();
  await phone.touch("combine pass");
  const kind = page.getByRole("radio", { name: /^marked spot/ });
  await expect.poll(() => kind.isChecked()).toBe(true);
  await phone.touch("visible edge");
  await phone.touch("Keep this spot");
  await phone.reads("Marked spots");
  await expect.poll(async () => (await spotNamed("combine pass")).edge?.between).toEqual([null, null]);
});

it("deletes a spot only when asked twice", async () => {
  await phone.touch("combine pass");
  await phone.touch("Delete this spot");
  await phone.reads("30 days under Deleted records");
  await phone.touch("Yes, delete it");
  await phone.reads("Marked spots");
  await phone.chromium.page.getByText("combine pass").first().waitFor({ state: "detached" });
});
