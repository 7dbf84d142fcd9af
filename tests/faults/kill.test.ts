import { afterEach, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { temporaryFolder } from "../browser/drivers/programs.ts";
import { quantile, sayFigures, seededChance } from "./kit/figures.ts";
import { type Phone, startPhone } from "./kit/phone.ts";
import { goToLine, seedLine, untilCounting } from "./kit/seeded-line.ts";
import { expectUnbroken, storedEntries } from "./kit/stored-line.ts";
import { startThumb } from "./kit/thumb.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const kills = 50;

let host: WatchedHost | undefined;
let phone: Phone | undefined;

afterEach(async () => {
  await phone?.close();
  await host?.close();
  phone = undefined;
  host = undefined;
});

it(`keeps every mark that was shown, and the screen, over ${kills} kills at random moments`, async () => {
  const seed = Number(process.env["FAULTS_SEED"] ?? Date.now() % 2 ** 31);
  sayFigures("kills", { seed });
  const chance = seededChance(seed);
  const profile = temporaryFolder("killed-profile");
  const served = await serveWatched(watchedBuild());
  host = served;
  phone = await startPhone(profile);
  await phone.open(served.url);
  const { line } = await seedLine(phone, 10_000);
  await phone.reload();
  await goToLine(phone, line);

  const openingsMs: number[] = [];
  const sentPerRound: number[] = [];
  let stored = 0;
  let unshown = 0;
  for (let round = 1; round <= kills; round++) {
    const thumb = await startThumb(phone, { cover: "residue", everyMs: 40 + chance() * 160, touches: 1000 });
    await new Promise((resolve) => setTimeout(resolve, 100 + chance() * 3000));
    await phone.kill();
    thumb.lift();
    await thumb.done;
    sentPerRound.push(thumb.sent());
    const shown = served.shownOf(line);

    phone = await startPhone(profile);
    const openedAtMs = performance.now();
    // Without an address behind the hash, as from the home screen.
    await phone.open(served.url);
    await untilCounting(phone);
    openingsMs.push(performance.now() - openedAtMs);
    expect(await phone.run(() => location.hash)).toBe(`#/line/${line}`);

    const entries = await storedEntries(phone, line);
    expectUnbroken(entries);
    expect(entries.length, `round ${round}: shown before the kill`).toBeGreaterThanOrEqual(shown);
    expect(entries.length - stored, `round ${round}: no more than touched`).toBeLessThanOrEqual(thumb.sent());
    unshown += entries.length - shown;
    stored = entries.length;
    await until("the screen shows what is stored", async () => served.shownOf(line) === entries.length);
  }
  sayFigures("kills", {
    kills,
    touches: sentPerRound.reduce((sum, sent) => sum + sent, 0),
    "marks kept": stored,
    "kept and not yet known to be shown": unshown,
    "median opening ms": Math.round(quantile(openingsMs, 0.5)),
    "longest opening ms": Math.round(quantile(openingsMs, 1)),
  });
});
