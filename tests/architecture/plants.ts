import { posix } from "node:path";
import { readRooms } from "../run/rooms.mjs";

const table = readRooms();
/** A file of another room (TS6307), outside of the room's folder (TS6059). */
const foreignFile = ["TS6059", "TS6307"];
export const exported = "export const planted = 1;\n";

export type Plant = {
  readonly files: Readonly<Record<string, string>>;
  readonly refused: string;
  readonly rules: string[];
};

export const compilerPlants: Record<string, Plant> = {
  "a static import of another room": {
    files: {
      "src/store/planted-static.ts": exported,
      "src/record/planted-static.ts":
        'import { planted } from "../store/planted-static.ts";\nexport const again = planted;\n',
    },
    refused: "src/record/planted-static.ts",
    rules: foreignFile,
  },
  "a type-only import of another room": {
    files: {
      "src/science/planted-type.ts": "export type Planted = { readonly cover: number };\n",
      "src/store/planted-type.ts":
        'import type { Planted } from "../science/planted-type.ts";\nexport type Again = Planted;\n',
    },
    refused: "src/store/planted-type.ts",
    rules: foreignFile,
  },
  "a dynamic import of another room": {
    files: {
      "src/screens/planted-dynamic.ts": exported,
      "src/science/planted-dynamic.ts":
        'export const later = (): Promise<unknown> => import("../screens/planted-dynamic.ts");\n',
    },
    refused: "src/science/planted-dynamic.ts",
    rules: foreignFile,
  },
  "a re-export from another room": {
    files: {
      "src/science/planted-again.ts": exported,
      "src/device/planted-again.ts": 'export { planted } from "../science/planted-again.ts";\n',
    },
    refused: "src/device/planted-again.ts",
    rules: foreignFile,
  },
  "an index file of another room": {
    files: {
      "src/screens/planted/index.ts": exported,
      "src/exchange/merge/planted-index.ts": 'export { planted } from "../../screens/planted";\n',
    },
    refused: "src/exchange/merge/planted-index.ts",
    rules: foreignFile,
  },
  "a language that misses a word": {
    files: {
      "src/screens/planted-language.ts": [
        'import { type Catalogue, english } from "./catalogue.ts";',
        'import { TRADE_WORDS } from "./parts/trade.ts";',
        'const { areas, ...others } = english(TRADE_WORDS["uk-ie"]);',
        "export const left = areas;",
        "export const language: Catalogue = others;",
        "",
      ].join("\n"),
    },
    refused: "src/screens/planted-language.ts",
    rules: ["TS2741"],
  },
  "a file of src in the service worker": {
    files: {
      "src/record/planted-for-worker.ts": exported,
      "service-worker/planted.ts": 'export { planted } from "../src/record/planted-for-worker.ts";\n',
    },
    refused: "service-worker/planted.ts",
    rules: foreignFile,
  },
  ...Object.fromEntries(
    table.rooms
      .filter((room) => room.kind === "pure")
      .map((room) => [
        `the page in ${room.name}`,
        {
          files: { [`${room.folder}/planted-page.ts`]: "export const width = window.innerWidth;\n" },
          refused: `${room.folder}/planted-page.ts`,
          rules: ["TS2304", "TS2552", "TS2584"],
        },
      ]),
  ),
};

/** Fragments that read the clock or chance in ways that a plain search for a call overlooks. */
const clockAndChance = [
  "Date.now()",
  "new Date()",
  "new Date(5)",
  "Date()",
  "Date.parse('2024-05-01')",
  "Math.random()",
  "Math['random']()",
  "(({ random }) => random())(Math)",
  "performance.now()",
  "globalThis",
  "crypto.randomUUID()",
];

const markupFromText = [
  "element.innerHTML = text",
  "element.innerHTML += text",
  "element['innerHTML'] = text",
  "element.outerHTML = text",
  "element.insertAdjacentHTML('beforeend', text)",
  "Object.assign(element, { innerHTML: text })",
  "element.setAttribute('srcdoc', text)",
  "document.write(text)",
  "eval(text)",
  "new Function(text)",
];

