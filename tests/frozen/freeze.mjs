// Freezes a database and an archive of the app as it is built now, once and for ever:
//   node tests/frozen/freeze.mjs <number> [folder to write into, instead of this one]
// What was frozen is never made again: the script refuses to write where something lies.
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";
import { build } from "../run/steps.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const [number = "", folder = here] = process.argv.slice(2);
if (!/^[1-9]\d*$/.test(number)) {
  process.stderr.write("Say which number to freeze, such as: node tests/frozen/freeze.mjs 1\n");
  process.exit(1);
}
if (!build()) process.exit(1);
/** @type {{ module: typeof import("./freeze.ts") }} */
const { module } = await runnerImport(join(here, "freeze.ts"), { configFile: false });
await module.freeze(Number(number), folder);
