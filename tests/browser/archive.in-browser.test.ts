import { expect, test } from "vitest";
import { bringIn } from "../../src/exchange/archive/bring-in.ts";
import { openVolume } from "../../src/exchange/archive/open.ts";
import { writeArchive } from "../../src/exchange/archive/write.ts";
import type { RecordId } from "../../src/record/ids.ts";
import { photo } from "../../src/store/photos.ts";
import { countStaged, listImports } from "../../src/store/staging.ts";
import { applyCommands } from "../../src/store/write.ts";
import {
  addLines,
  addPhoto,
  copyOf,
  device,
  digestOf,
  onlyPart,
  recordsOf,
  stageHere,
  unwatched,
} from "./archive-samples.ts";
import { mark, need, shortId, signature } from "./store-samples.ts";

const carry = async (file: File, to: Awaited<ReturnType<typeof device>>) => {
  const preview = need(await stageHere(to, file));
  need(await bringIn(to, preview.import, unwatched.onProgress));
  return preview;
};

/** CRC-32 bit by bit (ISO 3309), apart from the product's and the zip writer's own. */
const slowCrc = (bytes: Uint8Array): number => {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return ~value >>> 0;
};

/** Reads a zip of stored files from its end, after PKWARE's APPNOTE 6.3.10, sections 4.3.12 and 4.3.16. */
const filesInZip = async (file: Blob): Promise<Map<string, Uint8Array>> => {
  const data = new DataView(await file.arrayBuffer());
  const end = data.byteLength - 22;
  expect(data.getUint32(end, true)).toBe(0x06054b50);
  const found = new Map<string, Uint8Array>();
  let at = data.getUint32(end + 16, true);
  for (let n = data.getUint16(end + 10, true); n > 0; n--) {
    expect(data.getUint32(at, true)).toBe(0x02014b50);
    expect(data.getUint16(at + 10, true)).toBe(0);
    const size = data.getUint32(at + 24, true);
    const nameBytes = data.getUint16(at + 28, true);
    const name = new TextDecoder().decode(new Uint8Array(data.buffer, at + 46, nameBytes));
    const local = data.getUint32(at + 42, true);
    expect(data.getUint32(local, true)).toBe(0x04034b50);
    const from = local + 30 + data.getUint16(local + 26, true) + data.getUint16(local + 28, true);
    const content = new Uint8Array(data.buffer, from, size);
    expect(slowCrc(content)).toBe(data.getUint32(at + 16, true));
    found.set(name, content);
    at += 46 + nameBytes + data.getUint16(at + 30, true) + data.getUint16(at + 32, true);
  }
  return found;
};

