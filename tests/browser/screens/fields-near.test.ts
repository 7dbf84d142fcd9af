/** At a gateway: two or three names are offered, nothing opens by itself, and an old place offers none. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type MapSample, mapSample, stand, storedBody } from "./map-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let sample: MapSample;
beforeAll(async () => {
  sample = mapSample();
  phone = await onPhone(sample.rows);
});
afterAll(() => phone.close());

const offered = () =>
  phone.chromium.page
    .locator("section", { has: phone.chromium.page.getByText("Near here") })
    .last()
    .locator(".rows li");

it("asks before it asks the browser", async () => {
  await phone.reads("Which fields are near me?");
  expect(await phone.chromium.page.getByText("Near here").count()).toBe(0);
});

it("offers fields by name with farm, area and distance, and opens none", async () => {
  await phone.chromium.context.grantPermissions(["geolocation"]);
  await stand(phone, 230, 75, 6);
  await phone.touch("Which fields are near me?");
  await phone.reads("Your position is within about 6 m: look which field it is.");
  await offered().first().waitFor();
  // The gateway lies in the lane, 30 m from either field; both are called the same.
  await expect
    .poll(async () => (await offered().allTextContents()).sort())
    .toEqual(["Brook End", "Hollow Lane"].map((farm) => `Top Field${farm} · 3 ha · 30 m to its edge`));
  expect(await phone.chromium.run(() => location.hash)).toBe("#/measure");
});

it("opens how they were found", async () => {
  await phone.touch(/^How this was worked out/);
  await phone.reads("Fields near a position");
});

it("says that a bad position may mean another field", async () => {
  await stand(phone, 100, 75, 200);
  await phone.reads(
    "Your position is only within about 200 m. The field that you stand in may be another one.",
  );
  await phone.reads("you stand in it");
});

it("measures in the very field that was touched", async () => {
  await stand(phone, 300, 75, 5);
  await phone.goTo("#/measure");
  await offered().filter({ hasText: "Brook End" }).locator("button").tap();
  await phone.reads("Today in Top Field");
  const visit = await phone.chromium.run(() => location.hash.split("/")[2] ?? "");
  expect((await storedBody(phone, visit))?.["field"]).toBe(sample.other);
});

it("offers nothing by a position that grew old", async () => {
  const { page } = phone.chromium;
  await phone.goTo("#/measure");
  await offered().first().waitFor();
  await page.clock.install();
  await page.clock.runFor(60_000);
  await phone.reads(/No new position for .*so no field is offered\./);
  await expect.poll(() => offered().count()).toBe(0);
});
