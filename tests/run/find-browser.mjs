// Finds real browsers on Linux, macOS and Windows. Software is installed on nobody's machine:
// apt is used only as root in continuous integration (CI=true).
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import { projectRoot } from "./steps.mjs";

/** Arguments with which Chromium starts on a bare machine; the sandbox goes only where root makes it impossible. */
export const chromiumArguments = [
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** A browser that cannot be found: its message is one sentence for the person who ran the command. */
export class BrowserMissing extends Error {}

/**
 * A Chromium to test with: CHROMIUM_PATH, else the usual places, else the test tool's own download,
 * else apt as root in continuous integration.
 * @returns {Promise<string>} path of the program
 * @throws {BrowserMissing} when there is none
 */
export async function findChromium() {
  const found = chosen("CHROMIUM_PATH") ?? firstThatStarts(usualChromium());
  if (found) return found;
  const downloaded = await downloadedChromium();
  if (downloaded) return downloaded;
  const installed = aptInstall(["chromium"]) && firstThatStarts(usualChromium());
  if (installed) return installed;
  throw new BrowserMissing(
    "No Chromium, Chrome or Edge was found: install one, or set CHROMIUM_PATH to its program.",
  );
}

/**
 * A Firefox to test with: FIREFOX_PATH, else the usual places, else apt as root in continuous integration.
 * @returns {Promise<string>} path of the program
 * @throws {BrowserMissing} when there is none
 */
export async function findFirefox() {
  const found = chosen("FIREFOX_PATH") ?? firstThatStarts(usualFirefox());
  if (found) return found;
  const installed = aptInstall(["firefox-esr"]) && firstThatStarts(usualFirefox());
  if (installed) return installed;
  throw new BrowserMissing("No Firefox was found: install it, or set FIREFOX_PATH to its program.");
}

/**
 * The three programs that WebKit tests need on Linux (driver, window and virtual screen).
 * @returns {Promise<{ driver: string, browser: string, screen: string }>} paths of the programs
 * @throws {BrowserMissing} when one is missing
 */
export async function findWebKit() {
  const found = webKitParts() ?? (aptInstall(["webkit2gtk-driver", "xvfb"]) ? webKitParts() : undefined);
  if (found) return found;
  throw new BrowserMissing(
    "WebKit was not found: its tests need Linux with WebKitWebDriver, its MiniBrowser and Xvfb (packages webkit2gtk-driver and xvfb).",
  );
}

function webKitParts() {
  const driver = firstExisting([...onPath("WebKitWebDriver")]);
  const screen = firstExisting([...onPath("Xvfb")]);
  const browser = firstExisting(
    ["x86_64-linux-gnu", "aarch64-linux-gnu", "."].flatMap((folder) => [
      join("/usr/lib", folder, "webkit2gtk-4.1/MiniBrowser"),
      join("/usr/libexec", "webkit2gtk-4.1/MiniBrowser"),
      join("/usr/lib", folder, "webkitgtk-6.0/MiniBrowser"),
    ]),
  );
  return driver && screen && browser ? { driver, browser, screen } : undefined;
}

/** @param {string} variable */
function chosen(variable) {
  const path = process.env[variable];
  if (!path) return undefined;
  if (existsSync(path)) return path;
  throw new BrowserMissing(`${variable} is set to ${path}, but there is no such program.`);
}

function usualChromium() {
  if (process.platform === "win32") {
    return windowsFolders().flatMap((folder) => [
      join(folder, "Chromium", "Application", "chrome.exe"),
      join(folder, "Google", "Chrome", "Application", "chrome.exe"),
      join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
    ]);
  }
  if (process.platform === "darwin") {
    return macFolders().flatMap((folder) =>
      ["Chromium", "Google Chrome", "Microsoft Edge"].map((name) =>
        join(folder, `${name}.app`, "Contents", "MacOS", name),
      ),
    );
  }
  return [
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "microsoft-edge",
    "microsoft-edge-stable",
  ].flatMap(onPath);
}

function usualFirefox() {
  if (process.platform === "win32")
    return windowsFolders().map((folder) => join(folder, "Mozilla Firefox", "firefox.exe"));
  if (process.platform === "darwin")
    return macFolders().map((folder) => join(folder, "Firefox.app", "Contents", "MacOS", "firefox"));
  return ["firefox-esr", "firefox"].flatMap(onPath);
}

function windowsFolders() {
  return ["ProgramFiles", "ProgramFiles(x86)", "LOCALAPPDATA"].flatMap((name) => process.env[name] ?? []);
}

function macFolders() {
  return ["/Applications", join(homedir(), "Applications")];
}

/** @param {string} program */
function onPath(program) {
  const folders = new Set([
    ...(process.env["PATH"] ?? "").split(":"),
    "/usr/bin",
    "/usr/local/bin",
    "/snap/bin",
  ]);
  return [...folders].filter(Boolean).map((folder) => join(folder, program));
}

/** @param {string[]} paths */
function firstExisting(paths) {
  return paths.find((path) => existsSync(path));
}

/** @param {string[]} paths */
function firstThatStarts(paths) {
  return paths.find((path) => existsSync(path) && starts(path));
}

/**
 * A downloaded browser on a bare Linux often lacks system libraries: found, and yet not usable.
 * On other systems asking for the version would open a window.
 * @param {string} path
 */
function starts(path) {
  if (process.platform !== "linux") return true;
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 30_000 }).status === 0;
}

async function downloadedChromium() {
  const { chromium } = await import("playwright-core");
  const present = () => firstThatStarts([chromium.executablePath()].filter(Boolean));
  const before = present();
  if (before) return before;
  process.stdout.write("No Chromium in the usual places: downloading the test tool's own.\n");
  const cli = join(projectRoot, "node_modules/playwright-core/cli.js");
  spawnSync(process.execPath, [cli, "install", "chromium"], {
    stdio: "inherit",
    timeout: 300_000,
    env: { PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: "20000", ...process.env },
  });
  return present();
}

/** @param {string[]} packages */
function aptInstall(packages) {
  const allowed = process.platform === "linux" && process.env["CI"] === "true" && process.getuid?.() === 0;
  if (!allowed) return false;
  const options = {
    stdio: /** @type {const} */ ("inherit"),
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  };
  spawnSync("apt-get", ["update", "-qq"], options);
  return spawnSync("apt-get", ["install", "-y", "-qq", ...packages], options).status === 0;
}
