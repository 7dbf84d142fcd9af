/** Unpacks one file of a zip, counting what comes out: sizes in a zip are its maker's claims. */
import { type Failed, failed, ok, type Result } from "../../../record/result.ts";
import { LIMITS } from "../../format/limits.ts";
import { crc32 } from "./crc32.ts";
import type { ZipEntry } from "./directory.ts";

const LOCAL = { signature: 0x04034b50, bytes: 30 } as const;

const damaged = (entry: ZipEntry, what: string): Failed =>
  failed("exchange/damaged", { what, file: entry.name.slice(0, 100) });

/** Where the packed bytes of a file lie. */
export interface PackedRange {
  readonly from: number;
  readonly to: number;
}

/**
 * Finds the packed bytes of a file by its local header, which must say the same as the directory.
 *
 * @param before where the next file or the directory begins: no byte of this file lies there or beyond
 */
export const packedRange = async (
  file: Blob,
  entry: ZipEntry,
  before: number,
): Promise<Result<PackedRange>> => {
  if (entry.at + LOCAL.bytes > before) return damaged(entry, "overlap");
  const head = new DataView(await file.slice(entry.at, entry.at + LOCAL.bytes).arrayBuffer());
  if (head.byteLength < LOCAL.bytes || head.getUint32(0, true) !== LOCAL.signature)
    return damaged(entry, "local header");
  const nameBytes = head.getUint16(26, true);
  const nameAt = entry.at + LOCAL.bytes;
  const from = nameAt + nameBytes + head.getUint16(28, true);
  const to = from + entry.packedBytes;
  if (to > before) return damaged(entry, "overlap");
  const name = new TextDecoder().decode(await file.slice(nameAt, nameAt + nameBytes).arrayBuffer());
  const method = head.getUint16(8, true) === 0 ? "stored" : "deflated";
  if (name !== entry.name || method !== entry.method) return damaged(entry, "local header");
  return ok({ from, to });
};

/** Takes the unpacked bytes as they come; a failure it returns ends the unpacking. */
export type Take = (bytes: Uint8Array<ArrayBuffer>) => Failed | undefined | Promise<Failed | undefined>;

type Reader = ReadableStreamDefaultReader<Uint8Array<ArrayBuffer>>;

const nextPiece = async (
  reader: Reader,
  entry: ZipEntry,
): Promise<Result<Uint8Array<ArrayBuffer> | undefined>> => {
  try {
    return ok((await reader.read()).value);
  } catch (error) {
    // A file that went away is reported by NotReadableError, broken bytes by other errors.
    return error instanceof DOMException ? failed("exchange/file-gone") : damaged(entry, "packed bytes");
  }
};

/**
 * Unpacks one file piece by piece.
 *
 * @param limit most bytes that may come out
 * @returns the number of bytes; `exchange/damaged` (what, file), `exchange/too-large` (what, file), or
 * what `take` returned
 */
export const unpack = async (
  file: Blob,
  entry: ZipEntry,
  range: PackedRange,
  limit: number,
  take: Take,
): Promise<Result<number>> => {
  const packed = file.slice(range.from, range.to).stream();
  const bytes =
    entry.method === "stored" ? packed : packed.pipeThrough(new DecompressionStream("deflate-raw"));
  const reader = bytes.getReader();
  const most = Math.max(LIMITS.ratioFromBytes, entry.packedBytes * LIMITS.ratio);
  let count = 0;
  let crc = 0;
  const takePiece = (piece: Uint8Array<ArrayBuffer>) => {
    count += piece.byteLength;
    if (count > limit || count > most)
      return failed("exchange/too-large", { what: count > limit ? "file" : "ratio", file: entry.name });
    if (count > entry.unpackedBytes) return damaged(entry, "size");
    crc = crc32(crc, piece);
    return take(piece);
  };
  try {
    for (;;) {
      const piece = await nextPiece(reader, entry);
      if (!piece.ok) return piece;
      if (piece.value === undefined) break;
      const problem = await takePiece(piece.value);
      if (problem !== undefined) return problem;
    }
  } finally {
    reader.cancel().catch(() => undefined);
  }
  if (count !== entry.unpackedBytes) return damaged(entry, "size");
  return crc === entry.crc ? ok(count) : damaged(entry, "check sum");
};
