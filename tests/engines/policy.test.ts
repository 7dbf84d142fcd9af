import { afterEach, describe, it } from "vitest";
import { startChromium } from "../browser/drivers/chromium.ts";
import type { Driver } from "../browser/drivers/driver.ts";
import { startFirefox } from "../browser/drivers/firefox.ts";
import {
  expectFreeWithoutPolicy,
  expectPolicyHeld,
  type KnownOfEngine,
} from "../browser/drivers/policy-expectations.ts";
import { tryPolicy } from "../browser/drivers/policy-probe.ts";
import { startWebKit } from "../browser/drivers/webkit.ts";

interface Engine {
  readonly name: string;
  readonly start: () => Promise<Driver>;
  readonly known: KnownOfEngine;
}

const engines: readonly Engine[] = [
  { name: "Chromium", start: startRefusing, known: { wasmBytes: true, workerEvents: true } },
  { name: "Firefox", start: startFirefox, known: { wasmBytes: true, workerEvents: true } },
  { name: "WebKit", start: startWebKit, known: { wasmBytes: false, workerEvents: false } },
];

/** Refusals are what is looked for here: they are taken off the list of problems before the end. */
async function startRefusing(): Promise<Driver> {
  const chromium = await startChromium();
  return {
    ...chromium,
    close: () => {
      chromium.takeProblems();
      return chromium.close();
    },
  };
}

describe.each(engines)("policy in $name", ({ start, known }) => {
  let driver: Driver | undefined;
  afterEach(async () => {
    await driver?.close();
    driver = undefined;
  });

  it("refuses text as code, wasm and other origins, in page and worker", async () => {
    driver = await start();
    const found = await tryPolicy(driver);
    expectPolicyHeld(found, known);
    expectFreeWithoutPolicy(found);
  });
});
