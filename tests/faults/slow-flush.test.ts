import { afterEach, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { removeFolder, temporaryFolder } from "../browser/drivers/programs.ts";
import { quantile, sayFigures } from "./kit/figures.ts";
import type { WatchedWrite } from "./kit/page-watch.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToLine, goToTest, KEY_OF, lookFirst, seedLine } from "./kit/seeded-line.ts";
import { slowFlush } from "./kit/slow-flush.ts";
import { expectEachOnce, expectUnbroken, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const slowedMs = 40;
const tests = ["line", "ring", "hole"] as const;
type Test = (typeof tests)[number];
const keyAt = { line: "residue", ...KEY_OF } as const;

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

/** Opens a fresh phone at a line without marks, a ring with its first look, or a hole without worms. */
async function phoneAt(test: Test, env: Readonly<Record<string, string>>, ropeMarks: number) {
  host ??= await serveWatched(watchedBuild());
  const profile = temporaryFolder("slowed-profile");
  const started = await startPhone(profile, env);
  phone = started;
  await started.open(host.url);
  const id = (await seedLine(started, ropeMarks))[test];
  await started.reload();
  if (test === "line") await goToLine(started, id);
  else await goToTest(started, test, id);
  if (test === "ring") {
    await lookFirst(started, id);
    // What was touched so far is forgotten with the page.
    await started.reload();
    await goToTest(started, test, id);
  }
  // The service worker and the first look at the database are over before anything is measured.
  await new Promise((resolve) => setTimeout(resolve, 3000));
  return { phone: started, id, profile, begun: (await storedEntries(started, id)).length };
}

/** What the watch has seen: per touch, how long until its write was committed. */
async function committedAfterMs(on: Phone): Promise<{ latenciesMs: number[]; writes: WatchedWrite[] }> {
  const look = () =>
    on.run(() => ({
      touches: [...(globalThis.watched?.touches ?? [])],
      writes: (globalThis.watched?.writes ?? []).filter(
        ({ stores, doneAtMs }) => stores.includes("entries") && doneAtMs !== null,
      ),
    }));
  await expect
    .poll(async () => {
      const { touches, writes } = await look();
      return touches.length - writes.length;
    })
    .toBe(0);
  const seen = await look();
  const latenciesMs = seen.touches.map(
    (touchedAtMs, index) => (seen.writes[index]?.doneAtMs ?? Number.POSITIVE_INFINITY) - touchedAtMs,
  );
  return { latenciesMs, writes: seen.writes };
}

/** Medians of a bare put into a database of its own, with each durability, milliseconds. */
function barePuts(on: Phone): Promise<{ strict: number[]; relaxed: number[] }> {
  return on.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open("bare");
      opening.onupgradeneeded = () => opening.result.createObjectStore("puts");
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const timesOf = async (durability: "strict" | "relaxed") => {
      const timesMs: number[] = [];
      for (let n = 0; n < 30; n++) {
        const begunAtMs = performance.now();
        await new Promise<void>((resolve, reject) => {
          const writing = db.transaction("puts", "readwrite", { durability });
          writing.objectStore("puts").put({ n }, durability);
          writing.oncomplete = () => resolve();
          writing.onabort = () => reject(writing.error);
        });
        timesMs.push(performance.now() - begunAtMs);
      }
      return timesMs;
    };
    return { strict: await timesOf("strict"), relaxed: await timesOf("relaxed") };
  });
}

async function measure(test: Test, env: Readonly<Record<string, string>>) {
  const at = await phoneAt(test, env, 100);
  const thumb = await startThumb(at.phone, { cover: keyAt[test], everyMs: 250, touches: 40 });
  await thumb.done;
  await new Promise((resolve) => setTimeout(resolve, 1000));
  const { latenciesMs, writes } = await committedAfterMs(at.phone);
  const bare = await barePuts(at.phone);
  expect(latenciesMs.length).toBe(40);
  expect(writes.map(({ durability }) => durability)).toEqual(writes.map(() => "strict"));
  await at.phone.close();
  phone = undefined;
  removeFolder(at.profile);
  const median = (values: readonly number[]) => quantile(values, 0.5);
  return {
    touch: median(latenciesMs),
    soonest: quantile(latenciesMs, 0),
    strict: median(bare.strict),
    relaxed: median(bare.relaxed),
  };
}

it.each(tests)(
  "answers a touch at a %s only once it lies on the disk: a slowed flush slows it, and no relaxed put",
  async (test) => {
    const plain = await measure(test, {});
    const slowed = await measure(test, slowFlush(slowedMs));
    for (const name of ["touch", "soonest", "strict", "relaxed"] as const) {
      sayFigures(`${test}, flush slowed by ${slowedMs} ms, ${name} in ms`, {
        before: plain[name].toFixed(1),
        slowed: slowed[name].toFixed(1),
      });
    }
    // The control: the flush is slowed, and only for those who wait for it.
    expect(slowed.strict - plain.strict).toBeGreaterThanOrEqual(slowedMs * 0.9);
    expect(slowed.relaxed).toBeLessThan(slowedMs / 2);
    // No touch at all is answered sooner than a flush takes, however busy the machine is. Half a millisecond
    // belongs to the clock of the page, which browsers make coarse on purpose.
    expect(slowed.soonest).toBeGreaterThanOrEqual(slowedMs - 0.5);
    expect(slowed.touch - plain.touch).toBeGreaterThanOrEqual(slowedMs * 0.9);
  },
);

it.each(tests)(
  "keeps four touches a second at a %s over a minute on a slow disk, in order, without refusing one",
  async (test) => {
    const touches = 240;
    const at = await phoneAt(test, slowFlush(slowedMs), 300);
    const thumb = await startThumb(at.phone, { cover: keyAt[test], everyMs: 250, touches });
    await thumb.done;
    await until(
      "every touch is stored",
      async () => (await storedEntries(at.phone, at.id)).length - at.begun >= touches,
    );

    const seen = await at.phone.run(() => ({
      touches: [...(globalThis.watched?.touches ?? [])],
      bars: [...(globalThis.watched?.bars ?? [])],
    }));
    const entries = await storedEntries(at.phone, at.id);
    expect(seen.touches.length).toBe(touches);
    expect(seen.bars).toEqual([]);
    if (test === "line") expectUnbroken(entries);
    else expectEachOnce(entries, keyAt[test]);
    expect(entries.length - at.begun).toBe(touches);
    // Each entry carries the moment of its own touch: no touch has overtaken another.
    const inOrder = [...entries].sort((a, b) => a.n - b.n).slice(at.begun);
    const apartMs = inOrder.map(({ monoMs }, index) => monoMs - (seen.touches[index] ?? Number.NaN));
    expect(Math.min(...apartMs)).toBeGreaterThan(-1);
    expect(Math.max(...apartMs)).toBeLessThan(50);
    const { latenciesMs } = await committedAfterMs(at.phone);
    sayFigures(`a minute at a ${test} on a disk slowed by ${slowedMs} ms`, {
      touches,
      kept: entries.length,
      "median ms": quantile(latenciesMs, 0.5).toFixed(1),
      "p95 ms": quantile(latenciesMs, 0.95).toFixed(1),
      "longest ms": quantile(latenciesMs, 1).toFixed(1),
    });
  },
);
