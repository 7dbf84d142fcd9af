/** Reads the central directory of a zip file without reading the files in it (PKWARE APPNOTE 6.3). */
import { failed, ok, type Result } from "../../../record/result.ts";
import { LIMITS } from "../../format/limits.ts";

/** One file of a zip, as its directory describes it. Sizes are claims until the bytes were counted. */
export interface ZipEntry {
  readonly name: string;
  readonly method: "stored" | "deflated";
  readonly crc: number;
  readonly packedBytes: number;
  readonly unpackedBytes: number;
  /** Where its local header begins. */
  readonly at: number;
}

/** The files of a zip. */
export interface ZipDirectory {
  readonly entries: readonly ZipEntry[];
  /** Where the directory begins: no file reaches beyond. */
  readonly at: number;
}

const END = { signature: 0x06054b50, bytes: 22, longestComment: 65_535 } as const;
const ZIP64_LOCATOR = { signature: 0x07064b50, bytes: 20 } as const;
const ZIP64_END = { signature: 0x06064b50, bytes: 56 } as const;
const HEADER = { signature: 0x02014b50, bytes: 46 } as const;
const FULL_16 = 0xffff;
const FULL_32 = 0xffffffff;
/** A name of this format is at most 80 bytes long; the rest is room for what other tools add. */
const MOST_HEADER_BYTES = 2048;

const damaged = (what: string) => failed("exchange/damaged", { what });

const view = async (file: Blob, from: number, to: number): Promise<DataView> =>
  new DataView(await file.slice(from, to).arrayBuffer());

const findEnd = (tail: DataView): number | undefined => {
  for (let at = tail.byteLength - END.bytes; at >= 0; at--) {
    const reachesTheEnd = at + END.bytes + tail.getUint16(at + 20, true) === tail.byteLength;
    if (reachesTheEnd && tail.getUint32(at, true) === END.signature) return at;
  }
  return undefined;
};

interface Place {
  readonly entries: number;
  readonly bytes: number;
  readonly at: number;
  /** Where what follows the directory begins. */
  readonly end: number;
}

const bigger = (data: DataView, at: number): number => {
  const value = data.getBigUint64(at, true);
  return value > BigInt(Number.MAX_SAFE_INTEGER) ? Number.POSITIVE_INFINITY : Number(value);
};

const zip64Place = async (file: Blob, endAt: number): Promise<Result<Place>> => {
  if (endAt < ZIP64_LOCATOR.bytes + ZIP64_END.bytes) return damaged("zip64");
  const locator = await view(file, endAt - ZIP64_LOCATOR.bytes, endAt);
  if (locator.getUint32(0, true) !== ZIP64_LOCATOR.signature) return damaged("zip64");
  const at = bigger(locator, 8);
  if (at > endAt - ZIP64_LOCATOR.bytes - ZIP64_END.bytes) return damaged("zip64");
  const end = await view(file, at, at + ZIP64_END.bytes);
  if (end.getUint32(0, true) !== ZIP64_END.signature) return damaged("zip64");
  return ok({ entries: bigger(end, 32), bytes: bigger(end, 40), at: bigger(end, 48), end: at });
};

const placeOf = async (file: Blob): Promise<Result<Place>> => {
  const tailAt = Math.max(0, file.size - END.bytes - END.longestComment);
  const tail = await view(file, tailAt, file.size);
  const at = findEnd(tail);
  if (at === undefined) return failed("exchange/not-a-zip");
  const endAt = tailAt + at;
  const entries = tail.getUint16(at + 10, true);
  const bytes = tail.getUint32(at + 12, true);
  const directoryAt = tail.getUint32(at + 16, true);
  const isZip64 = entries === FULL_16 || bytes === FULL_32 || directoryAt === FULL_32;
  if (isZip64) return zip64Place(file, endAt);
  if (tail.getUint16(at + 4, true) !== 0 || tail.getUint16(at + 8, true) !== entries)
    return damaged("parts of a split zip");
  return ok({ entries, bytes, at: directoryAt, end: endAt });
};

