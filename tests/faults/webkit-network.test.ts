import type { ChildProcess } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { afterEach, expect, it } from "vitest";
import { until } from "../browser/drivers/driver.ts";
import { endProgram, startProgram, temporaryFolder } from "../browser/drivers/programs.ts";
import { startScreen, webKitSurroundings } from "../browser/drivers/webkit.ts";
import { findWebKit } from "../run/find-browser.mjs";
import { countByItself, OWN_COUNT_PATH, type OwnCount } from "./kit/counts-by-itself.ts";
import { sayFigures } from "./kit/figures.ts";
import { putLine } from "./kit/seeded-line.ts";
import { expectEachOnce, expectUnbroken, readEntries } from "./kit/stored-line.ts";
import { serveWatched, type WatchedHost, watchedBuild } from "./kit/watched-build.ts";

const rounds = [
  ["line", "residue", 12],
  ["line", "residue", 17],
  ["line", "residue", 23],
  ["hole", "worm", 15],
  ["ring", "look", 15],
] as const;

let host: WatchedHost | undefined;
const started: ChildProcess[] = [];

afterEach(async () => {
  for (const program of started.splice(0).reverse()) {
    endProgram(program);
  }
  await host?.close();
  host = undefined;
});

/** Starts WebKit without a driver: with one it does not start its network process again. */
async function startUndriven(url: string): Promise<string> {
  const paths = await findWebKit();
  const folder = temporaryFolder("webkit-undriven");
  const { screen, display } = await startScreen(paths.screen);
  started.push(screen);
  started.push(startProgram(paths.browser, [url], webKitSurroundings(display, folder), 2));
  return folder;
}

/** Numbers of the network processes that belong to a profile. */
function networkProcessesOf(folder: string): number[] {
  const read = (id: string, file: string) => {
    try {
      return readFileSync(`/proc/${id}/${file}`, "utf8");
    } catch {
      return ""; // it has ended meanwhile
    }
  };
  return readdirSync("/proc")
    .filter((id) => /^\d+$/.test(id))
    .filter(
      (id) =>
        read(id, "cmdline").includes("WebKitNetworkProcess") &&
        read(id, "environ").includes(`HOME=${folder}\0`),
    )
    .map(Number);
}

function told(on: WatchedHost): OwnCount[] {
  return on.posted
    .filter(({ path }) => path === OWN_COUNT_PATH)
    .map(({ text }) => JSON.parse(text) as OwnCount);
}

it.each(rounds)(
  "loses no touch at a %s (%s) when WebKit's network process dies after touch %i",
  async (test, key, killAfter) => {
    const scripts = [
      `globalThis.counted = ${JSON.stringify({ test, key })};`,
      `globalThis.putLine = ${putLine};`,
      `globalThis.readEntries = ${readEntries};`,
      `(${countByItself})();`,
    ];
    const served = await serveWatched(watchedBuild(undefined, ...scripts));
    host = served;
    const folder = await startUndriven(served.url);
    await until(
      "the line is half counted",
      async () => told(served).some(({ touched }) => touched >= killAfter),
      60_000,
    );
    const before = networkProcessesOf(folder);
    expect(before.length).toBe(1);
    for (const id of before) {
      process.kill(id, "SIGKILL");
    }
    await until(
      "the page has counted on",
      async () => told(served).some(({ what }) => what === "counted"),
      60_000,
    );
    const last = told(served).find(({ what }) => what === "counted");
    const entries = last?.entries ?? [];
    sayFigures("network process killed", {
      "after touch": killAfter,
      "touches until the reload": last?.touched ?? 0,
      "until the stash": last?.touchedBeforeStash ?? "none",
      loads: last?.loads ?? 0,
      marks: entries.length,
    });
    if (test === "line") expectUnbroken(entries);
    else expectEachOnce(entries, key);
    // The connection did not come back by opening it again: what waited was put aside and the page loaded once.
    expect(last?.loads).toBe(3);
    expect(last?.touchedAfter).toBe(10);
    // Touches between the stash and the end of the page are refused, not taken; all others are marks, once.
    const made = entries.filter(({ type }) => type !== "start"); // which lay there before
    const taken = made.length - 10;
    expect(taken).toBeGreaterThanOrEqual(last?.touchedBeforeStash ?? Number.POSITIVE_INFINITY);
    expect(taken).toBeLessThanOrEqual(last?.touched ?? 0);
    expect(new Set(made.map(({ page }) => page)).size).toBe(2);
  },
);
