import { afterEach, describe, expect, it } from "vitest";
import { startChromium } from "../browser/drivers/chromium.ts";
import { type Driver, until, untilControlled } from "../browser/drivers/driver.ts";
import { startFirefox } from "../browser/drivers/firefox.ts";
import { startWebKit } from "../browser/drivers/webkit.ts";
import { goToLine, seedLine, shownMarks, untilCounting } from "../faults/kit/seeded-line.ts";
import { expectUnbroken, storedEntries } from "../faults/kit/stored-line.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "../faults/kit/watched-build.ts";

const engines: readonly { readonly name: string; readonly start: () => Promise<Driver> }[] = [
  { name: "Chromium", start: startOffline },
  { name: "Firefox", start: startFirefox },
  { name: "WebKit", start: startWebKit },
];

/** Without its host the watch cannot tell what it saw, and the console says so: no fault of the app. */
async function startOffline(): Promise<Driver> {
  const chromium = await startChromium();
  return {
    ...chromium,
    close: async () => {
      expect(chromium.takeProblems().filter(({ text }) => !text.includes("/shown"))).toEqual([]);
      await chromium.close();
    },
  };
}

/** Touches the key for residue this often, in the words of every engine: a click by script. */
function count(driver: Driver, marks: number): Promise<void> {
  return driver.run(async (touches) => {
    for (let n = 0; n < touches; n++) {
      document.querySelector<HTMLElement>("[data-answer=residue]")?.click();
      await new Promise((resolve) => setTimeout(resolve, 60));
    }
  }, marks);
}

async function untilShown(driver: Driver, marks: number): Promise<void> {
  await until(`${marks} marks are shown`, async () => (await shownMarks(driver)) === marks);
}

/** The way of a line in each engine, from its first mark on. What leaves the app follows here, after `startAtLine`. */
describe.each(engines)("the app in $name", ({ start }) => {
  let driver: Driver | undefined;
  let host: WatchedHost | undefined;

  afterEach(async () => {
    await driver?.close();
    await host?.close();
    driver = undefined;
    host = undefined;
  });

  async function startAtLine() {
    const served = await serveWatched(watchedBuild());
    host = served;
    const on = await start();
    driver = on;
    await on.open(served.url);
    const { line } = await seedLine(on, 100);
    await untilControlled(on);
    await on.reload();
    await goToLine(on, line);
    return { on, served, line };
  }

  it("counts 20 marks, each strictly on the disk, and has them all after loading again", async () => {
    const { on, line } = await startAtLine();
    await count(on, 20);
    await untilShown(on, 20);
    const writes = await on.run(() =>
      (globalThis.watched?.writes ?? [])
        .filter(({ stores }) => stores.includes("records") || stores.includes("entries"))
        .map(({ asked, durability, doneAtMs }) => ({ asked, durability, done: doneAtMs !== null })),
    );
    expect(writes).toEqual(
      Array.from({ length: 20 }, () => ({ asked: "strict", durability: "strict", done: true })),
    );

    await on.reload();
    await untilCounting(on);
    await untilShown(on, 20);
    const entries = await storedEntries(on, line);
    expectUnbroken(entries);
    expect(entries.length).toBe(20);
  });

  it("starts without its host and goes on counting", async () => {
    const { on, served, line } = await startAtLine();
    await count(on, 5);
    await untilShown(on, 5);
    await served.close();
    await on.reload();
    await untilCounting(on);
    await untilShown(on, 5);
    await count(on, 5);
    await untilShown(on, 10);
    const entries = await storedEntries(on, line);
    expectUnbroken(entries);
    expect(entries.length).toBe(10);
  });
});
