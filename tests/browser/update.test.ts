import { afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { type ChromiumDriver, type ChromiumTab, startChromium } from "./drivers/chromium.ts";
import { until, untilControlled } from "./drivers/driver.ts";
import { buildProbed, nameTab, stateOf } from "./drivers/probed-build.ts";
import { type BuiltServer, serveBuilt } from "./drivers/serve-built.ts";

let before = "";
let after = "";
let chromium: ChromiumDriver;
let host: BuiltServer;

beforeAll(() => {
  before = buildProbed("before");
  after = buildProbed("after");
});

beforeEach(async () => {
  chromium = await startChromium();
  host = await serveBuilt({ directory: before, under: "/deep/in/a/folder/" });
});

afterEach(async () => {
  await host.close();
  await chromium.close();
});

/** A tab does this by itself when it becomes visible after an hour. */
function lookForUpdate(tab: ChromiumTab): Promise<boolean> {
  return tab.run(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return (
      (await registration?.update().then(
        () => true,
        () => false,
      )) ?? false
    );
  });
}

async function openTwoTabs(): Promise<readonly [ChromiumTab, ChromiumTab]> {
  await chromium.open(host.url);
  await untilControlled(chromium);
  const second = await chromium.tab();
  await second.open(host.url);
  await untilControlled(second);
  await nameTab(chromium, "first");
  await nameTab(second, "second");
  return [chromium, second];
}

/**
 * From its next load on a tab waits longer than its five seconds for the newer build to take charge: a machine that
 * many share may need them.
 */
async function waitsLonger(tab: ChromiumTab): Promise<void> {
  await tab.page.addInitScript(() => {
    const begin = globalThis.setTimeout;
    const later = (step: () => void, ms?: number) => begin(step, ms === 5000 ? 60_000 : ms);
    globalThis.setTimeout = later as typeof setTimeout;
  });
}

/** Asks for the newer build, once. */
async function takeUpdate(tab: ChromiumTab): Promise<void> {
  await tab.run(() => globalThis.probe?.updates.takeUpdate());
  let now: Awaited<ReturnType<typeof stateOf>> | undefined;
  await until(
    () => `the tab that asked runs the newer build; ${JSON.stringify(now)}`,
    async () => {
      now = await stateOf(tab).catch(() => undefined);
      return now?.mark === "after";
    },
  );
}

it("offers a newer build, takes it in the tab that asks, and only tells the other", async () => {
  const [first, second] = await openTwoTabs();
  host.deploy(after);
  expect(await lookForUpdate(first)).toBe(true);
  for (const tab of [first, second]) {
    await until("the update is offered", async () => (await stateOf(tab)).updateWaiting);
  }
  expect(await stateOf(first)).toMatchObject({ mark: "before", name: "first", changedElsewhere: false });

  await first.reload();
  await until("the offer is there again", async () => (await stateOf(first)).updateWaiting);
  expect((await stateOf(first)).mark).toBe("before");

  await takeUpdate(first);
  await until("the other tab is told", async () => (await stateOf(second)).changedElsewhere);
  expect(await stateOf(second)).toMatchObject({ mark: "before", name: "second", updateWaiting: false });
  expect(await stateOf(first)).toMatchObject({ updateWaiting: false, changedElsewhere: false });
});

it("says that a part is missing when a newer build has replaced it, and does not reload", async () => {
  const [first, second] = await openTwoTabs();
  host.deploy(after);
  await lookForUpdate(first);
  await until("the update is offered", async () => (await stateOf(first)).updateWaiting);
  await first.run(() => globalThis.probe?.updates.takeUpdate());
  await until("the other tab is told", async () => (await stateOf(second)).changedElsewhere);

  // Until now the browser's own cache may still hold the part; it drops what it likes.
  const session = await chromium.context.newCDPSession(second.page);
  await session.send("Network.clearBrowserCache");
  const came = await second.run(() =>
    globalThis.probe?.latePart().then(
      (part) => part.mark,
      () => "missing",
    ),
  );
  expect(came).toBe("missing");
  expect(await stateOf(second)).toMatchObject({ chunkMissing: true, name: "second", mark: "before" });
  // The host has said 404, and the browser's console says so.
  expect(chromium.takeProblems().every((problem) => problem.text.includes("404"))).toBe(true);

  // The bar's reload: nothing waits any more, so it comes at once.
  await second.run(() => globalThis.probe?.updates.takeUpdate());
  await until(
    "it has caught up",
    async () => (await stateOf(second).catch(() => undefined))?.mark === "after",
  );
  expect(await second.run(() => globalThis.probe?.latePart().then((part) => part.mark))).toBe("after");
});

