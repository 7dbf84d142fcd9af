import { afterEach, beforeEach, expect, it } from "vitest";
import { type ChromiumDriver, type ChromiumTab, startChromium } from "../drivers/chromium.ts";
import { until } from "../drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";
import { storedRecords } from "./on-record.ts";

let chromium: ChromiumDriver;
let host: BuiltServer;
let tabs: readonly [ChromiumTab, ChromiumTab];

const NOW = "Measure now, name the field later";

beforeEach(async () => {
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  chromium = await startChromium();
  tabs = [chromium, await chromium.tab()];
  for (const tab of tabs) {
    await tab.open(host.url);
    await tab.page.getByRole("button", { name: NOW }).waitFor();
  }
});
afterEach(async () => {
  // The browser first: its service worker may still be fetching the rest of the app.
  await chromium.close();
  await host.close();
});

const nameIn = (tab: ChromiumTab, name: string) => tab.page.getByLabel("Name").fill(name);

const isChosen = (tab: ChromiumTab, label: string) =>
  expect.poll(() => tab.page.getByLabel(label).isChecked(), { message: `${label} is chosen` }).toBe(true);

const hashOf = (tab: ChromiumTab) => tab.run(() => location.hash);

const past = (tab: ChromiumTab) =>
  until("the first questions are over", async () => !(await hashOf(tab)).startsWith("#/welcome"));

/** Both tabs are touched in the same millisecond, as far as a machine can. */
const touchBoth = async (label: string) => {
  const atMs = Date.now() + 500;
  await Promise.all(
    tabs.map(({ run }) =>
      run(
        (ms, wanted) =>
          new Promise<void>((resolve) => {
            const key = [...document.querySelectorAll("button")].find((one) => one.textContent === wanted);
            setTimeout(
              () => {
                while (Date.now() < ms) {
                  // The timer is early by design; the rest is waited for here.
                }
                key?.click();
                resolve();
              },
              ms - Date.now() - 20,
            );
          }),
        atMs,
        label,
      ),
    ),
  );
  await Promise.all(tabs.map(past));
};

const counted = async () => {
  const [people, fields, visits] = await Promise.all(
    ["person", "field", "visit"].map((kind) => storedRecords(chromium, kind)),
  );
  return { people: people?.length, fields: fields?.length, visits: visits?.length };
};

it("begins one field for one person when two tabs finish the first run at once", async () => {
  for (const tab of tabs) await nameIn(tab, "One who counts");
  await touchBoth(NOW);
  expect(await counted()).toEqual({ people: 1, fields: 1, visits: 1 });
  // One tab is in the visit, and the other one goes on to it.
  const hashes = await Promise.all(tabs.map(hashOf));
  const isVisit = hashes.map((hash) => hash.startsWith("#/visit/visit-"));
  expect([...isVisit].sort()).toEqual([false, true]);
  const late = tabs[isVisit[0] === true ? 1 : 0];
  await late.page.getByText("go on", { exact: true }).tap();
  await late.page.getByText("Count a line").waitFor();
  expect(await hashOf(tabs[0])).toBe(await hashOf(tabs[1]));
});

it("keeps what was chosen in the first tab, also when the other one changes a setting later", async () => {
  const [first, second] = tabs;
  await nameIn(first, "One who counts");
  await first.page.getByLabel("US customary").tap();
  await first.page.getByRole("button", { name: NOW }).tap();
  await past(first);
  await second.page.getByRole("button", { name: "Add a field" }).tap();
  await past(second);
  await expect.poll(() => hashOf(second)).toBe("#/fields/new");
  await second.open(`${host.url}#/settings`);
  await second.page.getByLabel("Dusk").tap();
  await second.reload();
  await second.page.getByText("Who is measuring now?").waitFor();
  await isChosen(second, "One who counts");
  await isChosen(second, "US customary");
  expect(await counted()).toEqual({ people: 1, fields: 1, visits: 1 });
});

it("loses no name that was typed in the second tab alone", async () => {
  const [first, second] = tabs;
  await first.page.getByRole("button", { name: NOW }).tap();
  await past(first);
  await nameIn(second, "One who counts");
  await second.page.getByRole("button", { name: NOW }).tap();
  await past(second);
  expect(await counted()).toEqual({ people: 1, fields: 1, visits: 1 });
  await second.open(`${host.url}#/settings`);
  await second.reload();
  await second.page.getByText("Who is measuring now?").waitFor();
  await isChosen(second, "One who counts");
});
