/**
 * What is entered before a database is frozen, through the app's own store. Runs in a page. What was
 * entered is counted by hand in entered.ts: change neither once a database made by it was frozen.
 */

import { writeArchive } from "../../src/exchange/archive/write.ts";
import { mergeRecord } from "../../src/exchange/merge/merge.ts";
import { applyCommand } from "../../src/record/command/apply.ts";
import type { Append, Command, Draft, Signature } from "../../src/record/command/command.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { BodyOf } from "../../src/record/kinds/all.ts";
import type { Way } from "../../src/record/kinds/observation.ts";
import type { RecordState } from "../../src/record/record.ts";
import type { Result } from "../../src/record/result.ts";
// Positions did not say then what their radius stands for.
import type { Position } from "../../src/record/shapes.ts";
import { putPhoto } from "../../src/store/photos.ts";
import { readRecord } from "../../src/store/read.ts";
import { entriesRow, headerRow } from "../../src/store/rows.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { IDS, ROPE_MARKS } from "./entered.ts";

const startMs = Date.UTC(2024, 4, 7, 9);
const device = "d1".repeat(8);

const need = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`${result.problem.code} ${JSON.stringify(result.problem.facts)}`);
  return result.value;
};

let counted = 0;
const shortId = (letter: string): string => {
  counted += 1;
  return letter + counted.toString(16).padStart(15, "0");
};

const sign = (author: RecordId<"person"> | null = IDS.person): Signature => {
  const rev = shortId("f");
  return {
    rev,
    actor: "a1".repeat(8),
    n: counted,
    stamp: { wallMs: startMs + counted * 1000, counter: counted, device },
    author,
  };
};

const write = <K extends keyof BodyOf>(id: RecordId<K>, body: BodyOf[K]): Command => ({
  op: "write",
  id,
  by: sign(),
  body: body as never,
});

const add = (id: RecordId<"observation">, way: Way, draft: Draft): Append => ({
  op: "append",
  id,
  frame: { way, ropeMarks: ROPE_MARKS },
  at: moment(),
  draft,
});

const moment = (): Append["at"] => {
  const id = shortId("e");
  return {
    id,
    lookedAtMs: startMs + counted * 1000,
    enteredAtMs: startMs + counted * 1000 + 200,
    monoMs: 60_000 + counted * 1000,
    page: "b1".repeat(8),
    device,
    by: IDS.person,
  };
};

const fieldBody = (name: string): BodyOf["field"] => ({
  name,
  farm: IDS.farm,
  boundary:
    name === ""
      ? null
      : [
          { latitudeDeg: 52.1, longitudeDeg: -1.3 },
          { latitudeDeg: 52.1, longitudeDeg: -1.298 },
          { latitudeDeg: 52.102, longitudeDeg: -1.299 },
        ],
  rowDirectionDeg: name === "" ? null : 12.5,
  soilTexture: name === "" ? null : "silt loam",
  harvestCrop: null,
});

const line = (way: Way, startedAtMs: number): BodyOf["observation"] => ({
  type: "line",
  visit: IDS.visit,
  field: IDS.field,
  strip: IDS.strip,
  rope: IDS.rope,
  way,
  angleToRowsDeg: 45,
  rowSpacingM: 0.125,
  passWidthM: 6,
  place: "between-rows",
  start: {
    position: {
      latitudeDeg: 52.100_5,
      longitudeDeg: -1.299_5,
      accuracyM: 4.5,
      spreadM: 1.25,
      fixes: 12,
      how: "standing-still",
      atMs: startedAtMs,
    } as Position,
    why: null,
  },
  end: { position: null, why: "denied" },
  person: IDS.person,
  fifthKey: "dung",
  askThickness: true,
  startedAtMs,
});

