/**
 * What is entered before database 2 is frozen, through the app's own store. Runs in a page. What was entered
 * is counted by hand in entered-2.ts: change neither once a database made by it was frozen.
 */
import { writeArchive } from "../../src/exchange/archive/write.ts";
import type { Append, Command, Draft } from "../../src/record/command/command.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { BodyOf } from "../../src/record/kinds/all.ts";
import type { RingHeader } from "../../src/record/kinds/observation.ts";
import type { Result } from "../../src/record/result.ts";
import type { Position } from "../../src/record/shapes.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { IDS_2 } from "./entered-2.ts";
import type { Scenario } from "./scenario.ts";

const startMs = Date.UTC(2026, 9, 14, 9);
const device = "d3".repeat(8);

const need = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`${result.problem.code} ${JSON.stringify(result.problem.facts)}`);
  return result.value;
};

let counted = 0;
const shortId = (letter: string): string => {
  counted += 1;
  return letter + counted.toString(16).padStart(15, "0");
};

const write = <K extends keyof BodyOf>(id: RecordId<K>, body: BodyOf[K]): Command => {
  const rev = shortId("f");
  return {
    op: "write",
    id,
    by: {
      rev,
      actor: "a3".repeat(8),
      n: counted,
      stamp: { wallMs: startMs, counter: counted, device },
      author: null,
    },
    body: body as never,
  };
};

const at = (minute: number): Append["at"] => ({
  id: shortId("e"),
  lookedAtMs: startMs + minute * 60_000,
  enteredAtMs: startMs + minute * 60_000,
  monoMs: 1000 + minute * 60_000,
  page: "b3".repeat(8),
  device,
  by: null,
});

const add = (id: RecordId<"observation">, minute: number, draft: Draft): Append => ({
  op: "append",
  id,
  frame: null,
  at: at(minute),
  draft,
});

const level = (value: number): Extract<Draft, { type: "level" }> => ({
  type: "level",
  ring: "inner",
  value,
  unit: "mm",
  reads: "water-depth",
  typed: String(value),
  timed: "now",
});

const nowhere = { position: null, why: "not-asked" } as const;
const on = { visit: IDS_2.visit, field: IDS_2.field, strip: IDS_2.strip, person: null } as const;
// Positions did not say then what their radius stands for.
const place = {
  latitudeDeg: 52.2,
  longitudeDeg: -1.2,
  accuracyM: null,
  spreadM: null,
  fixes: 0,
  how: "by-hand",
  atMs: startMs,
} as Position;

const ground = (): Command[] => [
  write(IDS_2.field, {
    name: "Lower Piece",
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  }),
  write(IDS_2.visit, { field: IDS_2.field, day: "2026-10-14", harvestYear: 2027 }),
  write(IDS_2.strip, {
    field: IDS_2.field,
    name: "straw left",
    done: ["straw-left"],
    wholeField: false,
    rep: null,
  }),
  write(IDS_2.other, {
    field: IDS_2.field,
    name: "straw off",
    done: ["straw-carried-off"],
    wholeField: false,
    rep: null,
  }),
  write(IDS_2.rope, { type: "rope", name: "R1", marks: 20, spacingM: 0.5 }),
  write(IDS_2.ring, { type: "ring", name: "A", insideM: [0.15, 0.151], heightsM: [0.12], outsideM: null }),
  write(IDS_2.template, { type: "hole-template", name: "T", sidesM: [0.2, 0.2] }),
  write(IDS_2.bottle, { type: "bottle", name: "1 L", volumeM3: 0.001 }),
  write(IDS_2.ruler, { type: "ruler", name: "steel", stepM: 0.001 }),
  write(IDS_2.spot, {
    field: IDS_2.field,
    strip: null,
    name: "old grass",
    position: { ...place, movedFrom: { ...place, latitudeDeg: 52.2001, how: "standing-still", fixes: 8 } },
    oldGrass: true,
  }),
  write(IDS_2.edge, {
    field: IDS_2.field,
    strip: null,
    name: "edge",
    position: place,
    oldGrass: false,
    edge: { between: [IDS_2.strip, IDS_2.other], to: { ...place, longitudeDeg: -1.199 } },
  }),
];

const line = (): Command[] => {
  const frame = { way: "mark-by-mark", ropeMarks: 20 } as const;
  const mark = (minute: number): Append => ({
    ...add(IDS_2.line, minute, { type: "mark", mark: "next", cover: "residue", stance: "flat" }),
    frame,
  });
  return [
    write(IDS_2.line, {
      ...on,
      type: "line",
      rope: IDS_2.rope,
      way: "mark-by-mark",
      angleToRowsDeg: 90,
      rowSpacingM: null,
      passWidthM: null,
      place: "across-rows",
      start: nowhere,
      end: nowhere,
      fifthKey: null,
      askThickness: false,
      startedAtMs: startMs,
      spot: IDS_2.spot,
    }),
    mark(0),
    mark(1),
    { ...add(IDS_2.line, 2, { type: "end", mark: "here" }), frame },
    { ...add(IDS_2.line, 3, { type: "end", mark: 3 }), frame },
  ];
};

