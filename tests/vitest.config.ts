import { resolve } from "node:path";
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { WAIT_MS } from "./browser/drivers/driver.ts";
import { chromiumArguments } from "./run/find-browser.mjs";

const root = resolve(import.meta.dirname, "..");
const inBrowser = ["tests/**/*.in-browser.test.{ts,tsx}"];
/** Long and engine-bound runs: one file at a time, since each measures or stops a whole browser. */
const oneAtATime = {
  environment: "node",
  fileParallelism: false,
  testTimeout: 3 * WAIT_MS,
  hookTimeout: 3 * WAIT_MS,
  // Screens are drawn in parts: a look that is repeated may take as long as one wait of the drivers.
  expect: { poll: { timeout: WAIT_MS } },
};
const executablePath = process.env["CHROMIUM_PATH"];

const shippedToBrowser = [
  "idb",
  "zod/mini",
  "client-zip",
  "@noble/hashes/sha2.js",
  "@noble/hashes/utils.js",
  "preact",
  "preact/hooks",
  "preact/jsx-runtime",
  "@preact/signals",
  "fast-check",
];

export default defineConfig({
  root,
  test: {
    passWithNoTests: true,
    projects: [
      {
        root,
        test: {
          name: "node",
          environment: "node",
          include: [
            "tests/{unit,property,reference,frozen,architecture,budget,accessibility}/**/*.test.{ts,tsx}",
          ],
          exclude: inBrowser,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        root,
        cacheDir: resolve(root, ".cache/vite-in-browser"),
        // A package met only in the middle of a run would be bundled then, and the page reloaded under its tests.
        optimizeDeps: { include: shippedToBrowser },
        test: {
          name: "in-browser",
          include: inBrowser,
          testTimeout: 30_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: {
                args: chromiumArguments,
                ...(executablePath === undefined ? {} : { executablePath }),
              },
            }),
            instances: [{ browser: "chromium" }],
          },
        },
      },
      {
        root,
        test: { name: "app", include: ["tests/browser/**/*.test.ts"], exclude: inBrowser, ...oneAtATime },
      },
      {
        root,
        test: { name: "engines", include: ["tests/engines/**/*.test.ts"], ...oneAtATime },
      },
      {
        root,
        test: { name: "faults", include: ["tests/faults/**/*.test.ts"], ...oneAtATime, testTimeout: 900_000 },
      },
      {
        root,
        test: { name: "pictures", include: ["tests/pictures/**/*.pictures.ts"], ...oneAtATime },
      },
      {
        root,
        test: { name: "bench", include: ["tests/bench/**/*.bench.ts"], ...oneAtATime, testTimeout: 900_000 },
      },
    ],
  },
});
