import type { ChildProcess } from "node:child_process";
import { createServer } from "node:net";
import { findWebKit } from "../../run/find-browser.mjs";
import { type Driver, until } from "./driver.ts";
import { endProgram, removeFolder, startProgram, temporaryFolder } from "./programs.ts";

/** WebKit's own small browser, driven by plain W3C WebDriver. */
export interface WebKitDriver extends Driver {
  /** Sends one command of the session: `("POST", "/refresh", {})`; returns its value. */
  command(method: "GET" | "POST" | "DELETE", path: string, body?: object): Promise<unknown>;
}

/** Starts WebKit on a screen that nobody sees. */
export async function startWebKit(): Promise<WebKitDriver> {
  const paths = await findWebKit();
  const folder = temporaryFolder("webkit-profile");
  const started: ChildProcess[] = [];
  const end = () => {
    for (const program of started.reverse()) {
      endProgram(program);
    }
    removeFolder(folder);
  };
  try {
    const { screen, display } = await startScreen(paths.screen);
    started.push(screen);
    const port = await freePort();
    const env = webKitSurroundings(display, folder);
    started.push(startProgram(paths.driver, [`--port=${port}`], env, 2));
    const base = `http://127.0.0.1:${port}`;
    await until("WebKitWebDriver answers", () =>
      fetch(`${base}/status`).then(
        (answer) => answer.ok,
        () => false,
      ),
    );
    const session = await newSession(base, paths.browser);
    return sessionDriver(`${base}/session/${session}`, end);
  } catch (problem) {
    end();
    throw problem;
  }
}

function sessionDriver(session: string, end: () => void): WebKitDriver {
  const command: WebKitDriver["command"] = (method, path, body) => send(method, session + path, body);
  return {
    command,
    open: async (url) => {
      await command("POST", "/url", { url });
    },
    run: async (step, ...args) => {
      const script = `const done = arguments[arguments.length - 1];
        Promise.resolve().then(() => (${step})(...${JSON.stringify(args)}))
          .then((answer) => done({ answer }), (problem) => done({ problem: String(problem) }));`;
      const said = await command("POST", "/execute/async", { script, args: [] });
      const { answer, problem } = said as { answer: Awaited<ReturnType<typeof step>>; problem?: string };
      if (problem !== undefined) {
        throw new Error(problem);
      }
      return answer;
    },
    reload: async () => {
      await command("POST", "/refresh", {});
    },
    close: async () => {
      await command("DELETE", "").catch(() => undefined);
      end();
    },
  };
}

async function newSession(base: string, binary: string): Promise<string> {
  const made = await send("POST", `${base}/session`, {
    capabilities: {
      alwaysMatch: { "webkitgtk:browserOptions": { binary, args: ["--automation"] } },
    },
  });
  if (typeof made !== "object" || made === null || !("sessionId" in made)) {
    throw new Error("WebKit gave no session");
  }
  return String(made.sessionId);
}

async function send(method: string, url: string, body?: object): Promise<unknown> {
  const response = await fetch(url, {
    method,
    headers: { "content-type": "application/json" },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const { value } = (await response.json()) as { value: unknown };
  if (!response.ok) {
    throw new Error(`WebKit: ${method} ${new URL(url).pathname}: ${JSON.stringify(value)}`);
  }
  return value;
}

/** Starts a screen that nobody sees, under a number that is free. */
export async function startScreen(path: string): Promise<{ screen: ChildProcess; display: string }> {
  const screen = startProgram(path, ["-displayfd", "3", "-screen", "0", "800x900x24"], {}, 3);
  return { screen, display: await displayOf(screen) };
}

/** What WebKit's programs find in their surroundings: their screen, and a home of their own. */
export function webKitSurroundings(display: string, folder: string): Readonly<Record<string, string>> {
  return {
    DISPLAY: `:${display}`,
    HOME: folder,
    XDG_DATA_HOME: `${folder}/data`,
    XDG_CACHE_HOME: `${folder}/cache`,
    // Under the language `C`, Intl throws on navigator.language.
    LANG: "en_US.UTF-8",
  };
}

/** The screen chooses a number that is free and says it. */
function displayOf(screen: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    screen.stdio[3]?.on("data", (part: Buffer) => {
      said += part.toString();
      if (said.endsWith("\n")) {
        resolve(said.trim());
      }
    });
    screen.once("error", reject);
    screen.once("exit", (code) => reject(new Error(`Xvfb ended with ${code}`)));
  });
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() =>
        address === null || typeof address === "string"
          ? reject(new Error("No free port"))
          : resolve(address.port),
      );
    });
  });
}
