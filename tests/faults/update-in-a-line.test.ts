import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { afterEach, beforeAll, expect, it } from "vitest";
import { barWords } from "../../src/screens/parts/words.bars.ts";
import type { ChromiumTab } from "../browser/drivers/chromium.ts";
import { until, untilControlled } from "../browser/drivers/driver.ts";
import { buildProbed, nameTab } from "../browser/drivers/probed-build.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { builtFolder } from "../browser/drivers/serve-built.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToLine, goToTest, KEY_OF, seedLine, shownMarks, untilCounting } from "./kit/seeded-line.ts";
import { expectEachOnce, expectUnbroken, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

/** The oldest build that is kept. */
const kept = resolve(import.meta.dirname, "../frozen/build-1");
const words = barWords().bars;

let older = "";
let newer = "";
let host: WatchedHost | undefined;
let phone: Phone | undefined;

beforeAll(() => {
  older = watchedBuild(kept);
  // Until the sources have moved on from the kept build, today's build is no newer one: a probed one is.
  const worker = (folder: string) => readFileSync(join(folder, "sw.js"), "utf8");
  newer = watchedBuild(worker(kept) === worker(builtFolder) ? buildProbed("newer") : builtFolder);
});

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

/** One tab at a line that is half counted, one at the start, both of the older build. */
async function halfALine() {
  const served = await serveWatched(older);
  const on = await startPhone(temporaryFolder("update-profile"));
  host = served;
  phone = on;
  await on.open(served.url);
  const seeded = await seedLine(on, 100);
  await untilControlled(on);
  await on.reload();
  await goToLine(on, seeded.line);
  await count(on, 10);
  const other = await on.tab();
  await other.open(`${served.url}#/measure`);
  await untilControlled(other);
  await nameTab(on, "counting");
  await nameTab(other, "other");
  return { on, other, served, ...seeded };
}

async function count(tab: ChromiumTab, marks: number): Promise<void> {
  const before = await shownMarks(tab);
  await (await startThumb(tab, { cover: "residue", everyMs: 150, touches: marks })).done;
  await until("the marks are shown", async () => (await shownMarks(tab)) === before + marks);
}

/** The build that a tab runs, by its start script; and its name, which a reload takes away. */
function runOf(tab: ChromiumTab): Promise<{ script: string | null; name: string | null }> {
  return tab.run(() => ({
    script: document.querySelector("script[type=module]")?.getAttribute("src") ?? null,
    name: String(Reflect.get(globalThis, "tabName") ?? "") || null,
  }));
}

function bars(tab: ChromiumTab): Promise<string[]> {
  return tab.run(() => [...document.querySelectorAll(".bar p")].map((bar) => bar.textContent ?? ""));
}

async function untilBar(tab: ChromiumTab, said: string): Promise<void> {
  await until(`a bar says "${said}"`, async () => (await bars(tab)).includes(said));
}

/** Touches the key of the bar that says this. */
async function touchBar(tab: ChromiumTab, said: string): Promise<void> {
  await tab.page.locator(".bar", { hasText: said }).locator("button").tap();
}

async function findNewer(tab: ChromiumTab): Promise<void> {
  await tab.run(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
  });
}

async function untilRun(tab: ChromiumTab, script: string | null, is: boolean): Promise<void> {
  await until("the tab runs the other build", async () => {
    const now = await runOf(tab).catch(() => undefined);
    return now?.script != null && (now.script === script) === is;
  });
}

it("counts a line on through an update that another tab takes", async () => {
  const { on, other, served, line } = await halfALine();
  const before = await runOf(on);
  served.deploy(newer);
  await findNewer(other);
  await untilBar(other, words.update);
  // Nothing stands in the way of the keys.
  expect(await bars(on)).toEqual([]);

  await touchBar(other, words.update);
  await untilRun(other, before.script, false);
  await untilBar(on, words.changed);
  expect(await runOf(on)).toEqual({ script: before.script, name: "counting" });
  await count(on, 10);

  await touchBar(on, words.changed);
  await untilRun(on, before.script, false);
  await untilCounting(on);
  expect(await on.run(() => location.hash)).toBe(`#/line/${line}`);
  await until("the marks are shown again", async () => (await shownMarks(on)) === 20);
  await count(on, 10);
  const entries = await storedEntries(on, line);
  expectUnbroken(entries);
  expect(entries.length).toBe(30);
  expect(await bars(on)).toEqual([]);
});

