// npm run dev: install, then serve the sources with reload on every change.
import { install } from "./install.mjs";
import { run } from "./steps.mjs";

install();
process.exitCode = run("vite", process.argv.slice(2)) ? 0 : 1;
