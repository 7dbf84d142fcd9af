import { afterEach, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToTest, KEY_OF, lookFirst, seedLine } from "./kit/seeded-line.ts";
import { slowFlush } from "./kit/slow-flush.ts";
import { expectEachOnce, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const perTab = 60;

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

it.each(["ring", "hole"] as const)(
  "keeps every touch of two tabs at one %s, on a disk that is slow",
  async (test) => {
    const served = await serveWatched(watchedBuild());
    host = served;
    const first = await startPhone(temporaryFolder("two-tabs-profile"), slowFlush(40));
    phone = first;
    await first.open(served.url);
    const seeded = await seedLine(first, 100);
    const id = seeded[test];
    await first.reload();
    await goToTest(first, test, id);
    const second = await first.tab();
    await second.open(`${served.url}#/measure`);
    await goToTest(second, test, id);
    const cover = KEY_OF[test];
    if (test === "ring") await lookFirst(first, id);
    await new Promise((resolve) => setTimeout(resolve, 2000));
    const before = (await storedEntries(first, id)).length;
    await Promise.all(
      [first, second].map(
        async (tab) => (await startThumb(tab, { cover, everyMs: 400, touches: perTab })).done,
      ),
    );
    await until(
      "every touch is stored",
      async () => (await storedEntries(first, id)).length === before + 2 * perTab,
      60_000,
    );
    const entries = await storedEntries(first, id);
    expectEachOnce(entries, cover);
    expect(new Set(entries.slice(before).map(({ page }) => page)).size).toBe(2);
    for (const tab of [first, second]) {
      expect(await tab.run(() => globalThis.watched?.bars ?? null)).toEqual([]);
      await until("the tab shows all of it", () =>
        tab.run(
          (count) => document.querySelector("[data-living]")?.getAttribute("data-living") === String(count),
          entries.length,
        ),
      );
    }
  },
);
