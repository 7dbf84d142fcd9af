import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";
import type * as updates from "../../../src/app/update.ts";
import type { ChromiumTab } from "./chromium.ts";
import { temporaryFolder } from "./programs.ts";

/** What a probed build lays open in the page. */
export interface Probe {
  readonly mark: string;
  readonly updates: typeof updates;
  readonly latePart: () => Promise<{ readonly mark: string }>;
}

declare global {
  var probe: Probe | undefined;
}

/**
 * Builds the app with a mark and a part that is fetched late, into a folder of its own.
 *
 * @param mark tells this build from another
 * @returns the folder
 */
export function buildProbed(mark: string): string {
  const folder = join(temporaryFolder("probed-build"), "dist");
  const { NODE_ENV: _test, VITEST: _inTest, ...env } = process.env;
  const made = spawnSync(process.execPath, [join(import.meta.dirname, "probed-build.mjs"), folder, mark], {
    cwd: resolve(import.meta.dirname, "../../.."),
    env,
    encoding: "utf8",
  });
  if (made.status !== 0) {
    throw new Error(`The build failed:\n${made.stdout}${made.stderr}`);
  }
  return folder;
}

/** What a tab says of itself. */
export interface TabState {
  readonly mark: string | null;
  readonly updateWaiting: boolean;
  readonly updateAsked: boolean;
  readonly changedElsewhere: boolean;
  readonly chunkMissing: boolean;
  /** The name given by `nameTab`, or null after a reload. */
  readonly name: string | null;
}

/** Reads the state of a tab of a probed build. */
export function stateOf(tab: ChromiumTab): Promise<TabState> {
  return tab.run(() => ({
    mark: globalThis.probe?.mark ?? null,
    updateWaiting: globalThis.probe?.updates.updateWaiting.value === true,
    updateAsked: globalThis.probe?.updates.updateAsked.value === true,
    changedElsewhere: globalThis.probe?.updates.changedElsewhere.value === true,
    chunkMissing: globalThis.probe?.updates.chunkMissing.value === true,
    name: String(Reflect.get(globalThis, "tabName") ?? "") || null,
  }));
}

/** Gives the page a name that is lost when it reloads. */
export function nameTab(tab: ChromiumTab, name: string): Promise<boolean> {
  return tab.run((given) => Reflect.set(globalThis, "tabName", given), name);
}
