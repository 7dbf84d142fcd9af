import { afterEach, expect, it } from "vitest";
import { barWords } from "../../src/screens/parts/words.bars.ts";
import type { ChromiumTab } from "../browser/drivers/chromium.ts";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { buildExposed } from "./kit/exposed-build.ts";
import { sayFigures } from "./kit/figures.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToLine, goToTest, lookFirst, seedLine } from "./kit/seeded-line.ts";
import { expectEachOnce, expectUnbroken, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

function hasBallast(tab: ChromiumTab): Promise<boolean> {
  return tab.run(async () => {
    const cache = await caches.open("mulchmark-ballast");
    return (await cache.keys()).length > 0;
  });
}

/** Fills what is left with blocks that get smaller, until even a block of 500 bytes is refused. */
function fill(tab: ChromiumTab): Promise<number> {
  return tab.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open("filling");
      opening.onupgradeneeded = () => opening.result.createObjectStore("blocks", { autoIncrement: true });
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const put = (bytes: number) =>
      new Promise<boolean>((resolve) => {
        const writing = db.transaction("blocks", "readwrite", { durability: "strict" });
        const block = new Uint8Array(bytes);
        for (let at = 0; at < bytes; at += 65_536) {
          crypto.getRandomValues(block.subarray(at, Math.min(bytes, at + 65_536)));
        }
        writing.objectStore("blocks").add(block);
        writing.oncomplete = () => resolve(true);
        writing.onabort = () => resolve(false);
      });
    let filled = 0;
    // The browser reckons what is used some moments late: a refusal counts once it comes again.
    for (let refusals = 0, bytes = 1_000_000, tries = 0; refusals < 3 && tries < 2000; tries++) {
      if (await put(bytes)) {
        filled += bytes;
        refusals = 0;
      } else if (bytes > 500) {
        bytes = Math.max(500, bytes / 8);
      } else {
        refusals++;
        await new Promise((resolve) => setTimeout(resolve, 700));
      }
    }
    db.close();
    return filled;
  });
}

it.each([
  ["line", "residue"],
  ["hole", "worm"],
  ["ring", "look"],
] as const)(
  "takes what is touched at a %s (%s) on a full device from the ballast, refuses a photo, and says so",
  async (test, cover) => {
    host = await serveWatched(watchedBuild(buildExposed()));
    const on = await startPhone(temporaryFolder("full-profile"));
    phone = on;
    await on.open(host.url);
    const id = (await seedLine(on, 300))[test];
    await on.reload();
    if (test === "line") await goToLine(on, id);
    else await goToTest(on, test, id);
    if (test === "ring") await lookFirst(on, id);
    const before = (await storedEntries(on, id)).length;
    const touch = async (touches: number) => {
      await (await startThumb(on, { cover, everyMs: test === "line" ? 250 : 300, touches })).done;
      await new Promise((resolve) => setTimeout(resolve, 3000));
    };
    await touch(5);
    await until("the ballast is laid", () => hasBallast(on));

    const usage = await on.run(async () => (await navigator.storage.estimate()).usage ?? 0);
    const session = await on.context.newCDPSession(on.page);
    await session.send("Storage.overrideQuotaForOrigin", {
      origin: host.origin,
      quotaSize: usage + 24_000_000,
    });
    // The browser goes on for half a minute with the room that it reckoned before.
    await new Promise((resolve) => setTimeout(resolve, 40_000));
    const filled = await fill(on);
    await touch(40);
    await until(
      "every touch is stored",
      async () => (await storedEntries(on, id)).length - before >= 45,
      60_000,
    );

    const entries = await storedEntries(on, id);
    const seen = await on.run(() => ({
      refused: (globalThis.watched?.writes ?? []).filter(
        ({ stores, aborted }) => stores.includes("entries") && aborted === "QuotaExceededError",
      ).length,
    }));
    sayFigures("full device", {
      "filled bytes": filled,
      "writes refused": seen.refused,
      marks: entries.length,
    });
    expect(seen.refused).toBeGreaterThan(0);
    if (test === "line") expectUnbroken(entries);
    else expectEachOnce(entries, cover);
    expect(entries.length - before).toBe(45);
    await until("the ballast is given up", async () => !(await hasBallast(on)));
    await expect.poll(() => on.run(() => globalThis.watched?.bars ?? [])).toEqual([barWords().bars.full]);

    const photo = await on.run(async () => {
      const { connection, putPhoto } = globalThis.exposed ?? {};
      if (connection === undefined || putPhoto === undefined) return "not exposed";
      const bytes = new ArrayBuffer(300_000);
      const kept = await putPhoto(connection, { sha256: "0".repeat(64), type: "image/jpeg", bytes });
      return kept.ok ? "kept" : kept.problem.code;
    });
    expect(photo).toBe("store/quota");

    // All of it is still there for the next start.
    await on.reload();
    expect((await storedEntries(on, id)).length - before).toBe(45);
  },
);
