import { afterAll, beforeAll, expect, it } from "vitest";
import type { Method } from "../../../src/science/method.ts";
import { METHODS } from "../../../src/science/methods/all.ts";
import type { MethodId } from "../../../src/science/methods.ts";
import { SOURCES } from "../../../src/science/sources.ts";
import { HELP_TOPICS } from "../../../src/screens/parts/route.ts";
import { putRows } from "../../bench/seed.ts";
import { sampleFarm } from "../accessibility/sample.ts";
import { type ChromiumDriver, startChromium } from "../drivers/chromium.ts";
import { until, untilControlled } from "../drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";
import { standsStill } from "./on-phone.ts";

let chromium: ChromiumDriver;
let host: BuiltServer;
const { rows, addresses } = sampleFarm();
beforeAll(async () => {
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  chromium = await startChromium();
  await chromium.open(host.url);
  await untilControlled(chromium);
  await putRows(chromium, rows, {});
  // From here on there is no network and no server either.
  await chromium.context.setOffline(true);
  await host.close();
});
afterAll(() => chromium.close());

const TITLES = {
  line: "How to count a line",
  hole: "How to count worms in a hole",
  ring: "How to run a ring",
  compare: "How to compare fairly",
  cautions: "Cautions",
  keeping: "What a phone may delete",
  locked: "What a locked phone cannot do",
  words: "Words of the trade",
  methods: "Methods and sources",
} satisfies Record<(typeof HELP_TOPICS)[number], string>;

/** A cold load of an address: a change of the hash alone would load nothing. */
const load = async (address: string, title: string): Promise<void> => {
  await chromium.open("about:blank");
  await chromium.open(`${host.url}${address}`);
  await chromium.page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor();
};

/** How often in a row nothing more must come: lists grow with the pictures of the screen. */
const STILL = 6;

/** Opens everything that is folded, until nothing is and nothing grows any more. */
const unfold = async (): Promise<void> => {
  let before = -1;
  let still = 0;
  await until("all is unfolded", async () => {
    const drawn = await chromium.run(() => {
      const folded = [...document.querySelectorAll<HTMLDetailsElement>("details:not([open])")];
      for (const one of folded) one.open = true;
      return folded.length > 0 ? -1 : document.querySelectorAll("main *").length;
    });
    still = drawn === before && drawn !== -1 ? still + 1 : 0;
    before = drawn;
    return still >= STILL;
  });
};

it.each(HELP_TOPICS)("loads #/help/%s without a network", async (topic) => {
  await load(`#/help/${topic}`, TITLES[topic]);
  await chromium.reload();
  await chromium.page.getByRole("heading", { level: 1, name: TITLES[topic], exact: true }).waitFor();
});

it("lists every topic without a network, and leads to it and back", async () => {
  const { page } = chromium;
  await load("#/help", "Help");
  for (const topic of HELP_TOPICS)
    await page.locator(`a[href="#/help/${topic}"]`).waitFor({ state: "visible" });
  await page.locator('a[href="#/help/hole"]').tap();
  await page.getByText("Heads only.").waitFor();
  await page.getByRole("button", { name: "Back to where you were" }).tap();
  await page.getByRole("heading", { level: 1, name: "Help", exact: true }).waitFor();
});

it.each(["line", "hole", "ring"] as const)("shows %s in three pictures, each with words", async (topic) => {
  await load(`#/help/${topic}`, TITLES[topic]);
  const figures = chromium.page.locator("figure");
  await expect.poll(() => figures.count()).toBe(3);
  for (let index = 0; index < 3; index += 1) {
    const one = figures.nth(index);
    await expect.poll(async () => (await one.locator("svg").boundingBox())?.height).toBeGreaterThan(100);
    expect((await one.locator("figcaption").textContent())?.length ?? 0).toBeGreaterThan(40);
  }
});

