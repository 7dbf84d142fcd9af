import { afterEach, expect, it } from "vitest";
import { headerPolicy, pagePolicy } from "../../service-worker/policy.ts";
import { type ChromiumDriver, type PageProblem, startChromium } from "./drivers/chromium.ts";
import { untilControlled } from "./drivers/driver.ts";
import { expectFreeWithoutPolicy, expectPolicyHeld } from "./drivers/policy-expectations.ts";
import { tryPolicy } from "./drivers/policy-probe.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "./drivers/serve-built.ts";

let chromium: ChromiumDriver | undefined;
let host: BuiltServer | undefined;

afterEach(async () => {
  await host?.close();
  host = undefined;
  await chromium?.close();
  chromium = undefined;
});

it("refuses text as code, wasm and other origins, in page and worker", async () => {
  chromium = await startChromium();
  const found = await tryPolicy(chromium);
  expectPolicyHeld(found, { wasmBytes: true, workerEvents: true });
  expectFreeWithoutPolicy(found);
  // The watching that every browser test relies on sees both places.
  const problems: PageProblem[] = [];
  const violations = () => {
    problems.push(...(chromium?.takeProblems() ?? []));
    return problems.filter(({ kind }) => kind === "violation").map(({ text }) => text);
  };
  await expect.poll(violations).toContainEqual(expect.stringMatching(/^script-src eval on /));
  await expect
    .poll(violations)
    .toContainEqual(expect.stringMatching(/^script-src eval in .*attempts-worker\.js$/));
});

it("opens the built app without one violation, with the policy as meta and as header", async () => {
  chromium = await startChromium();
  host = await serveBuilt({ directory: builtFolder, under: "/a/b/" });
  await chromium.open(host.url);
  await untilControlled(chromium);
  const answer = await chromium.page.reload();
  expect(await answer?.headerValue("content-security-policy")).toBe(headerPolicy);
  const meta = await chromium.run(
    () =>
      document.querySelector("meta[http-equiv='Content-Security-Policy']")?.getAttribute("content") ?? null,
  );
  expect(meta).toBe(pagePolicy);
  expect(host.missed).toEqual([]);
  expect([...host.asked.keys()].every((path) => path.startsWith("/a/b/"))).toBe(true);
});

it("has no code or style in the page itself", async () => {
  chromium = await startChromium();
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  await chromium.open(host.url);
  // Closed before, the browser would report that the worker's script was broken off.
  await untilControlled(chromium);
  const inline = await chromium.run(
    () => document.querySelectorAll("script:not([src]), style, [style]").length,
  );
  expect(inline).toBe(0);
});

it("fails a test that passes over a violation", async () => {
  const watched = await startChromium();
  host = await serveBuilt({ directory: builtFolder, under: "/" });
  await watched.open(host.url);
  await untilControlled(watched);
  await watched.run(() =>
    fetch("http://localhost:1/").then(
      () => "done",
      () => "refused",
    ),
  );
  await expect(watched.close()).rejects.toThrow("connect-src");
});
