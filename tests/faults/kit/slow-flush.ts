import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { temporaryFolder } from "../../browser/drivers/programs.ts";

/**
 * Surroundings in which a program's flushes to the disk take longer, for `startPhone`.
 *
 * @param ms how much longer each flush takes, milliseconds
 * @throws on a machine that is not Linux or has no C compiler: without the slowed flush these tests
 * prove nothing, and they say so instead of passing
 * @example
 * const phone = await startPhone(profile, slowFlush(40));
 */
export function slowFlush(ms: number): Readonly<Record<string, string>> {
  if (process.platform !== "linux") {
    throw new Error("Slowing the flush to the disk needs Linux (LD_PRELOAD).");
  }
  const library = join(temporaryFolder("slow-flush"), "slow-flush.so");
  const source = join(import.meta.dirname, "slow-flush.c");
  const made = spawnSync("cc", ["-shared", "-fPIC", "-O1", "-o", library, source, "-ldl"], {
    encoding: "utf8",
  });
  if (made.error !== undefined) {
    throw new Error("No C compiler (cc) was found: install one (package gcc) to slow the flush to the disk.");
  }
  if (made.status !== 0) {
    throw new Error(`slow-flush.c was not compiled:\n${made.stderr}`);
  }
  return { LD_PRELOAD: library, SLOW_FLUSH_MS: String(ms) };
}