it("shows every method, formula, constant and source, and draws none of it before it is asked for", async () => {
  await load("#/help/methods", TITLES.methods);
  await standsStill(chromium, "help, methods");
  expect(await chromium.page.locator("[data-method], [data-source], .formula").count()).toBe(0);
  await unfold();
  const shown = await chromium.run(() => ({
    methods: [...document.querySelectorAll<HTMLElement>("[data-method]")].map((one) => ({
      id: one.dataset["method"] ?? "",
      formulas: [...one.querySelectorAll(".formula")].map(({ textContent }) => textContent),
      constants: one.querySelectorAll(".constants tbody tr").length,
      explained: one.querySelectorAll("dt").length,
      cautions: one.querySelectorAll(".limits li").length,
      sources: one.querySelectorAll(".source-list li").length,
    })),
    sources: [...document.querySelectorAll<HTMLElement>("[data-source]")].map((one) => one.dataset["source"]),
  }));
  expect(shown.methods.map(({ id }) => id).toSorted()).toEqual(Object.keys(METHODS).toSorted());
  expect([...new Set(shown.sources)].toSorted()).toEqual(Object.keys(SOURCES).toSorted());
  for (const { id, formulas, constants, explained, cautions, sources } of shown.methods) {
    const method: Method = METHODS[id as MethodId];
    expect(formulas, id).toEqual(method.formulas);
    expect(constants, id).toBe(method.constants.length);
    expect(cautions, id).toBe(new Set(method.limits?.map(({ caution }) => caution)).size);
    expect(sources - cautions, id).toBe(method.sources.length);
    expect(explained, id).toBeGreaterThan(0);
  }
});

it("finds a method by a word, says how many there are, and shows its formula", async () => {
  const { page } = chromium;
  await load("#/help/methods", TITLES.methods);
  await page.getByRole("textbox", { name: "Look for a word" }).fill("wilson");
  await page.getByText(/^\d+ methods? and \d+ sources? with this word\.$/).waitFor();
  await page.getByText("Range of one line (Wilson interval)", { exact: true }).first().tap();
  await page.getByText("(1 + z²/m)").waitFor();
  await page.getByText("Wilson (1927), Journal of the American").first().waitFor();
  await page.getByRole("textbox", { name: "Look for a word" }).fill("zzzz");
  await page.getByText("Nothing with this word.").waitFor();
});

it("says what has to be minded, local rules first", async () => {
  await load("#/help/cautions", TITLES.cautions);
  const now = async () => (await chromium.page.locator("main").textContent()) ?? "";
  for (const one of [
    "Buried cables",
    "Clean boots",
    "Sprayed",
    "Livestock",
    "Electric fences",
    "Lightning",
    "Heat",
    "Working alone",
    "Lifting water",
    "Mustard water",
    "Driving a ring in",
    "Never carry worms or soil",
    "not for sizing drains",
  ])
    await expect.poll(now).toContain(one);
  const text = await now();
  expect(text.indexOf("Local codes")).toBeLessThan(text.indexOf("Buried cables"));
});

/** Every link to help from outside help, screen by screen. */
const LEADING: readonly (readonly [screen: string, topics: readonly (typeof HELP_TOPICS)[number][]])[] = [
  ["line-new", ["line"]],
  ["hole-new", ["cautions", "hole"]],
  ["ring-new", ["cautions", "locked", "ring"]],
  ["rings", ["locked"]],
  ["worked-out", ["line", "methods"]],
];

it.each(LEADING)("leads from %s to %j without a network, and back", async (screen, topics) => {
  const { page } = chromium;
  for (const topic of topics) {
    await chromium.open("about:blank");
    await chromium.open(`${host.url}${addresses[screen] ?? ""}`);
    await page.locator(`main a[href="#/help/${topic}"]`).first().tap();
    await page.getByRole("heading", { level: 1, name: TITLES[topic], exact: true }).waitFor();
    await page.goBack();
    await page.locator(`main a[href="#/help/${topic}"]`).first().waitFor();
  }
  // Cautions come once it is known which are due.
  const all = async () => {
    const links = page.locator('main a[href^="#/help/"]');
    return new Set(await links.evaluateAll((found) => found.map((link) => link.getAttribute("href"))));
  };
  await expect
    .poll(async () => [...(await all())].toSorted())
    .toEqual(topics.map((topic) => `#/help/${topic}`).toSorted());
});
