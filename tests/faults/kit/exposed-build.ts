import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";
import type { Connection } from "../../../src/store/connection.ts";
import type { putPhoto } from "../../../src/store/photos.ts";
import { temporaryFolder } from "../../browser/drivers/programs.ts";

declare global {
  /** The store of the running app, for what no screen does yet. */
  var exposed: { readonly connection: Connection; readonly putPhoto: typeof putPhoto } | undefined;
}

/** Builds the app with its store laid open in the page; returns the folder. */
export function buildExposed(): string {
  const folder = join(temporaryFolder("exposed-build"), "dist");
  const { NODE_ENV: _test, VITEST: _inTest, ...env } = process.env;
  const made = spawnSync(process.execPath, [join(import.meta.dirname, "exposed-build.mjs"), folder], {
    cwd: resolve(import.meta.dirname, "../../.."),
    env,
    encoding: "utf8",
  });
  if (made.status !== 0) {
    throw new Error(`The build failed:\n${made.stdout}${made.stderr}`);
  }
  return folder;
}
