/** After an update that changes the science the fields are worked out before anybody opens one. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../../src/screens/parts/route.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { yearsSample } from "./years-sample.ts";

const sample = yearsSample();
const field = href({ at: "field", field: sample.field });
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await phone.chromium.page.addInitScript(() => {
    if (sessionStorage.getItem("workers-are-mute") === "true") Worker.prototype.postMessage = () => undefined;
  });
});
afterAll(() => phone.close());

/** By what the results were worked out, how many are kept, and whether stones count. */
const noted = () =>
  phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const tx = db.transaction(["meta", "summaries"]);
    const by = tx.objectStore("meta").get("worked-out-by");
    const settings = tx.objectStore("meta").get("settings");
    const kept = tx.objectStore("summaries").count();
    await new Promise((resolve) => {
      tx.oncomplete = resolve;
    });
    db.close();
    const stonesCount = (settings.result as { stonesCount?: boolean } | undefined)?.stonesCount === true;
    return { by: (by.result ?? null) as string | null, kept: kept.result, stonesCount };
  });

/** As the database is after an update: noted by an app of before, whose results nobody can use. */
const asAfterUpdate = () =>
  phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const tx = db.transaction(["meta", "summaries"], "readwrite");
    tx.objectStore("meta").put(JSON.stringify(["field-cover-0", "field-holes-rings-0", {}]), "worked-out-by");
    tx.objectStore("summaries").clear();
    await new Promise((resolve) => {
      tx.oncomplete = resolve;
    });
    db.close();
    return null;
  });

/** From the next start on no worker hears a question, so that nothing is shown but what was kept. */
const mute = (muted: boolean) =>
  phone.chromium.run((on) => {
    sessionStorage.setItem("workers-are-mute", String(on));
    return null;
  }, muted);

it("only notes it at the first start", async () => {
  await until("it is noted", async () => (await noted()).by !== null);
  expect((await noted()).kept).toBe(0);
});

it("works all fields out after an update, without one being opened", async () => {
  const { by } = await noted();
  await asAfterUpdate();
  await phone.chromium.reload();
  await until("both results of the field are kept", async () => (await noted()).kept === 2);
  await until("it is noted", async () => (await noted()).by === by);
});

it("then shows the field without working anything out", async () => {
  await mute(true);
  await phone.chromium.reload();
  await phone.goTo(field);
  const { page } = phone.chromium;
  await expect
    .poll(() => page.locator("main .ruled .rows .row").first().textContent())
    .toMatch(/3 lines.*75 %/s);
  await expect.poll(() => page.locator(".found-day").first().textContent()).toMatch(/75 %/);
});

it("works them out anew at the start after another way of counting was chosen", async () => {
  await mute(false);
  await phone.goTo("#/settings");
  await phone.touch("Count stones as ground cover");
  await until("the choice is kept", async () => (await noted()).stonesCount);
  const { by } = await noted();
  await phone.chromium.reload();
  await until("it is noted", async () => (await noted()).by !== by);
  await mute(true);
  await phone.chromium.reload();
  await phone.goTo(field);
  await expect.poll(() => phone.chromium.page.locator(".found-day").first().textContent()).toMatch(/%/);
});
