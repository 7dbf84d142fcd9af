// Installs what package-lock.json names, and does nothing when it is there already. Uses Node alone.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { projectRoot } from "./steps.mjs";

/** Stops with one sentence where Node is too old, then brings node_modules in line with package-lock.json. */
export function install() {
  requireNode();
  if (isUpToDate()) return;
  process.stdout.write("Installing packages …\n");
  const status = runNpm(["install", "--no-save", "--include=dev", "--no-audit", "--no-fund"]);
  if (status !== 0 || !isUpToDate()) stop("The packages could not be installed: see the lines above.");
}

/**
 * Ends the command with one sentence and a failing exit code.
 * @param {string} sentence
 * @returns {never}
 */
export function stop(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  stop(`Node 20.19 or newer is needed, this is ${process.versions.node}.`);
}

/**
 * npm leaves a copy of the lock file in node_modules; the two list the same versions when nothing is to do.
 * Packages for other systems are optional and stay absent.
 */
function isUpToDate() {
  const wanted = packagesIn("package-lock.json");
  const present = packagesIn("node_modules/.package-lock.json");
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === "") return true;
    const other = present[path];
    return other ? other.version === entry.version : entry.optional === true;
  });
}

/**
 * @param {string} path
 * @returns {Record<string, { version?: string, optional?: boolean }> | undefined}
 */
function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(join(projectRoot, path), "utf8")).packages;
  } catch {
    return undefined;
  }
}

/** @param {string[]} args */
function runNpm(args) {
  const npm = process.env["npm_execpath"];
  const options = { cwd: projectRoot, stdio: /** @type {const} */ ("inherit") };
  if (npm && basename(npm) === "npm-cli.js")
    return spawnSync(process.execPath, [npm, ...args], options).status;
  return spawnSync("npm", args, { ...options, shell: process.platform === "win32" }).status;
}