/** The line that was counted mark by mark to its end, as somebody would touch it. */
const finishedLine = (): Command[] => {
  const id = IDS.finished;
  const frame = { way: "mark-by-mark", ropeMarks: ROPE_MARKS } as const;
  const on = (draft: Draft): Command => add(id, frame.way, draft);
  const flat = { type: "mark", mark: "next", cover: "residue", stance: "flat" } as const;
  const next = (cover: "bare" | "green" | "stone" | "own") => on({ type: "mark", mark: "next", cover });
  return [
    ...Array.from({ length: 6 }, () => on(flat)), // marks 1 to 6
    next("bare"), // 7
    on({ ...flat, stance: "standing" }), // 8
    next("green"), // 9
    next("stone"), // 10
    on({ type: "thickness", mark: 10, value: 12.5, unit: "mm", typed: "12,5" }),
    next("own"), // 11
    next("bare"), // 12
    { op: "undo", id, at: moment() },
    { op: "redo", id, at: moment() },
    on({ type: "mark", mark: 7, cover: "green" }), // corrected
    on({ ...flat, stance: "standing" }), // 13
    { op: "undo", id, at: moment() },
    next("bare"), // 13
    on({ type: "set-mark", mark: 16 }), // 14 and 15 are not read
    on(flat), // 16
    on(flat), // 17
    on({ type: "end", mark: "here" }),
  ];
};

const otherLines = (): Command[] => [
  write(IDS.misses, line("misses-only", startMs + 3_600_000)),
  add(IDS.misses, "misses-only", { type: "mark", mark: 3, cover: "bare" }),
  add(IDS.misses, "misses-only", { type: "mark", mark: 8, cover: "green" }),
  add(IDS.misses, "misses-only", { type: "mark", mark: 15, cover: "stone" }),
  add(IDS.misses, "misses-only", { type: "end", mark: 20, rest: "standing" }),
  write(IDS.totals, line("totals", startMs + 7_200_000)),
  add(IDS.totals, "totals", { type: "totals", flat: 9, standing: 3, bare: 4, green: 2, stone: 1, own: 0 }),
  add(IDS.totals, "totals", { type: "totals", flat: 10, standing: 3, bare: 4, green: 2, stone: 1, own: 0 }),
  write(IDS.half, line("mark-by-mark", startMs + 10_800_000)),
  write(IDS.deletedLine, line("mark-by-mark", startMs + 14_400_000)),
  add(IDS.deletedLine, "mark-by-mark", { type: "mark", mark: "next", cover: "bare" }),
  add(IDS.deletedLine, "mark-by-mark", { type: "mark", mark: "next", cover: "green" }),
  { op: "delete", id: IDS.deletedLine, by: sign() },
  write(IDS.twoPhones, line("mark-by-mark", startMs + 18_000_000)),
  add(IDS.twoPhones, "mark-by-mark", { type: "mark", mark: "next", cover: "residue", stance: "flat" }),
];

const places = (): Command[] => [
  write(IDS.person, { name: "One who counts" }),
  write(IDS.forgotten, { name: "One who wants to be forgotten" }),
  { op: "erase", id: IDS.forgotten },
  write(IDS.farm, { name: "Hollow Lane" }),
  write(IDS.field, fieldBody("Long Bottom")),
  write(IDS.unnamed, fieldBody("")),
  write(IDS.sameField, fieldBody("Lng Bottom")),
  write(IDS.strip, { field: IDS.field, name: "straw left", done: ["straw-left"], wholeField: false, rep: 1 }),
  write(IDS.twoVersions, {
    field: IDS.field,
    name: "straw off",
    done: ["straw-carried-off"],
    wholeField: false,
    rep: 1,
  }),
  write(IDS.wholeField, { field: IDS.unnamed, name: "", done: [], wholeField: true, rep: null }),
  write(IDS.deletedStrip, { field: IDS.field, name: "a slip", done: [], wholeField: false, rep: null }),
  { op: "delete", id: IDS.deletedStrip, by: sign() },
  write(IDS.spot, {
    field: IDS.field,
    strip: null,
    name: "by the old gate",
    position: {
      latitudeDeg: 52.101,
      longitudeDeg: -1.299,
      accuracyM: null,
      spreadM: null,
      fixes: 0,
      how: "by-hand",
      atMs: startMs,
    } as Position,
    oldGrass: true,
  }),
  write(IDS.rope, { type: "rope", name: "R1", marks: ROPE_MARKS, spacingM: 0.15 }),
  { op: "change", id: IDS.rope, by: sign(), patch: { spacingM: 0.5 } },
  write(IDS.visit, { field: IDS.field, day: "2024-05-07", harvestYear: 2024 }),
  write(IDS.otherVisit, { field: IDS.unnamed, day: "2024-02-29", harvestYear: null }),
];

