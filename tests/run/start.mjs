// npm start: install, build, serve the built app with its service worker, print the address.
import { createServer } from "node:net";
import { install, stop } from "./install.mjs";
import { build, projectRoot } from "./steps.mjs";

const usualPort = 4310;

/**
 * @param {number} port
 * @returns {Promise<boolean>}
 */
function isFree(port) {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, "localhost", () => probe.close(() => resolve(true)));
  });
}

process.chdir(projectRoot);
install();
if (!build()) stop("The app could not be built: see the lines above.");
const { preview } = await import("vite");
if (!(await isFree(usualPort)))
  process.stdout.write(`Port ${usualPort} is taken; another address keeps its own, separate records.\n`);
const server = await preview({ preview: { host: "localhost", port: usualPort } });
process.stdout.write(`Mulchmark is served at ${server.resolvedUrls?.local[0]} (stop with Ctrl+C)\n`);
