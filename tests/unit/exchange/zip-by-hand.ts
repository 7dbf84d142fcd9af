/**
 * Zip files put together byte by byte after PKWARE's APPNOTE 6.3.10, sections 4.3.7 (local header), 4.3.12
 * (central directory), 4.3.14 to 4.3.16 (end records), with every field open to lies.
 */
import { deflateRawSync } from "node:zlib";

/** One file of a zip, and what its headers claim instead of the truth. */
export interface HandFile {
  readonly name: string;
  readonly content: Uint8Array | string;
  readonly deflate?: boolean;
  readonly flags?: number;
  readonly method?: number;
  readonly claims?: { readonly unpacked?: number; readonly packed?: number; readonly crc?: number };
  /** Name in the local header. */
  readonly localName?: string;
  /** The directory points to the file of this index. */
  readonly sameBytesAs?: number;
}

/** A whole zip, and what it claims about itself. */
export interface HandZip {
  readonly files: readonly HandFile[];
  readonly zip64?: boolean;
  readonly comment?: string;
  readonly claims?: { readonly entries?: number; readonly directoryAt?: number; readonly disk?: number };
}

const utf8 = (text: string): Buffer => Buffer.from(text, "utf8");
const FULL_32 = 0xffffffff;

/** CRC-32 bit by bit (the product's own must not check itself). */
export const slowCrc = (bytes: Uint8Array): number => {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return ~value >>> 0;
};

const header = (
  signature: number,
  fields: readonly (readonly [bytes: 2 | 4 | 8, value: number])[],
): Buffer => {
  const buffer = Buffer.alloc(4 + fields.reduce((sum, [bytes]) => sum + bytes, 0));
  buffer.writeUInt32LE(signature, 0);
  let at = 4;
  for (const [bytes, value] of fields) {
    if (bytes === 8) buffer.writeBigUInt64LE(BigInt(value), at);
    else buffer.writeUIntLE(value, at, bytes);
    at += bytes;
  }
  return buffer;
};

/** Puts a zip together. */
export const zipByHand = ({ files, zip64 = false, comment = "", claims = {} }: HandZip): Blob => {
  const parts: Buffer[] = [];
  const places: number[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const file of files) {
    const name = utf8(file.name);
    const localName = utf8(file.localName ?? file.name);
    const content = typeof file.content === "string" ? utf8(file.content) : Buffer.from(file.content);
    const packed = file.deflate === true ? deflateRawSync(content) : content;
    const method = file.method ?? (file.deflate === true ? 8 : 0);
    const crc = file.claims?.crc ?? slowCrc(content);
    const sizes = {
      packed: file.claims?.packed ?? packed.length,
      unpacked: file.claims?.unpacked ?? content.length,
    };
    const flags = file.flags ?? 0x0800;
    places.push(at);
    const place = places[file.sameBytesAs ?? places.length - 1] ?? at;
    if (file.sameBytesAs === undefined) {
      const local = header(0x04034b50, [
        [2, 45],
        [2, flags],
        [2, method],
        [2, 0],
        [2, 0x21],
        [4, crc],
        [4, sizes.packed],
        [4, sizes.unpacked],
        [2, localName.length],
        [2, 0],
      ]);
      parts.push(local, localName, packed);
      at += local.length + localName.length + packed.length;
    }
    const bigSizes = [
      [2, 24],
      [8, sizes.unpacked],
      [8, sizes.packed],
      [8, place],
    ] as const;
    const extra = zip64 ? Buffer.concat([Buffer.from([1, 0]), header(0, bigSizes).subarray(4)]) : utf8("");
    directory.push(
      header(0x02014b50, [
        [2, 45],
        [2, 45],
        [2, flags],
        [2, method],
        [2, 0],
        [2, 0x21],
        [4, crc],
        [4, zip64 ? FULL_32 : sizes.packed],
        [4, zip64 ? FULL_32 : sizes.unpacked],
        [2, name.length],
        [2, extra.length],
        [2, 0],
        [2, 0],
        [2, 0],
        [4, 0],
        [4, zip64 ? FULL_32 : place],
      ]),
      name,
      extra,
    );
  }
  const central = Buffer.concat(directory);
  const entries = claims.entries ?? files.length;
  const directoryAt = claims.directoryAt ?? at;
  const end: Buffer[] = [];
  if (zip64)
    end.push(
      header(0x06064b50, [
        [8, 44],
        [2, 45],
        [2, 45],
        [4, 0],
        [4, 0],
        [8, entries],
        [8, entries],
        [8, central.length],
        [8, directoryAt],
      ]),
      header(0x07064b50, [
        [4, 0],
        [8, at + central.length],
        [4, 1],
      ]),
    );
  end.push(
    header(0x06054b50, [
      [2, claims.disk ?? 0],
      [2, 0],
      [2, zip64 ? 0xffff : entries],
      [2, zip64 ? 0xffff : entries],
      [4, zip64 ? FULL_32 : central.length],
      [4, zip64 ? FULL_32 : directoryAt],
      [2, comment.length],
    ]),
    utf8(comment),
  );
  return new Blob([Buffer.concat([...parts, central, ...end])]);
};