const onlyIn = "lint/style/noRestrictedImports";
export const linterPlants: Record<string, Plant> = {
  ...packagePlants({
    "src/screens/planted-idb.ts": "idb",
    "src/record/planted-zod.ts": "zod",
    "src/store/planted-zod-mini.ts": "zod/mini",
    "src/screens/planted-leaflet.ts": "leaflet",
    "src/exchange/format/planted-zip.ts": "client-zip",
    "src/store/planted-hashes.ts": "@noble/hashes/sha2.js",
    "src/device/planted-signals.ts": "@preact/signals",
    "src/science/planted-hooks.ts": "preact/hooks",
    "src/screens/planted-workbox.ts": "workbox-window",
  }),
  "a package by dynamic import": {
    files: { "src/app/planted-idb.ts": 'export const later = (): Promise<unknown> => import("idb");\n' },
    refused: "src/app/planted-idb.ts",
    rules: [onlyIn],
  },
  "a package by re-export": {
    files: { "src/science/planted-idb.ts": 'export { openDB } from "idb";\n' },
    refused: "src/science/planted-idb.ts",
    rules: [onlyIn],
  },
  "a package as type": {
    files: {
      "src/science/planted-idb-type.ts":
        'import type { IDBPDatabase } from "idb";\nexport type Base = IDBPDatabase;\n',
    },
    refused: "src/science/planted-idb-type.ts",
    rules: [onlyIn],
  },
  "a package that package.json does not name": {
    files: { "src/science/planted-unnamed.ts": 'export { planted } from "not-in-package-json";\n' },
    refused: "src/science/planted-unnamed.ts",
    rules: ["lint/correctness/noUndeclaredDependencies"],
  },
  "a cycle": {
    files: {
      "src/store/planted-cycle-a.ts":
        'import { b } from "./planted-cycle-b.ts";\nexport const a = (): number => b();\n',
      "src/store/planted-cycle-b.ts":
        'import { a } from "./planted-cycle-a.ts";\nexport const b = (): number => a();\n',
    },
    refused: "src/store/planted-cycle-a.ts",
    rules: ["lint/suspicious/noImportCycles"],
  },
  "a cycle of types alone": {
    files: {
      "src/store/planted-ring-a.ts":
        'import type { B } from "./planted-ring-b.ts";\nexport type A = { readonly b?: B };\n',
      "src/store/planted-ring-b.ts":
        'import type { A } from "./planted-ring-a.ts";\nexport type B = { readonly a?: A };\n',
    },
    refused: "src/store/planted-ring-b.ts",
    rules: ["lint/suspicious/noImportCycles"],
  },
  ...fragmentPlants("clock or chance in science", "src/science/planted-clock", clockAndChance),
  ...fragmentPlants("clock or chance in merge", "src/exchange/merge/planted-clock", ["Date.now()"]),
  ...fragmentPlants("text as markup or code", "src/screens/planted-markup", markupFromText),
  "markup as a property of an element": {
    files: {
      "src/screens/planted-view.tsx": "export const View = (): unknown => <p innerHTML={String(1)} />;\n",
    },
    refused: "src/screens/planted-view.tsx",
    rules: ["plugin"],
  },
};

/** What must stay allowed, or the rules above would be green by refusing everything. */
export const allowed: Record<string, string> = {
  "src/store/allowed-idb.ts": 'export { openDB } from "idb";\n',
  "src/exchange/archive/allowed-zip.ts": 'export { downloadZip } from "client-zip";\n',
  "src/exchange/format/allowed-hash.ts": 'export { sha256 } from "@noble/hashes/sha2.js";\n',
  "src/screens/allowed-signal.ts": 'export { signal } from "@preact/signals";\n',
  "src/science/allowed-mathematics.ts":
    "export const root = Math.sqrt(2) + Math.max(1, 2);\nexport const dayStartMs = Date.UTC(2024, 4, 1);\n",
  "src/store/allowed-clock.ts": "export const nowMs = (): number => Date.now();\n",
};

function packagePlants(places: Record<string, string>): Record<string, Plant> {
  return Object.fromEntries(
    Object.entries(places).map(([path, name]) => [
      `the package ${name} in ${posix.dirname(path)}`,
      {
        files: { [path]: `import * as planted from "${name}";\nexport const again = planted;\n` },
        refused: path,
        rules: [onlyIn],
      },
    ]),
  );
}

function fragmentPlants(what: string, start: string, fragments: readonly string[]): Record<string, Plant> {
  return Object.fromEntries(
    fragments.map((fragment, index) => {
      const path = `${start}-${index}.ts`;
      const text = `export const planted = (element: any, text: any): unknown => [${fragment}, element, text];\n`;
      return [`${what}: ${fragment}`, { files: { [path]: text }, refused: path, rules: ["plugin"] }];
    }),
  );
}
