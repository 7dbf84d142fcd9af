/** Opens one volume of an archive that somebody else wrote: everything is checked before anything is believed. */
import { type Failed, failed, ok, type Result } from "../../record/result.ts";
import { beginDigest } from "../format/digest.ts";
import { LIMITS, limitOf } from "../format/limits.ts";
import { type ListedFile, type Manifest, parseManifest } from "../format/manifest.ts";
import { MANIFEST } from "../format/names.ts";
import { readDirectory, type ZipDirectory, type ZipEntry } from "./zip/directory.ts";
import { type PackedRange, packedRange, type Take, unpack } from "./zip/unpack.ts";

/** A volume whose manifest, names and sizes fit together. Its files are checked as they are read. */
export interface OpenVolume {
  readonly manifest: Manifest;
  /** The files of this volume. */
  readonly files: readonly ListedFile[];
  /**
   * Reads one file to its end.
   *
   * @returns nothing when size and SHA-256 are those of the manifest; else why not (`exchange/damaged`,
   * `exchange/too-large`, `exchange/file-gone`), or what `take` returned. What was taken before a failure
   * must not be used.
   */
  readonly read: (listed: ListedFile, take: Take) => Promise<Result<undefined>>;
}

/** No file may reach into the next one: overlapping files unpack far more than the zip holds. */
const ranges = async (
  file: Blob,
  { entries, at }: ZipDirectory,
): Promise<Result<ReadonlyMap<string, { entry: ZipEntry; range: PackedRange }>>> => {
  const found = new Map<string, { entry: ZipEntry; range: PackedRange }>();
  const sorted = [...entries].sort((a, b) => a.at - b.at);
  for (const [index, entry] of sorted.entries()) {
    if (found.has(entry.name)) return failed("exchange/damaged", { what: "a name twice" });
    const range = await packedRange(file, entry, sorted[index + 1]?.at ?? at);
    if (!range.ok) return range;
    found.set(entry.name, { entry, range: range.value });
  }
  return ok(found);
};

const claimsTooMuch = (entries: readonly ZipEntry[]): Failed | undefined => {
  let total = 0;
  for (const { name, packedBytes, unpackedBytes } of entries) {
    total += unpackedBytes;
    const ratio = unpackedBytes > LIMITS.ratioFromBytes && unpackedBytes > packedBytes * LIMITS.ratio;
    if (ratio) return failed("exchange/too-large", { what: "ratio" });
    if (unpackedBytes > limitOf(name) || total > LIMITS.volumeBytes)
      return failed("exchange/too-large", { what: "file" });
  }
  return undefined;
};

const differs = (entries: readonly ZipEntry[], files: readonly ListedFile[]): Failed | undefined => {
  const listed = new Map(files.map((one) => [one.name, one]));
  for (const { name, unpackedBytes } of entries) {
    if (name === MANIFEST) continue;
    const one = listed.get(name);
    if (one === undefined) return failed("exchange/unexpected-file", { file: name.slice(0, 100) });
    if (one.byteCount !== unpackedBytes) return failed("exchange/damaged", { what: "size", file: name });
    listed.delete(name);
  }
  const [missing] = listed.keys();
  return missing === undefined ? undefined : failed("exchange/damaged", { what: "missing", file: missing });
};

/**
 * Opens a volume.
 *
 * @returns the volume; or why it is not to be trusted: `exchange/not-a-zip`, `exchange/not-ours`,
 * `exchange/damaged`, `exchange/encrypted`, `exchange/unknown-packing`, `exchange/too-large`,
 * `exchange/unexpected-file`, `exchange/from-the-future`, `exchange/manifest-not-valid`,
 * `exchange/file-gone`
 */
export const openVolume = async (file: Blob): Promise<Result<OpenVolume>> => {
  try {
    return await open(file);
  } catch (error) {
    // The file was moved, changed or pulled out with its card while it was being read.
    if (error instanceof DOMException) return failed("exchange/file-gone");
    throw error;
  }
};

const open = async (file: Blob): Promise<Result<OpenVolume>> => {
  const directory = await readDirectory(file);
  if (!directory.ok) return directory;
  const { entries } = directory.value;
  if (!entries.some(({ name }) => name === MANIFEST)) return failed("exchange/not-ours");
  const tooMuch = claimsTooMuch(entries);
  if (tooMuch !== undefined) return tooMuch;
  const found = await ranges(file, directory.value);
  if (!found.ok) return found;

  const readEntry = async (name: string, limit: number, take: Take): Promise<Result<number>> => {
    const one = found.value.get(name);
    if (one === undefined) return failed("exchange/damaged", { what: "missing", file: name });
    return unpack(file, one.entry, one.range, limit, take);
  };

  const pieces: Uint8Array<ArrayBuffer>[] = [];
  const read = await readEntry(MANIFEST, LIMITS.manifestBytes, (piece) => void pieces.push(piece));
  if (!read.ok) return read;
  const manifest = parseManifest(await new Blob(pieces).text());
  if (!manifest.ok) return manifest;
  const { volume } = manifest.value;
  const files = manifest.value.files.filter((one) => one.volume === volume.number);
  const problem = differs(entries, files);
  if (problem !== undefined) return problem;

  return ok({
    manifest: manifest.value,
    files,
    read: async ({ name, byteCount, sha256 }, take) => {
      const digest = beginDigest();
      const limit = Math.min(byteCount, limitOf(name));
      const done = await readEntry(name, limit, (piece) => {
        digest.add(piece);
        return take(piece);
      });
      if (!done.ok) return done;
      return digest.hex() === sha256
        ? ok(undefined)
        : failed("exchange/damaged", { what: "digest", file: name });
    },
  });
};
