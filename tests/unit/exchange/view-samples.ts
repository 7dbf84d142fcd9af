/** Records as files hold them, for the views: names first, then one test. */
import { parseLine } from "../../../src/exchange/format/line.ts";
import { type TestView, testViews } from "../../../src/exchange/format/views/test-view.ts";
import { ENTRY_VERSION } from "../../../src/record/entry.ts";
import { KIND } from "../../../src/record/kinds/all.ts";

export const id = (kind: string, n: number): string => `${kind}-${String(n).padStart(32, "0")}`;
const revision = (v: number, body: unknown, more: object = {}) => ({
  rev: "00000000000000b1",
  dot: ["00000000000000a1", 1],
  seen: [],
  stamp: { wallMs: 0, counter: 0, device: "00000000000000d1" },
  author: null,
  v,
  body,
  ...more,
});
export const position = (latitudeDeg: number, longitudeDeg: number) => ({
  position: {
    latitudeDeg,
    longitudeDeg,
    accuracyM: 4,
    accuracyMeans: "68-percent",
    spreadM: 1,
    fixes: 9,
    how: "standing-still",
    atMs: 0,
  },
  why: null,
});
export const nowhere = { position: null, why: "denied" };
export const entry = (n: number, more: object) => ({
  v: ENTRY_VERSION,
  id: `000000000000000${n}`,
  n,
  lookedAtMs: 1_714_557_600_000,
  enteredAtMs: 1_714_557_600_000,
  monoMs: 0,
  page: "00000000000000e1",
  device: "00000000000000d1",
  by: null,
  ...more,
});
const kit = [
  ["kit", 4, { type: "rope", name: "R1", marks: 5, spacingM: 0.3 }],
  ["kit", 6, { type: "ring", name: "+A", insideM: [0.3, 0.302], heightsM: [0.2, 0.201], outsideM: null }],
  ["kit", 7, { type: "ruler", name: "steel", stepM: 0.001 }],
  ["kit", 8, { type: "hole-template", name: "frame", sidesM: [0.2, 0.25] }],
] as const;

const names = [
  [
    "field",
    1,
    {
      name: "=Top Field",
      farm: null,
      boundary: null,
      rowDirectionDeg: null,
      soilTexture: null,
      harvestCrop: null,
    },
  ],
  // A marked spot of old grass, and one that is found again every season.
  ["spot", 4, { field: id("field", 1), strip: null, name: "old pasture", position: null, oldGrass: true }],
  ["spot", 5, { field: id("field", 1), strip: null, name: "oak stake", position: null, oldGrass: false }],
  ["strip", 2, { field: id("field", 1), name: "A, north", done: [], wholeField: false, rep: null }],
  ...kit,
  ["visit", 3, { field: id("field", 1), day: "2024-05-01", harvestYear: null }],
] as const;

/** What every test of the sample is tied to. */
export const tied = {
  visit: id("visit", 3),
  field: id("field", 1),
  strip: id("strip", 2),
  place: "between-rows",
  person: null,
  startedAtMs: 1_714_557_600_000,
} as const;

/** The test of this header and these entries, as the views see it after the names. */
export const viewOf = (
  header: object,
  entries: readonly object[],
  more: object = {},
): TestView | undefined => {
  const records = [
    ...names.map(([kind, n, body]) => ({
      id: id(kind, n),
      erased: false,
      revs: [revision(KIND[kind].version, body)],
      entries: [] as object[],
    })),
    {
      id: id("observation", 9),
      erased: false,
      revs: [revision(KIND.observation.version, header, more)],
      entries: [...entries],
    },
  ];
  const views = testViews();
  return records
    .map((record) => {
      const read = parseLine(JSON.stringify(record));
      if (!read.ok) throw new Error(JSON.stringify(read.problem));
      return views.next(read.value);
    })
    .at(-1);
};

/** The cells of one row by the names of their columns. */
export const cellsOf = (head: string, row: string): Record<string, string> => {
  const split = (text: string): string[] =>
    [
      ...text
        .replace("\ufeff", "")
        .trimEnd()
        .matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g),
    ].map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? "");
  const cells = split(row);
  return Object.fromEntries(split(head).map((name, at) => [name, cells[at] ?? "missing"]));
};

/** The rows of a text, each by the names of its columns. */
export const rowsOf = (head: string, text: string): Record<string, string>[] =>
  text
    .trimEnd()
    .split("\r\n")
    .map((row) => cellsOf(head, row));
