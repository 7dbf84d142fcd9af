// npm run build: install, then build the app into dist.
import { install } from "./install.mjs";
import { build } from "./steps.mjs";

install();
process.exitCode = build() ? 0 : 1;