interface Sizes {
  packed: number;
  unpacked: number;
  at: number;
}

/** Puts sizes above 4 GB in from the Zip64 field; false when a field is cut short. */
const fillZip64 = (extra: DataView, sizes: Sizes): boolean => {
  for (let at = 0; at + 4 <= extra.byteLength; ) {
    const end = at + 4 + extra.getUint16(at + 2, true);
    if (end > extra.byteLength) return false;
    if (extra.getUint16(at, true) === 1) {
      let next = at + 4;
      for (const key of ["unpacked", "packed", "at"] as const) {
        if (sizes[key] !== FULL_32) continue;
        if (next + 8 > end) return false;
        sizes[key] = bigger(extra, next);
        next += 8;
      }
      return true;
    }
    at = end;
  }
  return true;
};

const part = (data: DataView, at: number, bytes: number): DataView =>
  new DataView(data.buffer, data.byteOffset + at, bytes);

const readName = (data: DataView, at: number, bytes: number): string | undefined => {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(part(data, at, bytes));
  } catch {
    return undefined;
  }
};

const ENCRYPTED = 1;

const readHeader = (data: DataView, at: number): Result<{ entry: ZipEntry; next: number }> => {
  if (at + HEADER.bytes > data.byteLength || data.getUint32(at, true) !== HEADER.signature)
    return damaged("directory");
  const nameBytes = data.getUint16(at + 28, true);
  const extraBytes = data.getUint16(at + 30, true);
  const next = at + HEADER.bytes + nameBytes + extraBytes + data.getUint16(at + 32, true);
  if (next > data.byteLength) return damaged("directory");
  const name = readName(data, at + HEADER.bytes, nameBytes);
  if (name === undefined) return damaged("a file name");
  if ((data.getUint16(at + 8, true) & ENCRYPTED) !== 0) return failed("exchange/encrypted");
  const method = data.getUint16(at + 10, true);
  if (method !== 0 && method !== 8) return failed("exchange/unknown-packing", { method });
  const sizes = {
    packed: data.getUint32(at + 20, true),
    unpacked: data.getUint32(at + 24, true),
    at: data.getUint32(at + 42, true),
  };
  if (!fillZip64(part(data, at + HEADER.bytes + nameBytes, extraBytes), sizes)) return damaged("zip64");
  const entry: ZipEntry = {
    name,
    method: method === 0 ? "stored" : "deflated",
    crc: data.getUint32(at + 16, true),
    packedBytes: sizes.packed,
    unpackedBytes: sizes.unpacked,
    at: sizes.at,
  };
  return ok({ entry, next });
};

/**
 * Reads which files a zip holds.
 *
 * @returns the files in the order of the directory; `exchange/not-a-zip`, `exchange/damaged` (what),
 * `exchange/encrypted`, `exchange/unknown-packing`, `exchange/too-large` (what)
 */
export const readDirectory = async (file: Blob): Promise<Result<ZipDirectory>> => {
  const found = await placeOf(file);
  if (!found.ok) return found;
  const place = found.value;
  // One file more than a volume lists: the manifest does not name itself.
  if (place.entries > LIMITS.files + 1) return failed("exchange/too-large", { what: "files" });
  if (place.bytes > place.entries * MOST_HEADER_BYTES)
    return failed("exchange/too-large", { what: "directory" });
  if (place.at + place.bytes > place.end) return damaged("directory");
  const data = await view(file, place.at, place.at + place.bytes);
  const entries: ZipEntry[] = [];
  let at = 0;
  while (entries.length < place.entries) {
    const read = readHeader(data, at);
    if (!read.ok) return read;
    entries.push(read.value.entry);
    at = read.value.next;
  }
  return at === data.byteLength ? ok({ entries, at: place.at }) : damaged("directory");
};
