/**
 * What is entered before database 3 is frozen, through the app's own store. Runs in a page. What was entered
 * is counted by hand in entered-3.ts: change neither once a database made by it was frozen.
 */
import { writeArchive } from "../../src/exchange/archive/write.ts";
import type { Append, Command, Draft } from "../../src/record/command/command.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { BodyOf } from "../../src/record/kinds/all.ts";
import type { Result } from "../../src/record/result.ts";
import type { Position } from "../../src/record/shapes.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { IDS_3 } from "./entered-3.ts";
import type { Scenario } from "./scenario.ts";

const startMs = Date.UTC(2027, 2, 3, 10);
const device = "d5".repeat(8);

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
      actor: "a5".repeat(8),
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
  page: "b5".repeat(8),
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

/** Measured standing still: on a phone that says 68 %, by a device that keeps to 95 %, and by one that says neither. */
const measured = {
  latitudeDeg: 52.3,
  longitudeDeg: -1.1,
  accuracyM: 5.5,
  accuracyMeans: "68-percent",
  spreadM: 1.5,
  fixes: 12,
  how: "standing-still",
  atMs: startMs,
} satisfies Position;
const at95: Position = { ...measured, latitudeDeg: 52.3004, accuracyM: 9, accuracyMeans: "95-percent" };
const unsaid: Position = { ...measured, latitudeDeg: 52.3006, accuracyM: 7, accuracyMeans: "not-known" };
const byHand: Position = {
  ...measured,
  longitudeDeg: -1.101,
  accuracyM: null,
  accuracyMeans: null,
  spreadM: null,
  fixes: 0,
  how: "by-hand",
};

const stood = (position: Position) => ({ position, why: null });
const on = { visit: IDS_3.visit, field: IDS_3.field, strip: IDS_3.strip, person: null } as const;

const ground = (): Command[] => [
  write(IDS_3.field, {
    name: "Long Piece",
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  }),
  write(IDS_3.visit, { field: IDS_3.field, day: "2027-03-03", harvestYear: 2027 }),
  write(IDS_3.strip, {
    field: IDS_3.field,
    name: "straw left",
    done: ["straw-left"],
    wholeField: false,
    rep: null,
  }),
  write(IDS_3.rope, { type: "rope", name: "R1", marks: 20, spacingM: 0.5 }),
  write(IDS_3.ring, { type: "ring", name: "A", insideM: [0.15, 0.151], heightsM: [0.12], outsideM: null }),
  write(IDS_3.spot, {
    field: IDS_3.field,
    strip: null,
    name: "the post",
    position: { ...byHand, movedFrom: measured },
    oldGrass: false,
    edge: { between: [IDS_3.strip, null], to: at95 },
  }),
];

const tests = (): Command[] => {
  const frame = { way: "mark-by-mark", ropeMarks: 20 } as const;
  const mark = (minute: number): Append => ({
    ...add(IDS_3.line, minute, { type: "mark", mark: "next", cover: "residue", stance: "flat" }),
    frame,
  });
  return [
    write(IDS_3.line, {
      ...on,
      type: "line",
      rope: IDS_3.rope,
      way: "mark-by-mark",
      angleToRowsDeg: 90,
      rowSpacingM: null,
      passWidthM: null,
      place: "across-rows",
      start: stood(measured),
      end: stood(unsaid),
      fifthKey: null,
      askThickness: false,
      startedAtMs: startMs,
    }),
    mark(0),
    mark(1),
    { ...add(IDS_3.line, 2, { type: "end", mark: "here" }), frame },
    write(IDS_3.running, {
      ...on,
      type: "ring",
      ring: IDS_3.ring,
      outer: null,
      ruler: null,
      bottle: null,
      way: "ruler",
      rulerReads: "water-depth",
      mulch: "kept",
      rimToSoilM: [],
      planMin: [5, 10],
      at: stood(at95),
      follows: null,
      place: null,
      startedAtMs: startMs,
    }),
    write(IDS_3.hole, {
      ...on,
      type: "hole",
      template: null,
      sidesM: [0.2, 0.2],
      depthM: 0.2,
      method: null,
      landUse: null,
      minutes: null,
      mustardMin: null,
      at: stood({ ...byHand, movedFrom: measured }),
      number: 1,
      place: null,
      startedAtMs: startMs,
    }),
    write(IDS_3.note, {
      ...on,
      type: "note",
      text: "Slug damage here.",
      at: stood(byHand),
      startedAtMs: startMs,
    }),
  ];
};

const open = async (): Promise<Store> =>
  need(await openStore({ tell: () => undefined, reload: () => undefined }));

const enter = async (): Promise<void> => {
  const store = await open();
  for (const command of [...ground(), ...tests()]) need(await store.run([command]));
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
    day: "2027-03-04",
    archive: "c5".repeat(8),
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
