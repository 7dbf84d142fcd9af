// Builds the page with the alarm. Argument: folder to build into. Run as a program of its own: the
// surroundings of a test would make it a build for development.
import { join } from "node:path";
import preact from "@preact/preset-vite";
import { build } from "vite";

const [outDir = ""] = process.argv.slice(2);

await build({
  configFile: false,
  root: join(import.meta.dirname, "alarm-page"),
  base: "./",
  logLevel: "warn",
  build: { outDir, emptyOutDir: true, target: "chrome109", modulePreload: { polyfill: false } },
  plugins: [preact()],
});