const beside = (sha256: string, byteCount: number): Command[] => [
  write(IDS.photo, { of: IDS.finished, sha256, byteCount, widthPx: 4, heightPx: 3, takenAtMs: startMs }),
  write(IDS.event, {
    field: IDS.field,
    strip: null,
    day: "2023-08-20",
    what: "straw-left",
    words: "chopped, “well spread” – mostly",
  }),
  write(IDS.rain, { field: IDS.field, day: "2024-05-06", depthMm: 12.4 }),
  write(IDS.guess, {
    field: IDS.field,
    strip: IDS.strip,
    visit: IDS.visit,
    person: IDS.person,
    what: "ground-cover-percent",
    value: 60,
    atMs: startMs - 60_000,
  }),
  write(IDS.earlier, {
    field: IDS.field,
    strip: null,
    day: "2019-04-11",
    what: "ground-cover-percent",
    value: 45,
    samples: null,
    origin: "a sheet from the drawer",
  }),
  write(IDS.join, { from: IDS.sameField, to: IDS.field }),
  write(IDS.undoneJoin, { from: IDS.unnamed, to: IDS.field }),
  { op: "delete", id: IDS.undoneJoin, by: sign() },
];

/** A command as another device applied it, to the record as both knew it. */
const elsewhere = (record: RecordState, command: Command): RecordState =>
  need(applyCommand(record, command)).record;

/** Brings together what two devices did to one record, and puts the row as bringing a file in would. */
const twoDevices = async (store: Store, id: RecordId, here: Command, there: Command): Promise<void> => {
  const before = need(await readRecord(store, id));
  if (before === undefined) throw new Error(`${id} is not there`);
  const merged = mergeRecord(elsewhere(before, here), elsewhere(before, there));
  need(
    await store.use(async (db) => {
      const tx = db.transaction(["records", "entries"], "readwrite");
      await tx.objectStore("records").put(headerRow(merged));
      if (merged.entries.length > 0) await tx.objectStore("entries").put(entriesRow(merged));
      await tx.done;
      return { ok: true, value: undefined };
    }),
  );
};

const byOther = (by: Signature): Signature => ({
  ...by,
  actor: "a2".repeat(8),
  n: 1,
  stamp: { ...by.stamp, device: "d2".repeat(8) },
});

const picture = async (): Promise<Blob> => {
  const canvas = new OffscreenCanvas(4, 3);
  canvas.getContext("2d")?.fillRect(0, 0, 2, 3);
  return canvas.convertToBlob({ type: "image/jpeg" });
};

const open = async (): Promise<Store> =>
  need(await openStore({ tell: () => undefined, reload: () => undefined }));

/** Enters everything but the half-finished line, whose keys are touched in the app itself. */
const enter = async (): Promise<void> => {
  const store = await open();
  const bytes = await (await picture()).arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  const sha256 = [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  need(await putPhoto(store, { sha256, type: "image/jpeg", bytes }));
  const commands = [
    ...places(),
    write(IDS.finished, line("mark-by-mark", startMs)),
    ...finishedLine(),
    ...otherLines(),
    ...beside(sha256, bytes.byteLength),
  ];
  for (const command of commands) need(await store.run([command]));
  const named = (name: string, by: Signature): Command => ({
    op: "change",
    id: IDS.twoVersions,
    by,
    patch: { name },
  });
  await twoDevices(
    store,
    IDS.twoVersions,
    named("straw carried off", sign()),
    named("straw baled", byOther(sign())),
  );
  const answer = (cover: "bare" | "green"): Command =>
    add(IDS.twoPhones, "mark-by-mark", { type: "mark", mark: 2, cover });
  await twoDevices(store, IDS.twoPhones, answer("bare"), answer("green"));
  store.close();
};

/** Writes everything into an archive; its one part as base64. */
const archive = async (): Promise<string> => {
  const store = await open();
  const origin = {
    appVersion: "frozen",
    device,
    madeBy: "One who counts",
    madeAtMs: startMs + 86_400_000,
    day: "2024-05-08",
    archive: "c1".repeat(8),
  };
  const watch = { onProgress: () => undefined, signal: new AbortController().signal };
  const { parts } = need(await writeArchive(store, origin, watch));
  store.close();
  const [part] = parts;
  if (part === undefined || parts.length > 1) throw new Error("the archive has more than one part");
  const bytes = new Uint8Array(await part.arrayBuffer());
  return btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(""));
};

/** What the page of the scenario lays open. */
export interface Scenario {
  readonly enter: () => Promise<void>;
  readonly archive: () => Promise<string>;
}

declare global {
  var scenario: Scenario | undefined;
}

globalThis.scenario = { enter, archive };
