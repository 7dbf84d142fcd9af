// npm test: install, find a browser, build, check types, lint, run the tests; the last line counts what passed.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { install, stop } from "./install.mjs";
import { build, projectRoot, run, runTests } from "./steps.mjs";

const reportPath = join(projectRoot, ".cache/test-report.json");

install();
const { BrowserMissing, findChromium } = await import("./find-browser.mjs");
const chromium = await findChromium().catch((problem) => {
  if (problem instanceof BrowserMissing) stop(problem.message);
  throw problem;
});

const checks = [build(), run("tsc", ["-b"]), run("biome", ["ci", "--error-on-warnings"])];
const counts = testCounts();
const passed = checks.filter(Boolean).length + counts.passed;
const failed = checks.filter((ok) => !ok).length + counts.failed;
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;

/** A run that ends badly without a failed test (a file that does not load, a crash) counts as one failure. */
function testCounts() {
  mkdirSync(join(projectRoot, ".cache"), { recursive: true });
  rmSync(reportPath, { force: true });
  const args = [
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${reportPath}`,
    ...process.argv.slice(2),
  ];
  const ok = runTests(["node", "in-browser", "app"], args, { CHROMIUM_PATH: chromium });
  const report = readReport();
  return { passed: report.numPassedTests, failed: report.numFailedTests || (ok ? 0 : 1) };
}

/** @returns {{ numPassedTests: number, numFailedTests: number }} */
function readReport() {
  try {
    return JSON.parse(readFileSync(reportPath, "utf8"));
  } catch {
    return { numPassedTests: 0, numFailedTests: 0 };
  }
}
