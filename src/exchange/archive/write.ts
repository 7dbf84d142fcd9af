/** Writes an archive, volume by volume, with no more than one photo in memory, and reads each one back. */
import { makeZip } from "client-zip";
import { ENTRY_VERSION } from "../../record/entry.ts";
import { KINDS } from "../../record/ids.ts";
import { KIND } from "../../record/kinds/all.ts";
import { type Failed, failed, ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { photo } from "../../store/photos.ts";
import { LIMITS, VOLUME_PHOTO_BYTES } from "../format/limits.ts";
import { ARCHIVE_NAME, FORMAT_VERSION, type Manifest, manifestText } from "../format/manifest.ts";
import { MANIFEST, photoDigest, photoName, volumeFileName } from "../format/names.ts";
import { type Gathered, gather } from "./gather.ts";
import type { Watch } from "./reports.ts";
import { verifyVolume } from "./verify.ts";

/** What an archive says about where it comes from. */
export interface Origin {
  readonly appVersion: string;
  /** Label of this installation. */
  readonly device: string;
  readonly madeBy?: string;
  readonly madeAtMs: number;
  /** The calendar day on this device. */
  readonly day: string;
  /** A new random short id. */
  readonly archive: string;
}

/** An archive that was written and read back. */
export interface Written {
  readonly parts: readonly File[];
  readonly recordsDigest: string;
  /** Counted while reading back, not while writing. */
  readonly records: number;
  readonly photos: number;
}

/** Shares photos out among volumes in the order of their digests. */
const shareOut = (photos: Gathered["photos"], textFiles: number, mostBytes: number) => {
  let volume = 1;
  let bytes = 0;
  let files = textFiles;
  return photos.map(({ sha256, byteCount }) => {
    if (bytes > 0 && (bytes + byteCount > mostBytes || files >= LIMITS.files)) {
      volume += 1;
      bytes = 0;
      files = 1;
    }
    bytes += byteCount;
    files += 1;
    return { name: photoName(sha256), byteCount, sha256, volume };
  });
};

const manifestOf = (
  gathered: Gathered,
  origin: Origin,
  mostBytes: number,
): Omit<Manifest, "volume"> & { of: number } => {
  const { appVersion, archive, device, madeBy, madeAtMs } = origin;
  const photos = shareOut(gathered.photos, gathered.texts.length, mostBytes);
  const texts = gathered.texts.map(({ name, content, sha256 }) => ({
    name,
    byteCount: content.size,
    sha256,
    volume: 1,
  }));
  return {
    name: ARCHIVE_NAME,
    formatVersion: FORMAT_VERSION,
    appVersion,
    archive,
    device,
    ...(madeBy === undefined ? {} : { madeBy }),
    madeAtMs,
    recordsDigest: gathered.recordsDigest,
    entryVersion: ENTRY_VERSION,
    entryCount: gathered.entryCount,
    kinds: KINDS.map((kind) => ({
      kind,
      version: KIND[kind].version,
      count: gathered.counts.get(kind) ?? 0,
    })),
    ...(gathered.missingPhotos > 0 ? { missingPhotos: gathered.missingPhotos } : {}),
    files: [...texts, ...photos],
    of: photos.at(-1)?.volume ?? 1,
  };
};

const writeVolume = async (
  connection: Connection,
  gathered: Gathered,
  manifest: Manifest,
  watch: Watch,
): Promise<Result<Blob>> => {
  const lastModified = new Date(manifest.madeAtMs);
  const texts = new Map(gathered.texts.map((one) => [one.name, one.content]));
  const files = manifest.files.filter(({ volume }) => volume === manifest.volume.number);
  let problem: Failed | undefined;
  const contentOf = async (name: string): Promise<Result<Blob | Uint8Array<ArrayBuffer>>> => {
    const text = texts.get(name);
    if (text !== undefined) return ok(text);
    const row = await photo(connection, photoDigest(name) ?? "");
    if (!row.ok) return row;
    // A photo was erased since it was gathered.
    return row.value === undefined
      ? failed("exchange/changed-meanwhile")
      : ok(new Uint8Array(row.value.bytes));
  };
  async function* contents() {
    yield { name: MANIFEST, input: manifestText(manifest), lastModified };
    for (const [index, { name }] of files.entries()) {
      const content = watch.signal.aborted ? failed("exchange/stopped") : await contentOf(name);
      if (!content.ok) {
        problem = content;
        return;
      }
      yield { name, input: content.value, lastModified };
      watch.onProgress({ step: "writing", done: index + 1, of: files.length });
    }
  }
  const blob = await new Response(makeZip(contents())).blob();
  return problem ?? ok(blob);
};

/**
 * Writes an archive of all records and photos, and reads every volume back.
 *
 * @param mostBytes photos of one volume, in bytes
 * @returns the volumes as files; `exchange/stopped`, `exchange/not-as-written` when reading back gave
 * something else, `exchange/changed-meanwhile` when a photo was erased while it was written,
 * `exchange/record-too-large`, `exchange/too-many-records`, or what the store says
 */
export const writeArchive = async (
  connection: Connection,
  origin: Origin,
  watch: Watch,
  mostBytes: number = VOLUME_PHOTO_BYTES,
): Promise<Result<Written>> => {
  const gathered = await gather(connection, origin, watch);
  if (!gathered.ok) return gathered;
  const { of, ...shared } = manifestOf(gathered.value, origin, mostBytes);
  const parts: File[] = [];
  let records = 0;
  let photos = 0;
  for (let number = 1; number <= of; number++) {
    const manifest: Manifest = { ...shared, volume: { number, of } };
    const written = await writeVolume(connection, gathered.value, manifest, watch);
    if (!written.ok) return written;
    const verified = await verifyVolume(written.value, manifest, watch);
    if (!verified.ok) return verified;
    records += verified.value.records;
    photos += verified.value.photos;
    const name = volumeFileName(origin.day, number, of);
    parts.push(new File([written.value], name, { type: "application/zip", lastModified: origin.madeAtMs }));
  }
  return ok({ parts, recordsDigest: gathered.value.recordsDigest, records, photos });
};
