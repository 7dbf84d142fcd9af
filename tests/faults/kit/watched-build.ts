import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "../../browser/drivers/programs.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../../browser/drivers/serve-built.ts";
import { SHOWN_PATH, type Shown, watchPage } from "./page-watch.ts";

/**
 * A copy of a build whose start script begins with the watch, and with further steps of a test. They are
 * the app's own file for the policy and for its service worker.
 *
 * @param from the build to copy
 * @param scripts further text of scripts, run in this order before the app starts
 * @returns folder of the copy
 */
export function watchedBuild(from: string = builtFolder, ...scripts: readonly string[]): string {
  const folder = join(temporaryFolder("watched-build"), "dist");
  cpSync(from, folder, { recursive: true });
  const page = readFileSync(join(folder, "index.html"), "utf8");
  const start = /<script type="module"[^>]*\ssrc="\.\/([^"]+)"/.exec(page)?.[1];
  if (start === undefined) {
    throw new Error("The built page names no start script.");
  }
  const path = join(folder, start);
  writeFileSync(path, [`(${watchPage})();`, ...scripts, readFileSync(path, "utf8")].join("\n"));
  return folder;
}

/** A host that knows what its pages have shown. */
export interface WatchedHost extends BuiltServer {
  /** The most marks of a line that any page has shown and told before it was killed; 0 before the first. */
  shownOf(line: string): number;
  /** Everything that pages have shown and told, in the order in which it was told. */
  readonly shown: readonly Shown[];
  /** What pages posted to another path below the app's folder, in order. */
  readonly posted: readonly { readonly path: string; readonly text: string }[];
}

/** Serves a watched build in a sub-folder of a host, as it may lie in the field. */
export async function serveWatched(directory: string): Promise<WatchedHost> {
  const under = "/farm/";
  const shown: Shown[] = [];
  const posted: { path: string; text: string }[] = [];
  const host = await serveBuilt({
    directory,
    under,
    take: (path, text) => {
      if (path !== under + SHOWN_PATH) {
        posted.push({ path: path.slice(under.length), text });
        return;
      }
      shown.push(JSON.parse(text) as Shown);
    },
  });
  const shownOf = (line: string) =>
    shown.reduce((most, told) => (told.line === line ? Math.max(most, told.marks) : most), 0);
  return { ...host, posted, shown, shownOf };
}