const hexOfBytes = async (bytes: Uint8Array): Promise<string> =>
  Array.from(new Uint8Array(await crypto.subtle.digest("SHA-256", bytes.slice())), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");

test("what is written opens with another reader, manifest first, and every digest is right", async () => {
  const here = await device();
  await addLines(here, 5, 20);
  const sha256 = await addPhoto(here, 1);
  const written = await copyOf(here);
  expect(written).toMatchObject({ records: 21, photos: 1 });
  const files = await filesInZip(onlyPart(written));
  expect([...files.keys()]).toEqual([
    "manifest.json",
    "README.txt",
    "records.ndjson",
    "view/lines.csv",
    "view/marks.csv",
    "view/lines.geojson",
    "view/rings.csv",
    "view/ring-readings.csv",
    "view/holes.csv",
    "view/hole-entries.csv",
    "view/rings-and-holes.geojson",
    "view/notes.csv",
    `photos/${sha256}.jpg`,
  ]);
  const textOf = (name: string): string => new TextDecoder().decode(files.get(name));
  const manifest = JSON.parse(textOf("manifest.json")) as {
    files: { name: string; sha256: string; byteCount: number }[];
    recordsDigest: string;
    madeBy: string;
  };
  for (const { name, sha256: digest, byteCount } of manifest.files) {
    expect(files.get(name)?.length).toBe(byteCount);
    expect(await hexOfBytes(files.get(name) ?? new Uint8Array())).toBe(digest);
  }
  expect(manifest.recordsDigest).toBe(await digestOf(here));
  expect(textOf("records.ndjson").trimEnd().split("\n")).toHaveLength(21);
  expect(textOf("view/lines.csv").trimEnd().split("\r\n")).toHaveLength(6);
  expect(textOf("view/marks.csv").trimEnd().split("\r\n")).toHaveLength(101);
  for (const layer of ["view/lines.geojson", "view/rings-and-holes.geojson"])
    expect(JSON.parse(textOf(layer))).toEqual({ type: "FeatureCollection", features: [] });
});

test("carried to a second device, all records and photos are there and the digests are equal", async () => {
  const [here, there] = [await device(), await device()];
  const lines = await addLines(here, 20, 30);
  const sha256 = await addPhoto(here, 2);
  const [erased, deleted] = lines;
  if (erased === undefined || deleted === undefined) throw new Error("no lines");
  need(
    await applyCommands(here, [
      { op: "erase", id: erased },
      { op: "delete", id: deleted, by: signature() },
    ]),
  );
  const written = await copyOf(here);
  const preview = await carry(onlyPart(written), there);
  expect(preview).toMatchObject({
    file: { madeBy: "Sam", madeAtMs: 1_714_557_600_000 },
    records: { new: 81, changed: 0, same: 0 },
    photos: { new: 1, same: 0 },
    refusedCount: 0,
  });
  expect(await digestOf(there)).toBe(await digestOf(here));
  expect((await copyOf(there)).recordsDigest).toBe(written.recordsDigest);
  expect(new Uint8Array(need(await photo(there, sha256))?.bytes ?? new ArrayBuffer(0)).length).toBe(5000);
  expect(need(await listImports(there))).toEqual([]);
});

test("the same file a second time changes nothing and stages nothing", async () => {
  const [here, there] = [await device(), await device()];
  await addLines(here, 3, 5);
  await addPhoto(here, 3);
  const file = onlyPart(await copyOf(here));
  await carry(file, there);
  const before = await digestOf(there);
  const again = need(await stageHere(there, file));
  expect(again.records).toEqual({ new: 0, changed: 0, same: 13 });
  expect(again.photos).toEqual({ new: 0, same: 1 });
  expect(need(await countStaged(there, again.import))).toBe(0);
  need(await bringIn(there, again.import, unwatched.onProgress));
  expect(await digestOf(there)).toBe(before);
});

test("an old backup brings nothing back and takes nothing away", async () => {
  const here = await device();
  const [first, second, third] = await addLines(here, 3, 5);
  if (first === undefined || second === undefined || third === undefined) throw new Error("no lines");
  const old = onlyPart(await copyOf(here));
  need(
    await applyCommands(here, [
      { op: "delete", id: first, by: signature() },
      { op: "change", id: second, by: signature(), patch: { angleToRowsDeg: 45 } },
      { op: "erase", id: third },
      mark(second, "bare"),
    ]),
  );
  await addLines(here, 1, 2);
  const before = await digestOf(here);
  const preview = await carry(old, here);
  expect(preview.records).toMatchObject({ new: 0, changed: 0 });
  expect(await digestOf(here)).toBe(before);
});

test("two phones on one line: marks come together, and contradicting ones are announced", async () => {
  const [here, there] = [await device(), await device()];
  const [line] = await addLines(here, 1, 3);
  if (line === undefined) throw new Error("no line");
  await carry(onlyPart(await copyOf(here)), there);
  need(await applyCommands(here, [mark(line, "bare", "e")]));
  need(await applyCommands(there, [mark(line, "residue", "f")]));
  need(
    await applyCommands(here, [{ op: "change", id: line, by: signature(), patch: { angleToRowsDeg: 45 } }]),
  );
  const other = { ...signature(), actor: "b".repeat(16) };
  need(await applyCommands(there, [{ op: "change", id: line, by: other, patch: { angleToRowsDeg: 0 } }]));
  const preview = await carry(onlyPart(await copyOf(here)), there);
  expect(preview).toMatchObject({
    records: { new: 0, changed: 1, same: 3 },
    sideBySide: 1,
    twoAnswers: { marks: 1, lines: 1 },
  });
  await carry(onlyPart(await copyOf(there)), here);
  expect(await digestOf(there)).toBe(await digestOf(here));
  const record = (await recordsOf(there)).find(({ id }) => id === line);
  expect(record?.entries).toHaveLength(5);
  expect(record?.revs).toHaveLength(2);
});

test("photos go into further volumes, which come after the first", async () => {
  const [here, there] = [await device(), await device()];
  const digests = [await addPhoto(here, 4), await addPhoto(here, 5), await addPhoto(here, 6)];
  const written = await copyOf(here, 6000);
  expect(written.parts.map(({ name }) => name)).toEqual([
    "mulchmark-2024-05-01-01-of-03.zip",
    "mulchmark-2024-05-01-02-of-03.zip",
    "mulchmark-2024-05-01-03-of-03.zip",
  ]);
  const [first, second, third] = written.parts;
  if (first === undefined || second === undefined || third === undefined) throw new Error("no volumes");
  const early = await stageHere(there, second);
  expect(early).toMatchObject({ ok: false, problem: { code: "exchange/volume-1-first" } });
  for (const part of [first, third, second]) await carry(part, there);
  for (const sha256 of digests) expect(need(await photo(there, sha256))).toBeDefined();
  expect(await digestOf(there)).toBe(await digestOf(here));
});

test("photos that are not here are counted, not invented", async () => {
  const here = await device();
  const { photoRecord } = await import("./archive-samples.ts");
  need(await applyCommands(here, [photoRecord("a".repeat(64), 10)]));
  const written = await copyOf(here);
  expect(written.photos).toBe(0);
  const opened = need(await openVolume(onlyPart(written)));
  expect(opened.manifest.missingPhotos).toBe(1);
});

test("writing can be stopped", async () => {
  const here = await device();
  await addLines(here, 2, 2);
  const stop = new AbortController();
  const written = await writeArchive(
    here,
    { appVersion: "0", device: shortId(), madeAtMs: 0, day: "2024-05-01", archive: shortId() },
    { signal: stop.signal, onProgress: () => stop.abort() },
  );
  expect(written).toMatchObject({ ok: false, problem: { code: "exchange/stopped" } });
});

test("capture goes on between preview and bringing in, and nothing of it is lost", async () => {
  const [here, there] = [await device(), await device()];
  const [line] = await addLines(here, 1, 3);
  if (line === undefined) throw new Error("no line");
  await carry(onlyPart(await copyOf(here)), there);
  need(await applyCommands(here, [mark(line, "bare", "e")]));
  const before = await digestOf(there);
  const preview = need(await stageHere(there, onlyPart(await copyOf(here))));
  expect(await digestOf(there)).toBe(before);
  need(await applyCommands(there, [mark(line as RecordId<"observation">, "bare", "f")]));
  need(await bringIn(there, preview.import, unwatched.onProgress));
  const record = (await recordsOf(there)).find(({ id }) => id === line);
  expect(record?.entries).toHaveLength(5);
});
