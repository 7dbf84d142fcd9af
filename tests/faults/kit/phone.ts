import { readFileSync } from "node:fs";
import { type ChromiumDriver, type ChromiumTab, startChromium } from "../../browser/drivers/chromium.ts";

/** Chromium that can be killed like a phone whose battery dies, and whose tabs can be suspended. */
export interface Phone extends ChromiumDriver {
  /** Ends the browser and all its processes at once, without a chance to write anything. */
  kill(): Promise<void>;
  /** Number of the process that a tab's page runs in, for SIGSTOP and SIGCONT. */
  rendererOf(tab: ChromiumTab): Promise<number>;
}

/**
 * Starts Chromium with a profile that outlives it.
 *
 * @param profile folder of the profile; the same folder after a kill is the same phone
 * @param env surroundings, such as `slowFlush(40)`
 */
export async function startPhone(
  profile: string,
  env: Readonly<Record<string, string>> = {},
): Promise<Phone> {
  const chromium = await startChromium(profile, env);
  const browser = chromium.context.browser();
  if (browser === null) {
    throw new Error("The browser of a persistent profile cannot be reached.");
  }
  const session = await browser.newBrowserCDPSession();
  const processes = async () => (await session.send("SystemInfo.getProcessInfo")).processInfo;
  const head = (await processes()).find(({ type }) => type === "browser")?.id;
  if (head === undefined) {
    throw new Error("The browser does not name its first process.");
  }
  return {
    ...chromium,
    kill: async () => {
      const ended = new Promise<void>((closed) => chromium.context.once("close", () => closed()));
      // The driver starts the browser as the head of its own process group.
      process.kill(-head, "SIGKILL");
      await ended;
      chromium.takeProblems();
    },
    rendererOf: async (tab) => {
      const before = await cpuOf(await processes());
      await tab.run(() => {
        const end = performance.now() + 400;
        while (performance.now() < end);
      });
      const after = await cpuOf(await processes());
      const busiest = [...after]
        .map(([id, ticks]) => ({ id, ticks: ticks - (before.get(id) ?? 0) }))
        .sort((a, b) => b.ticks - a.ticks)[0];
      if (busiest === undefined) {
        throw new Error("No page has a process.");
      }
      return busiest.id;
    },
  };
}

/** User time of each page's process, in ticks of the system's clock (proc(5), `utime`). */
async function cpuOf(processes: readonly { readonly type: string; readonly id: number }[]) {
  const times = new Map<number, number>();
  for (const { type, id } of processes) {
    if (type === "renderer") {
      const fields = readFileSync(`/proc/${id}/stat`, "utf8")
        .replace(/^.*\) /s, "")
        .split(" ");
      times.set(id, Number(fields[11]));
    }
  }
  return times;
}
