import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { extname, join, resolve, sep } from "node:path";
import { text } from "node:stream/consumers";

const kinds: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".webmanifest": "application/manifest+json",
  ".wasm": "application/wasm",
};

/** The build that `npm test` makes before the tests run. */
export const builtFolder: string = resolve(import.meta.dirname, "../../../dist");

/** A plain static host, as the app meets it: no fallback to the start page, no header of its own making. */
export interface BuiltServer {
  /** Address of the app, ending in `/`. */
  readonly url: string;
  /** Address of the host, without a `/` at the end. */
  readonly origin: string;
  /** How often each path was asked for. */
  readonly asked: ReadonlyMap<string, number>;
  /** Paths that were asked for and not there. */
  readonly missed: readonly string[];
  /** Serves another build from now on, as a host does after a deployment. */
  deploy(directory: string): void;
  /** Answers 404 for the paths that match, or for none. */
  withhold(paths: RegExp | undefined): void;
  /** Never answers for the paths that match, as a network that has just gone; or for none. */
  hang(paths: RegExp | undefined): void;
  close(): Promise<void>;
}

/** What is served, and where. */
export interface Served {
  /** Folder of the build. */
  readonly directory: string;
  /** Where on the host the app lies: begins and ends with `/`. */
  readonly under: string;
  /** Further files by their whole path on the host, for tests only. */
  readonly beside?: Readonly<Record<string, string>>;
  /** Takes what the page posts to the host, for tests that must know what a page did before it was killed. */
  readonly take?: (path: string, text: string) => void;
}

/**
 * Serves a build on a free port.
 *
 * @example
 * const host = await serveBuilt({ directory: builtFolder, under: "/farm/tools/" });
 */
export async function serveBuilt({ directory, under, beside = {}, take }: Served): Promise<BuiltServer> {
  const asked = new Map<string, number>();
  const missed: string[] = [];
  let served = resolve(directory);
  let withheld: RegExp | undefined;
  let hung: RegExp | undefined;

  const server = createServer((request, response) => {
    const path = pathOf(request);
    if (request.method === "POST" && take !== undefined) {
      text(request).then(
        (posted) => {
          take(path, posted);
          response.writeHead(204).end();
        },
        // The browser was killed while it told something.
        () => undefined,
      );
      return;
    }
    asked.set(path, (asked.get(path) ?? 0) + 1);
    if (hung?.test(path) === true) return;
    const besideText = beside[path];
    const file = withheld?.test(path) ? undefined : fileFor(path, under, served);
    if (besideText !== undefined) {
      send(response, path).end(besideText);
    } else if (file === undefined) {
      missed.push(path);
      response.writeHead(404, { "content-type": "text/plain; charset=utf-8" }).end("not here");
    } else {
      createReadStream(file).pipe(send(response, file));
    }
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const address = server.address();
  if (address === null || typeof address === "string") {
    throw new Error("The server has no port");
  }
  const origin = `http://localhost:${address.port}`;
  return {
    url: origin + under,
    origin,
    asked,
    missed,
    deploy: (next) => {
      served = resolve(next);
    },
    withhold: (paths) => {
      withheld = paths;
    },
    hang: (paths) => {
      hung = paths;
    },
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

function pathOf(request: IncomingMessage): string {
  return decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
}

function fileFor(path: string, under: string, directory: string): string | undefined {
  if (!path.startsWith(under)) {
    return undefined;
  }
  const within = path.slice(under.length);
  const file = resolve(join(directory, within === "" ? "index.html" : within));
  const inside = file.startsWith(directory + sep);
  return inside && existsSync(file) && statSync(file).isFile() ? file : undefined;
}

/** Ten minutes in the browser's own cache, as common static hosts ask for: an update must get past it. */
function send(response: ServerResponse, path: string): ServerResponse {
  return response.writeHead(200, {
    "content-type": kinds[extname(path)] ?? "application/octet-stream",
    "cache-control": "max-age=600",
  });
}
