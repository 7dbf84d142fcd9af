/** Devices with records and photos for the tests of archives, and volumes with made-up content. */
import { makeZip } from "client-zip";
import type { Preview, Watch } from "../../src/exchange/archive/reports.ts";
import { stageFile } from "../../src/exchange/archive/stage.ts";
import { type Origin, type Written, writeArchive } from "../../src/exchange/archive/write.ts";
import { beginDigest } from "../../src/exchange/format/digest.ts";
import { digestOfRecords } from "../../src/exchange/format/line.ts";
import { type Manifest, manifestText } from "../../src/exchange/format/manifest.ts";
import { ENTRY_VERSION } from "../../src/record/entry.ts";
import { KINDS, type RecordId } from "../../src/record/ids.ts";
import { KIND } from "../../src/record/kinds/all.ts";
import type { RecordState } from "../../src/record/record.ts";
import type { Result } from "../../src/record/result.ts";
import { type Connection, connect } from "../../src/store/connection.ts";
import { pages } from "../../src/store/pages.ts";
import { putPhoto } from "../../src/store/photos.ts";
import { applyCommands } from "../../src/store/write.ts";
import { freshName, lineCommands, mark, need, newId, sampleLine, shortId, write } from "./store-samples.ts";

const watch = (): Watch => ({ onProgress: () => undefined, signal: new AbortController().signal });
export const unwatched = watch();

/** A device with an empty database of its own. */
export const device = async (name: string = freshName()): Promise<Connection> =>
  need(await connect({ name, tell: () => undefined }));

const hexOf = (text: string): string => {
  const digest = beginDigest();
  digest.add(text);
  return digest.hex();
};

/** Bytes that stand for a photo, all different. */
export const photoBytes = (n: number, byteCount = 5000): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length: byteCount }, (_, at) => (at * 7 + n * 13) % 251);

export const sha256Of = (bytes: Uint8Array): string => {
  const digest = beginDigest();
  digest.add(bytes);
  return digest.hex();
};

export const photoRecord = (sha256: string, byteCount: number) =>
  write(newId("photo"), {
    of: newId("field"),
    sha256,
    byteCount,
    widthPx: 100,
    heightPx: 50,
    takenAtMs: 0,
  });

export const addPhoto = async (connection: Connection, n: number, byteCount?: number): Promise<string> => {
  const bytes = photoBytes(n, byteCount);
  const sha256 = sha256Of(bytes);
  need(await putPhoto(connection, { sha256, type: "image/jpeg", bytes: bytes.buffer }));
  need(await applyCommands(connection, [photoRecord(sha256, bytes.length)]));
  return sha256;
};

/** Counts lines of `marks` marks, each with its own field, strip and visit. @returns ids of the lines */
export const addLines = async (
  connection: Connection,
  lines: number,
  marks: number,
): Promise<RecordId<"observation">[]> => {
  const ids: RecordId<"observation">[] = [];
  for (let n = 0; n < lines; n++) {
    const sample = sampleLine();
    const touches = Array.from({ length: marks }, (_, at) =>
      mark(sample.line, at % 3 === 0 ? "bare" : "residue"),
    );
    need(await applyCommands(connection, [...lineCommands(sample), ...touches]));
    ids.push(sample.line);
  }
  return ids;
};

export const addPeople = async (connection: Connection, count: number): Promise<void> => {
  const commands = Array.from({ length: count }, (_, n) => write(newId("person"), { name: `Person ${n}` }));
  need(await applyCommands(connection, commands));
};

/** Every record, in the order of the archive. */
export const recordsOf = async (connection: Connection): Promise<RecordState[]> => {
  const all: RecordState[] = [];
  for await (const page of pages(connection, 100)) all.push(...need(page));
  return all;
};

export const digestOf = async (connection: Connection): Promise<string> =>
  digestOfRecords(await recordsOf(connection));

const origin = (): Origin => ({
  appVersion: "0.1.0",
  device: "d".repeat(16),
  madeBy: "Sam",
  madeAtMs: 1_714_557_600_000,
  day: "2024-05-01",
  archive: shortId(),
});

export const copyOf = async (connection: Connection, mostBytes?: number): Promise<Written> =>
  need(await writeArchive(connection, origin(), watch(), mostBytes));

/** The first volume. */
export const onlyPart = ({ parts }: Written): File => {
  const [part] = parts;
  if (part === undefined) throw new Error("no volume");
  return part;
};

export const stageHere = (connection: Connection, file: File): Promise<Result<Preview>> =>
  stageFile(connection, shortId(), file, watch());

/** What a made-up volume holds. */
export interface MadeUp {
  readonly lines: string;
  readonly change?: Partial<Manifest>;
  readonly photo?: { readonly name: string; readonly content: Uint8Array<ArrayBuffer> };
}

/** A volume whose manifest fits whatever stands in it. */
export const madeUpVolume = async ({ lines, change = {}, photo }: MadeUp): Promise<File> => {
  const manifest: Manifest = {
    name: "mulchmark-archive",
    formatVersion: 1,
    appVersion: "9.0.0",
    archive: "0".repeat(16),
    device: "0".repeat(16),
    madeAtMs: 0,
    volume: { number: 1, of: 1 },
    recordsDigest: hexOf(lines),
    entryVersion: ENTRY_VERSION,
    entryCount: 0,
    kinds: KINDS.map((kind) => ({ kind, version: KIND[kind].version, count: 0 })),
    files: [
      {
        name: "records.ndjson",
        byteCount: new TextEncoder().encode(lines).length,
        sha256: hexOf(lines),
        volume: 1,
      },
      ...(photo === undefined
        ? []
        : [
            {
              name: photo.name,
              byteCount: photo.content.length,
              sha256: sha256Of(photo.content),
              volume: 1,
            },
          ]),
    ],
    ...change,
  };
  const zip = makeZip([
    { name: "manifest.json", input: manifestText(manifest) },
    { name: "records.ndjson", input: lines },
    ...(photo === undefined ? [] : [{ name: photo.name, input: photo.content }]),
  ]);
  return new File([await new Response(zip).blob()], "made-up.zip");
};
