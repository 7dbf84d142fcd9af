import { afterEach, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { sayFigures, seededChance } from "./kit/figures.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToTest, KEY_OF, seedLine } from "./kit/seeded-line.ts";
import { expectEachOnce, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const kills = 15;

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

it.each(["ring", "hole"] as const)(
  `keeps everything that was shown at a %s, and the screen, over ${kills} kills at random moments`,
  async (test) => {
    const seed = Number(process.env["FAULTS_SEED"] ?? Date.now() % 2 ** 31);
    sayFigures(`kills at a ${test}`, { seed });
    const chance = seededChance(seed);
    const profile = temporaryFolder("killed-profile");
    const served = await serveWatched(watchedBuild());
    host = served;
    phone = await startPhone(profile);
    await phone.open(served.url);
    const seeded = await seedLine(phone, 100);
    const id = seeded[test];
    await phone.reload();
    await goToTest(phone, test, id);
    const type = KEY_OF[test];
    if (test === "ring") {
      // The first look brings the number pad; from then on the key to look again stays where it is.
      await phone.page.tap("[data-answer=look]");
      await until("the look is shown", async () => served.shownOf(id) >= 2);
    }

    let stored = (await storedEntries(phone, id)).length;
    let sent = 0;
    for (let round = 1; round <= kills; round++) {
      const thumb = await startThumb(phone, { cover: type, everyMs: 300 + chance() * 200, touches: 200 });
      await new Promise((resolve) => setTimeout(resolve, 300 + chance() * 3000));
      await phone.kill();
      thumb.lift();
      await thumb.done;
      sent += thumb.sent();
      const shown = served.shownOf(id);

      phone = await startPhone(profile);
      // Without an address behind the hash, as from the home screen.
      await phone.open(served.url);
      await until("the key is there", () =>
        (phone as Phone).run((what) => document.querySelector(`[data-answer=${what}]`) !== null, type),
      );
      expect(await phone.run(() => location.hash)).toBe(`#/${test}/${id}`);

      const entries = await storedEntries(phone, id);
      expectEachOnce(entries, type);
      expect(entries.length, `round ${round}: shown before the kill`).toBeGreaterThanOrEqual(shown);
      expect(entries.length - stored, `round ${round}: no more than touched`).toBeLessThanOrEqual(
        thumb.sent(),
      );
      stored = entries.length;
      await until("the screen shows what is stored", async () => served.shownOf(id) === entries.length);
    }
    sayFigures(`kills at a ${test}`, { kills, touches: sent, kept: stored });
  },
);
