/** What stands around every screen: bars, the dark screen, the example farm. Each begins where the one before ended. */
import { appendFileSync, cpSync } from "node:fs";
import { join } from "node:path";
import { sampleStartMs } from "../../bench/seed.ts";
import { untilStarted } from "../drivers/driver.ts";
import { temporaryFolder } from "../drivers/programs.ts";
import { builtFolder } from "../drivers/serve-built.ts";
import { handsOn } from "../screens/on-phone.ts";
import { reads, type Step, seen, tap } from "./steps.ts";

const MINUTE_MS = 60_000;

const goTo =
  (address: string): Step =>
  ({ chromium }) =>
    handsOn(chromium).goTo(address);

const show =
  (screen: string): Step =>
  ({ show }) =>
    show(screen);

/** From now on the clock of the phone stands at so many minutes of the sample's day. */
const itIs =
  (minutes: number): Step =>
  async ({ begin, chromium }) => {
    await begin();
    await chromium.page.clock.install({ time: sampleStartMs + minutes * MINUTE_MS });
    await chromium.reload();
    await untilStarted(chromium);
  };

const passes =
  (minutes: number): Step =>
  ({ chromium }) =>
    chromium.page.clock.fastForward(minutes * MINUTE_MS);

/** The phone will not keep its screen on from now on. */
const goesDark: Step = async ({ chromium }) => {
  await chromium.context.addInitScript(() => {
    const request = () => Promise.reject(new DOMException("", "NotAllowedError"));
    Object.defineProperty(navigator.wakeLock, "request", { value: request });
  });
  await chromium.reload();
  await untilStarted(chromium);
};

const fingerDown: Step = async ({ chromium: { page } }) => {
  await page.mouse.move(190, 400);
  await page.mouse.down();
};

/** The host serves a build whose service worker is another one, and the page looks for it. */
const newerBuild: Step = async ({ chromium, host }) => {
  const folder = temporaryFolder("newer-build");
  cpSync(builtFolder, folder, { recursive: true });
  appendFileSync(join(folder, "sw.js"), "\n// newer\n");
  host.deploy(folder);
  await chromium.run(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
    return null;
  });
};

/** The newer build is never let in, and no long wait of the page for it comes to its end. */
const neverLetIn: Step = ({ chromium }) =>
  chromium.run(() => {
    ServiceWorker.prototype.postMessage = () => undefined;
    const shortly = setTimeout;
    const wait = (does: () => void, ms = 0) => shortly(does, ms < 2000 ? ms : 2 ** 30);
    globalThis.setTimeout = wait as typeof setTimeout;
    return null;
  });

/** A part of the app cannot be fetched, as the build's own loader tells it. */
const partIsMissing: Step = ({ chromium }) =>
  chromium.run(() => {
    dispatchEvent(new Event("vite:preloadError"));
    return null;
  });

/** A state, and the way there from the state before. */
export const AROUND: readonly (readonly [name: string, ...way: Step[]])[] = [
  ["example farm, offered", show("settings"), reads("Bring in the example farm")],
  ["example farm, here", "Bring in the example farm", reads("The example farm is here")],
  ["example farm, its fields", goTo("#/fields"), reads("(example farm)")],
  ["example farm, a field", /^Lantern/, reads("invented")],
  ["example farm, at home", goTo("#/measure"), seen(".demo-tag")],
  [
    "example farm, a day",
    goTo("#/measure"),
    tap("a.row[href^='#/visit/']:has(.demo-tag)"),
    seen(".demo-place"),
  ],
  ["example farm, first", goTo("#/welcome")],
  ["next reading, in some minutes", itIs(62), show("measure"), seen(".next-reading")],
  ["next reading, above a line", show("line")],
  ["next reading, it is late", passes(70), show("measure")],
  ["next reading, now", itIs(119), show("measure"), passes(1), seen(".next-reading.now")],
  ["next reading, the screen may go dark", goesDark, show("ring"), "Later", seen(".screen-words")],
  ["a hole, the screen may go dark", show("hole"), seen(".screen-dark")],
  ["dark screen", itIs(62), show("measure"), passes(3), seen(".dimmed-hint")],
  ["dark screen, under a finger", show("measure"), passes(3), seen(".dimmed-hint"), fingerDown],
  [
    "newer build",
    ({ chromium }) => chromium.page.mouse.up(),
    show("send"),
    newerBuild,
    reads("A newer Mulchmark is ready"),
  ],
  ["newer build, being taken", neverLetIn, "Take it", reads("is being taken")],
  ["a part is missing, over a running test", show("line"), partIsMissing, seen(".bars.over-head p")],
];
