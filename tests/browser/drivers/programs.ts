import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const running = new Set<ChildProcess>();
const folders = new Set<string>();

/** Ends every program and removes every folder that is left, also when the tests are stopped. */
function clearUp(): void {
  for (const program of running) {
    endProgram(program);
  }
  for (const folder of folders) {
    removeFolder(folder);
  }
}

process.once("exit", clearUp);
// A test process whose parent was killed lives on: it is told by its channel to the parent alone.
process.once("disconnect", () => process.exit(1));
for (const name of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
  process.once(name, () => {
    clearUp();
    process.kill(process.pid, name);
  });
}

/**
 * Starts a program as the head of its own process group, so that what it starts ends with it.
 *
 * @param pipes how many of its outputs are read: 2 for none beyond error text, 3 for one more
 */
export function startProgram(
  path: string,
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
  pipes: 2 | 3,
): ChildProcess {
  const program = spawn(path, args, {
    detached: true,
    env: { ...process.env, ...env },
    stdio: pipes === 3 ? ["ignore", "ignore", "ignore", "pipe"] : ["ignore", "ignore", "ignore"],
  });
  running.add(program);
  program.once("exit", () => running.delete(program));
  return program;
}

/** Ends a program with everything that it started. One that has already ended is no fault. */
export function endProgram(program: ChildProcess): void {
  running.delete(program);
  if (program.pid === undefined) {
    return;
  }
  try {
    process.kill(-program.pid, "SIGKILL");
  } catch {
    // It has ended by itself.
  }
}

/** A folder of its own for a profile or a build; it goes when the tests end. */
export function temporaryFolder(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), `${name}-`));
  folders.add(folder);
  return folder;
}

/** Removes a temporary folder. A browser that is still writing its last file gets some tries. */
export function removeFolder(folder: string): void {
  folders.delete(folder);
  rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
}