const rings = (): Command[] => {
  const ring: Omit<RingHeader, "way"> = {
    ...on,
    type: "ring",
    ring: IDS_2.ring,
    outer: null,
    ruler: IDS_2.ruler,
    bottle: IDS_2.bottle,
    rulerReads: "water-depth",
    mulch: "kept",
    rimToSoilM: [0.06, 0.061, 0.06, 0.059],
    planMin: [5, 10, 20, 30, 60],
    at: nowhere,
    follows: null,
    place: "between-rows",
    startedAtMs: startMs,
  };
  const wrong = add(IDS_2.running, 5, level(70));
  const right = add(IDS_2.running, 5, { ...level(71), replaces: [wrong.at.id] });
  return [
    write(IDS_2.running, { ...ring, way: "ruler" }),
    add(IDS_2.running, 0, { type: "start", timed: "now" }),
    add(IDS_2.running, 0, level(80)),
    wrong,
    right,
    add(IDS_2.running, 10, level(65)),
    { op: "undo", id: IDS_2.running, at: at(11) },
    { op: "redo", id: IDS_2.running, at: at(12) },
    add(IDS_2.running, 15, { type: "happened", what: "burrow", words: "", timed: "now" }),
    add(IDS_2.running, 20, { type: "look", ring: "inner" }),
    write(IDS_2.poured, { ...ring, way: "measured-pour", ruler: null }),
    add(IDS_2.poured, 0, { type: "start", timed: "now" }),
    add(IDS_2.poured, 0, {
      type: "pour",
      ring: "inner",
      value: 1,
      unit: "L",
      typed: "1",
      timed: "now",
    }),
    add(IDS_2.poured, 12, { type: "gone", ring: "inner", timed: "now" }),
    add(IDS_2.poured, 13, { type: "stop", why: "done", timed: "now" }),
  ];
};

const hole = (): Command[] => {
  const worm = (minute: number, from: "mulch" | "soil") => add(IDS_2.hole, minute, { type: "worm", from });
  const inSoil = [worm(2, "soil"), worm(3, "soil"), worm(4, "soil"), worm(5, "soil")];
  return [
    write(IDS_2.hole, {
      ...on,
      type: "hole",
      template: IDS_2.template,
      sidesM: null,
      depthM: 0.2,
      method: null,
      landUse: "cropland",
      minutes: 5,
      mustardMin: null,
      at: nowhere,
      number: 1,
      place: "between-rows",
      startedAtMs: startMs,
    }),
    add(IDS_2.hole, 0, { type: "sorting", people: 2, from: "soil" }),
    worm(1, "mulch"),
    ...inSoil,
    add(IDS_2.hole, 6, {
      type: "found",
      from: "soil",
      count: 6,
      typed: "6",
      replaces: inSoil.map((one) => one.at.id),
    }),
    add(IDS_2.hole, 7, { type: "placed", group: "young" }),
    add(IDS_2.hole, 8, { type: "placed", group: "topsoil" }),
    add(IDS_2.hole, 9, { type: "placed", group: "topsoil" }),
    add(IDS_2.hole, 10, { type: "temperature", of: "soil", value: 9.5, unit: "C", typed: "9,5" }),
    write(IDS_2.note, {
      ...on,
      type: "note",
      text: "Middens along the headland.",
      at: nowhere,
      startedAtMs: startMs,
    }),
  ];
};

const open = async (): Promise<Store> =>
  need(await openStore({ tell: () => undefined, reload: () => undefined }));

const enter = async (): Promise<void> => {
  const store = await open();
  for (const command of [...ground(), ...line(), ...rings(), ...hole()]) need(await store.run([command]));
  store.close();
};

/** Writes everything into an archive; its one part as base64. */
const archive = async (): Promise<string> => {
  const store = await open();
  const origin = {
    appVersion: "frozen",
    device,
    madeBy: "",
    madeAtMs: startMs + 86_400_000,
    day: "2026-10-15",
    archive: "c3".repeat(8),
  };
  const watch = { onProgress: () => undefined, signal: new AbortController().signal };
  const { parts } = need(await writeArchive(store, origin, watch));
  store.close();
  const [part] = parts;
  if (part === undefined || parts.length > 1) throw new Error("the archive has more than one part");
  const bytes = new Uint8Array(await part.arrayBuffer());
  return btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(""));
};

globalThis.scenario = { enter, archive } satisfies Scenario;
