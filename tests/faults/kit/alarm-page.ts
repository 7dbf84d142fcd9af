import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";
import { temporaryFolder } from "../../browser/drivers/programs.ts";

/** Builds the page with the alarm, for what no screen is needed for; returns the folder. */
export function buildAlarmPage(): string {
  const folder = join(temporaryFolder("alarm-page"), "dist");
  const { NODE_ENV: _test, VITEST: _inTest, ...env } = process.env;
  const made = spawnSync(process.execPath, [join(import.meta.dirname, "alarm-page.mjs"), folder], {
    cwd: resolve(import.meta.dirname, "../../.."),
    env,
    encoding: "utf8",
  });
  if (made.status !== 0) {
    throw new Error(`The build failed:\n${made.stdout}${made.stderr}`);
  }
  return folder;
}