it("tells every tab of a change of builds that none asked for, and reloads none", async () => {
  const { on, other, served, line } = await halfALine();
  const before = await runOf(on);
  served.deploy(newer);
  await findNewer(other);
  await untilBar(other, words.update);
  // As an older app in a third tab would, or the developer tools.
  await other.run(async () => {
    (await navigator.serviceWorker.getRegistration())?.waiting?.postMessage({ type: "SKIP_WAITING" });
  });
  await untilBar(on, words.changed);
  await untilBar(other, words.changed);
  // Longer than a tab waits for a build that it has asked for.
  await new Promise((resolve) => setTimeout(resolve, 6000));
  expect(await runOf(on)).toEqual({ script: before.script, name: "counting" });
  expect(await runOf(other)).toEqual({ script: before.script, name: "other" });
  await count(on, 5);
  expect((await storedEntries(on, line)).length).toBe(15);
});

it("says that a part of the app is gone, stays where it is, and shows the screen once loaded again", async () => {
  const { on, other, served, visit } = await halfALine();
  const before = await runOf(on);
  served.deploy(newer);
  await findNewer(other);
  await untilBar(other, words.update);
  await touchBar(other, words.update);
  await untilBar(on, words.changed);

  // Until now the browser's own cache may still hold the part; it drops what it likes.
  const session = await on.context.newCDPSession(on.page);
  await session.send("Network.clearBrowserCache");
  served.withhold(/\/assets\/part-/);
  // As the phone's own way back does.
  await on.run((id) => {
    location.hash = `#/visit/${id}`;
  }, visit);
  await untilBar(on, words.chunk);
  expect(await runOf(on)).toEqual({ script: before.script, name: "counting" });
  // The host has said 404, and the browser's console says so.
  expect(on.takeProblems().every(({ text }) => text.includes("404"))).toBe(true);

  await touchBar(on, words.chunk);
  await untilRun(on, before.script, false);
  expect(await on.run(() => location.hash)).toBe(`#/visit/${visit}`);
  await until("the screen is there", () => on.run(() => document.querySelector("main h1, main h2") !== null));
  expect(await bars(on)).toEqual([]);
});

it.each(["ring", "hole"] as const)(
  "goes on with a %s through an update that another tab takes",
  async (test) => {
    const served = await serveWatched(watchedBuild(builtFolder));
    host = served;
    const on = await startPhone(temporaryFolder(`update-${test}-profile`));
    phone = on;
    await on.open(served.url);
    const id = (await seedLine(on, 100))[test];
    await untilControlled(on);
    await on.reload();
    await goToTest(on, test, id);
    const begun = (await storedEntries(on, id)).length;
    const touch = async (stored: number) => {
      await on.page.tap(`[data-answer=${KEY_OF[test]}]`);
      await until("the touch is stored", async () => (await storedEntries(on, id)).length === stored);
    };
    await touch(begun + 1);
    const other = await on.tab();
    await other.open(`${served.url}#/measure`);
    await untilControlled(other);
    await nameTab(on, "reading");
    const before = await runOf(on);
    served.deploy(watchedBuild(buildProbed(`newer-${test}`)));
    await findNewer(other);
    await untilBar(other, words.update);
    expect(await bars(on)).toEqual([]);
    await touchBar(other, words.update);
    await untilRun(other, before.script, false);
    await untilBar(on, words.changed);
    expect(await runOf(on)).toEqual({ script: before.script, name: "reading" });
    await touch(begun + 2);
    await touchBar(on, words.changed);
    await untilRun(on, before.script, false);
    await until("the test is there again", () =>
      on.run(
        (count) => document.querySelector("[data-living]")?.getAttribute("data-living") === String(count),
        begun + 2,
      ),
    );
    expect(await on.run(() => location.hash)).toBe(`#/${test}/${id}`);
    // The newer build goes on where the older one stood.
    await touch(begun + 3);
    expectEachOnce(await storedEntries(on, id), KEY_OF[test]);
  },
);
