// Writes every tsconfig.json and the generated part of biome.json from tests/architecture/rooms.json.
// A hand-written override would replace the base rule silently and open a room; so nobody writes one by hand.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, posix, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { isDeepStrictEqual } from "node:util";
import { projectRoot, run } from "./steps.mjs";

/** @typedef {"pure" | "page" | "bundled-page" | "worker"} RoomKind */
/** @typedef {{ name: string, folder: string, kind: RoomKind, imports: string[] }} Room */
/** @typedef {{ names: string[], only: string[] }} PackageRule */
/** @typedef {{ rooms: Room[], packages: PackageRule[] }} RoomTable */

const pageLib = ["ES2023", "DOM", "DOM.Iterable", "DOM.AsyncIterable"];
/** @type {Record<RoomKind, { lib: string[], types: string[] }>} */
const environments = {
  pure: { lib: ["ES2023"], types: [] },
  page: { lib: pageLib, types: [] },
  "bundled-page": { lib: pageLib, types: ["vite/client"] },
  worker: { lib: ["ES2023", "WebWorker", "WebWorker.Iterable", "WebWorker.AsyncIterable"], types: [] },
};

/**
 * The table of rooms: folder, surroundings and allowed imports of each, and where each package may be imported.
 * @param {string} [root] folder of the project
 * @returns {RoomTable}
 */
export function readRooms(root = projectRoot) {
  return JSON.parse(readFileSync(join(root, "tests/architecture/rooms.json"), "utf8"));
}

/**
 * The TypeScript files of a room, as paths from the project's folder with forward slashes, sorted.
 * A room that lies inside another one (the workers inside app) counts for itself alone.
 * @param {RoomTable} table
 * @param {Room} room
 * @param {string} [root]
 * @returns {string[]}
 */
export function filesOfRoom(table, room, root = projectRoot) {
  const folder = join(root, room.folder);
  if (!existsSync(folder)) return [];
  const inner = innerRooms(table, room).map((other) => `${other.folder}/`);
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .filter((path) => !inner.some((prefix) => path.startsWith(prefix)))
    .sort();
}

/**
 * @param {RoomTable} table
 * @param {Room} room
 */
function innerRooms(table, room) {
  return table.rooms.filter((other) => other.folder.startsWith(`${room.folder}/`));
}

/**
 * Every generated file: path from the project's folder to its content.
 * An empty room gets no project yet, because the compiler refuses a project without files.
 * @param {string} [root]
 * @returns {Map<string, unknown>}
 */
export function generatedFiles(root = projectRoot) {
  const table = readRooms(root);
  const filled = table.rooms.filter((room) => filesOfRoom(table, room, root).length > 0);
  /** @type {Map<string, unknown>} */
  const files = new Map();
  for (const room of filled) files.set(`${room.folder}/tsconfig.json`, roomProject(table, room, filled));
  files.set("tests/tsconfig.json", testsProject(filled));
  files.set("tsconfig.json", rootProject(filled));
  const biome = JSON.parse(readFileSync(join(root, "biome.json"), "utf8"));
  biome.plugins = plugins(table);
  biome.linter.rules.style.noRestrictedImports = restricted(table.packages);
  biome.overrides = overrides(table);
  files.set("biome.json", biome);
  return files;
}

/**
 * @param {RoomTable} table
 * @param {Room} room
 * @param {Room[]} filled
 */
function roomProject(table, room, filled) {
  const inner = innerRooms(table, room).map((other) => posix.relative(room.folder, other.folder));
  return {
    extends: posix.relative(room.folder, "src/tsconfig.base.json"),
    compilerOptions: {
      ...environments[room.kind],
      ...outputs(room.folder, room.name),
      rootDir: ".",
    },
    include: ["**/*.ts", "**/*.tsx"],
    exclude: inner,
    references: filled
      .filter((other) => room.imports.includes(other.name))
      .map((other) => ({ path: posix.relative(room.folder, other.folder) })),
  };
}

