import { afterAll, beforeAll, expect, it } from "vitest";
import { type ChromiumDriver, startChromium } from "../drivers/chromium.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";

let chromium: ChromiumDriver;
let host: BuiltServer;

beforeAll(async () => {
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  chromium = await startChromium();
  await chromium.open(host.url);
});
afterAll(async () => {
  await host.close();
  await chromium.close();
});

const isChosen = (label: string) =>
  expect
    .poll(() => chromium.page.getByLabel(label).isChecked(), { message: `${label} is chosen` })
    .toBe(true);

it("asks little, has sensible answers ready, and begins to measure at one touch", async () => {
  const { page } = chromium;
  await page.getByText("ground cover, worms and soak-in, measured in the field").waitFor();
  await page.getByText("Nothing is sent anywhere.").waitFor();
  // The browser of the tests speaks en-GB.
  await isChosen("UK & Ireland");
  await isChosen("Mixed");
  await page.getByLabel("Australia & New Zealand").tap();
  await page.getByLabel("Metric").tap();
  await page.getByLabel("Name").fill("One who counts");
  await page.getByRole("button", { name: "Measure now, name the field later" }).tap();
  await page.getByText("Count a line").waitFor();
  expect(await chromium.run(() => location.hash)).toMatch(/^#\/visit\/visit-/);
});

it("keeps the answers, and does not ask again", async () => {
  const { page } = chromium;
  await chromium.open(`${host.url}#/settings`);
  await chromium.reload();
  await page.getByText("Who is measuring now?").waitFor();
  await isChosen("One who counts");
  await isChosen("Australia & New Zealand");
  await isChosen("Metric");
});