it("takes the newer build at the first asking, even while files are still being fetched", async () => {
  const [first] = await openTwoTabs();
  host.deploy(after);
  await lookForUpdate(first);
  await until("the update is offered", async () => (await stateOf(first)).updateWaiting);
  await waitsLonger(first);
  await first.reload();
  await until("the offer is there again", async () => (await stateOf(first)).updateWaiting);
  await nameTab(first, "asked");
  await first.run(() => globalThis.probe?.updates.takeUpdate());
  // One load and no second: the first that comes is the newer build's.
  await until(
    "it was loaded again",
    async () => (await stateOf(first).catch(() => undefined))?.name === null,
  );
  await until("its build is known", async () => (await stateOf(first)).mark !== null);
  expect((await stateOf(first)).mark).toBe("after");
});

it("goes on asking once after a load that did not bring it, then offers it anew and loads no more", async () => {
  const [first, second] = await openTwoTabs();
  host.deploy(after);
  await lookForUpdate(first);
  await until("the update is offered", async () => (await stateOf(first)).updateWaiting);
  // The build before hands out a file that never comes: as long it cannot go.
  await second.run(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const kept of await cache.keys()) if (kept.url.includes("late-part")) await cache.delete(kept);
    }
  });
  const session = await chromium.context.newCDPSession(second.page);
  await session.send("Network.clearBrowserCache");
  host.hang(/late-part/);
  await second.run(() => void globalThis.probe?.latePart().catch(() => undefined));

  // Asked and read in one: some seconds later it is loaded again.
  const asked = await first.run(() => {
    globalThis.probe?.updates.takeUpdate();
    return [globalThis.probe?.mark ?? null, globalThis.probe?.updates.updateAsked.value === true];
  });
  expect(asked).toEqual(["before", true]);
  await until(
    "it was loaded again",
    async () => (await stateOf(first).catch(() => undefined))?.name === null,
  );
  await until("it goes on asking", async () => (await stateOf(first)).updateAsked);
  await nameTab(first, "loaded once");
  await until("it asks no more", async () => !(await stateOf(first)).updateAsked);
  expect(await stateOf(first)).toMatchObject({ mark: "before", name: "loaded once", updateWaiting: true });
  // Else its console says that the file has not come, once the host is closed.
  await second.close();
});

it("takes it after such a load without being touched again", async () => {
  await chromium.open(host.url);
  await untilControlled(chromium);
  host.deploy(after);
  await lookForUpdate(chromium);
  await until("the update is offered", async () => (await stateOf(chromium)).updateWaiting);
  await chromium.run(() => sessionStorage.setItem("mulchmark-update-asked", "yes"));
  await waitsLonger(chromium);
  await chromium.reload();
  await until(
    "the newer build runs",
    async () => (await stateOf(chromium).catch(() => undefined))?.mark === "after",
  );
  expect(await chromium.run(() => sessionStorage.getItem("mulchmark-update-asked"))).toBeNull();
});

it("opens offline after one visit, late parts too, at any address inside its folder", async () => {
  await chromium.open(host.url);
  await untilControlled(chromium);
  expect(host.missed).toEqual([]);
  await host.close();

  await chromium.reload();
  expect((await stateOf(chromium)).mark).toBe("before");
  expect(await chromium.run(() => globalThis.probe?.latePart().then((part) => part.mark))).toBe("before");
  await chromium.open(`${host.url}index.html?from=home#/measure`);
  expect((await stateOf(chromium)).mark).toBe("before");
  await chromium.open(`${host.url}no/such/page#/measure`);
  expect(await chromium.run(() => location.origin + location.pathname)).toBe(host.url);
  expect((await stateOf(chromium)).mark).toBe("before");
});

it("keeps the build before when one file of the newer one cannot be had", async () => {
  await chromium.open(host.url);
  await untilControlled(chromium);
  host.deploy(after);
  host.withhold(/late-part|apple-touch/);
  await lookForUpdate(chromium);
  await until("the file was asked for", async () => host.missed.length > 0);
  await until("the newer build has failed", () =>
    chromium.run(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return registration?.installing === null && registration.waiting === null;
    }),
  );
  expect((await stateOf(chromium)).updateWaiting).toBe(false);
  await host.close();
  await chromium.reload();
  expect(await stateOf(chromium)).toMatchObject({ mark: "before", updateWaiting: false });
});

it("does not install half a build on a first visit", async () => {
  host.withhold(/apple-touch/);
  await chromium.open(host.url);
  await until("the file was asked for", async () => host.missed.length > 0);
  await until("the installation is given up", () =>
    chromium.run(async () => (await navigator.serviceWorker.getRegistration())?.installing == null),
  );
  expect(await chromium.run(() => navigator.serviceWorker.controller === null)).toBe(true);
  expect((await stateOf(chromium)).mark).toBe("before");
});
