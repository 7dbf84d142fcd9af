import { expect } from "vitest";
import type { Attempts, PolicyFindings } from "./policy-probe.ts";

/** What an engine is known to do about a policy beyond keeping it. */
export interface KnownOfEngine {
  /** It refuses to compile wasm; else only to run it (WebKit before bugs.webkit.org 315489). */
  readonly wasmBytes: boolean;
  /** It tells a worker of its violations (WebKit does not: bugs.webkit.org 304193). */
  readonly workerEvents: boolean;
}

const neverDone = ["eval", "new Function", "wasm run", "fetch elsewhere", "blind fetch elsewhere"];

/** The policy held in page and worker, said so, and let the app's own files through. */
export function expectPolicyHeld(found: PolicyFindings, known: KnownOfEngine): void {
  for (const place of [found.page, found.worker]) {
    expect(Object.keys(place.tried)).toEqual(expect.arrayContaining(neverDone));
    expect(done(place).filter((name) => known.wasmBytes || name !== "wasm compile")).toEqual([
      "fetch at home",
    ]);
    expect(place.tried["eval"]).toBe("EvalError");
    expect(place.tried["new Function"]).toBe("EvalError");
  }
  for (const place of known.workerEvents ? [found.page, found.worker] : [found.page]) {
    expect(place.violations).toContain("script-src");
    expect(place.violations).toContain("connect-src");
  }
  expect(found.reachedElsewhere).toBe(0);
}

/** Where no policy holds, the same attempts succeed: their refusal is the policy's doing. */
export function expectFreeWithoutPolicy(found: PolicyFindings): void {
  for (const place of [found.freePage, found.freeWorker]) {
    expect(done(place)).toEqual(
      expect.arrayContaining(["eval", "new Function", "wasm compile", "wasm run", "blind fetch elsewhere"]),
    );
    expect(place.violations).toEqual([]);
  }
}

function done(place: Attempts): string[] {
  return Object.keys(place.tried).filter((name) => place.tried[name] === "done");
}
