/** The built app as files: which parts load which, and how large they travel. */
import { readdirSync, readFileSync } from "node:fs";
import { basename, join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";
import { builtFolder } from "../browser/drivers/serve-built.ts";

/** Size of a file as it travels: gzip at its best (level 9), in bytes. */
export const gzipBytes = (path: string): number =>
  gzipSync(readFileSync(join(builtFolder, path)), { level: 9 }).length;

/** Paths of all built files, with `/` between folders. */
export const builtFiles = (): string[] =>
  readdirSync(builtFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(builtFolder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();

/** Text of a built file. */
export const builtText = (path: string): string => readFileSync(join(builtFolder, path), "utf8");

/** Scripts, preloaded modules and style sheets that the page itself names. */
export const namedByPage = (): string[] =>
  [...builtText("index.html").matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(
    ([, path]) => path ?? "",
  );

/** Parts that a script imports before it runs; what it fetches later is left out. */
const staticImports = (text: string): string[] =>
  [...text.matchAll(/\b(?:import|from)\s*"(\.\/[^"]+\.js)"/g)].map(
    ([, path = ""]) => `assets/${basename(path)}`,
  );

/** These scripts with everything that they import before they run. */
export const withImports = (scripts: readonly string[]): Set<string> => {
  const found = new Set<string>();
  const left = [...scripts];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    left.push(...staticImports(builtText(next)));
  }
  return found;
};