/** @param {Room[]} filled */
function testsProject(filled) {
  return {
    extends: "../src/tsconfig.base.json",
    compilerOptions: {
      lib: pageLib,
      types: ["node", "vite/client"],
      allowJs: true,
      checkJs: true,
      ...outputs("tests", "tests"),
      rootDir: "..",
    },
    include: ["**/*.ts", "**/*.tsx", "**/*.mjs", "../vite.config.ts"],
    references: filled.map((room) => ({ path: posix.relative("tests", room.folder) })),
  };
}

/** @param {Room[]} filled */
function rootProject(filled) {
  return { files: [], references: [...filled.map((room) => ({ path: room.folder })), { path: "tests" }] };
}

/**
 * @param {string} folder
 * @param {string} name
 */
function outputs(folder, name) {
  const cache = posix.relative(folder, `.cache/types/${name.replaceAll("/", "-")}`);
  return { outDir: cache, tsBuildInfoFile: `${cache}.tsbuildinfo` };
}

/** @param {string} path */
function bothForms(path) {
  return /\.tsx?$/.test(path) ? [`**/${path}`] : [`**/${path}`, `**/${path}/**`];
}

/** @param {RoomTable} table */
function plugins(table) {
  const pure = table.rooms.filter((room) => room.kind === "pure").flatMap((room) => bothForms(room.folder));
  const shipped = [...bothForms("src"), ...bothForms("service-worker")];
  return [
    { path: "./tests/architecture/grit/no-clock-no-chance.grit", includes: pure },
    { path: "./tests/architecture/grit/no-markup-from-text.grit", includes: shipped },
  ];
}

/** @param {PackageRule[]} rules */
function restricted(rules) {
  const patterns = rules.map(({ names, only }) => ({
    group: names,
    message: `Only ${only.join(" and ")} may import this package.`,
  }));
  return { level: "error", options: { patterns } };
}

/**
 * Each override names all packages that stay forbidden there, since it replaces the base rule.
 * Wider folders come first: the last override that matches a file decides.
 * @param {RoomTable} table
 */
function overrides(table) {
  const places = new Set([
    ...table.rooms.map((room) => room.folder),
    ...table.packages.flatMap((rule) => rule.only),
  ]);
  const rooms = [...places].sort().map((place) => ({
    includes: bothForms(place),
    linter: {
      rules: {
        style: {
          noRestrictedImports: restricted(
            table.packages.filter((rule) => !rule.only.some((only) => isInside(place, only))),
          ),
        },
      },
    },
  }));
  return [...rooms, testsOverride, typingsOverride];
}

/**
 * @param {string} place
 * @param {string} folder
 */
function isInside(place, folder) {
  return place === folder || place.startsWith(`${folder}/`);
}

const testsOverride = {
  includes: ["**/tests/**", "**/vite.config.ts"],
  linter: {
    rules: {
      // Blocks of tests inside blocks of tests count as nesting, though nobody reads them as branches.
      complexity: { noExcessiveCognitiveComplexity: "off" },
      correctness: { noNodejsModules: "off" },
      style: { noRestrictedImports: "off", noDefaultExport: "off" },
      suspicious: { noConsole: "off" },
    },
  },
};

/** Typings say what a package written by others exports, and that may be a default. */
const typingsOverride = {
  includes: ["**/*.d.ts"],
  linter: { rules: { style: { noDefaultExport: "off" } } },
};

/**
 * The generated files whose content on disk differs from what the table says (or that are missing).
 * Content is compared, not text, since the formatter decides on line breaks.
 * @param {string} [root]
 * @returns {string[]} paths from the project's folder
 */
export function staleFiles(root = projectRoot) {
  return [...generatedFiles(root)]
    .filter(([path, content]) => !isDeepStrictEqual(readJson(join(root, path)), content))
    .map(([path]) => path);
}

/** @param {string} path */
function readJson(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : undefined;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const files = generatedFiles();
  const stale = staleFiles();
  for (const path of stale) writeFileSync(join(projectRoot, path), JSON.stringify(files.get(path), null, 2));
  run("biome", ["format", "--write", ...files.keys()]);
}
