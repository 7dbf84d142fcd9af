// npm run bench, npm run faults, npm run test:engines: one project of tests/vitest.config.ts on the built app.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { arch, cpus, platform, totalmem } from "node:os";
import { join } from "node:path";
import { install, stop } from "./install.mjs";
import { build, projectRoot, runTests } from "./steps.mjs";

const [project = "", ...args] = process.argv.slice(2);
const figuresPath = join(projectRoot, ".cache/bench.ndjson");

install();
const { BrowserMissing, findChromium, findFirefox, findWebKit } = await import("./find-browser.mjs");
/** @type {Record<string, string>} */
const environment = {};
try {
  environment["CHROMIUM_PATH"] = await findChromium();
  if (project === "engines") {
    environment["FIREFOX_PATH"] = await findFirefox();
    await findWebKit();
  }
} catch (problem) {
  if (problem instanceof BrowserMissing) stop(problem.message);
  throw problem;
}
if (!build()) stop("The app could not be built: see the lines above.");
if (project === "bench") {
  mkdirSync(join(projectRoot, ".cache"), { recursive: true });
  rmSync(figuresPath, { force: true });
}
const ok = runTests([project], args, environment);
if (project === "bench") printFigures();
process.exitCode = ok ? 0 : 1;

function printFigures() {
  /** @type {{ name: string, value: number, unit: string, bound?: number }[]} */
  let figures = [];
  try {
    figures = readFileSync(figuresPath, "utf8")
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
  } catch {
    stop("No figure was written.");
  }
  const processors = cpus();
  process.stdout.write(
    `Machine: ${platform()} ${arch()}, ${processors.length} × ${processors[0]?.model ?? "unknown processor"}, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.versions.node}\n`,
  );
  console.table(figures.map(({ name, value, unit, bound }) => ({ name, value, unit, bound: bound ?? "" })));
}
