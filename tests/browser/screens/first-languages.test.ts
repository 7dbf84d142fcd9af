/** The first questions in the languages of the browser. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type ChromiumDriver, startChromium } from "../drivers/chromium.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";

let chromium: ChromiumDriver;
let host: BuiltServer;

beforeAll(async () => {
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  chromium = await startChromium();
  await chromium.context.addInitScript(() => {
    const language = new URLSearchParams(location.search).get("speaks") ?? "en-GB";
    Object.defineProperty(Navigator.prototype, "languages", { get: () => [language] });
    Object.defineProperty(Navigator.prototype, "language", { get: () => language });
  });
});
afterAll(async () => {
  await host.close();
  await chromium.close();
});

// Trade words by region: common practice, no source. Units by region: Unicode CLDR, from memory.
it.each([
  ["en-AU", "Australia & New Zealand", "windrow, sown", "Metric"],
  ["en-NZ", "Australia & New Zealand", "windrow, sown", "Metric"],
  ["en-US", "US & Canada", "windrow, planted", "US customary"],
  ["en-CA", "US & Canada", "windrow, planted", "Metric"],
  ["en-GB", "UK & Ireland", "straw swath, drilled", "Mixed"],
  ["en-IE", "UK & Ireland", "straw swath, drilled", "Metric"],
  ["de-DE", "UK & Ireland", "straw swath, drilled", "Metric"],
])("%s is offered the words of %s (%s) and the units %s", async (language, words, hint, units) => {
  await chromium.open(`${host.url}?speaks=${language}#/welcome`);
  await chromium.page.getByText("Which units?").waitFor();
  const chosen = () => chromium.page.locator("label.tick:has(input:checked)").allTextContents();
  await expect.poll(async () => (await chosen())[0]).toBe(`${words}${hint}`);
  await expect.poll(async () => (await chosen())[1]).toContain(units);
});
