// The steps that the commands share. Every tool is run as `node <its script>`: no shell, so the same on three systems.
import { spawnSync } from "node:child_process";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** Folder of the project. */
export const projectRoot = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

const tools = {
  vite: "vite/bin/vite.js",
  vitest: "vitest/vitest.mjs",
  tsc: "typescript/bin/tsc",
  biome: "@biomejs/biome/bin/biome",
};

/**
 * Runs one tool in the project's folder with its output shown.
 * @param {keyof typeof tools} tool
 * @param {string[]} args
 * @param {Record<string, string>} [environment] added to the surroundings
 * @returns {boolean} whether it ended well
 */
export function run(tool, args, environment = {}) {
  const script = join(projectRoot, "node_modules", tools[tool]);
  const env = { ...process.env, ...environment };
  return (
    spawnSync(process.execPath, [script, ...args], { cwd: projectRoot, stdio: "inherit", env }).status === 0
  );
}

/**
 * Builds the app into dist.
 * @returns {boolean} whether it ended well
 */
export function build() {
  return run("vite", ["build", "--logLevel", "warn"]);
}

/**
 * Runs the named projects of tests/vitest.config.ts.
 * @param {string[]} projects
 * @param {string[]} args further arguments, such as one file to run
 * @param {Record<string, string>} environment
 * @returns {boolean} whether every test passed
 */
export function runTests(projects, args, environment) {
  const chosen = projects.flatMap((name) => ["--project", name]);
  return run("vitest", ["run", "--config", "tests/vitest.config.ts", ...chosen, ...args], environment);
}
