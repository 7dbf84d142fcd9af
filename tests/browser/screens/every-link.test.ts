/** Every kind of address that the example farm leads to: it opens without signal, and nothing goes wrong on it. */
import { afterAll, beforeAll, expect, it } from "vitest";

import { until, untilControlled } from "../drivers/driver.ts";
import { type OnPhone, onPhone, standsStill } from "./on-phone.ts";

/** Records of one kind look alike: so many of each are opened, the newest of the lists first. */
const OF_EACH = 2;

let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone();
  await untilControlled(phone.chromium);
  await until("all parts are kept for later", () =>
    phone.chromium.run(async () => {
      const kept = await Promise.all(
        (await caches.keys()).map(async (name) => (await caches.open(name)).keys()),
      );
      return kept.flat().length > 20;
    }),
  );
  await phone.goTo("#/settings");
  await phone.touch("Bring in the example farm");
  await phone.reads("The example farm is here.");
  await phone.chromium.context.setOffline(true);
});
afterAll(() => phone.close());

const kindOf = (address: string): string => address.replaceAll(/[a-z]+-[0-9a-f]{32}/gu, "*");

it("opens whatever a link leads to", async () => {
  const links = phone.chromium.page.locator("a[href^='#/']");
  const opened = new Map<string, number>();
  const seen = new Set<string>();
  const waiting = ["#/measure", "#/fields", "#/findings", "#/send", "#/help", "#/settings"];
  const wrong: string[] = [];
  for (let address = waiting.shift(); address !== undefined; address = waiting.shift()) {
    const count = opened.get(kindOf(address)) ?? 0;
    if (seen.has(address) || count === OF_EACH) continue;
    seen.add(address);
    opened.set(kindOf(address), count + 1);
    await phone.goTo(address);
    await standsStill(phone.chromium, address);
    for (const { kind, text } of phone.chromium.takeProblems()) wrong.push(`${address}: ${kind} ${text}`);
    waiting.push(...(await links.evaluateAll((all) => all.map((one) => one.getAttribute("href") ?? ""))));
  }
  expect(wrong).toEqual([]);
  // All screens but those that only the first start, a touch or two versions of a record lead to.
  expect([...opened.keys()].length).toBeGreaterThan(40);
}, 400_000);
