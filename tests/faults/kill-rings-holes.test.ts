import { afterEach, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { sayFigures, seededChance } from "./kit/figures.ts";
import { startHand } from "./kit/hand.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToTest, KEY_OF, lookFirst, seedLine, shownMarks } from "./kit/seeded-line.ts";
import { expectEachOnce, type StoredEntry, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const named = (name: string) => `.count button:enabled:text-is("${name}")`;
const undo = named("Undo");
const later = named("Later");

/**
 * What is written down while the browser is killed, how often it is killed, and the keys that lead there and
 * back again, the most wanted first; no keys: the one key of the test, blind.
 */
const rounds = [
  ["ring", "look", 4, []],
  ["ring", "start", 4, [named("Start"), later, undo]],
  [
    "ring",
    "level",
    4,
    ['.pad:has(output:text-matches("^–")) button:text-is("9")', named("Done"), named("Read now")],
  ],
  ["ring", "stop", 3, [named("The test is finished"), later, named("Stop"), undo]],
  ["hole", "worm", 5, []],
  ["hole", "placed", 5, ["[data-answer=topsoil]", named("Place the worms")]],
  ["hole", "closed", 5, [named("Close the hole"), undo]],
] as const;

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

/** How many entries count: no test redoes, so each undo takes one away. */
function living(entries: readonly StoredEntry[]): number {
  const undone = entries.filter(({ type }) => type === "undo").length;
  return entries.length - 2 * undone;
}

/** How many entries there are, the first look at a ring left out: it comes with the start, both or none. */
function written(type: string, entries: readonly StoredEntry[]): number {
  if (type !== "start") return entries.length;
  const looks = entries.filter((one) => one.type === "look").length;
  // The ring that lay there before was started without one.
  expect(looks).toBe(entries.filter((one) => one.type === "start").length - 1);
  return entries.length - looks;
}

it.each(rounds)(
  "keeps what was shown at a %s (%s), and the screen, over %i kills at random moments",
  async (test, type, kills, keys) => {
    const seed = Number(process.env["FAULTS_SEED"] ?? Date.now() % 2 ** 31);
    const what = `kills at a ${test} (${type})`;
    sayFigures(what, { seed });
    const chance = seededChance(seed);
    const profile = temporaryFolder("killed-profile");
    const served = await serveWatched(watchedBuild());
    host = served;
    phone = await startPhone(profile);
    await phone.open(served.url);
    const id = (await seedLine(phone, 100))[test];
    await phone.reload();
    await goToTest(phone, test, id);
    if (type === "look") await lookFirst(phone, id);

    let stored = await storedEntries(phone, id);
    let sent = 0;
    let knownShown = 0;
    for (let round = 1; round <= kills; round++) {
      const begun = await phone.run(() => ({
        page: performance.timeOrigin,
        shown: globalThis.watched?.shown.length ?? 0,
      }));
      const thumb =
        keys.length === 0
          ? await startThumb(phone, { cover: KEY_OF[test], everyMs: 300 + chance() * 200, touches: 200 })
          : startHand(phone, keys, 50 + chance() * 100);
      await new Promise((resolve) => setTimeout(resolve, 300 + chance() * 3000));
      await phone.kill();
      thumb.lift();
      await thumb.done;
      sent += thumb.sent();
      const most = served.shownOf(id);
      const told = served.shown.filter(({ line, page }) => line === id && page === begun.page).length;
      const shown = Math.max(0, told - begun.shown);
      knownShown += shown;

      phone = await startPhone(profile);
      // Without an address behind the hash, as from the home screen.
      await phone.open(served.url);
      await until("the test is there", () =>
        (phone as Phone).run(() => document.querySelector("[data-living]") !== null),
      );
      expect(await phone.run(() => location.hash)).toBe(`#/${test}/${id}`);

      const entries = await storedEntries(phone, id);
      expectEachOnce(entries);
      expect(entries.length, `round ${round}: the most that was shown`).toBeGreaterThanOrEqual(most);
      const more = written(type, entries) - written(type, stored);
      expect(more, `round ${round}: each that was shown`).toBeGreaterThanOrEqual(shown);
      expect(more, `round ${round}: no more than touched`).toBeLessThanOrEqual(thumb.sent());
      stored = entries;
      await until(
        "the screen shows what is stored",
        async () => (await shownMarks(phone as Phone)) === living(entries),
      );
    }
    expectEachOnce(stored, type);
    sayFigures(what, { kills, touches: sent, "known to be shown": knownShown, kept: stored.length });
  },
);
