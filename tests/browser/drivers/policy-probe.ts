import { type Driver, untilControlled } from "./driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "./serve-built.ts";

/** What came of the attempts in one place, page or worker. */
export interface Attempts {
  /** By attempt: `done`, or the name of the error that refused it. */
  readonly tried: Readonly<Record<string, string>>;
  /** The rule that each reported violation broke, in order. */
  readonly violations: readonly string[];
}

/** The app under its policy, and the same attempts where no policy holds. */
export interface PolicyFindings {
  readonly page: Attempts;
  readonly worker: Attempts;
  readonly freePage: Attempts;
  readonly freeWorker: Attempts;
  /** How often another origin was reached from under the policy. */
  readonly reachedElsewhere: number;
}

const under = "/some/folder/";
const free = "/free/";

/**
 * Attempts that the policy must refuse, as a file of the app's own host, so that nothing of the test
 * tool stands between them and the policy. Evaluating text is spelled out here because no file of
 * the product may contain it.
 */
const attempts = (elsewhere: string) => `
globalThis.attempts = async () => {
  const tried = {};
  const violations = [];
  const place = globalThis.document ?? globalThis;
  place.addEventListener("securitypolicyviolation", (event) => violations.push(event.effectiveDirective));
  const attempt = async (name, step) => {
    try { await step(); tried[name] = "done"; } catch (problem) { tried[name] = problem.name; }
  };
  await attempt("eval", () => (0, eval)("1"));
  await attempt("new Function", () => new Function("return 1")());
  const smallest = () => new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]);
  await attempt("wasm compile", () => WebAssembly.compile(smallest()));
  await attempt("wasm run", () => WebAssembly.instantiate(smallest()));
  await attempt("fetch elsewhere", () => fetch("${elsewhere}/open.txt"));
  await attempt("blind fetch elsewhere", () => fetch("${elsewhere}/open.txt", { mode: "no-cors" }));
  await attempt("fetch at home", () => fetch("./index.html"));
  await new Promise((resolve) => setTimeout(resolve, 500));
  return { tried, violations };
};
`;

const workerText = (elsewhere: string) => `${attempts(elsewhere)}
globalThis.attempts().then((found) => postMessage(found));
`;

/**
 * Makes the attempts in the built app, in the hands of its own service worker, in a folder of a host
 * that sends no policy itself: what is refused in a worker there is refused by the header of the
 * service worker alone. The same files beside the app's scope show that the attempts can succeed.
 */
export async function tryPolicy(driver: Driver): Promise<PolicyFindings> {
  const elsewhere = await serveOpen();
  const files = (folder: string) => ({
    [`${folder}attempts.js`]: attempts(elsewhere.origin),
    [`${folder}attempts-worker.js`]: workerText(elsewhere.origin),
  });
  const host = await serveBuilt({
    directory: builtFolder,
    under,
    beside: { ...files(under), ...files(free), [`${free}index.html`]: "<!doctype html><title>free</title>" },
  });
  try {
    await driver.open(host.url);
    await untilControlled(driver);
    await driver.reload();
    const page = await inPage(driver);
    const worker = await inWorker(driver);
    const reachedElsewhere = elsewhere.asked.size;
    await driver.open(`${host.origin}${free}index.html`);
    return {
      page,
      worker,
      reachedElsewhere,
      freePage: await inPage(driver),
      freeWorker: await inWorker(driver),
    };
  } finally {
    await host.close();
    await elsewhere.close();
  }
}

function serveOpen(): Promise<BuiltServer> {
  return serveBuilt({ directory: builtFolder, under: "/unused/", beside: { "/open.txt": "reached" } });
}

function inPage(driver: Driver): Promise<Attempts> {
  return driver.run(
    () =>
      new Promise<Attempts>((resolve, reject) => {
        const script = document.createElement("script");
        script.src = "./attempts.js";
        script.onload = () => {
          const run: unknown = Reflect.get(globalThis, "attempts");
          if (typeof run === "function") {
            resolve(run());
          }
        };
        script.onerror = () => reject(new Error("attempts.js did not load"));
        document.head.append(script);
      }),
  );
}

function inWorker(driver: Driver): Promise<Attempts> {
  return driver.run(
    () =>
      new Promise<Attempts>((resolve, reject) => {
        const worker = new Worker("./attempts-worker.js", { type: "module" });
        worker.onmessage = (event: MessageEvent<Attempts>) => resolve(event.data);
        worker.onerror = () => reject(new Error("attempts-worker.js did not run"));
      }),
  );
}
